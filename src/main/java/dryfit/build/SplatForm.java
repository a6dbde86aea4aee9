package dryfit.build;

import dryfit.document.PartPlan.Bow;
import dryfit.document.PartPlan.Section;
import dryfit.document.PartPlan.SectionAt;
import dryfit.document.PartPlan.Splat;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.Extrusion;
import java.util.List;
import java.util.Optional;

/**
 * Splats: boards with an outline that stand along a line. A bowed one is a bent board, sawn to its
 * outline as seen square to the straight line between its ends.
 */
final class SplatForm {
  /** Length goes up the page, width to the right, so the page looks against the thickness. */
  private static final Frame PAGE = Frame.of(Vec3.ZERO, new Vec3(0, 1, 0), new Vec3(1, 0, 0));

  private SplatForm() {}

  /**
   * @param bent the ends of a bowed one
   */
  record Made(Csg shape, Optional<BentEnds> bent) {}

  /** The greatest size across, mm. */
  static double width(Splat plan) {
    List<Vec2> loop = loop(plan, 0, 0);
    return 2 * loop.stream().mapToDouble(p -> Math.abs(p.x())).max().orElse(0);
  }

  /** In its own frame, its start at x = 0, ends left longer where they are cut to a face. */
  static Made make(
      Splat plan, Frame frame, StockMaker.Line line, boolean longAtStart, boolean longAtEnd) {
    double atStart = longAtStart ? StockMaker.LONG : 0;
    double atEnd = longAtEnd ? StockMaker.LONG : 0;
    List<Vec2> loop = loop(plan, atStart, atEnd);
    String pointer = plan.common().pointer();
    double half = plan.thickness() / 2;
    if (plan.bow().isEmpty()) {
      double deep = half + Shapes.SPARE;
      List<Csg> holes = Boards.openings(plan.openings(), loop, -deep, deep, PAGE, plan.name());
      return new Made(
          Extrusion.of(loop, -half, half, PAGE, pointer).minus(holes), Optional.empty());
    }
    Bow bow = plan.bow().get();
    double wide = 2 * (width(plan) + Shapes.SPARE);
    BentForm.Made board =
        BentForm.make(
            new BentForm.Wanted(
                plan.name(),
                pointer,
                BentForm.arc(bow, plan.name(), frame, line),
                List.of(new SectionAt(0, new Section.Rectangle(wide, plan.thickness()))),
                new Carried(new Vec3(0, 1, 0), frame.localDirection(Vec3.UP), false, 0)),
            longAtStart,
            longAtEnd);
    double deep = bow.rise() + plan.thickness() + StockMaker.LONG;
    Csg outline = Extrusion.of(loop, -deep, deep, PAGE, pointer);
    List<Csg> holes = Boards.openings(plan.openings(), loop, -deep, deep, PAGE, plan.name());
    Csg shape = new Csg.Common(List.of(board.shape(), outline)).minus(holes);
    return new Made(shape, Optional.of(ends(board.ends(), plan, loop, line.length())));
  }

  /** The bent board's ends, as wide as the outline is there. */
  private static BentEnds ends(BentEnds board, Splat plan, List<Vec2> loop, double length) {
    double half = plan.thickness() / 2;
    return new BentEnds(
        board.bend(),
        new BentEnds.End(board.start().frame(), section(loop, 1, half), board.start().longer()),
        new BentEnds.End(
            board.end().frame(), section(loop, length - 1, half), board.end().longer()),
        width(plan),
        plan.thickness(),
        List.of());
  }

  /** What the outline measures across, so far along. */
  private static Stock.Section section(List<Vec2> loop, double along, double half) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < loop.size(); i++) {
      Vec2 a = loop.get(i);
      Vec2 b = loop.get((i + 1) % loop.size());
      if ((a.y() - along) * (b.y() - along) <= 0 && a.y() != b.y()) {
        double u = a.x() + (b.x() - a.x()) * (along - a.y()) / (b.y() - a.y());
        low = Math.min(low, u);
        high = Math.max(high, u);
      }
    }
    return low <= high
        ? new Stock.Section(low, high, -half, half)
        : new Stock.Section(-half, half, -half, half);
  }

  private static List<Vec2> loop(Splat plan, double atStart, double atEnd) {
    List<Vec2> loop;
    if (plan.edge().isPresent()) {
      List<Vec2> right = longer(OutlineCurves.points(plan.edge().get()), atStart, atEnd);
      loop = OutlineCurves.loop(right, right.stream().map(p -> new Vec2(-p.x(), p.y())).toList());
    } else {
      loop = OutlineCurves.loop(plan.outline().orElseThrow());
    }
    LoopChecks.refuseCrossing(loop, plan.name(), plan.common().pointer());
    return loop;
  }

  /** An edge carried straight up and down the splat beyond its ends. */
  private static List<Vec2> longer(List<Vec2> edge, double atStart, double atEnd) {
    List<Vec2> out = new java.util.ArrayList<>(edge);
    if (atEnd > 0) {
      Vec2 last = edge.get(edge.size() - 1);
      out.add(new Vec2(last.x(), last.y() + atEnd));
    }
    if (atStart > 0) {
      out.add(0, new Vec2(edge.get(0).x(), edge.get(0).y() - atStart));
    }
    return out;
  }
}
