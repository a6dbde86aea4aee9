package dryfit.view;

import dryfit.geometry.Vec3;
import dryfit.measure.Length;

/** What stands beside the chair, so that its size is seen. */
sealed interface Scale {
  /** Who looks along x by more than this share looks at a side of the chair. */
  double SIDEWAYS = 0.75;

  /**
   * The same, where it does not stand before the chair.
   *
   * @param towardsEye unit direction, chair space
   */
  default Scale seenFrom(Vec3 towardsEye) {
    return this;
  }

  /** Nothing. */
  record None() implements Scale {}

  /**
   * Someone who sits, on nothing, as high as their legs are long.
   *
   * @param onLeft whether on the left of the chair, where they hide nothing from the right
   */
  record Sits(Sitter sitter, boolean onLeft) implements Scale {
    @Override
    public Scale seenFrom(Vec3 towardsEye) {
      return new Sits(sitter, towardsEye.x() > SIDEWAYS);
    }
  }

  /** A rule that stands on the floor, marked in a unit. */
  record Rule(Length.Unit unit) implements Scale {}
}
