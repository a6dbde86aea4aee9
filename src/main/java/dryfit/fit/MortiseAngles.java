package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.geometry.Lean;
import dryfit.geometry.Vec3;
import dryfit.measure.BenchAngle;
import dryfit.solid.Convex;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A mortise as the chisel or the bit has to go in, seen from the face it goes into.
 *
 * @param lean the whole angle between the way in and the square of the face
 * @param along its share along the length of the mortised part, as a view square to that shows it
 * @param across its share across that part
 * @param sight where to stand the one bevel that shows the whole angle
 * @param opening its outline on the face; none if nothing is cut
 * @param deepEdge depth of its deepest edge, square to the face, mm; none if it goes through
 */
public record MortiseAngles(
    BenchAngle lean,
    Share along,
    Share across,
    SightLine sight,
    Optional<Opening> opening,
    OptionalDouble deepEdge) {

  /**
   * One view of the lean.
   *
   * @param towards which way the tool's tip leads as it goes in
   */
  public record Share(BenchAngle angle, String towards) {}

  /**
   * The line on the face over which the tool leans.
   *
   * @param from what the first angle is measured from
   * @param angle from that line, radians, 0 to pi/2
   * @param otherFrom the line square to it
   * @param otherAngle from that one, radians; both make a right angle
   * @param towards which way the tool's tip leads along it
   */
  public record SightLine(
      String from, double angle, String otherFrom, double otherAngle, String towards) {}

  /**
   * The outline on the face.
   *
   * @param isRound whether it is that of a round hole
   * @param acrossCheeks size on the face from cheek to cheek, along the edge of the opening, mm;
   *     for a round hole the short axis
   * @param acrossEdges size from edge to edge, mm; for a round hole the long axis
   * @param corner how far its corners are off square: only a compound lean has any
   * @param firstCheek the cheek of the tenon that goes in sooner; empty if both go in together
   * @param cheekSooner by how much, along the tenon, mm
   * @param firstEdge the edge that goes in sooner
   * @param edgeSooner by how much, mm
   */
  public record Opening(
      boolean isRound,
      double acrossCheeks,
      double acrossEdges,
      BenchAngle corner,
      String firstCheek,
      double cheekSooner,
      String firstEdge,
      double edgeSooner) {}

  static MortiseAngles of(Chair chair, Joint joint) {
    Part part = chair.parts().get(joint.mortised());
    PartSides sides = PartSides.of(chair, part, joint.hand());
    Vec3 in = joint.mouth().normal().negated();
    Vec3 entry = joint.entry();
    Vec3 reference = reference(joint, part);
    Lean lean = Lean.of(entry, in, reference);
    Vec3 level = reference.across(in).unit();
    Vec3 beside = level.cross(in);
    return new MortiseAngles(
        BenchAngle.of(joint.lean()),
        share(sides, lean.rake(), level),
        share(sides, lean.splay(), beside),
        sight(sides, part, in, entry, level),
        opening(joint, sides),
        deepEdge(joint));
  }

  /**
   * The direction of the mortised part that the lean is measured along: its length, or its width
   * where the mortise is in its end.
   */
  static Vec3 reference(Joint joint, Part mortised) {
    Vec3 along = mortised.lengthNear(joint.at());
    return Math.abs(along.dot(joint.mouth().normal())) > 0.9 ? mortised.frame().y() : along;
  }

  private static Share share(PartSides sides, double angle, Vec3 positive) {
    BenchAngle size = BenchAngle.of(angle);
    Vec3 way = angle < 0 ? positive.negated() : positive;
    return new Share(size, size.isSquare() ? "" : sides.nearest(way));
  }

  /** In a face that lies, a seat for one, the lines are the chair's; elsewhere the part's own. */
  private static SightLine sight(PartSides sides, Part part, Vec3 in, Vec3 entry, Vec3 level) {
    boolean lies = Math.abs(in.z()) > 0.9;
    Lean lean = Lean.of(entry, in, lies ? Vec3.BACK : level);
    return new SightLine(
        lies ? "the fore-aft line" : "the length of " + part.name(),
        Math.abs(lean.sightLine()),
        lies ? "the side-to-side line" : "square across it",
        Math.abs(lean.sightLineFromSide()),
        BenchAngle.of(lean.resultant()).isSquare() ? "" : sides.compass(entry.across(in)));
  }

  private static Optional<Opening> opening(Joint joint, PartSides sides) {
    if (joint.mortise().isEmpty()) {
      return Optional.empty();
    }
    // The first cell is the mortise itself, those after it belong to its haunch.
    Convex hole = joint.mortise().get(0);
    double cheeks = size(hole, joint.thick());
    double edges = size(hole, joint.wide());
    Vec3 n = joint.mouth().normal();
    double square = Math.abs(joint.entry().dot(n));
    if (joint.plan().diameter().isPresent()) {
      double sooner = cheeks * Math.tan(joint.lean());
      String first =
          BenchAngle.of(joint.lean()).isSquare()
              ? ""
              : sides.compass(joint.entry().across(n).negated());
      return Optional.of(
          new Opening(true, cheeks, cheeks / square, new BenchAngle(0), "", 0, first, sooner));
    }
    Vec3 cheekLine = onFace(joint, joint.thick());
    Vec3 edgeLine = onFace(joint, joint.wide());
    double cheekSlope = joint.thick().dot(n) / square;
    double edgeSlope = joint.wide().dot(n) / square;
    return Optional.of(
        new Opening(
            false,
            cheeks * cheekLine.length(),
            edges * edgeLine.length(),
            BenchAngle.of(Math.PI / 2 - cheekLine.angleTo(edgeLine)),
            first(sides, joint.thick(), cheekSlope),
            cheeks * Math.abs(cheekSlope),
            first(sides, joint.wide(), edgeSlope),
            edges * Math.abs(edgeSlope)));
  }

  private static double size(Convex cell, Vec3 d) {
    return cell.reach(d) + cell.reach(d.negated());
  }

  /** A step across the tenon, followed along the entry down to the face. */
  private static Vec3 onFace(Joint joint, Vec3 step) {
    Vec3 n = joint.mouth().normal();
    return step.minus(joint.entry().times(step.dot(n) / joint.entry().dot(n)));
  }

  /** The side of the tenon that stands less far out of the face, and so goes in first. */
  private static String first(PartSides sides, Vec3 across, double slope) {
    if (BenchAngle.of(Math.atan(slope)).isSquare()) {
      return "";
    }
    return sides.nearest(slope > 0 ? across.negated() : across);
  }

  private static OptionalDouble deepEdge(Joint joint) {
    if (joint.through()) {
      return OptionalDouble.empty();
    }
    Vec3 in = joint.mouth().normal().negated();
    return joint.mortise().stream().mapToDouble(c -> c.reach(in) + joint.mouth().offset()).max();
  }
}
