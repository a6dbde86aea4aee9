package dryfit.build;

import dryfit.document.PartCuts.Rebate;
import dryfit.document.PartPlan;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.List;

/** Steps cut the whole length along an edge of a straight part. */
final class RebateCut {
  private RebateCut() {}

  /** The shape less its rebates, own frame. */
  static Csg of(Csg shape, PartPlan plan, Frame frame, StockMaker.Line line) {
    List<Rebate> rebates = plan.common().cuts().rebates();
    if (rebates.isEmpty()) {
      return shape;
    }
    Box box = Box.around(Cells.of(shape).stream().flatMap(c -> c.points().stream()).toList());
    return shape.minus(
        rebates.stream()
            .map(r -> (Csg) tool(r, box, plan, frame, line).asLeaf(r.pointer()))
            .toList());
  }

  /** Unit direction out of the face a rebate opens to, own frame. */
  static Vec3 opens(Rebate rebate, Frame frame, StockMaker.Line line) {
    return FaceNames.direction(rebate.opens(), frame, line, rebate.pointer() + "/edge/0");
  }

  private static Convex tool(
      Rebate rebate, Box box, PartPlan plan, Frame frame, StockMaker.Line line) {
    Vec3 opens = opens(rebate, frame, line);
    Vec3 beside = FaceNames.direction(rebate.beside(), frame, line, rebate.pointer() + "/edge/1");
    if (opens.dot(beside) != 0) {
      throw Refusal.of(
          "wrong-kind",
          rebate.pointer() + "/edge",
          "the "
              + rebate.opens()
              + " and the "
              + rebate.beside()
              + " of "
              + plan.name()
              + " have no edge in common",
          "name two faces that meet");
    }
    refuse(rebate.deep(), extent(box, opens), rebate, "deep", plan);
    refuse(rebate.wide(), extent(box, beside), rebate, "wide", plan);
    Vec3 inner =
        opens
            .times(reach(box, opens) - rebate.deep())
            .plus(beside.times(reach(box, beside) - rebate.wide()));
    Vec3 outer =
        opens
            .times(reach(box, opens) + Shapes.SPARE)
            .plus(beside.times(reach(box, beside) + Shapes.SPARE));
    return Convex.box(
        Box.around(
            List.of(
                inner.plus(new Vec3(box.low().x() - Shapes.SPARE, 0, 0)),
                outer.plus(new Vec3(box.high().x() + Shapes.SPARE, 0, 0)))));
  }

  private static void refuse(double cut, double whole, Rebate rebate, String key, PartPlan plan) {
    if (cut >= whole) {
      throw Refusal.of(
          "out-of-range",
          rebate.pointer() + "/" + key,
          "the rebate of " + plan.name() + " takes away the whole edge",
          "make it less " + key + " than the part");
    }
  }

  private static double reach(Box box, Vec3 out) {
    return Math.max(box.low().dot(out), box.high().dot(out));
  }

  private static double extent(Box box, Vec3 out) {
    return Math.abs(box.size().dot(out));
  }
}
