package dryfit.build;

import dryfit.document.Hand;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.Panel;
import dryfit.document.PartPlan.PanelShape.Fills;
import dryfit.document.PartPlan.Raised;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Cells;
import dryfit.solid.Content;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Extrusion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Fits a panel into the opening between parts. In a plane through the middle of the first part that
 * lies, the sections of the parts leave a hole; the panel is that hole made larger by the depth of
 * the groove less the room to move, and the groove is the hole made larger by its depth. The plane
 * stands with that part, or, if the parts leave no hole there, lies with the others that lie, as a
 * seat does in its frame.
 */
final class PanelFiller {
  private PanelFiller() {}

  /**
   * @param stock the panel, placed
   * @param groove what is cut from each of the parts around it, chair space
   */
  record Filled(Stock stock, Csg groove) {}

  /** A part around the opening. */
  record Around(Stock stock, List<Convex> placedCells) {}

  static Filled fill(Panel plan, Hand hand, List<Around> around, Shelf shelf) {
    Fills fills = (Fills) plan.shape();
    String pointer = plan.common().pointer();
    Stock rail =
        around.stream()
            .map(Around::stock)
            .filter(Stock::lies)
            .findFirst()
            .orElseThrow(
                () ->
                    Refusal.of(
                        "wrong-kind",
                        pointer + "/fills",
                        "no part around " + plan.name() + " lies level",
                        "one of them must be a rail, for the panel to stand in its middle"));
    Laid standing = laid(around, standing(rail), fills, shelf);
    Laid laid =
        standing.loops().isEmpty() ? laid(around, lying(rail, around), fills, shelf) : standing;
    if (laid.loops().isEmpty()) {
      throw noOpening(plan, "/fills");
    }
    Frame page = laid.page();
    List<List<Vec2>> loops = laid.loops();
    List<Vec2> groove = loops.get(0);
    List<Vec2> panel = loops.get(1);
    // What sits in the groove is in the middle of the rail: the panel, or the tongue round it.
    double tongue = plan.raised().map(Raised::tongue).orElse(plan.thickness());
    double slack = tongue / 2 + fills.slack();
    double middle = 0;
    Optional<Boards.Raising> raising =
        plan.raised().map(r -> Boards.raising(r, plan.thickness(), page.z(), 0, plan.name()));
    if (raising.isPresent() && raising.get().above() != raising.get().below()) {
      double out = (plan.thickness() - tongue) / 2;
      middle = raising.get().above() ? out : -out;
    }

    double minX = panel.stream().mapToDouble(Vec2::x).min().orElseThrow();
    double maxX = panel.stream().mapToDouble(Vec2::x).max().orElseThrow();
    double minY = panel.stream().mapToDouble(Vec2::y).min().orElseThrow();
    double maxY = panel.stream().mapToDouble(Vec2::y).max().orElseThrow();
    boolean upright = maxY - minY > maxX - minX;
    Vec3 corner = page.place(new Vec3((minX + maxX) / 2, (minY + maxY) / 2, 0));
    Frame own =
        upright
            ? Frame.of(corner, page.y(), page.x().negated())
            : Frame.of(corner, page.x(), page.y());
    double low = middle - plan.thickness() / 2;
    double high = middle + plan.thickness() / 2;
    List<Csg> bevels =
        raising
            .map(
                r ->
                    Boards.bevels(
                        plan.raised().orElseThrow(),
                        new Boards.Raising(low, high, r.above(), r.below()),
                        panel,
                        page,
                        plan.name()))
            .orElse(List.of());
    Csg shape = Shapes.localTo(Extrusion.of(panel, low, high, page, pointer).minus(bevels), own);
    double length = upright ? maxY - minY : maxX - minX;
    Stock stock =
        new Stock(
            plan,
            hand,
            own,
            shape,
            Cells.of(shape),
            -length / 2,
            length / 2,
            rail.outside(),
            grain(plan, own),
            !upright,
            List.of());
    return new Filled(stock, Extrusion.of(groove, -slack, slack, page, pointer + "/groove"));
  }

  private static Frame standing(Stock rail) {
    Frame f = rail.frame();
    return Frame.of(f.origin(), f.x(), f.y());
  }

  /** Along the rail, and from its middle to that of the part that lies farthest beside it. */
  private static Frame lying(Stock rail, List<Around> around) {
    Frame f = rail.frame();
    Vec3 farthest = f.z();
    double most = Tolerances.contact();
    for (Around a : around) {
      if (a.stock().lies()) {
        Vec3 way = middle(a.stock()).minus(middle(rail));
        Vec3 beside = way.minus(f.x().times(way.dot(f.x())));
        if (beside.length() > most) {
          most = beside.length();
          farthest = beside;
        }
      }
    }
    return Frame.of(f.origin(), f.x(), farthest.unit());
  }

  private static Vec3 middle(Stock stock) {
    return stock.frame().place(new Vec3((stock.start() + stock.end()) / 2, 0, 0));
  }

  /** The outlines of groove and panel on a page; none if the parts leave no hole there. */
  private record Laid(Frame page, List<List<Vec2>> loops) {}

  private static Laid laid(List<Around> around, Frame page, Fills fills, Shelf shelf) {
    List<List<double[]>> sections =
        around.stream().map(a -> SectionRing.sections(a.placedCells(), page)).toList();
    List<double[]> key = new ArrayList<>();
    for (List<double[]> ofOne : sections) {
      key.addAll(ofOne);
      key.add(new double[0]);
    }
    key.add(new double[] {fills.deep(), fills.gap()});
    return new Laid(
        page,
        shelf.loops(
            Content.of(key),
            () ->
                hole(SectionRing.of(sections))
                    .map(
                        hole ->
                            List.of(
                                grown(hole, SectionRing.OVERLAP + fills.deep()),
                                grown(hole, SectionRing.OVERLAP + fills.deep() - fills.gap())))
                    .orElse(List.of())));
  }

  static Vec3 grain(Panel plan, Frame own) {
    return plan.common().grain() instanceof PartPlan.Grain.Along along
        ? own.localDirection(StockMaker.vec(along.direction())).unit()
        : Vec3.RIGHT;
  }

  /** The largest hole in the ring of sections. */
  static Geometry opening(Geometry ring, Panel plan, String key) {
    return hole(ring).orElseThrow(() -> noOpening(plan, key));
  }

  private static Refusal noOpening(Panel plan, String key) {
    return Refusal.of(
        "no-opening",
        plan.common().pointer() + key,
        "the parts around " + plan.name() + " leave no closed opening in its plane",
        "name all the parts that frame it, also the legs in its corners, and let them meet");
  }

  private static Optional<Geometry> hole(Geometry ring) {
    Polygon best = null;
    for (int i = 0; i < ring.getNumGeometries(); i++) {
      if (ring.getGeometryN(i) instanceof Polygon polygon) {
        for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
          LineString hole = polygon.getInteriorRingN(h);
          Polygon candidate = polygon.getFactory().createPolygon(hole.getCoordinates());
          if (best == null || candidate.getArea() > best.getArea()) {
            best = candidate;
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** Larger all round, or smaller, with its corners kept. */
  static Geometry mitred(Geometry shape, double by) {
    BufferParameters mitred =
        new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5);
    return BufferOp.bufferOp(shape, by, mitred);
  }

  static List<Vec2> grown(Geometry opening, double by) {
    List<Vec2> loop = new ArrayList<>();
    for (Coordinate c : ((Polygon) mitred(opening, by)).getExteriorRing().getCoordinates()) {
      loop.add(new Vec2(c.x, c.y));
    }
    return OutlineCurves.cleaned(loop);
  }
}
