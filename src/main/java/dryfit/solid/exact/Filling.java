package dryfit.solid.exact;

import java.util.Arrays;

/**
 * Fills flat faces with triangles, without adding points: cuts off ears until nothing is left, then
 * exchanges diagonals until no triangle is needlessly thin ({@link Diagonals}). Holes are first
 * joined to the rim by a double edge. Whatever rounding does, every rim edge is used exactly once.
 */
final class Filling {
  /**
   * Grid steps. Corners are rounded to doubles, so a corner that stands lower than this over the
   * line of its neighbours may as well lie on it.
   */
  static final double FLAT = 0x1p-12;

  private final double[] px;
  private final double[] py;
  private final IntList out;
  private final Diagonals diagonals;

  private int size;
  private int[] id = new int[64];
  private int[] next = new int[64];
  private int[] before = new int[64];
  private boolean[] reflex = new boolean[64];
  private int[] sorted = new int[64];
  private double[] keys = new double[64];
  private int sortedCount;

  /**
   * @param px two coordinates for each vertex, changed by the caller from face to face
   * @param out gets three vertices a triangle, anticlockwise in those coordinates
   */
  Filling(double[] px, double[] py, IntList out) {
    this.px = px;
    this.py = py;
    this.out = out;
    diagonals = new Diagonals(px, py, out);
  }

  /** Fills one face; the outer loop comes first and runs anticlockwise. */
  void fill(int[][] loops) {
    int first = out.size;
    if (loops.length == 1 && loops[0].length == 3) {
      triangle(loops[0][0], loops[0][1], loops[0][2]);
      return;
    }
    if (loops.length == 1 && loops[0].length == 4 && fillQuad(loops[0])) {
      return;
    }
    size = 0;
    int start = addLoop(loops[0]);
    int[] holes = new int[loops.length - 1];
    for (int l = 1; l < loops.length; l++) {
      holes[l - 1] = leftmost(addLoop(loops[l]));
    }
    joinHoles(start, holes);
    prepare();
    clip(start);
    diagonals.improve(first);
  }

  /** Fills a four-sided loop over its shorter diagonal that leaves two triangles with height. */
  private boolean fillQuad(int[] q) {
    boolean first = isHigh(q[0], q[1], q[2]) && isHigh(q[0], q[2], q[3]);
    boolean second = isHigh(q[1], q[2], q[3]) && isHigh(q[1], q[3], q[0]);
    if (!first && !second) {
      return false;
    }
    int k = first && (!second || span(q[0], q[2]) <= span(q[1], q[3])) ? 0 : 1;
    triangle(q[k], q[k + 1], q[k + 2]);
    triangle(q[k], q[k + 2], q[(k + 3) % 4]);
    return true;
  }

  private double span(int a, int b) {
    return Math.abs(px[a] - px[b]) + Math.abs(py[a] - py[b]);
  }

  private boolean isHigh(int a, int b, int c) {
    double ux = px[b] - px[a];
    double uy = py[b] - py[a];
    double vx = px[c] - px[a];
    double vy = py[c] - py[a];
    return ux * vy - uy * vx > FLAT * Math.max(span(a, b), Math.max(span(b, c), span(a, c)));
  }

  private void triangle(int a, int b, int c) {
    out.add(a);
    out.add(b);
    out.add(c);
  }

  private int node(int vertex) {
    if (size == id.length) {
      id = Arrays.copyOf(id, 2 * size);
      next = Arrays.copyOf(next, 2 * size);
      before = Arrays.copyOf(before, 2 * size);
      reflex = Arrays.copyOf(reflex, 2 * size);
      sorted = new int[2 * size];
    }
    id[size] = vertex;
    return size++;
  }

  private int addLoop(int[] loop) {
    int start = size;
    for (int v : loop) {
      int n = node(v);
      before[n] = n - 1;
      next[n] = n + 1;
    }
    before[start] = size - 1;
    next[size - 1] = start;
    return start;
  }

  private int leftmost(int start) {
    int best = start;
    for (int n = next[start]; n != start; n = next[n]) {
      if (isLeft(n, best)) {
        best = n;
      }
    }
    return best;
  }

