package dryfit.measure;

/**
 * An angle as it is set out at the bench, in every way that people read one: off square, from
 * either edge, and as a slope. It has a size only; which side is long or which way a hole leans
 * goes with it in words.
 *
 * @param offSquare how far from square, radians, 0 up to and without pi/2
 */
public record BenchAngle(double offSquare) {
  /** Half of the last digit of a degree that is printed: less than this reads as square. */
  private static final double SHOWS = Math.toRadians(0.005);

  /**
   * @throws IllegalArgumentException if the angle is not 0 up to and without pi/2
   */
  public BenchAngle {
    if (!(offSquare >= 0 && offSquare < Math.PI / 2)) {
      throw new IllegalArgumentException("not an angle off square: " + offSquare);
    }
    offSquare += 0.0;
  }

  /** The size of an angle off square, whichever its sign. */
  public static BenchAngle of(double radians) {
    return new BenchAngle(Math.abs(radians));
  }

  /** Whether so little is square that no printed degree would show it. */
  public boolean isSquare() {
    return offSquare <= Math.max(Tolerances.parallel(), SHOWS);
  }

  /**
   * From the edge on the sharp side: a bevel gauge with its stock on the long edge of a member
   * encloses this angle in the wood. The reading of a mitre gauge that shows 90 degrees at square.
   */
  public double fromLongEdge() {
    return Math.PI / 2 - offSquare;
  }

  /** From the opposite, short edge: the obtuse reading of the same line. */
  public double fromShortEdge() {
    return Math.PI / 2 + offSquare;
  }

  /** Rise for a run of one. */
  public double rise() {
    return Math.tan(offSquare);
  }

  /** By how much the two ends of the line differ over {@code width}, in the unit of the width. */
  public double over(double width) {
    return width * rise();
  }

  /**
   * The slope to mark on a board and set a bevel to: {@code 15.6 mm over 100 mm}, or {@code 1 7/8
   * in over 12 in}, rise over run. Steeper than 45° the rise is the round number: {@code 100 mm
   * over 63.7 mm}.
   *
   * @param denominator the finest division of the inch; not used for millimetres
   */
  public String slope(Length.Unit unit, int denominator) {
    double round = unit == Length.Unit.MM ? 100 : 12;
    double rise = rise();
    String whole = Length.number(round, 0) + " " + unit.symbol();
    String odd =
        odd(round * (rise <= 1 ? rise : 1 / rise), unit, denominator) + " " + unit.symbol();
    return rise <= 1 ? odd + " over " + whole : whole + " over " + odd;
  }

  private static String odd(double value, Length.Unit unit, int denominator) {
    return unit == Length.Unit.MM
        ? Length.number(value, 1)
        : Fraction.nearest(value, denominator).text();
  }
}
