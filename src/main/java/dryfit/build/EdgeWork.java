package dryfit.build;

import dryfit.build.BentRings.Ring;
import dryfit.build.EdgeFaces.Choice;
import dryfit.document.EdgePlan;
import dryfit.document.PartPlan;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.solid.Cells;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import java.util.ArrayList;
import java.util.List;

/**
 * Eases, chamfers and rounds the edges of a part, as it is after sawing and before any joint is cut
 * in it. So a mouth that is cut into a treated edge is measured on the wood that is left there, and
 * a tenon, which is cut from the middle of an end, keeps its edges.
 */
final class EdgeWork {
  private EdgeWork() {}

  /**
   * The part with its edges treated.
   *
   * @param kernel for the surface, if that is not known yet
   */
  static Stock treated(Stock stock, Kernel kernel) {
    List<EdgePlan> plans = stock.plan().common().edges();
    if (plans.isEmpty()) {
      return stock;
    }
    List<Ring> rings = stock.bent().map(BentEnds::rings).orElse(List.of());
    Mesh mesh =
        stock.shape() instanceof Csg.Leaf leaf ? leaf.mesh() : kernel.evaluate(stock.shape());
    List<EdgeSizes.Treated> treated = new ArrayList<>();
    for (EdgePlan plan : plans) {
      treated.addAll(treated(stock, rings, mesh, plan));
    }
    EdgeSizes.check(stock, treated);
    Csg shape = stock.shape().minus(treated.stream().map(EdgeSizes.Treated::cutter).toList());
    return stock.treated(shape, Cells.of(shape));
  }

  private static List<EdgeSizes.Treated> treated(
      Stock stock, List<Ring> rings, Mesh mesh, EdgePlan plan) {
    Choice choice = new EdgeFaces(stock).chosen(plan);
    Choice here = (a, b) -> choice.takes(a, b) && isMade(stock, a) && isMade(stock, b);
    List<EdgeRun> runs =
        rings.isEmpty() ? EdgeRuns.of(stock, mesh, here) : EdgeRuns.ofBent(stock, rings, here);
    double length = stock.bent().map(b -> b.bend().length()).orElse(stock.end() - stock.start());
    double from = plan.from().orElse(plan.leaveEnds().orElse(Double.NEGATIVE_INFINITY));
    double to =
        plan.to()
            .orElse(
                plan.leaveEnds().isPresent()
                    ? length - plan.leaveEnds().getAsDouble()
                    : Double.POSITIVE_INFINITY);
    List<EdgeRun> stretches = runs.stream().flatMap(r -> r.between(from, to).stream()).toList();
    if (stretches.isEmpty()) {
      throw Refusal.of(
          "absent-edge",
          plan.pointer() + "/between",
          "no edge of " + stock.name() + " is there to be " + done(plan),
          "name two faces that meet in an edge; an end that is cut to another part has none");
    }
    List<EdgeSizes.Treated> out = new ArrayList<>();
    for (EdgeRun run : stretches) {
      double sharpest = Math.PI;
      for (int i = 0; i < run.pieces(); i++) {
        sharpest = Math.min(sharpest, run.angle(i));
      }
      EdgeProfile profile = EdgeProfile.of(plan, sharpest);
      Csg cutter =
          EdgeCutter.along(run, profile, plan.pointer())
              .orElseThrow(() -> tooTight(stock.plan(), plan));
      out.add(new EdgeSizes.Treated(plan, run, cutter));
    }
    return out;
  }

  /** Whether a side is as it will be, and not an end left longer to be cut to another part. */
  private static boolean isMade(Stock stock, EdgeFaces.Side side) {
    if (!side.isEnd()) {
      return true;
    }
    if (stock.bent().isPresent()) {
      return stock.bent().get().at(side == EdgeFaces.Side.START).longer() == 0;
    }
    Box box = Box.around(stock.cells().stream().flatMap(c -> c.points().stream()).toList());
    return side == EdgeFaces.Side.START
        ? box.low().x() > stock.start() - StockMaker.LONG / 2
        : box.high().x() < stock.end() + StockMaker.LONG / 2;
  }

  private static Refusal tooTight(PartPlan part, EdgePlan plan) {
    return Refusal.of(
        "edge-too-tight",
        plan.pointer() + "/size",
        "an edge of "
            + part.name()
            + " turns more tightly than it can be "
            + done(plan)
            + " at "
            + Refusal.length(plan.size()),
        "a smaller size, or only a stretch of the edge");
  }

  static String done(EdgePlan plan) {
    return switch (plan.shape()) {
      case EASED -> "eased";
      case CHAMFER -> "chamfered";
      case ROUND_OVER -> "rounded over";
    };
  }
}
