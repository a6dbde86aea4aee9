package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.document.PartPlan;
import dryfit.geometry.AngledTenon;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.Optional;

/**
 * What it costs that a part does not meet the other one square. Either the mortise leans and the
 * tenon stays straight in its part, or the mortise is square and the tenon slants in its part; the
 * maker chooses, and each answer has its price. A lean is taken whole, whichever way it goes; what
 * a slant costs is seen square to the cheeks. Millimetres, radians.
 *
 * @param leaningMortise which of the two answers this joint is
 * @param angle between the tenon and its part, or between the mortise and the square to the face
 * @param shift how far the tip of a leaning tenon is aside of where a square one would be, length
 *     times the sine; how far the cheeks of a slanting one are out at the tip against its fibres,
 *     length times the tangent
 * @param wholeFibres share of the tenon's thickness whose fibres run whole from shoulder to tip
 * @param stockNeeded the thinnest part that holds the whole tenon
 * @param stockThere how thick the part is
 * @param squareEntry the longest tenon that would still go in square to the face with the
 *     clearances at cheeks and edges: one of a leaning mortise that is longer can only come in
 *     along its own part; of a square mortise the tenon as it is
 * @param order what follows for the order of assembly
 * @param firstFrames the frames that {@code order} speaks of; empty where it speaks of none
 */
