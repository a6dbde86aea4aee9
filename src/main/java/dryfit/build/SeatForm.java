package dryfit.build;

import dryfit.document.PartPlan.Hollow;
import dryfit.document.PartPlan.Seat;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.Extrusion;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Seat boards: an outline with a thickness, level or sloping, hollowed or not. */
final class SeatForm {
  private SeatForm() {}

  static StandingShape drawn(Seat plan) {
    String origin = plan.common().pointer();
    Vec3 at = StockMaker.vec(plan.at());
    // The seat's own top: right as in the chair, back falling with the slope.
    Vec3 back = new Vec3(0, Math.cos(plan.slope()), -Math.sin(plan.slope()));
    List<Vec2> loop = OutlineCurves.loop(plan.outline());
    LoopChecks.refuseCrossing(loop, plan.name(), origin + "/outline");
    Box box = Box.around(loop.stream().map(p -> new Vec3(p.x(), p.y(), 0)).toList());
    boolean sideways = box.size().x() >= box.size().y();
    Frame frame =
        sideways ? Frame.of(at, Vec3.RIGHT, back) : Frame.of(at, back, Vec3.RIGHT.negated());
    Frame page = Frame.of(Vec3.ZERO, frame.localDirection(Vec3.RIGHT), frame.localDirection(back));
    Csg board = Extrusion.of(loop, -plan.thickness(), 0, page, origin);
    Csg shape =
        plan.hollow().isPresent()
            ? board.minus(List.of(hollow(plan, plan.hollow().get(), loop, page)))
            : board;
    return new StandingShape(
        frame,
        shape,
        sideways ? box.low().x() : box.low().y(),
        sideways ? box.high().x() : box.high().y(),
        frame.place(page.place(box.middle())));
  }

  private static Csg hollow(Seat plan, Hollow hollow, List<Vec2> board, Frame page) {
    List<Vec2> rim =
        hollow.outline().isPresent()
            ? OutlineCurves.loop(hollow.outline().get())
            : inset(board, hollow.inset(), plan);
    LoopChecks.refuseCrossing(rim, plan.name(), hollow.pointer());
    Vec2 deepest =
        hollow
            .deepest()
            .map(p -> new Vec2(p.u(), p.v()))
            .orElseGet(
                () -> {
                  Coordinate c = LoopChecks.polygon(rim).getCentroid().getCoordinate();
                  return new Vec2(c.x, c.y);
                });
    return Dish.of(rim, deepest, hollow.deep(), page, hollow.pointer())
        .orElseThrow(
            () ->
                Refusal.of(
                    "outline-crosses",
                    hollow.pointer(),
                    "not every place on the rim of the hollow of "
                        + plan.name()
                        + " can be seen from where it is deepest",
                    "move the deepest place, or give the hollow a simpler outline"));
  }

  private static List<Vec2> inset(List<Vec2> board, double by, Seat plan) {
    Geometry smaller = PanelFiller.mitred(LoopChecks.polygon(board), -by);
    if (!(smaller instanceof Polygon polygon) || polygon.isEmpty()) {
      throw Refusal.of(
          "out-of-range",
          plan.hollow().orElseThrow().pointer() + "/inset",
          "so far in from the edge of " + plan.name() + " no one hollow is left",
          "set it in less");
    }
    return OutlineCurves.cleaned(
        java.util.Arrays.stream(polygon.getExteriorRing().getCoordinates())
            .map(c -> new Vec2(c.x, c.y))
            .toList());
  }
}
