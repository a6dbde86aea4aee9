package dryfit.export.picture;

import dryfit.geometry.Vec3;
import java.util.Collection;

/**
 * An eye that looks at the chair. Axes are unit directions in chair space, square to each other;
 * {@code forward} goes from the eye into the picture.
 *
 * @param eye where the eye is, mm
 * @param tangent tangent of half the angle of view from bottom to top
 */
public record Camera(Vec3 eye, Vec3 right, Vec3 up, Vec3 forward, double tangent) {

  /**
   * The eye in direction {@code towardsEye} from {@code target}, {@code distance} millimetres away.
   *
   * @param up what should point up in the picture
   * @param angleOfView from bottom to top, radians
   * @throws IllegalArgumentException if {@code up} is along the line of sight
   */
  public static Camera at(
      Vec3 target, Vec3 towardsEye, double distance, Vec3 up, double angleOfView) {
    Vec3 back = towardsEye.unit();
    Vec3 forward = back.negated();
    Vec3 right = forward.cross(up).unit();
    return new Camera(
        target.plus(back.times(distance)),
        right,
        right.cross(forward),
        forward,
        Math.tan(angleOfView / 2));
  }

  /**
   * The eye that goes round {@code target}: {@code azimuth} radians to the right of straight in
   * front, {@code elevation} radians above the level.
   */
  public static Camera around(
      Vec3 target, double azimuth, double elevation, double distance, double angleOfView) {
    Vec3 towards =
        new Vec3(
            Math.sin(azimuth) * Math.cos(elevation),
            -Math.cos(azimuth) * Math.cos(elevation),
            Math.sin(elevation));
    return at(target, towards, distance, Vec3.UP, angleOfView);
  }

  /**
   * The nearest eye of a plain view that has all {@code points} in the picture, centred.
   *
   * @param aspect width of the picture over its height
   * @param filled share of the picture the chair may fill, 0 to 1
   */
  public static Camera fitting(View view, Collection<Vec3> points, double aspect, double filled) {
    Camera turned = at(Vec3.ZERO, view.towardsEye(), 0, view.up(), view.angleOfView());
    double tall = turned.tangent * filled;
    double[] across = tangentPlanes(points, turned.right, turned.forward, tall * aspect);
    double[] upright = tangentPlanes(points, turned.up, turned.forward, tall);
    double in = Math.min(across[1], upright[1]);
    Vec3 eye =
        turned
            .right
            .times(across[0])
            .plus(turned.up.times(upright[0]))
            .plus(turned.forward.times(in));
    return new Camera(eye, turned.right, turned.up, turned.forward, turned.tangent);
  }

  /**
   * Where two planes through the eye, opening with slope {@code t} to both sides, hold all points:
   * the eye's place sideways and the farthest forward it may stand.
   */
  private static double[] tangentPlanes(
      Collection<Vec3> points, Vec3 sideways, Vec3 forward, double t) {
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (Vec3 p : points) {
      double s = p.dot(sideways);
      double f = p.dot(forward);
      low = Math.max(low, s - t * f);
      high = Math.min(high, s + t * f);
    }
    return new double[] {(low + high) / 2, (high - low) / (2 * t)};
  }

  /** Distance of a point in front of the eye, along the line of sight, mm. */
  public double depth(Vec3 p) {
    return p.minus(eye).dot(forward);
  }

  /** Where points come to lie in a picture of a certain size. */
  public Sheet sheet(int width, int height) {
    return new Sheet(this, width, height);
  }

  /**
   * A camera with a picture size in pixels: x to the right, y down, from the top left corner.
   *
   * @param width pixels
   * @param height pixels
   */
  public record Sheet(Camera camera, int width, int height) {

    /** Pixels for a millimetre at a depth of one millimetre. */
    public double scale() {
      return height / (2 * camera.tangent);
    }

    /** Horizontal place in the picture; the point must be in front of the eye. */
    public double x(Vec3 p) {
      return width / 2.0 + scale() * p.minus(camera.eye).dot(camera.right) / camera.depth(p);
    }

    /** Vertical place in the picture; the point must be in front of the eye. */
    public double y(Vec3 p) {
      return height / 2.0 - scale() * p.minus(camera.eye).dot(camera.up) / camera.depth(p);
    }

    /** The direction in which the eye sees a place of the picture, one millimetre deep. */
    public Vec3 ray(double x, double y) {
      double s = 1 / scale();
      return camera
          .forward
          .plus(camera.right.times((x - width / 2.0) * s))
          .plus(camera.up.times((height / 2.0 - y) * s));
    }
  }
}
