package dryfit.build;

import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Csg;
import dryfit.solid.Sweep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The solid that a cutter sweeps when it is led along an edge: its profile, mitred where the edge
 * turns.
 */
final class EdgeCutter {
  private EdgeCutter() {}

  /** Where a run turns this closely a corner of it may be left out: times the facet tolerance. */
  private static final double CLOSE = 2;

  /**
   * The cutter, or nothing if the edge turns more tightly than the profile is wide.
   *
   * @param origin the JSON pointer of what is cut
   */
  static Optional<Csg> along(EdgeRun run, EdgeProfile profile, String origin) {
    EdgeRun led = run;
    while (led.pieces() >= (led.closed() ? 3 : 1)) {
      List<List<Vec3>> rings = rings(led, profile);
      double[] advances = advances(led, rings);
      int drop = -1;
      boolean folded = false;
      for (int i = 0; i < advances.length && drop < 0; i++) {
        folded |= advances[i] <= 10 * Tolerances.coincident();
        // Steps shorter than the facets are fine would only make slivers.
        drop = advances[i] <= Tolerances.facet() ? closest(led, i) : -1;
      }
      if (drop < 0) {
        return folded
            ? Optional.empty()
            : Optional.of(Sweep.of(profile.at(led.angle(0)), rings, led.closed(), origin));
      }
      led = led.without(drop);
    }
    return Optional.empty();
  }

  private static List<List<Vec3>> rings(EdgeRun run, EdgeProfile profile) {
    int n = run.points().size();
    List<List<Vec3>> rings = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      boolean first = !run.closed() && i == 0;
      boolean last = !run.closed() && i == n - 1;
      int before = first ? 0 : (i + n - 1) % n;
      int after = last ? n - 2 : i;
      Vec3 at = run.points().get(i);
      if (first) {
        at = at.minus(run.direction(0).times(run.overStart()));
      } else if (last) {
        at = at.plus(run.direction(n - 2).times(run.overEnd()));
      }
      Vec3 normal = run.direction(before).plus(run.direction(after)).unit();
      Vec3 into = mitred(run.into(), run, before, after, normal);
      Vec3 down = mitred(run.down(), run, before, after, normal);
      double angle = (run.angle(before) + run.angle(after)) / 2;
      List<Vec3> ring = new ArrayList<>();
      for (Vec2 p : profile.at(angle)) {
        ring.add(at.plus(down.times(p.x())).plus(into.times(p.y())));
      }
      rings.add(ring);
    }
    return rings;
  }

  /** The way into a face, carried along both pieces into the plane of their mitre. */
  private static Vec3 mitred(List<Vec3> ways, EdgeRun run, int before, int after, Vec3 normal) {
    Vec3 a = onto(ways.get(before), run.direction(before), normal);
    Vec3 b = onto(ways.get(after), run.direction(after), normal);
    return a.midway(b);
  }

  private static Vec3 onto(Vec3 way, Vec3 along, Vec3 normal) {
    return way.minus(along.times(way.dot(normal) / along.dot(normal)));
  }

  /** How far each piece takes the corner of the profile that it takes least; below 0: backwards. */
  private static double[] advances(EdgeRun run, List<List<Vec3>> rings) {
    double[] least = new double[run.pieces()];
    for (int i = 0; i < least.length; i++) {
      List<Vec3> a = rings.get(i);
      List<Vec3> b = rings.get((i + 1) % rings.size());
      Vec3 d = run.direction(i);
      least[i] = Double.POSITIVE_INFINITY;
      for (int k = 0; k < a.size(); k++) {
        least[i] = Math.min(least[i], b.get(k).minus(a.get(k)).dot(d));
      }
    }
    return least;
  }

  /** The corner at either end of a piece that is nearest to lying straight; -1 if none is near. */
  private static int closest(EdgeRun run, int piece) {
    int n = run.points().size();
    int best = -1;
    double least = CLOSE * Tolerances.facet();
    for (int i : new int[] {piece, (piece + 1) % n}) {
      if (!run.closed() && (i == 0 || i == n - 1)) {
        continue;
      }
      Vec3 a = run.points().get((i + n - 1) % n);
      Vec3 b = run.points().get((i + 1) % n);
      if (a.distance(b) <= Tolerances.coincident()) {
        continue;
      }
      double off = run.points().get(i).minus(a).across(b.minus(a).unit()).length();
      if (off < least) {
        least = off;
        best = i;
      }
    }
    return best;
  }
}