public record Slant(
    boolean leaningMortise,
    double angle,
    double shift,
    double wholeFibres,
    double stockNeeded,
    double stockThere,
    double squareEntry,
    Order order,
    String firstFrames) {

  /** What an angled joint asks of the order, as far as its own part and its twin go. */
  public enum Order {
    /** It goes in square to the face as well: nothing follows. */
    ANY,
    /** It can only come in along its part, which what takes it can always do alone. */
    ALONG,
    /**
     * The twins come in along two lines, so that nothing can take both at once: each is one frame
     * with the two parts it joins, and these come first.
     */
    FRAMES_FIRST,
    /** The twins come in along two lines here, and square to the face at their other ends. */
    THIS_END_FIRST,
    /** The same, told at the end where the mortise is square. */
    OTHER_END_FIRST,
    /** Square mortises take both twins at once: the frames at their ends may come first. */
    FRAMES_MAY
  }

  /** Less than this is a tool's own play, radians. */
  private static final double PLAY = Math.toRadians(0.05);

  /** Longer than any tenon, mm. */
  private static final double ENDLESS = 1000;

  /** No tenon can be cut from its part at more than this, radians. */
  private static final double MOST = Math.toRadians(80);

  /** Nothing for a joint that is square both ways, or of a kind that has no such choice. */
  public static Optional<Slant> of(Chair chair, Joint joint) {
    boolean chooses =
        switch (joint.plan().kind()) {
          case MORTISE_AND_TENON, BRIDLE -> true;
          default -> false;
        };
    if (!chooses) {
      return Optional.empty();
    }
    Part part = chair.parts().get(joint.tenoned());
    Vec3 out = out(part, joint);
    double slant = aside(out, joint.entry(), joint.thick());
    double lean = lean(joint);
    if (slant <= PLAY && lean <= PLAY || slant >= MOST) {
      return Optional.empty();
    }
    boolean leaning = lean > slant;
    double thickness = joint.plan().thickness().orElseThrow();
    AngledTenon tenon = new AngledTenon(thickness, joint.length(), leaning ? 0 : slant);
    double squareEntry =
        leaning ? longest(joint, joint.mouth().normal().negated()) : joint.length();
    Order order = order(chair, joint, leaning);
    return Optional.of(
        new Slant(
            leaning,
            leaning ? lean : slant,
            joint.length() * (leaning ? Math.sin(lean) : Math.tan(slant)),
            tenon.wholeFibres(),
            tenon.leastRail(),
            thickness(part),
            squareEntry,
            order,
            order == Order.FRAMES_FIRST || order == Order.FRAMES_MAY ? first(out, leaning) : ""));
  }

  private static Vec3 out(Part part, Joint joint) {
    Vec3 length = part.lengthNear(joint.at());
    return joint.atStart() ? length.negated() : length;
  }

  /** The whole lean of a mortise; that of a bridle is open along its edges and has one way only. */
  private static double lean(Joint joint) {
    return joint.plan().kind() == JointPlan.Kind.BRIDLE
        ? aside(joint.mouth().normal().negated(), joint.entry(), joint.thick())
        : joint.lean();
  }

  /**
   * The longest tenon that goes into its mortise along another line than the mortise itself: it
   * strays until the clearance of both cheeks, or of both edges, is used up.
   */
  private static double longest(Joint joint, Vec3 line) {
    double cheek = Math.max(0, joint.plan().fit().cheek());
    double edge =
        joint.plan().kind() == JointPlan.Kind.BRIDLE
            ? Double.POSITIVE_INFINITY
            : Math.max(0, joint.plan().fit().edge());
    double ahead = Math.abs(line.dot(joint.entry()));
    return Math.min(
        reach(2 * cheek, Math.abs(line.dot(joint.thick())) / ahead),
        reach(2 * edge, Math.abs(line.dot(joint.wide())) / ahead));
  }

  private static double reach(double room, double strays) {
    // A line that does not stray reaches as far as it likes; no tenon is as long as this.
    return strays <= Tolerances.parallel() || room / strays > ENDLESS ? ENDLESS : room / strays;
  }

  private static Order order(Chair chair, Joint joint, boolean leaning) {
    Optional<Joint> other =
        chair.joints().stream()
            .filter(j -> j.tenoned() == joint.tenoned() && j.atStart() != joint.atStart())
            .filter(j -> j.plan().tenon().end() != JointPlan.End.MIDDLE)
            .findFirst();
    boolean otherForces = other.filter(j -> forces(chair, j)).isPresent();
    if (!leaning) {
      return otherForces ? Order.OTHER_END_FIRST : Order.FRAMES_MAY;
    }
    if (!forces(chair, joint)) {
      return joint.length() > longest(joint, joint.mouth().normal().negated())
          ? Order.ALONG
          : Order.ANY;
    }
    return other.isEmpty() || otherForces ? Order.FRAMES_FIRST : Order.THIS_END_FIRST;
  }

  /**
   * Whether this joint and that of its twin cannot be closed in one move: of a mirrored pair that
   * move would be along neither, but straight between the two.
   */
  private static boolean forces(Chair chair, Joint joint) {
    boolean pair = chair.parts().get(joint.tenoned()).hand() != Hand.NONE;
    Vec3 between = new Vec3(0, joint.entry().y(), joint.entry().z());
    boolean square = joint.length() <= longest(joint, joint.mouth().normal().negated());
    return pair
        && !square
        && between.length() > Tolerances.parallel()
        && lean(joint) > PLAY
        && joint.length() > longest(joint, between);
  }

  /** How thick the part is without its tenons, which may stand out of it. */
  private static double thickness(Part part) {
    if (part.plan() instanceof PartPlan.Straight straight) {
      return straight.section() instanceof PartPlan.Section.Rectangle r
          ? r.thickness()
          : ((PartPlan.Section.Round) straight.section()).diameter();
    }
    return part.blank().thickness();
  }

  /** How far {@code line} stands off {@code entry}, seen square to the cheeks. */
  private static double aside(Vec3 line, Vec3 entry, Vec3 thick) {
    return Math.abs(Math.atan2(line.dot(thick), line.dot(entry)));
  }

  /**
   * A straight tenon comes into its leaning mortise along its own part, so that part and the two it
   * joins are one frame and come first; tenons of square mortises come in all one way, so that the
   * frames at the two ends may come first.
   */
  private static String first(Vec3 out, boolean leaning) {
    if (Math.abs(out.z()) > 0.8) {
      return leaning ? "this part and what it joins" : "the frames above and below it";
    }
    boolean frontToBack = Math.abs(out.y()) > Math.abs(out.x());
    return frontToBack == leaning ? "side frames" : "front and back frames";
  }
}
