package dryfit.build;

import dryfit.document.PartPlan.CornerBlock;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;

/**
 * A block in the corner between two rails. Its ends are the rails' own inside faces, whatever angle
 * these stand at; its long face goes upright through the two places it reaches to, at the height of
 * its top. Its length runs from the first rail to the second, its width upright, and its thickness
 * into the corner.
 */
final class CornerBlockForm {
  private CornerBlockForm() {}

  /** How far from a rail a line of sight to its inside face begins, mm. */
  private static final double AWAY = 400;

  static StandingShape of(CornerBlock plan, Stock first, Stock second) {
    double middleHeight = plan.top() - plan.high() / 2;
    Vec3 c = crossing(plan, first, second, middleHeight);
    Vec3 alongFirst = away(first, c);
    Vec3 alongSecond = away(second, c);
    Plane one = inside(plan, first, c, alongFirst, alongSecond);
    Plane other = inside(plan, second, c, alongSecond, alongFirst);
    Plane top = new Plane(Vec3.UP, plan.top());
    Vec3 corner = meeting(one, other, top);
    Vec3 u = level(one, alongFirst);
    Vec3 v = level(other, alongSecond);
    Vec3 a = corner.plus(u.times(plan.alongFirst()));
    refuseLongerThan(first, plan.alongFirst(), plan, "/along");
    double onSecond = reachOnSecond(plan, u, v);
    refuseLongerThan(second, onSecond, plan, plan.alongSecond().isPresent() ? "/along" : "/angle");
    Vec3 b = corner.plus(v.times(onSecond));

    Vec3 length = b.minus(a).unit();
    Vec3 intoCorner = corner.minus(a).across(length).across(Vec3.UP).unit();
    Frame frame = Frame.of(a.minus(Vec3.UP.times(plan.high() / 2)), length, Vec3.UP);
    double far = a.distance(b) + corner.distance(a) + plan.high() * 4;
    double deep = plan.thickness().orElse(corner.minus(a).dot(intoCorner) + far);
    double sign = Math.signum(frame.z().dot(intoCorner));
    Convex block =
        Convex.box(
            new Box(
                new Vec3(-far, -plan.high() / 2, sign > 0 ? 0 : -deep),
                new Vec3(far, plan.high() / 2, sign > 0 ? deep : 0)));
    Convex cut =
        block
            .clipped(frame.local(one.flipped()))
            .flatMap(k -> k.clipped(frame.local(other.flipped())))
            .orElseThrow(() -> nothingLeft(plan));
    double low = -cut.reach(Vec3.RIGHT.negated());
    double high = cut.reach(Vec3.RIGHT);
    return new StandingShape(
        frame, cut.asLeaf(plan.common().pointer()), low, high, frame.place(cut.middle()));
  }

  /** A block lies against its rails and ends on them. */
  private static void refuseLongerThan(Stock rail, double along, CornerBlock plan, String key) {
    double length = rail.endPoint(true).distance(rail.endPoint(false));
    if (along > length) {
      throw Refusal.of(
          "out-of-range",
          plan.common().pointer() + key,
          plan.name()
              + " would reach "
              + Refusal.length(along)
              + " along "
              + rail.name()
              + ", which is "
              + Refusal.length(length)
              + " long",
          "make the " + key.substring(1) + " smaller");
    }
  }

  private static Refusal nothingLeft(CornerBlock plan) {
    return Refusal.of(
        "no-corner",
        plan.common().pointer(),
        "nothing is left of " + plan.name() + " between its rails",
        "make it reach further along them, or make it thinner");
  }

  /** Where the middle lines of the two rails would cross, seen from above. */
  private static Vec3 crossing(CornerBlock plan, Stock first, Stock second, double height) {
    Vec3 p = flat(first.endPoint(true), height);
    Vec3 q = flat(second.endPoint(true), height);
    Vec3 u = flat(first.endPoint(false), height).minus(p);
    Vec3 v = flat(second.endPoint(false), height).minus(q);
    double cross = u.x() * v.y() - u.y() * v.x();
    if (Math.abs(cross) <= 0.05 * u.length() * v.length()) {
      throw Refusal.of(
          "no-corner",
          plan.common().pointer() + "/in-corner",
          first.name() + " and " + second.name() + " run side by side and make no corner",
          "name two rails that meet");
    }
    Vec3 w = q.minus(p);
    return p.plus(u.times((w.x() * v.y() - w.y() * v.x()) / cross));
  }

  private static Vec3 flat(Vec3 p, double height) {
    return new Vec3(p.x(), p.y(), height);
  }

  /** The level unit direction along a rail, away from the corner. */
  private static Vec3 away(Stock rail, Vec3 corner) {
    Vec3 start = flat(rail.endPoint(true), corner.z());
    Vec3 end = flat(rail.endPoint(false), corner.z());
    return start.distance(corner) < end.distance(corner)
        ? end.minus(start).unit()
        : start.minus(end).unit();
  }

  /** The face of a rail that looks into the corner, met half way along the block. */
  private static Plane inside(CornerBlock plan, Stock rail, Vec3 corner, Vec3 along, Vec3 inward) {
    Vec3 square = inward.across(along).unit();
    Vec3 from =
        corner.plus(along.times(plan.alongFirst() / 2 + AWAY / 20)).plus(square.times(AWAY));
    return CellRay.first(rail.placedCells(), from, square.negated())
        .map(CellRay.Entry::face)
        .orElseThrow(
            () ->
                Refusal.of(
                    "mortise-misses",
                    plan.common().pointer() + "/top",
                    plan.name() + " would stand beside " + rail.name() + " where that has no wood",
                    "put it at the height of its rails"));
  }

  private static Vec3 level(Plane face, Vec3 along) {
    Vec3 d = face.normal().cross(Vec3.UP).unit();
    return d.dot(along) < 0 ? d.negated() : d;
  }

  private static double reachOnSecond(CornerBlock plan, Vec3 u, Vec3 v) {
    if (plan.alongSecond().isPresent()) {
      return plan.alongSecond().getAsDouble();
    }
    // Law of sines in the triangle corner, first end, second end.
    double atFirst = plan.angle().orElseThrow();
    double atSecond = Math.PI - atFirst - u.angleTo(v);
    if (atSecond <= Math.toRadians(1)) {
      throw Refusal.of(
          "out-of-range",
          plan.common().pointer() + "/angle",
          "at that angle " + plan.name() + " never comes to its second rail",
          "make the angle smaller");
    }
    return plan.alongFirst() * Math.sin(atFirst) / Math.sin(atSecond);
  }

  /** Where three planes meet, by Cramer's rule. */
  private static Vec3 meeting(Plane a, Plane b, Plane c) {
    Vec3 bc = b.normal().cross(c.normal());
    Vec3 ca = c.normal().cross(a.normal());
    Vec3 ab = a.normal().cross(b.normal());
    double det = a.normal().dot(bc);
    if (Math.abs(det) <= Tolerances.parallel()) {
      throw new IllegalStateException("three planes that do not meet");
    }
    return bc.times(a.offset())
        .plus(ca.times(b.offset()))
        .plus(ab.times(c.offset()))
        .times(1 / det);
  }
}
