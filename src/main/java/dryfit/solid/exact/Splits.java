package dryfit.solid.exact;

/** Finds where the segments of one plane meet, and divides them there. */
final class Splits {
  private final Points points;
  private final Segments segments;
  private int[] head = new int[64];
  private final IntList splitPoint = new IntList();
  private final IntList splitNext = new IntList();
  private final IntList listed = new IntList();
  private int[] order = new int[64];
  private double[] lowI = new double[64];
  private double[] highI = new double[64];
  private double[] lowJ = new double[64];
  private double[] highJ = new double[64];
  private int plane;

  Splits(Points points, Segments segments) {
    this.points = points;
    this.segments = segments;
  }

  /** Finds all meetings among the listed segments of a plane. */
  void find(int plane, IntList chosen) {
    this.plane = plane;
    int n = chosen.size;
    if (head.length < segments.count) {
      head = new int[2 * segments.count];
      order = new int[head.length];
      lowI = new double[head.length];
      highI = new double[head.length];
      lowJ = new double[head.length];
      highJ = new double[head.length];
    }
    splitPoint.clear();
    splitNext.clear();
    for (int k = 0; k < n; k++) {
      int s = chosen.at[k];
      head[s] = -1;
      double a = points.along(segments.p[s], segments.j);
      double b = points.along(segments.q[s], segments.j);
      // Rounded coordinates are off by far less than a grid step.
      lowI[s] = points.along(segments.p[s], segments.i) - 1;
      highI[s] = points.along(segments.q[s], segments.i) + 1;
      lowJ[s] = Math.min(a, b) - 1;
      highJ[s] = Math.max(a, b) + 1;
    }
    sort(chosen);
    for (int k = 0; k < n; k++) {
      int s = order[k];
      double end = highI[s];
      double low = lowJ[s];
      double high = highJ[s];
      for (int m = k + 1; m < n; m++) {
        int t = order[m];
        if (lowI[t] > end) {
          break;
        }
        if (lowJ[t] <= high && low <= highJ[t]) {
          meet(s, t);
        }
      }
    }
  }

  private void sort(IntList chosen) {
    int n = chosen.size;
    if (n <= 24) {
      for (int k = 0; k < n; k++) {
        int s = chosen.at[k];
        int m = k;
        while (m > 0 && lowI[order[m - 1]] > lowI[s]) {
          order[m] = order[m - 1];
          m--;
        }
        order[m] = s;
      }
      return;
    }
    double[] keys = new double[n];
    for (int k = 0; k < n; k++) {
      keys[k] = lowI[chosen.at[k]];
    }
    long[] packed = Ranks.sorted(keys);
    for (int k = 0; k < n; k++) {
      order[k] = chosen.at[(int) packed[k]];
    }
  }

  private void meet(int s, int t) {
    int sp = segments.p[s];
    int sq = segments.q[s];
    int tp = segments.p[t];
    int tq = segments.q[t];
    if (sp == tp || sq == tq) {
      if (sp == tp && sq == tq) {
        return;
      }
      int x = sp == tp ? sq : sp;
      int y = sp == tp ? tq : tp;
      if (points.side(y, segments.line[s]) == 0) {
        // Same line, same end: the shorter one's other end divides the longer one.
        boolean sIsLonger = segments.compare(x, y) > 0 == (sp == tp);
        split(sIsLonger ? s : t, sIsLonger ? y : x);
      }
      return;
    }
    if (sq == tp || tq == sp) {
      return;
    }
    int a = points.side(tp, segments.line[s]);
    int b = points.side(tq, segments.line[s]);
    if (a * b > 0) {
      return;
    }
    int c = points.side(sp, segments.line[t]);
    int d = points.side(sq, segments.line[t]);
    if (c * d > 0) {
      return;
    }
    if (a == 0 && b == 0) {
      splitWithin(s, tp);
      splitWithin(s, tq);
      splitWithin(t, sp);
      splitWithin(t, sq);
    } else if (a == 0) {
      split(s, tp);
    } else if (b == 0) {
      split(s, tq);
    } else if (c == 0) {
      split(t, sp);
    } else if (d == 0) {
      split(t, sq);
    } else {
      int x = points.meet(plane, segments.line[s], segments.line[t]);
      split(s, x);
      split(t, x);
    }
  }

  private void splitWithin(int segment, int point) {
    if (segments.compare(segments.p[segment], point) < 0
        && segments.compare(point, segments.q[segment]) < 0) {
      split(segment, point);
    }
  }

  private void split(int segment, int point) {
    splitPoint.add(point);
    splitNext.add(head[segment]);
    head[segment] = splitPoint.size - 1;
  }

  /** The points along a segment in order, both ends included, each once. */
  void along(int segment, IntList into) {
    into.clear();
    into.add(segments.p[segment]);
    listSplits(segment);
    for (int k = 0; k < listed.size; k++) {
      int point = listed.at[k];
      int m = into.size;
      while (m > 1 && segments.compare(into.at[m - 1], point) > 0) {
        m--;
      }
      if (into.at[m - 1] != point) {
        into.add(point);
        System.arraycopy(into.at, m, into.at, m + 1, into.size - 1 - m);
        into.at[m] = point;
      }
    }
    into.add(segments.q[segment]);
  }

  /** Lists the splits of a segment, already nearly sorted if there are many. */
  private void listSplits(int segment) {
    listed.clear();
    for (int k = head[segment]; k >= 0; k = splitNext.at[k]) {
      listed.add(splitPoint.at[k]);
    }
    if (listed.size > 16) {
      int p = segments.p[segment];
      int q = segments.q[segment];
      double di = points.along(q, segments.i) - points.along(p, segments.i);
      double dj = points.along(q, segments.j) - points.along(p, segments.j);
      double[] keys = new double[listed.size];
      for (int k = 0; k < keys.length; k++) {
        keys[k] =
            di * points.along(listed.at[k], segments.i)
                + dj * points.along(listed.at[k], segments.j);
      }
      long[] ranks = Ranks.sorted(keys);
      int[] copy = listed.toArray();
      for (int k = 0; k < keys.length; k++) {
        listed.at[k] = copy[(int) ranks[k]];
      }
    }
  }
}
