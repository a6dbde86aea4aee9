package dryfit.fit.spread;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.loop.Cause;
import dryfit.fit.loop.Cause.Effect;
import dryfit.geometry.Vec3;

/**
 * How far a tenon can turn in its mortise. A mortise or a shoulder that is out by no more gapes at
 * its own shoulder only: the tenon takes up the angle, and the rest of the frame never learns of
 * it. What is beyond turns the part, and opens shoulders at the other end of the frame.
 *
 * <p>A tenon turned about its middle moves its tip and its root by half of its length, and each may
 * move by the gap at a cheek or an edge: it turns by twice the gap over its length, either way.
 */
final class Play {
  private Play() {}

  /** Which share of an angle's accuracy is beyond the play of its own joint, 0 to 1. */
  static double beyond(Chair chair, Cause cause, double accuracy) {
    if (!cause.angle() || !(accuracy > 0)) {
      return 1;
    }
    double least = Double.POSITIVE_INFINITY;
    for (Effect e : cause.effects()) {
      least = Math.min(least, of(chair.joints().get(e.joint()), e.each().turn().unit()));
    }
    return Math.max(0, 1 - least / accuracy);
  }

  /** How far what goes in can turn about an axis, either way, radians; nothing if it is tight. */
  private static double of(Joint joint, Vec3 axis) {
    Kind kind = joint.plan().kind();
    boolean tenon = kind == Kind.MORTISE_AND_TENON || kind == Kind.ROUND_TENON;
    if (!tenon || !(joint.length() > 0)) {
      return 0;
    }
    double cheek = Math.max(0, joint.plan().fit().cheek());
    boolean round = joint.plan().diameter().isPresent();
    double edge = round ? cheek : Math.max(0, joint.plan().fit().edge());
    double atCheeks = 2 * cheek / joint.length() / Math.abs(axis.dot(joint.wide()));
    double atEdges = 2 * edge / joint.length() / Math.abs(axis.dot(joint.thick()));
    double least = Math.min(number(atCheeks), number(atEdges));
    return Double.isFinite(least) ? least : 0;
  }

  /** No gap over no turn is no bound. */
  private static double number(double bound) {
    return Double.isNaN(bound) ? Double.POSITIVE_INFINITY : bound;
  }
}
