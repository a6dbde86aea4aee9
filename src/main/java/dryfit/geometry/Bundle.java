package dryfit.geometry;

import java.util.Collection;

/**
 * The space that rays one way sweep: from places near each other, as far as it goes. Seen along the
 * way it is a rectangle around those places.
 */
final class Bundle {
  private final Vec3 u;
  private final Vec3 v;
  private final Vec3 way;

  /** How far to look beside the rectangle, mm. */
  private final double aside;

  private double lowU = Double.POSITIVE_INFINITY;
  private double highU = Double.NEGATIVE_INFINITY;
  private double lowV = Double.POSITIVE_INFINITY;
  private double highV = Double.NEGATIVE_INFINITY;
  private double start = Double.POSITIVE_INFINITY;

  /**
   * @param way a unit direction
   * @param aside by how much rays may be moved aside, mm
   */
  Bundle(Collection<Vec3> from, Vec3 way, double aside) {
    this.way = way;
    this.aside = aside;
    // Along an axis where the way has one, so that the rectangle fits what is square to it.
    Vec3 side =
        Math.abs(way.x()) < 0.6 ? Vec3.RIGHT : Math.abs(way.y()) < 0.6 ? Vec3.BACK : Vec3.UP;
    this.u = side.across(way).unit();
    this.v = way.cross(u);
    for (Vec3 p : from) {
      lowU = Math.min(lowU, u.dot(p));
      highU = Math.max(highU, u.dot(p));
      lowV = Math.min(lowV, v.dot(p));
      highV = Math.max(highV, v.dot(p));
      start = Math.min(start, way.dot(p));
    }
  }

  /** Whether a ray from there is one of the bundle. */
  boolean holds(Vec3 from) {
    double a = u.dot(from);
    double b = v.dot(from);
    return a >= lowU && a <= highU && b >= lowV && b <= highV && way.dot(from) >= start;
  }

  /** Where a box begins along the way, or a little before. */
  double start(double[] boxes, int at) {
    return least(way.x(), boxes[at], boxes[at + 3])
        + least(way.y(), boxes[at + 1], boxes[at + 4])
        + least(way.z(), boxes[at + 2], boxes[at + 5])
        - aside;
  }

  private static double least(double per, double low, double high) {
    return per < 0 ? per * high : per * low;
  }

  /**
   * Whether a box may be on the way of a ray of the bundle.
   *
   * @param boxes six numbers each: lowest x, y, z and highest x, y, z
   * @param at where the box begins in them
   */
  boolean mayMeet(double[] boxes, int at) {
    double x = (boxes[at] + boxes[at + 3]) / 2;
    double y = (boxes[at + 1] + boxes[at + 4]) / 2;
    double z = (boxes[at + 2] + boxes[at + 5]) / 2;
    double dx = boxes[at + 3] - x;
    double dy = boxes[at + 4] - y;
    double dz = boxes[at + 5] - z;
    double a = u.x() * x + u.y() * y + u.z() * z;
    double da = Math.abs(u.x()) * dx + Math.abs(u.y()) * dy + Math.abs(u.z()) * dz + aside;
    if (a + da < lowU || a - da > highU) {
      return false;
    }
    double b = v.x() * x + v.y() * y + v.z() * z;
    double db = Math.abs(v.x()) * dx + Math.abs(v.y()) * dy + Math.abs(v.z()) * dz + aside;
    if (b + db < lowV || b - db > highV) {
      return false;
    }
    double w = way.x() * x + way.y() * y + way.z() * z;
    double dw = Math.abs(way.x()) * dx + Math.abs(way.y()) * dy + Math.abs(way.z()) * dz + aside;
    return w + dw >= start;
  }
}
