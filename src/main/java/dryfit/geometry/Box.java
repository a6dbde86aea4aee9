package dryfit.geometry;

import java.util.Collection;

/** An axis-aligned box, millimetres; {@code low} is never above {@code high}. */
public record Box(Vec3 low, Vec3 high) {

  /**
   * @throws IllegalArgumentException if there is no point
   */
  public static Box around(Collection<Vec3> points) {
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a box around nothing");
    }
    double x0 = Double.POSITIVE_INFINITY;
    double y0 = x0;
    double z0 = x0;
    double x1 = Double.NEGATIVE_INFINITY;
    double y1 = x1;
    double z1 = x1;
    for (Vec3 p : points) {
      x0 = Math.min(x0, p.x());
      y0 = Math.min(y0, p.y());
      z0 = Math.min(z0, p.z());
      x1 = Math.max(x1, p.x());
      y1 = Math.max(y1, p.y());
      z1 = Math.max(z1, p.z());
    }
    return new Box(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1));
  }

  public Vec3 size() {
    return high.minus(low);
  }

  public Vec3 middle() {
    return low.midway(high);
  }

  public Box grown(double by) {
    Vec3 d = new Vec3(by, by, by);
    return new Box(low.minus(d), high.plus(d));
  }

  /** Whether the two share at least a point: touching counts. */
  public boolean meets(Box o) {
    return low.x() <= o.high.x()
        && o.low.x() <= high.x()
        && low.y() <= o.high.y()
        && o.low.y() <= high.y()
        && low.z() <= o.high.z()
        && o.low.z() <= high.z();
  }

  public Box with(Box o) {
    return around(java.util.List.of(low, high, o.low, o.high));
  }
}