  private boolean isLeft(int a, int b) {
    double d = px[id[a]] - px[id[b]];
    return d < 0 || (d == 0 && py[id[a]] < py[id[b]]);
  }

  private void joinHoles(int start, int[] holes) {
    for (int k = 1; k < holes.length; k++) {
      int h = holes[k];
      int m = k;
      while (m > 0 && isLeft(h, holes[m - 1])) {
        holes[m] = holes[m - 1];
        m--;
      }
      holes[m] = h;
    }
    for (int hole : holes) {
      int to = bridge(start, hole);
      int a = node(id[to]);
      int b = node(id[hole]);
      // to -> hole ... hole again -> to again -> what followed to
      next[a] = next[to];
      before[next[to]] = a;
      next[b] = a;
      before[a] = b;
      before[b] = before[hole];
      next[before[hole]] = b;
      next[to] = hole;
      before[hole] = to;
    }
  }

  /** A corner of the rim so far that a hole's leftmost corner sees. */
  private int bridge(int start, int hole) {
    double hx = px[id[hole]];
    double hy = py[id[hole]];
    double bestX = Double.NEGATIVE_INFINITY;
    int best = -1;
    int n = start;
    do {
      int m = next[n];
      double ax = px[id[n]];
      double ay = py[id[n]];
      double bx = px[id[m]];
      double by = py[id[m]];
      // The wood is on the left, so a rim edge seen to the left of the hole runs down.
      if (ay >= hy && by <= hy && ay > by) {
        double x = bx + (hy - by) * (ax - bx) / (ay - by);
        if (x <= hx && x > bestX) {
          bestX = x;
          best = hy == ay ? n : hy == by ? m : ax < bx ? n : m;
        }
      }
      n = m;
    } while (n != start);
    if (best < 0) {
      return start;
    }
    return nearest(start, best, bestX, hole);
  }

  /** The corner within the triangle of hole, seen place and candidate that nothing can hide. */
  private int nearest(int start, int candidate, double seenX, int hole) {
    double hx = px[id[hole]];
    double hy = py[id[hole]];
    double cx = px[id[candidate]];
    double cy = py[id[candidate]];
    int best = candidate;
    // A corner that earlier bridges end at is in the ring more than once, each time with other wood
    // beside it; the one found first may look away from the hole.
    double least =
        seesInside(candidate, hole) ? slope(candidate, hx, hy) : Double.POSITIVE_INFINITY;
    int n = start;
    do {
      double x = px[id[n]];
      double y = py[id[n]];
      if (n != candidate
          && x <= hx
          && x >= Math.min(seenX, cx)
          && (cy >= hy ? y >= hy && y <= cy : y <= hy && y >= cy)
          && isWithin(x, y, hx, hy, seenX, hy, cx, cy)) {
        double s = slope(n, hx, hy);
        if ((s < least || (s == least && x > px[id[best]])) && seesInside(n, hole)) {
          least = s;
          best = n;
        }
      }
      n = next[n];
    } while (n != start);
    return best;
  }

  private double slope(int n, double hx, double hy) {
    double dx = hx - px[id[n]];
    double dy = Math.abs(hy - py[id[n]]);
    return dx == 0 && dy == 0 ? -1 : dy / dx;
  }

  /** Whether the direction from a corner to another lies within the wood at that corner. */
  private boolean seesInside(int n, int other) {
    int a = before[n];
    int b = next[n];
    return turn(a, n, b) < 0
        ? turn(n, other, a) >= 0 || turn(n, b, other) >= 0
        : turn(n, other, a) >= 0 && turn(n, b, other) >= 0;
  }

