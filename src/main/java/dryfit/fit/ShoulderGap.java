package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.Shoulder;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.JointDetail.SideGap;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The gap between a shoulder and the face it should sit on, at a grid of places over the section of
 * the part around its tenon, measured along the part. Places that hang over the edge of the face
 * have nothing to sit on and do not count.
 */
final class ShoulderGap {
  private ShoulderGap() {}

  /** How far behind the mouth a look starts, and how far beyond it still counts, mm. */
  private static final double BEHIND = 3;

  private static final double FAR = 25;

  /**
   * A look that leaves the part through a face more than about 73 degrees off its way leaves it at
   * the side, as where a turned part is thinner at its shoulder than behind it; one that comes to
   * such a face has missed the one that the shoulder sits on.
   */
  private static final double SIDE = 0.3;

  private static final Set<Kind> HAVE_SHOULDERS =
      EnumSet.of(
          Kind.MORTISE_AND_TENON, Kind.ROUND_TENON, Kind.LOOSE_TENON, Kind.DOWELS, Kind.BRIDLE);

  private static final int PLACES = 7;

  /** Gaps this alike need no closer look, mm: below what is printed. */
  private static final double EVEN = 0.005;

  /** A gap and the place on the mouth where it was measured. */
  record Sample(double gap, Vec3 at) {}

  /** The least and greatest gap, and where. */
  static Optional<SideGap> side(Joint joint, List<Sample> samples, JointWords words) {
    GapField.Extremes extremes = new GapField.Extremes();
    samples.forEach(s -> extremes.add(s.gap(), s.at()));
    return extremes.spots("shoulder", place -> words.where(place, false, true, true));
  }

  /** A few places; many where these do not agree. */
  static List<Sample> samples(Joint joint, Placed tenoned, Placed mortised) {
    if (!HAVE_SHOULDERS.contains(joint.plan().kind())
        || joint.plan().shoulder() == Shoulder.NONE
        || tenoned.part().isPiece()) {
      return List.of();
    }
    Frame f = tenoned.part().frameNear(joint.at());
    Vec3 out = joint.atStart() ? f.x().negated() : f.x();
    Box section = section(joint, tenoned, out, f);
    List<Sample> found = new ArrayList<>();
    look(joint, tenoned, mortised, section, PLACES / 2, found);
    double least = found.stream().mapToDouble(Sample::gap).min().orElse(0);
    double greatest = found.stream().mapToDouble(Sample::gap).max().orElse(0);
    if (found.size() < 4 || greatest - least > EVEN) {
      found.clear();
      look(joint, tenoned, mortised, section, 1, found);
    }
    return found;
  }

  private static void look(
      Joint joint, Placed tenoned, Placed mortised, Box section, int step, List<Sample> found) {
    Frame f = tenoned.part().frameNear(joint.at());
    Vec3 out = joint.atStart() ? f.x().negated() : f.x();
    for (int i = 0; i < PLACES; i += step) {
      for (int k = 0; k < PLACES; k += step) {
        Vec3 local =
            new Vec3(
                0,
                between(section.low().y(), section.high().y(), i),
                between(section.low().z(), section.high().z(), k));
        Vec3 line = f.place(local);
        Vec3 onMouth = line.plus(out.times(joint.mouth().along(line, out)));
        measure(joint, tenoned, mortised, onMouth, out, found);
      }
    }
  }

  private static double between(double low, double high, int i) {
    double inset = Math.min(0.5, (high - low) / 10);
    return low + inset + (high - low - 2 * inset) * i / (PLACES - 1);
  }

  /** The extent of the part's section a little behind the mouth, in its own frame. */
  private static Box section(Joint joint, Placed tenoned, Vec3 out, Frame f) {
    dryfit.geometry.Plane behind =
        dryfit.geometry.Plane.through(joint.at().minus(out.times(BEHIND * 3)), out);
    List<Vec3> corners = new ArrayList<>();
    for (Convex cell : tenoned.bodyCells()) {
      cell.clipped(behind).flatMap(c -> c.clipped(behind.flipped().moved(0.5))).stream()
          .flatMap(c -> c.points().stream())
          .filter(p -> !EndSection.isElsewhere(tenoned.part(), p, joint.at()))
          .forEach(p -> corners.add(f.local(p)));
    }
    if (corners.isEmpty()) {
      Vec3 at = f.local(joint.at());
      return new Box(at, at);
    }
    return Box.around(corners);
  }

  private static void measure(
      Joint joint, Placed tenoned, Placed mortised, Vec3 onMouth, Vec3 out, List<Sample> found) {
    Vec3 justInside = onMouth.plus(joint.entry().times(0.2));
    boolean overTheMortise =
        joint.mortise().stream().anyMatch(c -> c.contains(justInside) || c.contains(onMouth));
    Vec3 from = onMouth.minus(out.times(BEHIND));
    if (overTheMortise) {
      return;
    }
    Rays.Hit own = tenoned.rays().first(from, out).orElse(null);
    if (own == null || own.entering() || tenoned.mesh().normal(own.face()).dot(out) < SIDE) {
      return;
    }
    Rays.Hit face = mortised.rays().first(from, out).orElse(null);
    boolean isTenon = own.distance() > BEHIND + FAR;
    if (face == null || !face.entering() || isTenon || face.distance() - own.distance() > FAR) {
      return;
    }
    if (mortised.mesh().normal(face.face()).dot(out) > -SIDE) {
      // It has passed over the edge of the face, onto an end or a side that falls away.
      return;
    }
    found.add(new Sample(face.distance() - own.distance(), onMouth));
  }
}
