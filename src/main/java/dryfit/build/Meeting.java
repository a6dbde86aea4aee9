package dryfit.build;

import dryfit.document.PartPlan;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.List;
import java.util.Optional;

/**
 * Where the middle line of a part, followed from its middle to one end, first comes to another
 * part.
 *
 * @param mouth the face met there, normal out of the other part's wood; of a round part the plane
 *     that touches it, for its facets are only our way to draw it
 * @param at where the middle line goes through that face
 * @param section what the part measures there
 * @param end the frame that section stands in
 */
record Meeting(Plane mouth, Vec3 at, Stock.Section section, Frame end) {

  /**
   * Wood that stands further out than this under a shoulder is not what the shoulder lands on, but
   * is in its way, mm.
   */
  private static final double LANDS = 2;

  /** A face that leans more than this out of a round part's length is its end: cosine. */
  private static final double END_FACE = 0.7;

  /** Nothing if the line never meets the other part, or only further off than an end can reach. */
  static Optional<Meeting> of(Stock part, boolean atStart, Stock other) {
    Vec3 out = part.outward(atStart);
    double half = part.straightAt(atStart);
    List<Convex> wood = other.placedCells();
    Vec3 end = part.endPoint(atStart);
    Optional<CellRay.Entry> hit = hit(wood, end.minus(out.times(half)), out, half);
    if (hit.isEmpty()) {
      return Optional.empty();
    }
    // A curved part has its middle elsewhere than where its end was thought to be: look again
    // there.
    Stock.Section section = part.section(atStart);
    for (int look = 0; look < 2; look++) {
      Vec3 place = end.plus(out.times(hit.get().distance() - half));
      section = part.sectionNear(atStart, place);
      Vec3 there = part.onMiddle(atStart, section);
      if (there.distance(end) <= Tolerances.coincident()) {
        break;
      }
      end = there;
      hit = hit(wood, end.minus(out.times(half)), out, half);
      if (hit.isEmpty()) {
        return Optional.empty();
      }
    }
    Vec3 at = end.plus(out.times(hit.get().distance() - half));
    return Optional.of(
        new Meeting(face(other, hit.get().face(), at), at, section, part.endFrame(atStart)));
  }

  private static Optional<CellRay.Entry> hit(List<Convex> wood, Vec3 from, Vec3 out, double half) {
    return CellRay.first(wood, from, out).filter(e -> e.distance() <= half + StockMaker.LONG);
  }

  private static Plane face(Stock other, Plane facet, Vec3 at) {
    Frame f = other.frame();
    Vec3 n = f.localDirection(facet.normal());
    Vec3 p = f.local(at);
    double radius = Math.hypot(p.y(), p.z());
    if (!isRound(other.plan()) || Math.abs(n.x()) > END_FACE || radius < 1) {
      return facet;
    }
    double across = Math.sqrt(1 - n.x() * n.x()) / radius;
    return Plane.through(at, f.turn(new Vec3(n.x(), p.y() * across, p.z() * across)));
  }

  static boolean isRound(PartPlan plan) {
    return plan instanceof PartPlan.Turned
        || plan instanceof PartPlan.Straight straight
            && straight.section() instanceof PartPlan.Section.Round;
  }

  /**
   * The plane a flat shoulder comes to rest in: the mouth, moved out to what stands highest under
   * the shoulder where the face is hollow.
   */
  Plane landing(Stock other) {
    double most = 0;
    List<Plane> sides = sides(end);
    for (Convex cell : other.placedCells()) {
      if (cell.reach(mouth.normal()) <= mouth.offset() + Tolerances.coincident()) {
        continue;
      }
      Optional<Convex> under = cell.clipped(mouth.flipped());
      for (Plane side : sides) {
        under = under.flatMap(c -> c.clipped(side));
      }
      most = Math.max(most, under.map(c -> c.reach(mouth.normal()) - mouth.offset()).orElse(0.0));
    }
    return most <= Tolerances.coincident() || most >= LANDS ? mouth : mouth.moved(most);
  }

  /** The four long faces of the part at the section, a hair inside it, chair space. */
  private List<Plane> sides(Frame f) {
    double in = Tolerances.contact();
    return List.of(
        side(f, f.y(), new Vec3(0, section.y1() - in, 0)),
        side(f, f.y().negated(), new Vec3(0, section.y0() + in, 0)),
        side(f, f.z(), new Vec3(0, 0, section.z1() - in)),
        side(f, f.z().negated(), new Vec3(0, 0, section.z0() + in)));
  }

  private static Plane side(Frame f, Vec3 normal, Vec3 local) {
    return Plane.through(f.place(local), normal);
  }
}