  private static boolean isWithin(
      double x, double y, double ax, double ay, double bx, double by, double cx, double cy) {
    double s = (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    double t = (cx - bx) * (y - by) - (cy - by) * (x - bx);
    double u = (ax - cx) * (y - cy) - (ay - cy) * (x - cx);
    return (s >= 0 && t >= 0 && u >= 0) || (s <= 0 && t <= 0 && u <= 0);
  }

  private double turn(int a, int b, int c) {
    double ux = px[id[b]] - px[id[a]];
    double uy = py[id[b]] - py[id[a]];
    double vx = px[id[c]] - px[id[a]];
    double vy = py[id[c]] - py[id[a]];
    return ux * vy - uy * vx;
  }

  /** Whether a corner stands out over the line of its neighbours. */
  private boolean isConvex(int n) {
    int a = before[n];
    int c = next[n];
    double ux = px[id[c]] - px[id[a]];
    double uy = py[id[c]] - py[id[a]];
    return turn(a, n, c) > FLAT * (Math.abs(ux) + Math.abs(uy));
  }

  /** Sorts the corners that can hide behind an ear: those that are not convex. */
  private void prepare() {
    sortedCount = 0;
    for (int n = 0; n < size; n++) {
      reflex[n] = !isConvex(n);
      if (reflex[n]) {
        sorted[sortedCount++] = n;
      }
    }
    if (keys.length < sortedCount) {
      keys = new double[2 * sortedCount];
    }
    double[] x = new double[sortedCount];
    for (int k = 0; k < sortedCount; k++) {
      x[k] = px[id[sorted[k]]];
    }
    if (sortedCount > 1) {
      long[] ranks = Ranks.sorted(x);
      int[] copy = Arrays.copyOf(sorted, sortedCount);
      for (int k = 0; k < sortedCount; k++) {
        sorted[k] = copy[(int) ranks[k]];
      }
    }
    for (int k = 0; k < sortedCount; k++) {
      keys[k] = px[id[sorted[k]]];
    }
  }

  private boolean isEar(int n) {
    if (!isConvex(n)) {
      return false;
    }
    int a = id[before[n]];
    int b = id[n];
    int c = id[next[n]];
    if (a == c) {
      return false;
    }
    double lowX = Math.min(px[a], Math.min(px[b], px[c]));
    double highX = Math.max(px[a], Math.max(px[b], px[c]));
    double lowY = Math.min(py[a], Math.min(py[b], py[c]));
    double highY = Math.max(py[a], Math.max(py[b], py[c]));
    for (int k = from(lowX); k < sortedCount && keys[k] <= highX; k++) {
      int r = sorted[k];
      if (reflex[r]) {
        int v = id[r];
        double y = py[v];
        if (y >= lowY
            && y <= highY
            && v != a
            && v != b
            && v != c
            && isWithin(px[v], y, px[a], py[a], px[b], py[b], px[c], py[c])) {
          return false;
        }
      }
    }
    return true;
  }

  private int from(double x) {
    int low = 0;
    int high = sortedCount;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (keys[middle] < x) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private void clip(int start) {
    int n = start;
    int left = 0;
    for (int m = next[start]; m != start; m = next[m]) {
      left++;
    }
    left++;
    int tried = 0;
    while (left > 3) {
      boolean ear = isEar(n);
      if (!ear && tried > left) {
        // Only rounding or a rim that touches itself can bring this about.
        n = leastBad(n);
        ear = true;
      }
      if (!ear) {
        n = next[n];
        tried++;
        continue;
      }
      int a = before[n];
      int c = next[n];
      triangle(id[a], id[n], id[c]);
      next[a] = c;
      before[c] = a;
      reflex[n] = false;
      reflex[a] &= !isConvex(a);
      reflex[c] &= !isConvex(c);
      left--;
      tried = 0;
      // The next but one, so that ears do not all hang on one corner.
      n = next[c];
    }
    triangle(id[before[n]], id[n], id[next[n]]);
  }

  /** The corner whose triangle is wrong by the least area. */
  private int leastBad(int start) {
    int best = start;
    double least = Double.POSITIVE_INFINITY;
    int n = start;
    do {
      if (id[before[n]] != id[next[n]]) {
        double area = Math.abs(turn(before[n], n, next[n]));
        if (area < least) {
          least = area;
          best = n;
        }
      }
      n = next[n];
    } while (n != start);
    return best;
  }
}
