package dryfit.shop;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.shop.Step.Kind;
import java.util.List;

/**
 * How a mortise is cut, by which flat faces there are. A mortise is cut while its face is flat:
 * from a face of the blank that stays a face of the part; or, if it goes in square to a face that
 * is sawn away later, from that face and so much deeper. Otherwise it is cut on the finished face,
 * and the part has to be held: on a flat face at its back if one is left, in its own offcuts, or in
 * a cradle if it is round.
 */
final class MortiseSteps {
  private MortiseSteps() {}

  /** Faces that differ by no more than this are one to a maker, mm. */
  private static final double SAME = 0.02;

  /** An entry nearer to square than this is square to a maker: a tenth of a degree. */
  private static final double SQUARE = Math.toRadians(0.1);

  private static final List<Vec3> SIDES =
      List.of(new Vec3(0, 1, 0), new Vec3(0, -1, 0), new Vec3(0, 0, 1), new Vec3(0, 0, -1));

  static Step of(Joint joint, Part part) {
    Vec3 n = part.frame().localDirection(joint.mouth().normal());
    Vec3 entry = part.frame().localDirection(joint.entry());
    Vec3 at = part.frame().local(joint.at());
    Vec3 face = looking(n);
    double toMouth = reach(part.blank().net(), face) - at.dot(face);
    double lean = entry.angleTo(face.negated());
    double deep = depth(joint);
    String word = word(part, face);
    boolean stays = n.angleTo(face) <= SQUARE && toMouth <= SAME;
    if (stays && !isRound(part)) {
      return new Step(Kind.MORTISE, joint.label(), word, List.of(deep), square(lean));
    }
    if (lean <= SQUARE) {
      return new Step(
          Kind.MORTISE_BEFORE_SAWING,
          joint.label(),
          word,
          List.of(toMouth + deep, Math.max(0, toMouth)),
          0);
    }
    List<Double> sizes = List.of(deep);
    if (isRound(part)) {
      return new Step(Kind.MORTISE_IN_A_CRADLE, joint.label(), "", sizes, joint.lean());
    }
    Vec3 back = face.negated();
    return stands(part, back)
        ? new Step(Kind.MORTISE_LYING_FLAT, joint.label(), word(part, back), sizes, joint.lean())
        : new Step(Kind.MORTISE_IN_OFFCUTS, joint.label(), "", sizes, joint.lean());
  }

  private static double square(double angle) {
    return angle <= SQUARE ? 0 : angle;
  }

  private static double depth(Joint joint) {
    return joint.plan().through()
        ? joint.length() - joint.plan().proud()
        : joint.length() + joint.plan().fit().bottom();
  }

  /** Whether a face of the blank is still one of the part, at both of its ends. */
  static boolean stands(Part part, Vec3 face) {
    Box net = part.blank().net();
    double most = reach(net, face);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (var cell : part.bodyCells()) {
      for (Vec3 p : cell.points()) {
        if (p.dot(face) >= most - SAME) {
          low = Math.min(low, p.x());
          high = Math.max(high, p.x());
        }
      }
    }
    // Half its length is enough to lie steady on.
    return high - low >= net.size().x() / 2;
  }

  private static Vec3 looking(Vec3 n) {
    Vec3 best = SIDES.get(0);
    for (Vec3 side : SIDES) {
      best = n.dot(side) > n.dot(best) ? side : best;
    }
    return best;
  }

  private static double reach(Box box, Vec3 out) {
    return Math.max(box.low().dot(out), box.high().dot(out));
  }

  static boolean isRound(Part part) {
    return part.plan() instanceof PartPlan.Turned
        || part.plan() instanceof PartPlan.Straight straight
            && straight.section() instanceof PartPlan.Section.Round;
  }

  /** The way a face of the blank looks in the chair. */
  static String word(Part part, Vec3 face) {
    Vec3 d = part.frame().turn(face);
    double x = Math.abs(d.x());
    double y = Math.abs(d.y());
    double z = Math.abs(d.z());
    if (z >= x && z >= y) {
      return d.z() > 0 ? "top" : "bottom";
    }
    if (y >= x) {
      return d.y() > 0 ? "back" : "front";
    }
    double side = part.frame().place(part.blank().net().middle()).x();
    if (Math.abs(side) < 1) {
      return d.x() > 0 ? "right" : "left";
    }
    return d.x() > 0 == side > 0 ? "outside" : "inside";
  }
}
