package dryfit.build;

import dryfit.document.PartPlan.Outline;
import dryfit.document.PartPlan.Placement;
import dryfit.document.PartPlan.Sawn;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.Extrusion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Parts sawn from one or two outlines. */
final class SawnForm {
  private SawnForm() {}

  /** How far a between-part's outlines reach along, mm. */
  static double reach(Sawn plan) {
    double reach = Double.POSITIVE_INFINITY;
    for (Optional<Outline> outline : List.of(plan.plan(), plan.side())) {
      if (outline.isPresent()) {
        double most =
            OutlineCurves.loop(outline.get()).stream().mapToDouble(Vec2::x).max().orElse(0);
        reach = Math.min(reach, most);
      }
    }
    return reach;
  }

  /** How far the middle of a between-part's side outline stands above its own line at its start. */
  static double bow(Sawn plan) {
    if (plan.side().isEmpty()) {
      return 0;
    }
    List<Vec2> loop = OutlineCurves.loop(plan.side().get());
    double from = loop.stream().mapToDouble(Vec2::x).min().orElse(0);
    List<Double> there =
        loop.stream().filter(p -> p.x() <= from + 1).map(Vec2::y).sorted().toList();
    return (there.get(0) + there.get(there.size() - 1)) / 2;
  }

  /**
   * A part between two others: its plan drawn (along, outward), its side (along, up).
   *
   * @param outwardSign 1 if outward is along the frame's z, -1 if against
   */
  static Csg between(
      Sawn plan, double outwardSign, double longAtStart, double longAtEnd, Shelf shelf) {
    String origin = plan.common().pointer();
    List<Vec2> top = plan.plan().map(o -> longer(o, longAtStart, longAtEnd, plan)).orElse(null);
    List<Vec2> side = plan.side().map(o -> longer(o, longAtStart, longAtEnd, plan)).orElse(null);
    double half = plan.thickness().orElse(0.0) / 2;
    List<Cut> cuts = new ArrayList<>();
    if (top != null) {
      double[] up = side == null ? new double[] {-half, half} : spread(side);
      // Seen from above: length to the right, outward up the page.
      Frame page = Frame.of(Vec3.ZERO, Vec3.RIGHT, new Vec3(0, 0, outwardSign));
      cuts.add(cut(top, sorted(up, -outwardSign), page, origin));
    }
    if (side != null) {
      double[] across = top == null ? new double[] {-half, half} : spread(top);
      cuts.add(cut(side, sorted(across, outwardSign), Frame.CHAIR, origin));
    }
    return crossed(cuts, shelf);
  }

  /** All that matters of a way of the saw round an outline. */
  private record Cut(List<Vec2> loop, double low, double high, Frame page, String origin) {}

  private static Cut cut(List<Vec2> loop, double[] range, Frame page, String origin) {
    return new Cut(List.copyOf(loop), range[0], range[1], page, origin);
  }

  /** What all cuts leave, the very same as long as they are the same. */
  private static Csg crossed(List<Cut> cuts, Shelf shelf) {
    return shelf.form(
        List.copyOf(cuts),
        () -> {
          List<Csg> of =
              cuts.stream()
                  .<Csg>map(c -> Extrusion.of(c.loop, c.low, c.high, c.page, c.origin))
                  .toList();
          return of.size() == 1 ? of.get(0) : new Csg.Common(of);
        });
  }

  /** A range seen along an axis that runs the same way (1) or the other (-1). */
  private static double[] sorted(double[] range, double sign) {
    return sign > 0 ? range : new double[] {-range[1], -range[0]};
  }

  /** The extent of a loop across the other view, with room to spare. */
  private static double[] spread(List<Vec2> loop) {
    double low = loop.stream().mapToDouble(Vec2::y).min().orElse(0);
    double high = loop.stream().mapToDouble(Vec2::y).max().orElse(0);
    return new double[] {low - Shapes.SPARE, high + Shapes.SPARE};
  }

  private static List<Vec2> longer(Outline outline, double atStart, double atEnd, Sawn plan) {
    if (outline instanceof Outline.Band band) {
      return checked(
          OutlineCurves.loop(
              longer(OutlineCurves.points(band.first()), atStart, atEnd),
              longer(OutlineCurves.points(band.second()), atStart, atEnd)),
          plan);
    }
    return checked(OutlineCurves.loop(outline), plan);
  }

