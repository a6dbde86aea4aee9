package dryfit.build;

import dryfit.document.Hand;
import dryfit.document.PartPlan.Ends;
import dryfit.document.PartPlan.Level;
import dryfit.document.PartPlan.PartRef;
import dryfit.document.PartPlan.Placement.Between;
import dryfit.document.PartPlan.Reveal;
import dryfit.geometry.Box;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.List;

/**
 * Where the middle line of a part between two others runs.
 *
 * <p>Each of the two parts is cut square to the chair axis it mostly follows: an upright leg at the
 * height of the new part, a rail that runs sideways at the x given, one that runs front to back at
 * the y given. In that section the side that faces the other part is the mouth; the reveal is
 * measured along it from the outside (or inside) face, so it is right at the shoulder, where a
 * maker measures it.
 *
 * @param first on the mouth of the first part
 * @param second on the mouth of the second part
 * @param outside unit direction away from the middle of the chair, square to the line
 */
record AxisLine(Vec3 first, Vec3 second, Vec3 outside) {

  /**
   * What is known when a line is sought.
   *
   * @param width size of the new part across its width, mm; 0 if the level is that of its own line
   * @param thickness size across its thickness
   * @param bow how far above its own line the middle of the new part is, for the section's height
   * @param middleY y of the middle of the chair
   */
  record Wanted(
      String part,
      String pointer,
      Hand hand,
      Between between,
      double width,
      double thickness,
      double bow,
      double middleY) {}

  static AxisLine of(Wanted w, Stock first, Stock second) {
    Section a = section(w, first, w.between().first(), true);
    Section b = section(w, second, w.between().second(), false);
    Vec3 middle = a.middle().midway(b.middle());
    Vec3 fromMiddle = new Vec3(middle.x(), middle.y() - w.middleY(), 0);

    Spot pa = spot(w, a, b, fromMiddle, true);
    Spot pb = spot(w, b, a, fromMiddle, false);
    Vec3 qa = pa.at();
    Vec3 qb = pb.at();
    if (w.between().level().isPresent()) {
      Ends height = w.between().level().get().height();
      qa = new Vec3(qa.x(), qa.y(), height.first());
      qb = new Vec3(qb.x(), qb.y(), height.second());
    }
    Vec3 run = qb.minus(qa);
    if (run.length() <= Tolerances.coincident()) {
      throw Refusal.of(
          "parts-touch",
          w.pointer() + "/between",
          "there is no room for " + w.part() + " between " + first.name() + " and " + second.name(),
          "they must stand apart");
    }
    run = run.unit();
    Vec3 outside = pa.lateral();
    if (w.between().level().isPresent()) {
      outside = Vec3.UP.cross(run);
      outside = outward(outside, fromMiddle) < 0 ? outside.negated() : outside;
    }
    outside = outside.across(run).unit();
    Vec3 shift = outside.times(pa.shifted() * half(w, outside));
    if (w.between().level().isPresent()) {
      Level.Edge edge = w.between().level().get().edge();
      double down =
          edge == Level.Edge.TOP ? -w.width() / 2 : edge == Level.Edge.BOTTOM ? w.width() / 2 : 0;
      shift = shift.plus(Vec3.UP.across(run).unit().times(down));
    }
    return new AxisLine(qa.plus(shift), qb.plus(shift), outside);
  }

  /** Half the new part's size in a sideways direction. */
  private static double half(Wanted w, Vec3 lateral) {
    boolean sidewaysOfUpright =
        w.between().level().isEmpty() && Math.abs(lateral.x()) > Math.abs(lateral.y());
    return (sidewaysOfUpright ? w.width() : w.thickness()) / 2;
  }

  /** A part cut square to the chair axis it follows. */
  private record Section(Stock stock, Vec3 axis, List<Vec3> corners, Vec3 middle) {}

