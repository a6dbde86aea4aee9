package dryfit.timber;

/**
 * How much a board's width changes with its moisture content: the linear rule D C (M2 - M1), with
 * the dimensional change coefficients of the species.
 *
 * <p>The coefficients hold from 6 to 14 percent; other moisture contents are refused rather than
 * guessed at. Inside that range the rule understates the true change by about 5 percent of it, and
 * single boards differ from the average of their species by more.
 *
 * <p>Source: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), equation 13-2 and
 * table 13-5.
 */
public final class Movement {
  private static final double DRIEST = 6;
  private static final double WETTEST = 14;

  private Movement() {}

  /** Whether the rule holds between these two moisture contents, in percent. */
  public static boolean covers(double fromPercent, double toPercent) {
    return holds(fromPercent) && holds(toPercent);
  }

  /**
   * The change in {@code width} when moisture goes from {@code fromPercent} to {@code toPercent};
   * in the width's own unit, positive when the board swells.
   *
   * @param coefficient change per unit of width and percent of moisture content
   * @throws IllegalArgumentException if the rule does not hold there, see {@link #covers}
   */
  public static double change(
      double width, double coefficient, double fromPercent, double toPercent) {
    if (!covers(fromPercent, toPercent)) {
      throw new IllegalArgumentException(
          "movement is known from 6 to 14 % moisture, not from "
              + fromPercent
              + " to "
              + toPercent
              + " %");
    }
    return width * coefficient * (toPercent - fromPercent);
  }

  private static boolean holds(double percent) {
    return percent >= DRIEST && percent <= WETTEST;
  }
}
