package dryfit.geometry;

/** A point or a direction in a plane. Points are in millimetres; x to y is anticlockwise. */
public record Vec2(double x, double y) {

  /**
   * @throws IllegalArgumentException if a component is NaN or infinite
   */
  public Vec2 {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("not a place: " + x + ", " + y);
    }
    x += 0.0;
    y += 0.0;
  }

  public Vec2 minus(Vec2 o) {
    return new Vec2(x - o.x, y - o.y);
  }

  public Vec2 plus(Vec2 o) {
    return new Vec2(x + o.x, y + o.y);
  }

  public Vec2 times(double k) {
    return new Vec2(x * k, y * k);
  }

  public double dot(Vec2 o) {
    return x * o.x + y * o.y;
  }

  /** Twice the area of the triangle from the origin to this to {@code o}; positive to the left. */
  public double cross(Vec2 o) {
    return x * o.y - y * o.x;
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  public double distance(Vec2 o) {
    return minus(o).length();
  }
}
