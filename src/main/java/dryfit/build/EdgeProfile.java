package dryfit.build;

import dryfit.document.EdgePlan;
import dryfit.geometry.Vec2;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * The outline of what a cutter takes off along an edge, as (down, into): millimetres into the
 * second face and into the first, measured along the faces, which need not be square to each other.
 * Beyond the wood it has a little room, so that no faces coincide.
 */
interface EdgeProfile {
  /** Room in the air on the far side of the edge, mm. */
  double ROOM = 0.5;

  /** How far a last facet is led out of the face that it runs into, mm. */
  double OUT = 0.3;

  /**
   * @param angle of the wood between the two faces, radians
   */
  List<Vec2> at(double angle);

  static EdgeProfile of(EdgePlan plan, double sharpest) {
    return switch (plan.shape()) {
      case CHAMFER -> chamfer(plan.size());
      case EASED -> eased(plan.size());
      case ROUND_OVER -> roundOver(plan.size(), sharpest);
    };
  }

  /** Along each face so much. */
  static EdgeProfile chamfer(double leg) {
    return angle -> flat(leg);
  }

  /** A flat so much across. */
  static EdgeProfile eased(double across) {
    return angle -> flat(across / 2 / Math.sin(angle / 2));
  }

  private static List<Vec2> flat(double leg) {
    return List.of(
        new Vec2(-ROOM, -ROOM), new Vec2(leg + ROOM, -ROOM), new Vec2(-ROOM, leg + ROOM));
  }

  /**
   * An arc that both faces touch, its facets' corners on it.
   *
   * @param sharpest the sharpest angle it must turn round
   */
  static EdgeProfile roundOver(double radius, double sharpest) {
    double step = 2 * Math.acos(Math.max(0, 1 - Tolerances.facet() / radius));
    int n = Math.max(2, (int) Math.ceil((Math.PI - sharpest) / step));
    return angle -> arc(radius, angle, n);
  }

  private static List<Vec2> arc(double radius, double angle, int n) {
    double touch = radius / Math.tan(angle / 2);
    List<Vec2> points = new ArrayList<>();
    // In a plane with the first face along x: the centre is a radius below where it is touched.
    for (int i = 0; i <= n; i++) {
      double turn = (Math.PI - angle) * i / n;
      double x = touch - radius * Math.sin(turn);
      double y = radius - radius * Math.cos(turn);
      points.add(new Vec2(x, y));
    }
    points.set(0, ledOn(points.get(1), points.get(0), (Math.PI - angle) / (2 * n)));
    points.set(n, ledOn(points.get(n - 1), points.get(n), (Math.PI - angle) / (2 * n)));
    List<Vec2> out = new ArrayList<>();
    out.add(new Vec2(-ROOM, -ROOM));
    for (int i = n; i >= 0; i--) {
      Vec2 p = points.get(i);
      double down = p.y() / Math.sin(angle);
      out.add(new Vec2(down, p.x() - down * Math.cos(angle)));
    }
    return out;
  }

  /** A facet led on out of the face that it meets at so small an angle. */
  private static Vec2 ledOn(Vec2 from, Vec2 to, double climb) {
    double by = OUT / Math.sin(climb) / from.distance(to);
    return new Vec2(to.x() + (to.x() - from.x()) * by, to.y() + (to.y() - from.y()) * by);
  }

  /**
   * A bevel from a flat down to the edge of a board.
   *
   * @param deep how far below the face the flat lies, mm
   * @param flat how wide the flat is, from the edge
   * @param margin where the bevel reaches the face, from the edge
   */
  static EdgeProfile bevel(double deep, double flat, double margin) {
    double slope = (margin - flat) / deep;
    List<Vec2> points = new ArrayList<>();
    points.add(new Vec2(-ROOM, -ROOM));
    if (flat > 0) {
      points.add(new Vec2(deep, -ROOM));
      points.add(new Vec2(deep, flat));
    } else {
      points.add(new Vec2(deep + ROOM / slope, -ROOM));
    }
    points.add(new Vec2(-ROOM, margin + ROOM * slope));
    List<Vec2> fixed = List.copyOf(points);
    return angle -> fixed;
  }
}
