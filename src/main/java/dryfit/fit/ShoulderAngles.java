package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.geometry.Box;
import dryfit.geometry.EndCut;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.BenchAngle;
import dryfit.measure.Tolerances;
import java.util.List;
import java.util.Optional;

/**
 * The shoulder of a joint as it is set out on the tenoned part; on a bent one from the faces as
 * they run at that end, not along its chord.
 *
 * @param offSquare the whole angle between the shoulder and a square one
 * @param longest the corner, edge or side at which the part is longest; empty where it is square
 * @param wide the line on its two wider faces; none on a round part
 * @param narrow the line on the two others; none on a round part
 * @param saw the saw's setting with the stock flat on a wider face; none on a round part, nor on a
 *     bent one, which lies steady neither on the table nor along the fence
 */
public record ShoulderAngles(
    BenchAngle offSquare,
    String longest,
    Optional<KnifeLine> wide,
    Optional<KnifeLine> narrow,
    Optional<SawSet> saw) {

  /** Words that a maker would rather have facing up, the first that the stock has. */
  private static final List<String> UP = List.of("outside", "front", "top", "right");

  static ShoulderAngles of(Chair chair, Joint joint) {
    Part part = chair.parts().get(joint.tenoned());
    PartSides sides = PartSides.of(chair, part, joint.hand(), part.frameNear(joint.at()));
    return of(sides, part, joint.mouth().flipped(), joint.at(), joint.atStart());
  }

  /**
   * A foot or another end that is cut flat, set out as a shoulder is.
   *
   * @param cut its plane in chair space, the normal pointing out of the wood that is kept
   * @param at a place on it, on the part's middle line
   * @param atStart whether it is the start of the part
   */
  public static ShoulderAngles ofEnd(Chair chair, Part part, Plane cut, Vec3 at, boolean atStart) {
    return of(PartSides.of(chair, part), part, cut, at, atStart);
  }

  private static ShoulderAngles of(
      PartSides sides, Part part, Plane plane, Vec3 at, boolean atStart) {
    Frame f = part.frameNear(at);
    EndCut cut = EndCut.of(plane, f);
    Vec3 longY = cut.longerPerWidth() < 0 ? f.y().negated() : f.y();
    Vec3 longZ = cut.longerPerThickness() < 0 ? f.z().negated() : f.z();
    BenchAngle off = BenchAngle.of(cut.offSquare());
    if (part.isRound()) {
      Vec3 out = atStart ? f.x().negated() : f.x();
      Vec3 longSide = plane.normal().negated().across(out);
      return new ShoulderAngles(
          off,
          off.isSquare() ? "" : sides.compass(longSide),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }
    Box section = EndSection.of(part, plane, at, atStart);
    double width = section.size().y();
    double thickness = section.size().z();
    KnifeLine acrossWidth = line(sides, f.z(), longY, BenchAngle.of(cut.onWideFace()), width);
    KnifeLine through = line(sides, f.y(), longZ, BenchAngle.of(cut.onNarrowFace()), thickness);
    // A part laid flat in the chair, an arm, is written with its greater size as the thickness.
    boolean flat = thickness > width + Tolerances.contact();
    Vec3 away = atStart ? f.x().negated() : f.x();
    SawSet saw =
        flat
            ? saw(sides, cut.onEdge(), away, f.y(), longZ, longY)
            : saw(sides, cut.flat(), away, f.z(), longY, longZ);
    KnifeLine wide = flat ? through : acrossWidth;
    KnifeLine narrow = flat ? acrossWidth : through;
    return new ShoulderAngles(
        off,
        longest(acrossWidth, through),
        Optional.of(wide),
        Optional.of(narrow),
        part.bend().isPresent() ? Optional.empty() : Optional.of(saw));
  }

  private static KnifeLine line(
      PartSides sides, Vec3 face, Vec3 longEdge, BenchAngle angle, double size) {
    String one = sides.nearest(face);
    String other = sides.nearest(face.negated());
    boolean swap = UP.contains(other);
    return new KnifeLine(
        swap ? other : one,
        swap ? one : other,
        sides.nearest(longEdge),
        sides.nearest(longEdge.negated()),
        angle,
        angle.over(size));
  }

  private static String longest(KnifeLine wide, KnifeLine narrow) {
    if (wide.angle().isSquare()) {
      return narrow.angle().isSquare() ? "" : narrow.longEdge();
    }
    return narrow.angle().isSquare() ? wide.longEdge() : wide.longEdge() + " " + narrow.longEdge();
  }

  private static SawSet saw(
      PartSides sides, EndCut.SawSetting set, Vec3 away, Vec3 face, Vec3 longEdge, Vec3 longFace) {
    Vec3 up = UP.contains(sides.nearest(face)) ? face : face.negated();
    // Looking down on the stock with its end pointing away, this is the right-hand side.
    Vec3 right = away.cross(up);
    return new SawSet(
        sides.nearest(up),
        BenchAngle.of(set.mitre()),
        BenchAngle.of(set.tilt()),
        longEdge.dot(right) > 0,
        longFace.dot(up) > 0);
  }
}
