package dryfit.solid.exact;

import java.util.Locale;

/**
 * The grid on which all corners of shapes lie: steps of 2^-14 mm, 61 nanometres, out to 2048 mm.
 * With corners of 26 bits, normals of planes need 54 bits and sides of corners 82.
 */
final class Grid {
  static final double STEPS_PER_MM = 0x1p14;
  private static final double REACH = 0x1p25;

  private Grid() {}

  /**
   * The nearest grid coordinate that is a multiple of {@code 2^coarser} steps.
   *
   * @throws IllegalArgumentException beyond the grid
   */
  static int snap(double mm, int coarser) {
    double each = 1 << coarser;
    double steps = Math.rint(mm * STEPS_PER_MM / each) * each;
    if (Math.abs(steps) >= REACH) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a point %.1f mm from the part's own origin is out of reach: parts must lie within"
                  + " 2048 mm of it along each axis",
              mm));
    }
    return (int) steps;
  }
}