  /** An edge carried on straight at its ends, the way it runs there. */
  private static List<Vec2> longer(List<Vec2> edge, double atStart, double atEnd) {
    List<Vec2> out = new ArrayList<>(edge);
    int n = edge.size();
    if (atEnd > 0) {
      out.add(beyond(edge.get(n - 2), edge.get(n - 1), atEnd));
    }
    if (atStart > 0) {
      out.add(0, beyond(edge.get(1), edge.get(0), atStart));
    }
    return out;
  }

  private static Vec2 beyond(Vec2 a, Vec2 b, double by) {
    double k = by / Math.max(Math.abs(b.x() - a.x()), dryfit.measure.Tolerances.coincident());
    return new Vec2(b.x() + (b.x() - a.x()) * k, b.y() + (b.y() - a.y()) * k);
  }

  private static List<Vec2> checked(List<Vec2> loop, Sawn plan) {
    LoopChecks.refuseCrossing(loop, plan.name(), plan.common().pointer());
    return loop;
  }

  /** A part that stands at a place: outlines drawn parallel to the chair from there. */
  static StandingShape standing(Sawn plan, Shelf shelf) {
    Vec3 at = StockMaker.vec(((Placement.StandsAt) plan.placement()).at());
    String origin = plan.common().pointer();
    double half = plan.thickness().orElse(0.0) / 2;
    List<Drawn> drawn = new ArrayList<>();
    plan.side().ifPresent(o -> drawn.add(new Drawn(o, Vec3.BACK, Vec3.UP)));
    plan.front().ifPresent(o -> drawn.add(new Drawn(o, Vec3.RIGHT, Vec3.UP)));
    plan.plan().ifPresent(o -> drawn.add(new Drawn(o, Vec3.RIGHT, Vec3.BACK)));
    Box box = null;
    for (Drawn d : drawn) {
      List<Vec3> corners =
          OutlineCurves.loop(d.outline).stream()
              .map(p -> d.u.times(p.x()).plus(d.v.times(p.y())))
              .toList();
      Box own = Box.around(corners);
      Vec3 n = d.u.cross(d.v);
      if (drawn.size() == 1) {
        own =
            Box.around(
                List.of(own.low().minus(abs(n).times(half)), own.high().plus(abs(n).times(half))));
      }
      box = box == null ? own : box.with(own);
    }
    Frame frame = frameFor(at, box.size());
    List<Cut> cuts = new ArrayList<>();
    for (Drawn d : drawn) {
      List<Vec2> loop = checked(OutlineCurves.loop(d.outline), plan);
      Vec3 n = d.u.cross(d.v);
      double[] range =
          drawn.size() == 1
              ? new double[] {-half, half}
              : new double[] {
                -extent(box, n.negated()) - Shapes.SPARE, extent(box, n) + Shapes.SPARE
              };
      Frame page = Frame.of(Vec3.ZERO, frame.localDirection(d.u), frame.localDirection(d.v));
      cuts.add(cut(loop, range, page, origin));
    }
    Vec3 low = frame.localDirection(box.low());
    Vec3 high = frame.localDirection(box.high());
    return new StandingShape(
        frame,
        crossed(cuts, shelf),
        Math.min(low.x(), high.x()),
        Math.max(low.x(), high.x()),
        at.plus(box.middle()));
  }

  /** An outline and the two chair axes it is drawn in. */
  private record Drawn(Outline outline, Vec3 u, Vec3 v) {}

  private static double extent(Box box, Vec3 axis) {
    return Math.max(box.low().dot(axis), box.high().dot(axis));
  }

  private static Vec3 abs(Vec3 v) {
    return new Vec3(Math.abs(v.x()), Math.abs(v.y()), Math.abs(v.z()));
  }

  /** Length along the longest side; width upright for what lies, sideways for what stands. */
  static Frame frameFor(Vec3 at, Vec3 size) {
    if (size.z() >= size.x() && size.z() >= size.y()) {
      return Frame.of(at, Vec3.UP, Vec3.RIGHT);
    }
    return Frame.of(at, size.y() >= size.x() ? Vec3.BACK : Vec3.RIGHT, Vec3.UP);
  }
}
