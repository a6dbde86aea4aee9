package dryfit.solid.exact;

/**
 * Makes the rims of neighbouring faces name the same points: puts in what only one side of a seam
 * has, and leaves out what neither needs.
 */
final class Seams {
  private final Points points;
  private final Planes planes;

  Seams(Planes planes, Points points) {
    this.planes = planes;
    this.points = points;
  }

  /** The surface with matching seams, or null if it is open. */
  Surface closed(Surface given) {
    Surface surface = given;
    int[] balance = balance(surface);
    if (balance != null) {
      surface = split(surface, balance);
      if (balance(surface) != null) {
        return null;
      }
    }
    return straightened(surface);
  }

  /** For each corner how much more often its edge is used one way than the other; null if never. */
  private static int[] balance(Surface s) {
    int n = s.corners();
    KeyMap slot = new KeyMap(n / 2);
    int[] slotOf = new int[n];
    int[] sum = new int[n];
    int slots = 0;
    int uneven = 0;
    for (int c = 0; c < n; c++) {
      int a = s.point.at[c];
      int b = s.point.at[s.next(c)];
      long key = KeyMap.pair(a, b);
      int k = slot.get(key);
      if (k == KeyMap.NONE) {
        k = slots++;
        slot.put(key, k);
      }
      slotOf[c] = k;
      uneven -= sum[k] == 0 ? 0 : 1;
      sum[k] += a < b ? 1 : -1;
      uneven += sum[k] == 0 ? 0 : 1;
    }
    if (uneven == 0) {
      return null;
    }
    int[] out = new int[n];
    for (int c = 0; c < n; c++) {
      out[c] = sum[slotOf[c]];
    }
    return out;
  }

  /** Puts ends of unmatched edges into the unmatched edges that they lie on. */
  private Surface split(Surface s, int[] balance) {
    boolean[] isEnd = new boolean[points.count];
    IntList ends = new IntList();
    for (int c = 0; c < balance.length; c++) {
      if (balance[c] != 0) {
        addOnce(s.point.at[c], isEnd, ends);
        addOnce(s.point.at[s.next(c)], isEnd, ends);
      }
    }
    double[] keys = new double[ends.size];
    for (int k = 0; k < keys.length; k++) {
      keys[k] = points.x[ends.at[k]];
    }
    long[] ranks = Ranks.sorted(keys);
    int[] sorted = new int[keys.length];
    for (int k = 0; k < keys.length; k++) {
      sorted[k] = ends.at[(int) ranks[k]];
    }
    IntList[] into = new IntList[balance.length];
    for (int c = 0; c < balance.length; c++) {
      if (balance[c] != 0) {
        into[c] = on(s, c, sorted);
      }
    }
    return s.changed(into, new boolean[points.count]);
  }

  private static void addOnce(int point, boolean[] seen, IntList list) {
    if (!seen[point]) {
      seen[point] = true;
      list.add(point);
    }
  }

  /** Which of the points, sorted by x, lie inside the edge of a corner, in order along it. */
  private IntList on(Surface s, int corner, int[] sorted) {
    int a = s.point.at[corner];
    int b = s.point.at[s.next(corner)];
    int plane = s.faces.get(s.face(corner)).plane();
    int line = s.line.at[corner];
    double low = Math.min(points.x[a], points.x[b]) - 1;
    double high = Math.max(points.x[a], points.x[b]) + 1;
    int from = 0;
    int to = sorted.length;
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (points.x[sorted[middle]] < low) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    int axis = planes.crossAxis(plane, line);
    int direction = points.compare(b, a, axis);
    IntList found = new IntList();
    for (int k = from; k < sorted.length && points.x[sorted[k]] <= high; k++) {
      int p = sorted[k];
      if (p != a
          && p != b
          && points.side(p, plane) == 0
          && points.side(p, line) == 0
          && direction * points.compare(p, a, axis) > 0
          && direction * points.compare(b, p, axis) > 0) {
        int m = found.size;
        found.add(p);
        while (m > 0 && direction * points.compare(found.at[m - 1], p, axis) > 0) {
          found.at[m] = found.at[m - 1];
          m--;
        }
        found.at[m] = p;
      }
    }
    return found;
  }

  /** Leaves out points at which nothing turns: just two edges meet there, in line. */
  private Surface straightened(Surface s) {
    int[] one = new int[points.count];
    int[] two = new int[points.count];
    boolean[] straight = new boolean[points.count];
    boolean[] used = new boolean[points.count];
    boolean any = false;
    for (int c = 0; c < s.corners(); c++) {
      int p = s.point.at[c];
      int before = s.before(c);
      int a = s.point.at[before];
      int b = s.point.at[s.next(c)];
      if (!used[p]) {
        used[p] = true;
        one[p] = a;
        two[p] = b;
        straight[p] =
            a != b && (s.line.at[before] == s.line.at[c] || points.side(b, s.line.at[before]) == 0);
        any |= straight[p];
      } else if (straight[p] && !((a == one[p] && b == two[p]) || (a == two[p] && b == one[p]))) {
        straight[p] = false;
      }
    }
    return any ? s.changed(new IntList[s.corners()], straight) : s;
  }
}
