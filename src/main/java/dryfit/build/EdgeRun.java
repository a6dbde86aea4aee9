package dryfit.build;

import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * An edge of a part along which a cutter is led: straight pieces from point to point, and for each
 * piece the ways into the two faces that meet there.
 *
 * @param points from its start; the first is not repeated at the end of a closed run
 * @param into for each piece the unit direction square to it that leads into the first face; seen
 *     along the run with that face up, it leads to the left
 * @param down likewise into the second face
 * @param along for each point how far along the part it is, mm
 * @param overStart how far a cutter is led on beyond the start, mm; 0 where wood goes on there
 * @param overEnd likewise beyond the end
 */
record EdgeRun(
    List<Vec3> points,
    List<Vec3> into,
    List<Vec3> down,
    List<Double> along,
    boolean closed,
    double overStart,
    double overEnd) {
  EdgeRun {
    points = List.copyOf(points);
    into = List.copyOf(into);
    down = List.copyOf(down);
    along = List.copyOf(along);
  }

  int pieces() {
    return into.size();
  }

  Vec3 direction(int piece) {
    return points.get((piece + 1) % points.size()).minus(points.get(piece)).unit();
  }

  /** Angle of the wood between the two faces at a piece, radians. */
  double angle(int piece) {
    return into.get(piece).angleTo(down.get(piece));
  }

  /** This with its ends led on or not. */
  EdgeRun over(double atStart, double atEnd) {
    return new EdgeRun(points, into, down, along, closed, atStart, atEnd);
  }

  /** The stretches of it between two places along the part, ended square there. */
  List<EdgeRun> between(double from, double to) {
    if (along.stream().allMatch(a -> a >= from && a <= to)) {
      return List.of(this);
    }
    List<EdgeRun> out = new ArrayList<>();
    Collected open = null;
    for (int i = 0; i < pieces(); i++) {
      int next = (i + 1) % points.size();
      double a = along.get(i);
      double b = along.get(next);
      double s0 = share(a, b, from, to, true);
      double s1 = share(a, b, from, to, false);
      if (!(s0 < s1)) {
        continue;
      }
      if (open == null || s0 > 0) {
        open = new Collected(i == 0 && s0 == 0 ? overStart : 0);
        open.points.add(mixed(i, next, s0));
        open.along.add(a + (b - a) * s0);
      }
      open.points.add(mixed(i, next, s1));
      open.along.add(a + (b - a) * s1);
      open.into.add(into.get(i));
      open.down.add(down.get(i));
      if (s1 < 1 || i == pieces() - 1) {
        out.add(open.run(s1 == 1 && i == pieces() - 1 ? overEnd : 0));
        open = null;
      }
    }
    if (open != null) {
      out.add(open.run(0));
    }
    return out;
  }

  /** Where a piece from a to b along the part comes into a stretch, or leaves it: 0 to 1. */
  private static double share(double a, double b, double from, double to, boolean entering) {
    if (a == b) {
      return a < from || a > to ? (entering ? 1 : 0) : (entering ? 0 : 1);
    }
    double first = (from - a) / (b - a);
    double second = (to - a) / (b - a);
    return entering
        ? Math.min(1, Math.max(0, Math.min(first, second)))
        : Math.max(0, Math.min(1, Math.max(first, second)));
  }

  private Vec3 mixed(int i, int next, double share) {
    Vec3 a = points.get(i);
    return share == 0
        ? a
        : share == 1 ? points.get(next) : a.plus(points.get(next).minus(a).times(share));
  }

  private static final class Collected {
    private final List<Vec3> points = new ArrayList<>();
    private final List<Vec3> into = new ArrayList<>();
    private final List<Vec3> down = new ArrayList<>();
    private final List<Double> along = new ArrayList<>();
    private final double overStart;

    Collected(double overStart) {
      this.overStart = overStart;
    }

    EdgeRun run(double overEnd) {
      return new EdgeRun(points, into, down, along, false, overStart, overEnd);
    }
  }

  /** This without one of its points; the longer of the two pieces there says how the faces lie. */
  EdgeRun without(int point) {
    int n = points.size();
    int before = (point + n - 1) % n;
    int after = (point + 1) % n;
    boolean first =
        points.get(before).distance(points.get(point))
            >= points.get(point).distance(points.get(after));
    List<Vec3> newPoints = new ArrayList<>(points);
    List<Double> newAlong = new ArrayList<>(along);
    List<Vec3> newInto = new ArrayList<>(into);
    List<Vec3> newDown = new ArrayList<>(down);
    Vec3 d = points.get(after).minus(points.get(before)).unit();
    newInto.set(before, into.get(first ? before : point).across(d).unit());
    newDown.set(before, down.get(first ? before : point).across(d).unit());
    newInto.remove(point);
    newDown.remove(point);
    newPoints.remove(point);
    newAlong.remove(point);
    return new EdgeRun(newPoints, newInto, newDown, newAlong, closed, overStart, overEnd);
  }
}
