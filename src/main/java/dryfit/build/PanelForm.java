package dryfit.build;

import dryfit.document.PartPlan.Panel;
import dryfit.document.PartPlan.PanelShape.Drawn;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.Extrusion;
import java.util.ArrayList;
import java.util.List;

/** Boards with an outline drawn in a view. */
final class PanelForm {
  private PanelForm() {}

  static StandingShape drawn(Panel plan) {
    Drawn drawn = (Drawn) plan.shape();
    Vec3 at = StockMaker.vec(drawn.at());
    Vec3 u = drawn.view() == dryfit.document.PartPlan.View.SIDE ? Vec3.BACK : Vec3.RIGHT;
    Vec3 v = drawn.view() == dryfit.document.PartPlan.View.PLAN ? Vec3.BACK : Vec3.UP;
    List<Vec2> loop = OutlineCurves.loop(drawn.outline());
    LoopChecks.refuseCrossing(loop, plan.name(), plan.common().pointer());
    double half = plan.thickness() / 2;
    Box box = Box.around(loop.stream().map(p -> u.times(p.x()).plus(v.times(p.y()))).toList());
    // A board's thickness is across its face, its length along the longer side of the outline.
    boolean alongU = Math.abs(box.size().dot(u)) >= Math.abs(box.size().dot(v));
    Frame frame = Frame.of(at, alongU ? u : v, alongU ? v : u.negated());
    Frame page = Frame.of(Vec3.ZERO, frame.localDirection(u), frame.localDirection(v));
    List<Csg> cuts =
        new ArrayList<>(
            Boards.openings(
                plan.openings(),
                loop,
                -half - Shapes.SPARE,
                half + Shapes.SPARE,
                page,
                plan.name()));
    plan.raised()
        .ifPresent(
            r ->
                cuts.addAll(
                    Boards.bevels(
                        r,
                        Boards.raising(r, plan.thickness(), u.cross(v), 0, plan.name()),
                        loop,
                        page,
                        plan.name())));
    Csg shape = Extrusion.of(loop, -half, half, page, plan.common().pointer()).minus(cuts);
    double low = alongU ? box.low().dot(u) : box.low().dot(v);
    double high = alongU ? box.high().dot(u) : box.high().dot(v);
    return new StandingShape(frame, shape, low, high, at.plus(box.middle()));
  }
}
