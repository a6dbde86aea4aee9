package dryfit.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.CGAlgorithmsDD;

/**
 * Cuts a simple anticlockwise outline into triangles by taking off ears, the one with the smallest
 * circumcircle first, as in a Delaunay triangulation. So a curved band is cut across, into compact
 * pieces, and not along its bends into shavings. Every point is kept, also one in line with its
 * neighbours, and no triangle is flat: a diagonal that runs through a point is not taken.
 */
final class Ears {
  private static final int FREE = -1;

  private final List<Vec2> points;
  private final int[] next;
  private final int[] previous;

  /** For each point: FREE if it is an ear, itself if it does not turn left, else what is in it. */
  private final int[] blocker;

  Ears(List<Vec2> points) {
    this.points = points;
    int n = points.size();
    next = new int[n];
    previous = new int[n];
    blocker = new int[n];
    for (int i = 0; i < n; i++) {
      next[i] = (i + 1) % n;
      previous[i] = (i + n - 1) % n;
    }
  }

  /** 1 if the way from a by b to c turns left, -1 if right, 0 if not; exact. */
  static int turn(Vec2 a, Vec2 b, Vec2 c) {
    return CGAlgorithmsDD.orientationIndex(a.x(), a.y(), b.x(), b.y(), c.x(), c.y());
  }

  /**
   * @throws IllegalArgumentException if the outline is not simple
   */
  List<int[]> triangles() {
    int n = points.size();
    for (int i = 0; i < n; i++) {
      blocker[i] = blockerOf(i);
    }
    List<int[]> out = new ArrayList<>();
    int start = 0;
    for (int left = n; left > 3; left--) {
      int ear = best(start, left);
      if (ear < 0) {
        throw new IllegalArgumentException("the outline crosses itself");
      }
      int p = previous[ear];
      int q = next[ear];
      out.add(new int[] {p, ear, q});
      next[p] = q;
      previous[q] = p;
      start = p;
      refresh(start, left - 1, ear, p, q);
    }
    out.add(new int[] {previous[start], start, next[start]});
    return out;
  }

  private int best(int start, int left) {
    int ear = -1;
    double smallest = Double.POSITIVE_INFINITY;
    int i = start;
    for (int k = 0; k < left; k++, i = next[i]) {
      if (blocker[i] == FREE) {
        double radius = circumradius(previous[i], i, next[i]);
        // The lower number wins a tie, so that the result does not hang on where we start.
        if (ear < 0 || radius < smallest || (radius == smallest && i < ear)) {
          smallest = radius;
          ear = i;
        }
      }
    }
    return ear;
  }

  private double circumradius(int i, int j, int k) {
    Vec2 a = points.get(i);
    Vec2 b = points.get(j);
    Vec2 c = points.get(k);
    double twiceArea = Math.abs(b.minus(a).cross(c.minus(a)));
    return a.distance(b) * b.distance(c) * c.distance(a) / (2 * twiceArea);
  }

  /** Taking off an ear changes its neighbours, and those points that only it stood in. */
  private void refresh(int start, int left, int ear, int p, int q) {
    int i = start;
    for (int k = 0; k < left; k++, i = next[i]) {
      if (i == p || i == q || blocker[i] == ear) {
        blocker[i] = blockerOf(i);
      }
    }
  }

  private int blockerOf(int i) {
    Vec2 a = points.get(previous[i]);
    Vec2 b = points.get(i);
    Vec2 c = points.get(next[i]);
    if (turn(a, b, c) <= 0) {
      return i;
    }
    double x0 = Math.min(a.x(), Math.min(b.x(), c.x()));
    double x1 = Math.max(a.x(), Math.max(b.x(), c.x()));
    double y0 = Math.min(a.y(), Math.min(b.y(), c.y()));
    double y1 = Math.max(a.y(), Math.max(b.y(), c.y()));
    for (int k = next[next[i]]; k != previous[i]; k = next[k]) {
      Vec2 p = points.get(k);
      if (p.x() >= x0
          && p.x() <= x1
          && p.y() >= y0
          && p.y() <= y1
          && turn(a, b, p) >= 0
          && turn(b, c, p) >= 0
          && turn(c, a, p) >= 0) {
        return k;
      }
    }
    return FREE;
  }
}
