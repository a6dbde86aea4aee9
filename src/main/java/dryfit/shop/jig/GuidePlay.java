package dryfit.shop.jig;

/**
 * What the play of a tool in its guide does: with a clearance c in a guide of length L it tips by
 * atan(c / L) about the middle of the guide, and at a depth D below the guide it is off by c (D / L
 * + 1/2). A longer guide is the cure.
 *
 * @param clearance how much smaller the tool is than its guide, mm
 * @param length of the guide along the tool, mm
 */
public record GuidePlay(double clearance, double length) {

  /** How far the tool can tip, radians. */
  public double tilt() {
    return Math.atan2(clearance, length);
  }

  /** How far off the tool's tip can be so deep below the guide, mm. */
  public double offAt(double depth) {
    return clearance * (depth / length + 0.5);
  }

  /** How long a guide must be for a tool to tip no further than {@code tilt} radians, mm. */
  public static double lengthFor(double clearance, double tilt) {
    return clearance / Math.tan(tilt);
  }
}
