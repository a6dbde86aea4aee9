package dryfit.timber;

/**
 * Specific gravity of wood and its weight. Specific gravity always takes the ovendry mass; what
 * changes is the moisture content at which the volume is measured. Moisture contents are percent of
 * the ovendry mass.
 *
 * <p>Source: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), chapter 4.
 */
public final class Density {
  private Density() {}

  /**
   * Density in kilograms per cubic metre at {@code moisture} percent, from the specific gravity on
   * the volume at that same moisture content: 1000 G (1 + M/100).
   *
   * @throws IllegalArgumentException if the gravity is not positive or the moisture negative
   */
  public static double at(double moisture, double specificGravity) {
    if (!(specificGravity > 0 && moisture >= 0)) {
      throw new IllegalArgumentException(
          "no wood has specific gravity " + specificGravity + " at " + moisture + " %");
    }
    return 1000 * specificGravity * (1 + moisture / 100);
  }

  /**
   * Specific gravity on the volume at {@code moisture} percent, from {@code basic}, that on the
   * green volume: G / (1 - 0.265 G (1 - M/30)). The equation's form is from memory (Wood Handbook
   * chapter 4 and FPL-GTR-76, Simpson 1993) and was not seen on the page; tabulated averages stand
   * up to 0.03 above it, because they come from other samples.
   *
   * @throws IllegalArgumentException if moisture is not from 0 to 30 %, where wood stops shrinking
   */
  public static double specificGravityAt(double moisture, double basic) {
    if (!(moisture >= 0 && moisture <= 30 && basic > 0)) {
      throw new IllegalArgumentException(
          "no shrinkage known for specific gravity " + basic + " at " + moisture + " %");
    }
    return basic / (1 - 0.265 * basic * (1 - moisture / 30));
  }
}
