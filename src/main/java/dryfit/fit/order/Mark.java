package dryfit.fit.order;

import java.util.List;

/**
 * A part that can be put in wrong: turned, or in its twin's place, it would still go into its
 * joints, though it is not the same.
 *
 * @param part number in {@link dryfit.build.Chair#parts}
 * @param wrong the ways in which it goes in wrong, in its own place and its twin's
 * @param elsewhere numbers of the parts of other names into whose places it goes, though it is not
 *     the same
 */
public record Mark(int part, List<Wrong> wrong, List<Integer> elsewhere) {
  public Mark {
    wrong = List.copyOf(wrong);
    elsewhere = List.copyOf(elsewhere);
  }

  /**
   * One wrong way.
   *
   * @param endForEnd whether the wrong end comes first; its width then still looks the same way if
   *     it is not turned too
   * @param quarters quarter turns about its length, 0 to 3
   * @param swapped whether it is in the place of its twin on the other side
   */
  public record Wrong(boolean endForEnd, int quarters, boolean swapped) {}
}
