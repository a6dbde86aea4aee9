package dryfit.build;

import dryfit.build.BentRings.Ring;
import dryfit.document.PartPlan.Bent;
import dryfit.document.PartPlan.Bow;
import dryfit.document.PartPlan.Course;
import dryfit.document.PartPlan.SectionAt;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Overlap;
import dryfit.solid.Sweep;
import java.util.List;

/**
 * Bent parts: a section swept along a smooth curve. The curve is drawn in straight pieces whose
 * corners lie on it; where two meet, the section is mitred, so that the sides of a section that
 * does not change are flat and its size square to each piece is the true one. The volume is
 * therefore the section's area times the length of the drawn middle line.
 */
final class BentForm {
  private BentForm() {}

  /** More straight pieces than this are no chair part, and would take minutes to check. */
  private static final int MOST_PIECES = 4000;

  /** A bent shape in its own frame, x from its first end to its last. */
  record Made(Csg.Leaf shape, BentEnds ends) {}

  /**
   * What is to be bent.
   *
   * @param pointer of the part
   * @param curve its middle line, own frame
   */
  record Wanted(
      String name, String pointer, SpaceCurve curve, List<SectionAt> sections, Carried carried) {}

  static Wanted wanted(Bent plan, Frame frame, StockMaker.Line line) {
    SpaceCurve curve =
        plan.course() instanceof Course.Bowed bowed
            ? arc(bowed.bow(), plan.name(), frame, line)
            : through((Course.Through) plan.course(), plan.name(), frame);
    return new Wanted(
        plan.name(),
        plan.common().pointer(),
        curve,
        plan.sections(),
        new Carried(new Vec3(0, 1, 0), frame.localDirection(Vec3.UP), plan.upright(), plan.turn()));
  }

