package dryfit.geometry;

/**
 * A placement: an origin and three perpendicular unit axes, right-handed. A part's own axes are
 * {@code x} = length, {@code y} = width, {@code z} = thickness. Placing never scales or mirrors.
 */
public record Frame(Vec3 origin, Vec3 x, Vec3 y, Vec3 z) {
  public static final Frame CHAIR = new Frame(Vec3.ZERO, Vec3.RIGHT, Vec3.BACK, Vec3.UP);

  /**
   * The frame at {@code origin} whose x axis is along {@code length} and whose y axis is as near to
   * {@code width} as it can be.
   *
   * @throws IllegalArgumentException if the two directions are parallel
   */
  public static Frame of(Vec3 origin, Vec3 length, Vec3 width) {
    Vec3 x = length.unit();
    Vec3 y = width.across(x).unit();
    return new Frame(origin, x, y, x.cross(y));
  }

  /** A local point to chair space. */
  public Vec3 place(Vec3 local) {
    return origin.plus(turn(local));
  }

  /** A local direction to chair space. */
  public Vec3 turn(Vec3 local) {
    return x.times(local.x()).plus(y.times(local.y())).plus(z.times(local.z()));
  }

  /** A chair-space point to local coordinates. */
  public Vec3 local(Vec3 point) {
    return localDirection(point.minus(origin));
  }

  /** A chair-space direction to local coordinates. */
  public Vec3 localDirection(Vec3 d) {
    return new Vec3(d.dot(x), d.dot(y), d.dot(z));
  }

  /** A local plane to chair space. */
  public Plane place(Plane local) {
    Vec3 n = turn(local.normal());
    return new Plane(n, local.offset() + n.dot(origin));
  }

  /** A chair-space plane to local coordinates. */
  public Plane local(Plane plane) {
    return new Plane(localDirection(plane.normal()), plane.height(origin) * -1);
  }

  /**
   * This frame for the mirrored part: origin and axes mirrored in x = 0, and the thickness axis
   * turned round to stay right-handed. A solid that goes with it is mirrored in its local z.
   */
  public Frame mirrored() {
    return new Frame(origin.mirrored(), x.mirrored(), y.mirrored(), z.mirrored().negated());
  }
}
