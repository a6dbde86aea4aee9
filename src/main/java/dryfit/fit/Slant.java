package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.geometry.AngledTenon;
import dryfit.geometry.Vec3;
import java.util.Optional;

/**
 * What it costs that a part does not meet the other one square. Either the mortise leans and the
 * tenon stays straight in its part, or the mortise is square and the tenon slants in its part; the
 * maker chooses, and each answer has its price. Seen square to the cheeks. Millimetres, radians.
 *
 * @param leaningMortise which of the two answers this joint is
 * @param angle between the tenon and its part, or between the mortise and the square to the face
 * @param shift how far the cheeks are out at the tip: length times the tangent of the angle
 * @param wholeFibres share of the tenon's thickness whose fibres run whole from shoulder to tip
 * @param stockNeeded the thinnest part that holds the whole tenon
 * @param stockThere how thick the part is
 * @param squareEntry the longest tenon that would still go in square to the face with this
 *     clearance: one of a leaning mortise that is longer can only come in along its own part
 * @param firstFrames which frames have to be put together first
 */
public record Slant(
    boolean leaningMortise,
    double angle,
    double shift,
    double wholeFibres,
    double stockNeeded,
    double stockThere,
    double squareEntry,
    String firstFrames) {

  /** Less than this is a tool's own play, radians. */
  private static final double PLAY = Math.toRadians(0.05);

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
    Vec3 length = part.lengthNear(joint.at());
    Vec3 out = joint.atStart() ? length.negated() : length;
    double slant = aside(out, joint.entry(), joint.thick());
    double lean = aside(joint.mouth().normal().negated(), joint.entry(), joint.thick());
    if (slant <= PLAY && lean <= PLAY || slant >= MOST) {
      return Optional.empty();
    }
    boolean leaning = lean > slant;
    double angle = leaning ? lean : slant;
    double thickness = joint.plan().thickness().orElseThrow();
    AngledTenon tenon = new AngledTenon(thickness, joint.length(), leaning ? 0 : slant);
    return Optional.of(
        new Slant(
            leaning,
            angle,
            joint.length() * Math.tan(angle),
            tenon.wholeFibres(),
            tenon.leastRail(),
            thickness(part),
            2 * Math.max(0, joint.plan().fit().cheek()) / Math.tan(angle),
            first(out, leaning)));
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
   * joins are one frame and come first; tenons of square mortises come in all one way, so the
   * frames at the two ends come first.
   */
  private static String first(Vec3 out, boolean leaning) {
    if (Math.abs(out.z()) > 0.8) {
      return leaning ? "this part and what it joins" : "the frames above and below it";
    }
    boolean frontToBack = Math.abs(out.y()) > Math.abs(out.x());
    return frontToBack == leaning ? "side frames" : "front and back frames";
  }
}