  private static SpaceCurve through(Course.Through through, String name, Frame frame) {
    List<Vec3> points = through.points().stream().map(StockMaker::vec).map(frame::local).toList();
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).distance(points.get(i - 1)) <= Tolerances.coincident()) {
        throw Refusal.of(
            "not-positive",
            through.pointer() + "/" + i,
            "the middle line of " + name + " has the same point twice in a row",
            "two points in a row must differ");
      }
    }
    return SpaceCurve.through(points);
  }

  /** The arc of a bow over the straight line of a part. */
  static SpaceCurve arc(Bow bow, String name, Frame frame, StockMaker.Line line) {
    Vec3 wanted =
        frame.localDirection(
            FaceNames.inChair(bow.toward(), line.outside(), bow.pointer() + "/toward"));
    Vec3 side = wanted.across(Vec3.RIGHT);
    if (side.length() < 0.5) {
      throw Refusal.of(
          "absent-face",
          bow.pointer() + "/toward",
          name + " itself runs to the " + bow.toward() + ", so it cannot be bowed that way",
          "name a direction across it");
    }
    return SpaceCurve.arc(Vec3.ZERO, new Vec3(line.length(), 0, 0), side.unit(), bow.rise());
  }

  /** The shape, its ends left longer where they will be cut to a face. */
  static Made make(Wanted w, boolean longAtStart, boolean longAtEnd) {
    MiddleLine line = new MiddleLine(w.curve(), w.sections(), w.carried());
    List<MiddleLine.Sample> drawn = line.samples();
    if (drawn.size() > MOST_PIECES) {
      throw Refusal.of(
          "too-large",
          w.pointer(),
          w.name() + " bends so often that it takes " + drawn.size() + " straight pieces to draw",
          "at most " + MOST_PIECES + " can be worked with");
    }
    Bend bend = line.bend(drawn);
    if (bend.radius() <= bend.thickness() / 2) {
      throw tooTight(w, bend.along(), bend.radius(), bend.thickness());
    }
    double[] first = line.size(0);
    double[] last = line.size(line.length());
    double atStart = longAtStart ? reach(first) : 0;
    double atEnd = longAtEnd ? reach(last) : 0;
    BentRings at = BentRings.of(line, w.carried(), atStart, atEnd);
    if (!w.carried().standsAlong(at.directions())) {
      throw Refusal.of(
          "wrong-kind",
          w.pointer() + "/upright",
          w.name() + " rises so steeply that its width cannot stay upright all along",
          "leave \"upright\" out");
    }
    Csg.Leaf shape = swept(w, line, at, bend);
    refusePassingThroughItself(w, shape.cells(), line.length());
    return new Made(
        shape,
        new BentEnds(
            bend,
            new BentEnds.End(at.first(), section(first), atStart),
            new BentEnds.End(at.last(), section(last), atEnd),
            at.rings().stream().mapToDouble(Ring::width).max().orElseThrow(),
            at.rings().stream().mapToDouble(Ring::thickness).max().orElseThrow(),
            line.isRound() ? List.of() : at.rings()));
  }

  private static double reach(double[] size) {
    return Math.min(StockMaker.LONG, 20 + 2 * Math.max(size[0], size[1]));
  }

  private static Stock.Section section(double[] size) {
    return new Stock.Section(-size[0] / 2, size[0] / 2, -size[1] / 2, size[1] / 2);
  }

  private static Csg.Leaf swept(Wanted w, MiddleLine line, BentRings at, Bend bend) {
    List<Vec2> unit = line.isRound() ? round(at.rings()) : SQUARE;
    List<List<Vec3>> rings =
        at.rings().stream()
            .map(
                r ->
                    unit.stream()
                        .map(u -> r.corner(u.x() * r.width(), u.y() * r.thickness()))
                        .toList())
            .toList();
    for (int i = 0; i + 1 < rings.size(); i++) {
      for (int k = 0; k < unit.size(); k++) {
        Vec3 step = rings.get(i + 1).get(k).minus(rings.get(i).get(k));
        if (step.dot(at.directions().get(i)) <= 2 * Tolerances.coincident()) {
          throw tooTight(w, bend.along(), bend.radius(), bend.thickness());
        }
      }
    }
    return Sweep.of(unit, rings, false, w.pointer());
  }

  /** A section one millimetre wide and thick, anticlockwise seen from ahead. */
  private static final List<Vec2> SQUARE =
      List.of(new Vec2(-0.5, -0.5), new Vec2(0.5, -0.5), new Vec2(0.5, 0.5), new Vec2(-0.5, 0.5));

  private static List<Vec2> round(List<Ring> rings) {
    double widest = rings.stream().mapToDouble(Ring::width).max().orElse(0);
    int n = OutlineCurves.facets(widest / 2);
    return java.util.stream.IntStream.range(0, n)
        .mapToObj(i -> 2 * Math.PI * i / n)
        .map(a -> new Vec2(Math.cos(a) / 2, Math.sin(a) / 2))
        .toList();
  }

  // ---- refusals ----

  private static Refusal tooTight(Wanted w, double along, double radius, double thickness) {
    return Refusal.of(
        "bend-too-tight",
        w.pointer(),
        w.name()
            + " is bent to a radius of "
            + Refusal.length(radius)
            + " on its middle line, "
            + Refusal.length(along)
            + " from its start, where it is "
            + Refusal.length(thickness)
            + " thick in the direction of the bend: its inside would fold",
        "a radius above "
            + Refusal.length(thickness / 2)
            + ", or a section thinner than "
            + Refusal.length(2 * radius)
            + " there");
  }

  private static void refusePassingThroughItself(Wanted w, List<Convex> cells, double length) {
    for (int i = 0; i < cells.size(); i++) {
      for (int j = i + 2; j < cells.size(); j++) {
        if (cells.get(i).bounds().meets(cells.get(j).bounds())
            && Overlap.exists(List.of(cells.get(i)), List.of(cells.get(j)))) {
          throw Refusal.of(
              "crosses-itself",
              w.pointer(),
              w.name()
                  + " passes through itself: about "
                  + Refusal.length(length * i / cells.size())
                  + " and "
                  + Refusal.length(length * j / cells.size())
                  + " from its start",
              "move the points of its middle line, or bow it less");
        }
      }
    }
  }
}
