package dryfit.build;

import dryfit.document.PartPlan.Section;
import dryfit.document.PartPlan.Straight;
import dryfit.document.PartPlan.Taper;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.List;

/** Straight members, rectangular or round, with tapers. */
final class StraightForm {
  private StraightForm() {}

  /** The shape in its own frame, from x = 0 to the line's length, ends left longer as told. */
  static Csg shape(
      Straight plan, Frame frame, StockMaker.Line line, double longAtStart, double longAtEnd) {
    String origin = plan.common().pointer();
    double x0 = -longAtStart;
    double x1 = line.length() + longAtEnd;
    if (plan.section() instanceof Section.Round round) {
      return TurnedForm.cylinder(round.diameter() / 2, x0, x1, origin);
    }
    double w = StockMaker.width(plan.section()) / 2;
    double t = StockMaker.thickness(plan.section()) / 2;
    Convex box = Convex.box(new Box(new Vec3(x0, -w, -t), new Vec3(x1, w, t)));
    List<Csg> cuts = new ArrayList<>();
    for (Taper taper : plan.tapers()) {
      for (String face : taper.faces()) {
        Vec3 out = FaceNames.direction(face, frame, line, taper.pointer() + "/faces");
        double half = out.y() != 0 ? w : t;
        boolean both = taper.faces().stream().anyMatch(f -> isOpposite(f, out, frame, line, taper));
        double off = (2 * half - taper.leaves()) / (both ? 2 : 1);
        if (off < 0) {
          throw Refusal.of(
              "out-of-range",
              taper.pointer() + "/leaves",
              "a taper of " + plan.name() + " leaves more than there is",
              "leave less than the section has");
        }
        Vec3 full = new Vec3(taper.from(), 0, 0).plus(out.times(half));
        Vec3 low = new Vec3(taper.to(), 0, 0).plus(out.times(half - off));
        boolean runsOut =
            taper.to() <= Tolerances.coincident()
                || taper.to() >= line.length() - Tolerances.coincident();
        if (runsOut) {
          Vec3 slope = low.minus(full);
          Vec3 side = Vec3.RIGHT.cross(out);
          Vec3 normal = slope.cross(side);
          Plane plane = Plane.through(full, normal.dot(out) < 0 ? normal.negated() : normal);
          box = box.clipped(plane).orElseThrow();
        } else {
          cuts.add(wedge(full, low, out, taper, x0, x1).asLeaf(origin));
        }
      }
    }
    return box.asLeaf(origin).minus(cuts);
  }

  private static boolean isOpposite(
      String face, Vec3 out, Frame frame, StockMaker.Line line, Taper taper) {
    return FaceNames.direction(face, frame, line, taper.pointer() + "/faces").dot(out) < -0.5;
  }

  /** What a taper that stops short takes off: down the slope, then level to the end of the part. */
  private static Convex wedge(Vec3 full, Vec3 low, Vec3 out, Taper taper, double x0, double x1) {
    double end = taper.to() > taper.from() ? x1 + Shapes.SPARE : x0 - Shapes.SPARE;
    double high = full.dot(out) + Shapes.SPARE;
    Vec3 side = Vec3.RIGHT.cross(out);
    List<Vec3> loop =
        List.of(
            full,
            low,
            new Vec3(end, 0, 0).plus(out.times(low.dot(out))),
            new Vec3(end, 0, 0).plus(out.times(high)),
            new Vec3(full.x(), 0, 0).plus(out.times(high)));
    double wide = 1000;
    List<Vec3> shifted = loop.stream().map(p -> p.plus(side.times(-wide / 2))).toList();
    return Convex.prism(shifted, side.times(wide));
  }
}
