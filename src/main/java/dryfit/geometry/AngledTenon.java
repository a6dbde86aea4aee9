package dryfit.geometry;

/**
 * A tenon that leaves its rail at an angle, so that its mortise can be cut square to the leg: what
 * the slant costs in fibre and in stock. Seen square to the plane of the slant.
 *
 * @param thickness across the cheeks, millimetres
 * @param length from the shoulder, along the tenon, millimetres
 * @param angle between the tenon and the rail's grain, radians, 0 up to pi/2
 */
public record AngledTenon(double thickness, double length, double angle) {

  /**
   * @throws IllegalArgumentException if a length is not positive or the angle is out of range
   */
  public AngledTenon {
    if (!(thickness > 0 && length > 0)) {
      throw new IllegalArgumentException("a tenon needs thickness and length");
    }
    if (!(angle >= 0 && angle < Math.PI / 2)) {
      throw new IllegalArgumentException("not the slant of a tenon: " + angle);
    }
  }

  /** How far sideways the grain runs over the length of the tenon, millimetres. */
  public double drift() {
    return length * Math.tan(angle);
  }

  /** The share of the thickness whose fibres run whole from shoulder to tip, 0 to 1. */
  public double wholeFibres() {
    return Math.max(0, 1 - drift() / thickness);
  }

  /** The thinnest rail, grain along its length, that holds the whole tenon, millimetres. */
  public double leastRail() {
    return thickness * Math.cos(angle) + length * Math.sin(angle);
  }
}
