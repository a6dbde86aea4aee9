package dryfit.shop;

/**
 * Board measure: wood counted in pieces of 144 cubic inches. A tally of boards goes by surface
 * measure, which is the face of a board in whole square feet. After the rules of the National
 * Hardwood Lumber Association as told by American Hardwood Export Council, <a
 * href="https://www.americanhardwood.org/en/american-hardwood/grading-sawn-lumber/measurement">Grading
 * and measurement</a>.
 */
public final class BoardMeasure {
  /** Cubic millimetres in a board foot: 144 in^3 of 25.4 mm. */
  public static final double BOARD_FOOT = 144 * 25.4 * 25.4 * 25.4;

  private static final double INCH = 25.4;
  private static final double FOOT = 12 * INCH;
  private static final double CUBIC_METRE = 1e9; // mm^3

  private BoardMeasure() {}

  /**
   * Board feet of a piece, not rounded. Wood thinner than an inch counts as an inch.
   *
   * @param thickness nominal, mm
   */
  public static double boardFeet(double length, double width, double thickness) {
    return length * width * Math.max(thickness, INCH) / BOARD_FOOT;
  }

  /**
   * The surface measure of a board in whole square feet: width in inches times length in whole feet
   * (a part of a foot is not counted) by twelve, to the nearest whole number. Exactly a half is
   * rounded up here; in a tally such boards go up and down in turn.
   */
  public static int surfaceMeasure(double length, double width) {
    // A hair of a foot, so that a board of exactly eight feet is not counted as seven.
    double feet = Math.floor(length / FOOT + 1e-9);
    return (int) Math.floor(width / INCH * feet / 12 + 0.5 + 1e-9);
  }

  /** Board feet of a board in a tally: surface measure times nominal thickness in inches. */
  public static double tally(double length, double width, double thickness) {
    return surfaceMeasure(length, width) * Math.max(thickness, INCH) / INCH;
  }

  /** Cubic metres that so many board feet are. */
  public static double cubicMetres(double boardFeet) {
    return boardFeet * BOARD_FOOT / CUBIC_METRE;
  }

  /** What to buy, in whole board feet: the blanks, with a share for waste, rounded up. */
  public static int toBuy(double boardFeet, double waste) {
    return (int) Math.ceil(boardFeet * (1 + waste) - 1e-9);
  }
}
