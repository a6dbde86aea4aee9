package dryfit.build;

import dryfit.document.Hand;
import dryfit.document.PartCuts.Rebate;
import dryfit.document.PartPlan.Panel;
import dryfit.document.PartPlan.PanelShape.DropsInto;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Csg;
import dryfit.solid.Extrusion;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * Sizes a loose board to the rebates of the rails round it. Its underside lies on the floors of the
 * rebates, which must all be in one plane; its outline is the opening just above them, smaller by
 * the gap all round.
 */
final class DropIn {
  private DropIn() {}

  /** Rebates whose floors stand further than this out of one plane carry no flat board, mm. */
  private static final double FLAT = 0.2;

  /** How far above the floors the opening is taken, mm: a little, for walls that lean. */
  private static final double ABOVE = 0.5;

  static Stock of(Panel plan, Hand hand, List<PanelFiller.Around> around) {
    DropsInto drops = (DropsInto) plan.shape();
    String pointer = plan.common().pointer();
    List<Vec3> floors = new ArrayList<>();
    around.forEach(a -> floors.addAll(floor(a.stock())));
    Frame page = page(plan, floors);
    Frame above = Frame.of(page.place(new Vec3(0, 0, ABOVE)), page.x(), page.y());
    List<List<double[]>> sections =
        around.stream().map(a -> SectionRing.sections(a.placedCells(), above)).toList();
    Geometry opening = PanelFiller.opening(SectionRing.of(sections), plan, "/drops-into");
    List<Vec2> loop = PanelFiller.grown(opening, SectionRing.OVERLAP - drops.gap());
    double minX = loop.stream().mapToDouble(Vec2::x).min().orElseThrow();
    double maxX = loop.stream().mapToDouble(Vec2::x).max().orElseThrow();
    double minY = loop.stream().mapToDouble(Vec2::y).min().orElseThrow();
    double maxY = loop.stream().mapToDouble(Vec2::y).max().orElseThrow();
    boolean deep = maxY - minY > maxX - minX;
    Vec3 middle = page.place(new Vec3((minX + maxX) / 2, (minY + maxY) / 2, plan.thickness() / 2));
    Frame own =
        deep
            ? Frame.of(middle, page.y(), page.x().negated())
            : Frame.of(middle, page.x(), page.y());
    Csg shape = Shapes.localTo(Extrusion.of(loop, 0, plan.thickness(), page, pointer), own);
    double half = (deep ? maxY - minY : maxX - minX) / 2;
    return new Stock(
        plan,
        hand,
        own,
        shape,
        Cells.of(shape),
        -half,
        half,
        Vec3.BACK,
        PanelFiller.grain(plan, own),
        true,
        List.of());
  }

  /** The two ends of the inner edge of a rebate's floor, chair space; none without a rebate. */
  private static List<Vec3> floor(Stock rail) {
    StockMaker.Line line =
        new StockMaker.Line(
            rail.endPoint(true), rail.endPoint(false), rail.lies(), rail.outside(), List.of());
    List<Vec3> out = new ArrayList<>();
    for (Rebate rebate : rail.plan().common().cuts().rebates()) {
      Vec3 opens = RebateCut.opens(rebate, rail.frame(), line);
      if (rail.frame().turn(opens).z() > 0.5) {
        double height =
            rail.cells().stream().mapToDouble(c -> c.reach(opens)).max().orElse(0) - rebate.deep();
        Vec3 on = opens.times(height);
        out.add(rail.frame().place(on.plus(new Vec3(rail.start(), 0, 0))));
        out.add(rail.frame().place(on.plus(new Vec3(rail.end(), 0, 0))));
      }
    }
    return out;
  }

  /** The plane of the floors: z up, x to the right as near as it can be. */
  private static Frame page(Panel plan, List<Vec3> floors) {
    Vec3 normal = Vec3.ZERO;
    // The largest triangle of any three of the points tells the plane best.
    for (int i = 0; i < floors.size(); i++) {
      for (int k = i + 1; k < floors.size(); k++) {
        for (int m = k + 1; m < floors.size(); m++) {
          Vec3 n = floors.get(k).minus(floors.get(i)).cross(floors.get(m).minus(floors.get(i)));
          normal = n.length() > normal.length() ? n : normal;
        }
      }
    }
    if (normal.length() < 1) {
      throw Refusal.of(
          "no-opening",
          plan.common().pointer() + "/drops-into",
          "the parts around " + plan.name() + " have no rebates on top for it to lie in",
          "give at least two of the rails a rebate that opens to the top");
    }
    Vec3 up = normal.z() < 0 ? normal.negated().unit() : normal.unit();
    Frame page = Frame.of(floors.get(0), Vec3.RIGHT.across(up), up.cross(Vec3.RIGHT));
    for (Vec3 p : floors) {
      if (Math.abs(page.local(p).z()) > FLAT) {
        throw Refusal.of(
            "wrong-kind",
            plan.common().pointer() + "/drops-into",
            "the floors of the rebates for "
                + plan.name()
                + " are not in one plane: one is off by "
                + Refusal.length(Math.abs(page.local(p).z())),
            "give the rails the same height, slope and depth of rebate");
      }
    }
    return page;
  }
}
