package dryfit.view;

import dryfit.export.picture.Camera;
import dryfit.export.picture.View;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import java.util.Collection;

/**
 * Where the maker stands: on a ball round {@code target}, always head up. Straight up and straight
 * down are as far as it goes, so the chair is never upside down.
 *
 * @param target what is looked at, chair space, mm
 * @param azimuth radians to the right of straight in front
 * @param elevation radians above the level, from straight below to straight above
 * @param distance from the target to the eye, mm
 */
record Orbit(Vec3 target, double azimuth, double elevation, double distance) {
  /** Angle of view from the bottom to the top of the picture; a long lens, as chairs are drawn. */
  static final double ANGLE_OF_VIEW = Math.toRadians(22);

  private static final double TANGENT = Math.tan(ANGLE_OF_VIEW / 2);
  private static final double NEAREST = 60;
  private static final double FARTHEST = 60_000;

  Orbit {
    elevation = Math.max(-Math.PI / 2, Math.min(Math.PI / 2, elevation));
    distance = Math.max(NEAREST, Math.min(FARTHEST, distance));
  }

  /** A plain view of some points, all of them in the picture, filling {@code share} of it. */
  static Orbit of(View view, Collection<Vec3> points, double aspect, double share) {
    Vec3 d = view.towardsEye();
    double flat = Math.hypot(d.x(), d.y());
    Orbit turned =
        new Orbit(
            Vec3.ZERO, flat < 1e-9 ? 0 : Math.atan2(d.x(), -d.y()), Math.atan2(d.z(), flat), 1);
    return turned.fitting(points, aspect, share);
  }

  /** The same direction, moved so that all points are in the picture. */
  Orbit fitting(Collection<Vec3> points, double aspect, double share) {
    Camera c = camera();
    double tall = TANGENT * share;
    double[] across = opening(points, c.right(), c.forward(), tall * aspect);
    double[] upright = opening(points, c.up(), c.forward(), tall);
    double in = Math.min(across[1], upright[1]);
    double middle =
        points.stream().mapToDouble(p -> p.dot(c.forward())).average().orElse(in + NEAREST);
    Vec3 at =
        c.right()
            .times(across[0])
            .plus(c.up().times(upright[0]))
            .plus(c.forward().times(Math.max(middle, in + NEAREST)));
    return new Orbit(at, azimuth, elevation, Math.max(middle, in + NEAREST) - in);
  }

  /** Where the eye stands so that lines of slope {@code t} to both sides hold all points. */
  private static double[] opening(Collection<Vec3> points, Vec3 sideways, Vec3 forward, double t) {
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (Vec3 p : points) {
      low = Math.max(low, p.dot(sideways) - t * p.dot(forward));
      high = Math.min(high, p.dot(sideways) + t * p.dot(forward));
    }
    return new double[] {(low + high) / 2, (high - low) / (2 * t)};
  }

  Camera camera() {
    Vec3 towards =
        new Vec3(
            Math.sin(azimuth) * Math.cos(elevation),
            -Math.cos(azimuth) * Math.cos(elevation),
            Math.sin(elevation));
    Vec3 right = new Vec3(Math.cos(azimuth), Math.sin(azimuth), 0);
    return new Camera(
        target.plus(towards.times(distance)),
        right,
        towards.cross(right),
        towards.negated(),
        TANGENT);
  }

  /** Turned by so much; radians. */
  Orbit turned(double about, double up) {
    return new Orbit(target, azimuth + about, elevation + up, distance);
  }

  /** The same from so many millimetres away. */
  Orbit from(double newDistance) {
    return new Orbit(target, azimuth, elevation, newDistance);
  }

  /**
   * Turned no farther than it takes to look against a direction to within an angle.
   *
   * @param outward level, or straight up or down
   * @param within radians; for a level one it is held to the side and above each by itself
   */
  Orbit facing(Vec3 outward, double within) {
    double flat = Math.hypot(outward.x(), outward.y());
    if (flat < Math.abs(outward.z())) {
      double least = Math.PI / 2 - within;
      double up = outward.z() > 0 ? Math.max(elevation, least) : Math.min(elevation, -least);
      return new Orbit(target, azimuth, up, distance);
    }
    double square = Math.atan2(outward.x(), -outward.y());
    double off = Math.IEEEremainder(azimuth - square, 2 * Math.PI);
    return new Orbit(
        target,
        square + Math.max(-within, Math.min(within, off)),
        Math.max(-within, Math.min(within, elevation)),
        distance);
  }

  /** Moved so that the target is elsewhere; the direction stays. */
  Orbit at(Vec3 newTarget) {
    return new Orbit(newTarget, azimuth, elevation, distance);
  }

  /** The same, looking at the nearest place of a box. */
  Orbit within(Box box) {
    return at(
        new Vec3(
            Math.max(box.low().x(), Math.min(box.high().x(), target.x())),
            Math.max(box.low().y(), Math.min(box.high().y(), target.y())),
            Math.max(box.low().z(), Math.min(box.high().z(), target.z()))));
  }

  /** Slid across the picture by so many pixels of a picture so many pixels high. */
  Orbit slid(double right, double down, double height) {
    double mm = pixel(height);
    Camera c = camera();
    return at(target.minus(c.right().times(right * mm)).plus(c.up().times(down * mm)));
  }

  /** How much of the chair a pixel covers at the target, of a picture so many pixels high, mm. */
  double pixel(double height) {
    return 2 * TANGENT * distance / height;
  }

  /** Nearer by a factor below one, or farther; {@code fixed} stays where it is in the picture. */
  Orbit zoomed(double factor, Vec3 fixed) {
    double possible = Math.max(NEAREST, Math.min(FARTHEST, distance * factor)) / distance;
    return new Orbit(
        fixed.plus(target.minus(fixed).times(possible)), azimuth, elevation, distance * possible);
  }

  /** Part of the way to another place, the short way round. */
  Orbit towards(Orbit end, double share) {
    double turn = Math.IEEEremainder(end.azimuth - azimuth, 2 * Math.PI);
    return new Orbit(
        target.plus(end.target.minus(target).times(share)),
        azimuth + turn * share,
        elevation + (end.elevation - elevation) * share,
        distance * Math.pow(end.distance / distance, share));
  }
}