  private static Section section(Wanted w, Stock stock, PartRef ref, boolean isFirst) {
    Vec3 axis = axisOf(stock.frame().x());
    double at;
    if (axis.z() != 0) {
      Level level =
          w.between()
              .level()
              .orElseThrow(
                  () ->
                      Refusal.of(
                          "missing-value",
                          w.pointer(),
                          w.part() + " meets " + stock.name() + ", which stands upright",
                          "say at what height: \"top\", \"middle\" or \"bottom\""));
      double height = isFirst ? level.height().first() : level.height().second();
      at = height + w.bow();
      if (level.edge() == Level.Edge.TOP) {
        at -= w.width() / 2;
      } else if (level.edge() == Level.Edge.BOTTOM) {
        at += w.width() / 2;
      }
    } else {
      boolean sideways = axis.x() != 0;
      Ends ends =
          (sideways ? w.between().x() : w.between().y())
              .orElseThrow(
                  () ->
                      Refusal.of(
                          "missing-value",
                          w.pointer(),
                          w.part()
                              + " meets "
                              + stock.name()
                              + ", which runs "
                              + (sideways ? "sideways" : "front to back"),
                          "say where along it: \"" + (sideways ? "x" : "y") + "\""));
      at = isFirst ? ends.first() : ends.second();
    }
    List<Vec3> corners = Slice.points(stock.placedCells(), new Plane(axis, at));
    if (corners.isEmpty()) {
      throw Refusal.of(
          "mortise-misses",
          w.pointer() + "/between",
          w.part() + " would meet " + stock.name() + " where that has no wood",
          "move it so that it does meet " + ref.part());
    }
    return new Section(stock, axis, corners, Box.around(corners).middle());
  }

  private static Vec3 axisOf(Vec3 d) {
    double x = Math.abs(d.x());
    double y = Math.abs(d.y());
    double z = Math.abs(d.z());
    return z >= x && z >= y ? Vec3.UP : x >= y ? Vec3.RIGHT : Vec3.BACK;
  }

  /**
   * A place on a mouth.
   *
   * @param shifted -1 if the new part's outside face goes there, 1 its inside face, 0 its middle
   */
  private record Spot(Vec3 at, Vec3 lateral, int shifted) {}

  private static Spot spot(Wanted w, Section s, Section other, Vec3 fromMiddle, boolean isFirst) {
    Vec3 towards = other.middle().minus(s.middle()).across(s.axis());
    if (towards.length() <= Tolerances.coincident()) {
      throw Refusal.of(
          "parts-touch",
          w.pointer() + "/between",
          w.part() + " cannot tell which face of " + s.stock().name() + " it meets",
          "place it from point to point instead");
    }
    Vec3 u = towards.unit();
    Vec3 l = s.axis().cross(u);
    boolean upAndDown = Math.abs(l.z()) > 0.7;
    if (upAndDown ? l.z() < 0 : outward(l, fromMiddle) < 0) {
      l = l.negated();
    }
    SectionEdges edges = SectionEdges.of(s.corners(), u, l);
    if (upAndDown) {
      Ends height =
          w.between()
              .level()
              .orElseThrow(
                  () ->
                      Refusal.of(
                          "missing-value",
                          w.pointer(),
                          w.part() + " meets a side face of " + s.stock().name(),
                          "say at what height: \"top\", \"middle\" or \"bottom\""))
              .height();
      return new Spot(edges.mouthWhere(Vec3.UP, isFirst ? height.first() : height.second()), l, 0);
    }
    Ends absolute = absolute(w, l, s.axis());
    if (absolute != null) {
      double value = isFirst ? absolute.first() : absolute.second();
      return new Spot(edges.mouthWhere(axisOf(l), value), l, 0);
    }
    Reveal reveal = w.between().reveal().orElse(new Reveal(Reveal.From.CENTRED, new Ends(0, 0)));
    double by = isFirst ? reveal.by().first() : reveal.by().second();
    return switch (reveal.from()) {
      case OUTSIDE -> new Spot(edges.mouthAtOutside(by), l, -1);
      case INSIDE -> new Spot(edges.mouthAtInside(by), l, 1);
      case CENTRED -> new Spot(edges.mouthAtMiddle(by), l, 0);
    };
  }

  private static double outward(Vec3 l, Vec3 fromMiddle) {
    double away = l.dot(fromMiddle);
    // A part in the very middle has no outside of its own: right and back then count as outside.
    return Math.abs(away) > Tolerances.contact() ? away : l.x() + l.y();
  }

  private static Ends absolute(Wanted w, Vec3 l, Vec3 axis) {
    Vec3 along = axisOf(l);
    if (along.x() != 0 && axis.x() == 0) {
      return w.between().x().orElse(null);
    }
    if (along.y() != 0 && axis.y() == 0) {
      return w.between().y().orElse(null);
    }
    return null;
  }
}
