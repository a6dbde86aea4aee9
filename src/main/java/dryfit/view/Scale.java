package dryfit.view;

import dryfit.measure.Length;

/** What stands beside the chair, so that its size is seen. */
sealed interface Scale {
  /** Nothing. */
  record None() implements Scale {}

  /**
   * Someone who sits, on nothing, as high as their legs are long.
   *
   * @param onLeft whether on the left of the chair, where they hide nothing from the right
   */
  record Sits(Sitter sitter, boolean onLeft) implements Scale {}

  /** A rule that stands on the floor, marked in a unit. */
  record Rule(Length.Unit unit) implements Scale {}
}
