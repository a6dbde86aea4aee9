package dryfit.geometry;

import dryfit.measure.Tolerances;

/**
 * An oriented plane: the points p with {@code normal . p = offset}. The side the normal points to
 * is outside. {@code normal} has unit length; {@code offset} is in millimetres.
 */
public record Plane(Vec3 normal, double offset) {

  /** The plane through {@code point}; {@code direction} need not have unit length. */
  public static Plane through(Vec3 point, Vec3 direction) {
    Vec3 n = direction.unit();
    return new Plane(n, n.dot(point));
  }

  /** Signed distance in millimetres; positive outside. */
  public double height(Vec3 p) {
    return normal.dot(p) - offset;
  }

  public Plane flipped() {
    return new Plane(normal.negated(), -offset);
  }

  /** This plane moved by {@code d} millimetres along its normal. */
  public Plane moved(double d) {
    return new Plane(normal, offset + d);
  }

  /**
   * How far along the unit direction {@code d} from {@code p} the plane is met; NaN if the line
   * runs within the plane's direction.
   */
  public double along(Vec3 p, Vec3 d) {
    double rate = normal.dot(d);
    return Math.abs(rate) < Tolerances.sameDirection() ? Double.NaN : -height(p) / rate;
  }
}
