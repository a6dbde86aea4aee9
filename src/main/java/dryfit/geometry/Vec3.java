package dryfit.geometry;

/**
 * A point or a direction in space. Points are in millimetres.
 *
 * <p>Chair space: {@code x} to the right as you face the chair, {@code y} away from you (front to
 * back), {@code z} up; right-handed; the origin is on the floor below the middle of the front of
 * the seat.
 */
public record Vec3(double x, double y, double z) {
  public static final Vec3 ZERO = new Vec3(0, 0, 0);
  public static final Vec3 RIGHT = new Vec3(1, 0, 0);
  public static final Vec3 BACK = new Vec3(0, 1, 0);
  public static final Vec3 UP = new Vec3(0, 0, 1);

  /**
   * @throws IllegalArgumentException if a component is NaN or infinite
   */
  public Vec3 {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException("not a place: " + x + ", " + y + ", " + z);
    }
    // Adding zero turns -0.0 into 0.0, so that records compare as a reader expects.
    x += 0.0;
    y += 0.0;
    z += 0.0;
  }

  public Vec3 plus(Vec3 o) {
    return new Vec3(x + o.x, y + o.y, z + o.z);
  }

  public Vec3 minus(Vec3 o) {
    return new Vec3(x - o.x, y - o.y, z - o.z);
  }

  public Vec3 times(double k) {
    return new Vec3(x * k, y * k, z * k);
  }

  public Vec3 negated() {
    return new Vec3(-x, -y, -z);
  }

  public double dot(Vec3 o) {
    return x * o.x + y * o.y + z * o.z;
  }

  public Vec3 cross(Vec3 o) {
    return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  public double distance(Vec3 o) {
    return minus(o).length();
  }

  /**
   * @throws IllegalArgumentException if this has no length
   */
  public Vec3 unit() {
    double l = length();
    if (!(l > 0)) {
      throw new IllegalArgumentException("a direction without length");
    }
    return times(1 / l);
  }

  /** What is left of this once its share along {@code unit} (a unit direction) is taken away. */
  public Vec3 across(Vec3 unit) {
    return minus(unit.times(dot(unit)));
  }

  /** This mirrored in the chair's middle plane, x = 0: right becomes left. */
  public Vec3 mirrored() {
    return new Vec3(-x, y, z);
  }

  public Vec3 midway(Vec3 o) {
    return new Vec3((x + o.x) / 2, (y + o.y) / 2, (z + o.z) / 2);
  }

  /** Angle between two directions, radians, 0 to pi; accurate near 0 and pi too. */
  public double angleTo(Vec3 o) {
    return Math.atan2(cross(o).length(), dot(o));
  }
}
