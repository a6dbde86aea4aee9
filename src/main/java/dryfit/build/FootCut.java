package dryfit.build;

import dryfit.document.PartCuts.Foot;
import dryfit.document.PartPlan;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts the lower end of a part parallel to the floor, and chamfers the edge of the foot: at 45
 * degrees to the floor, from so far inside the edge to so far above the floor.
 */
final class FootCut {
  private FootCut() {}

  /**
   * How far a tool goes past its side, in chamfers: a part that leans at 45 degrees is one further
   * out at the floor than where the chamfer ends.
   */
  private static final double PAST = 1.5;

  /** The cut in chair space; outside is below. */
  static Plane plane(Foot foot) {
    return new Plane(Vec3.UP.negated(), -foot.z());
  }

  /**
   * A shape that reaches below the foot, without what is below it.
   *
   * @param shape own frame
   */
  static Csg of(Csg shape, Foot foot, Frame frame, PartPlan plan) {
    String origin = plan.common().pointer();
    Plane floor = frame.local(plane(foot));
    List<Convex> cells = Cells.of(shape);
    double below = cells.stream().mapToDouble(c -> c.reach(floor.normal())).max().orElse(0);
    if (below < floor.offset() - Tolerances.coincident()) {
      throw Refusal.of(
          "no-foot",
          foot.pointer(),
          plan.name() + " ends above the floor its foot should be cut to",
          "let it reach down to the foot");
    }
    Csg cut = Shapes.trimmed(shape, floor, origin);
    return foot.ease() == 0 ? cut : cut.minus(chamfer(cells, foot, frame, plan));
  }

  /**
   * One tool for each side of the foot's outline at the top of the chamfer, no longer than the side
   * needs: on a round foot each of fifty would cross all others.
   */
  private static List<Csg> chamfer(List<Convex> cells, Foot foot, Frame frame, PartPlan plan) {
    double top = foot.z() + foot.ease();
    List<Vec3> section =
        Slice.points(cells.stream().map(c -> c.placed(frame)).toList(), new Plane(Vec3.UP, top));
    List<double[]> hull =
        FlatHull.of(section.stream().map(p -> new double[] {p.x(), p.y()}).toList());
    Box around = Box.around(section);
    if (Math.min(around.size().x(), around.size().y()) <= 2 * foot.ease()) {
      throw Refusal.of(
          "out-of-range",
          foot.pointer() + "/ease",
          "a chamfer so wide leaves nothing of the foot of " + plan.name() + " to stand on",
          "ease it less");
    }
    Box wide = around.grown(2 * foot.ease());
    Convex slab =
        Convex.box(
            new Box(
                new Vec3(wide.low().x(), wide.low().y(), foot.z() - foot.ease() / 2),
                new Vec3(wide.high().x(), wide.high().y(), top)));
    List<Csg> tools = new ArrayList<>();
    for (int i = 0; i < hull.size(); i++) {
      double[] a = hull.get(i);
      double[] b = hull.get((i + 1) % hull.size());
      Vec2 d = new Vec2(b[0] - a[0], b[1] - a[1]);
      Vec3 outDown = new Vec3(d.y() / d.length(), -d.x() / d.length(), -1);
      Plane side = Plane.through(new Vec3(a[0], a[1], top), outDown);
      Vec3 along = new Vec3(d.x() / d.length(), d.y() / d.length(), 0);
      double past = PAST * foot.ease();
      Plane from = Plane.through(new Vec3(a[0], a[1], top), along.negated()).moved(past);
      Plane to = Plane.through(new Vec3(b[0], b[1], top), along).moved(past);
      slab.clipped(side.flipped())
          .flatMap(c -> c.clipped(from))
          .flatMap(c -> c.clipped(to))
          .map(c -> c.localTo(frame).asLeaf(plan.common().pointer()))
          .ifPresent(tools::add);
    }
    return tools;
  }
}
