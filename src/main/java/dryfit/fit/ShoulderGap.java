package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.Shoulder;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.JointFit.Gap;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

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
  private static final int PLACES = 7;

  static Gap of(Joint joint, Placed tenoned, Placed mortised) {
    boolean none = joint.plan().kind() == Kind.HOUSING || joint.plan().shoulder() == Shoulder.NONE;
    if (none) {
      return Gap.NONE;
    }
    Frame f = tenoned.part().frameNear(joint.at());
    Vec3 out = joint.atStart() ? f.x().negated() : f.x();
    Box section = section(joint, tenoned, out, f);
    List<Double> found = new ArrayList<>();
    for (int i = 0; i < PLACES; i++) {
      for (int k = 0; k < PLACES; k++) {
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
    return Gaps.gap(found);
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
      cell.clipped(behind)
          .flatMap(c -> c.clipped(behind.flipped().moved(0.5)))
          .filter(c -> !isElsewhere(c, joint, tenoned))
          .ifPresent(c -> c.points().forEach(p -> corners.add(f.local(p))));
    }
    if (corners.isEmpty()) {
      Vec3 at = f.local(joint.at());
      return new Box(at, at);
    }
    return Box.around(corners);
  }

  /** Another stretch of a bent part that happens to be level with this end. */
  private static boolean isElsewhere(Convex cell, Joint joint, Placed tenoned) {
    Part.Blank blank = tenoned.part().blank();
    double near = Math.hypot(blank.width(), blank.thickness()) + 3 * BEHIND;
    return tenoned.part().bend().isPresent() && cell.middle().distance(joint.at()) > near;
  }

  private static void measure(
      Joint joint, Placed tenoned, Placed mortised, Vec3 onMouth, Vec3 out, List<Double> found) {
    Vec3 justInside = onMouth.plus(joint.entry().times(0.2));
    boolean overTheMortise =
        joint.mortise().stream().anyMatch(c -> c.contains(justInside) || c.contains(onMouth));
    Vec3 from = onMouth.minus(out.times(BEHIND));
    if (overTheMortise || !tenoned.rays().inside(from) || mortised.rays().inside(from)) {
      return;
    }
    double shoulder = tenoned.rays().hits(from, out).get(0).distance();
    List<Rays.Hit> face = mortised.rays().hits(from, out);
    boolean isTenon = shoulder > BEHIND + FAR;
    if (face.isEmpty() || face.get(0).distance() - shoulder > FAR || isTenon) {
      return;
    }
    found.add(face.get(0).distance() - shoulder);
  }
}
