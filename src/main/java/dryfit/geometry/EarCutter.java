package dryfit.geometry;

import dryfit.measure.Tolerances;

/** Cuts the ears of one ring of corners. A ring may run along a bridge both ways. */
final class EarCutter {
  private final double[] xy;
  private final int[] ring;
  private final Sight sight;
  private final int[] before;
  private final int[] after;
  private final double[] fatness;
  private int left;
  private int first;

  EarCutter(double[] xy, int[] ring) {
    this.xy = xy;
    this.ring = ring;
    this.sight = new Sight(xy);
    this.left = ring.length;
    this.before = new int[left];
    this.after = new int[left];
    this.fatness = new double[left];
    for (int i = 0; i < left; i++) {
      before[i] = (i + left - 1) % left;
      after[i] = (i + 1) % left;
    }
  }

  int[] triangles() {
    int[] out = new int[3 * (left - 2)];
    int size = 0;
    judgeAll(true);
    while (left > 2) {
      int ear = fattest();
      if (fatness[ear] <= 0) {
        judgeAll(true);
        ear = fattest();
      }
      if (fatness[ear] <= 0) {
        judgeAll(false);
        ear = fattest();
      }
      out[size++] = ring[before[ear]];
      out[size++] = ring[ear];
      out[size++] = ring[after[ear]];
      cut(ear);
    }
    return out;
  }

  private void cut(int ear) {
    int a = before[ear];
    int c = after[ear];
    after[a] = c;
    before[c] = a;
    left--;
    first = a;
    if (left > 2) {
      fatness[a] = fatness(a, true);
      fatness[c] = fatness(c, true);
    }
  }

  private void judgeAll(boolean strict) {
    int i = first;
    do {
      fatness[i] = fatness(i, strict);
      i = after[i];
    } while (i != first);
  }

  private int fattest() {
    int best = first;
    for (int i = after[first]; i != first; i = after[i]) {
      if (fatness[i] > fatness[best] || (fatness[i] == fatness[best] && i < best)) {
        best = i;
      }
    }
    return best;
  }

  /**
   * Height over longest side of the ear at corner {@code i}; not positive if it is no ear. When the
   * judge is not strict, rounding has left no proper ear, and any left turn will do rather than
   * none.
   */
  private double fatness(int i, boolean strict) {
    int a = ring[before[i]];
    int b = ring[i];
    int c = ring[after[i]];
    double area = sight.turn(a, b, c);
    double longest = Math.max(distance(a, b), Math.max(distance(b, c), distance(c, a)));
    double fat = longest > 0 ? area / (longest * longest) : 0;
    if (area <= 0 || left == 3 || !strict) {
      return fat;
    }
    if (area / longest <= Tolerances.coincident()) {
      return 0;
    }
    return opens(i) && !anyCornerIn(i) ? fat : 0;
  }

  private boolean opens(int i) {
    int p = before[i];
    int n = after[i];
    return sight.within(ring[before[p]], ring[p], ring[i], ring[n])
        && sight.within(ring[i], ring[n], ring[after[n]], ring[p]);
  }

  private boolean anyCornerIn(int ear) {
    int a = ring[before[ear]];
    int b = ring[ear];
    int c = ring[after[ear]];
    double margin = Tolerances.coincident();
    double x0 = Math.min(xy[2 * a], Math.min(xy[2 * b], xy[2 * c])) - margin;
    double x1 = Math.max(xy[2 * a], Math.max(xy[2 * b], xy[2 * c])) + margin;
    double y0 = Math.min(xy[2 * a + 1], Math.min(xy[2 * b + 1], xy[2 * c + 1])) - margin;
    double y1 = Math.max(xy[2 * a + 1], Math.max(xy[2 * b + 1], xy[2 * c + 1])) + margin;
    for (int i = after[after[ear]]; i != before[ear]; i = after[i]) {
      int p = ring[i];
      double x = xy[2 * p];
      double y = xy[2 * p + 1];
      if (x < x0 || x > x1 || y < y0 || y > y1) {
        continue;
      }
      if (!sight.same(p, a) && !sight.same(p, b) && !sight.same(p, c) && inside(a, b, c, p)) {
        return true;
      }
    }
    return false;
  }

  /** In the triangle or on its sides; a corner all but on the cut c-a counts, on either side. */
  private boolean inside(int a, int b, int c, int p) {
    double overCut = sight.turn(c, a, p);
    double length = distance(c, a);
    if (Math.abs(overCut) <= Tolerances.coincident() * length) {
      double along =
          (xy[2 * p] - xy[2 * c]) * (xy[2 * a] - xy[2 * c])
              + (xy[2 * p + 1] - xy[2 * c + 1]) * (xy[2 * a + 1] - xy[2 * c + 1]);
      return along > 0 && along < length * length;
    }
    return overCut > 0 && sight.turn(a, b, p) >= 0 && sight.turn(b, c, p) >= 0;
  }

  private double distance(int a, int b) {
    return Math.hypot(xy[2 * a] - xy[2 * b], xy[2 * a + 1] - xy[2 * b + 1]);
  }
}
