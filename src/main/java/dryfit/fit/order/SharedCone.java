package dryfit.fit.order;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The directions that several joints allow: a convex polygon in the plane one unit along a middle
 * direction, cut by the limits of each joint.
 */
final class SharedCone {
  /** Half the polygon to begin with, the tangent of 31 degrees. */
  private static final double REACH = 0.6;

  /** How far from its edge towards its middle a direction in the polygon is taken, as a share. */
  private static final double INWARD = 0.1;

  private final Frame frame;
  private final List<double[]> corners;

  private SharedCone(Frame frame, List<double[]> corners) {
    this.frame = frame;
    this.corners = corners;
  }

  static SharedCone around(Vec3 middle) {
    Vec3 other = Math.abs(middle.z()) < 0.8 ? Vec3.UP : Vec3.RIGHT;
    return new SharedCone(
        Frame.of(Vec3.ZERO, middle, other),
        List.of(
            new double[] {-REACH, -REACH},
            new double[] {REACH, -REACH},
            new double[] {REACH, REACH},
            new double[] {-REACH, REACH}));
  }

  /** What a joint allows of these, whichever of its parts is the one that leaves. */
  SharedCone within(ExitCone joint) {
    double sense = joint.exit().dot(frame.x()) < 0 ? -1 : 1;
    Vec3 exit = joint.exit().times(sense);
    Vec3 thick = joint.thick().times(sense);
    Vec3 wide = joint.wide().times(sense);
    double[] s = joint.slopes();
    return above(exit.times(s[0]).plus(thick))
        .above(exit.times(s[1]).minus(thick))
        .above(exit.times(s[2]).plus(wide))
        .above(exit.times(s[3]).minus(wide))
        .above(exit);
  }

  /** What has {@code limit . d >= 0}. */
  private SharedCone above(Vec3 limit) {
    double c = limit.dot(frame.x());
    double u = limit.dot(frame.y());
    double v = limit.dot(frame.z());
    List<double[]> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      double[] p = corners.get(i);
      double[] q = corners.get((i + 1) % corners.size());
      double hp = c + u * p[0] + v * p[1];
      double hq = c + u * q[0] + v * q[1];
      if (hp >= 0) {
        kept.add(p);
      }
      if (hp > 0 && hq < 0 || hp < 0 && hq > 0) {
        double t = hp / (hp - hq);
        kept.add(new double[] {p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])});
      }
    }
    return new SharedCone(frame, kept);
  }

  /** Whether no direction is left, or none with any room about it. */
  boolean isEmpty() {
    return corners.size() < 3;
  }

  /** Whether the direction it was begun around is one of these. */
  boolean holdsMiddle() {
    return holds(0, 0);
  }

  Vec3 middle() {
    double[] m = centre();
    return direction(m[0], m[1]);
  }

  /** The direction nearest to another, a little inside. */
  Vec3 nearest(Vec3 wanted) {
    double along = wanted.dot(frame.x());
    double u = wanted.dot(frame.y()) / along;
    double v = wanted.dot(frame.z()) / along;
    double[] best = {u, v};
    if (!holds(u, v)) {
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < corners.size(); i++) {
        double[] p = corners.get(i);
        double[] q = corners.get((i + 1) % corners.size());
        double eu = q[0] - p[0];
        double ev = q[1] - p[1];
        double square = eu * eu + ev * ev;
        double t = square > 0 ? ((u - p[0]) * eu + (v - p[1]) * ev) / square : 0;
        t = Math.min(1, Math.max(0, t));
        double du = p[0] + t * eu - u;
        double dv = p[1] + t * ev - v;
        if (du * du + dv * dv < least) {
          least = du * du + dv * dv;
          best = new double[] {u + du, v + dv};
        }
      }
    }
    double[] m = centre();
    return direction(best[0] + INWARD * (m[0] - best[0]), best[1] + INWARD * (m[1] - best[1]));
  }

  private boolean holds(double u, double v) {
    for (int i = 0; i < corners.size(); i++) {
      double[] p = corners.get(i);
      double[] q = corners.get((i + 1) % corners.size());
      if ((q[0] - p[0]) * (v - p[1]) - (q[1] - p[1]) * (u - p[0]) < 0) {
        return false;
      }
    }
    return true;
  }

  private double[] centre() {
    double u = 0;
    double v = 0;
    for (double[] p : corners) {
      u += p[0] / corners.size();
      v += p[1] / corners.size();
    }
    return new double[] {u, v};
  }

  private Vec3 direction(double u, double v) {
    return frame.turn(new Vec3(1, u, v)).unit();
  }
}
