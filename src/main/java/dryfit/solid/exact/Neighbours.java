package dryfit.solid.exact;

import java.util.List;

/** Finds the facets whose boxes meet: nothing else can touch. */
final class Neighbours {
  private static final int FEW = 4096;

  private final List<Facet> facets;

  /** The facets of leaf {@code l} are {@code leafStart[l]} to {@code leafStart[l + 1]}. */
  private final int[] leafStart;

  private final double[][] low;
  private final double[][] high;

  Neighbours(List<Facet> facets, int[] leafStart) {
    this.facets = facets;
    this.leafStart = leafStart;
    int leaves = leafStart.length - 1;
    low = new double[leaves][3];
    high = new double[leaves][3];
    for (int l = 0; l < leaves; l++) {
      for (int k = 0; k < 3; k++) {
        low[l][k] = Double.POSITIVE_INFINITY;
        high[l][k] = Double.NEGATIVE_INFINITY;
        for (int f = leafStart[l]; f < leafStart[l + 1]; f++) {
          low[l][k] = Math.min(low[l][k], facets.get(f).low(k));
          high[l][k] = Math.max(high[l][k], facets.get(f).high(k));
        }
      }
    }
  }

  double low(int leaf, int axis) {
    return low[leaf][axis];
  }

  double high(int leaf, int axis) {
    return high[leaf][axis];
  }

  boolean meets(int leaf, Facet f) {
    double[] a = low[leaf];
    double[] b = high[leaf];
    return a[0] <= f.highX
        && f.lowX <= b[0]
        && a[1] <= f.highY
        && f.lowY <= b[1]
        && a[2] <= f.highZ
        && f.lowZ <= b[2];
  }

  private boolean leavesMeet(int a, int b) {
    for (int k = 0; k < 3; k++) {
      if (low[a][k] > high[b][k] || low[b][k] > high[a][k]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Fills {@link Facet#near}.
   *
   * @param own whether facets of the same leaf count too
   */
  void find(boolean own) {
    int leaves = leafStart.length - 1;
    for (int a = 0; a < leaves; a++) {
      if (own) {
        IntList all = within(a, a);
        pairs(all, all, true);
      }
      for (int b = a + 1; b < leaves; b++) {
        if (leavesMeet(a, b)) {
          pairs(within(a, b), within(b, a), false);
        }
      }
    }
  }

  /** The facets of one leaf that meet the box of another. */
  private IntList within(int leaf, int other) {
    IntList out = new IntList();
    for (int f = leafStart[leaf]; f < leafStart[leaf + 1]; f++) {
      if (meets(other, facets.get(f))) {
        out.add(f);
      }
    }
    return out;
  }

  private void pairs(IntList first, IntList second, boolean same) {
    if (first.size == 0 || second.size == 0) {
      return;
    }
    if ((long) first.size * second.size <= FEW) {
      for (int i = 0; i < first.size; i++) {
        for (int j = same ? i + 1 : 0; j < second.size; j++) {
          pair(facets.get(first.at[i]), facets.get(second.at[j]));
        }
      }
      return;
    }
    sweep(first, second, same);
  }

  private void sweep(IntList first, IntList second, boolean same) {
    int axis = longestAxis(first);
    long[] a = order(first, axis);
    long[] b = order(second, axis);
    int startOfB = 0;
    double widest = 0;
    for (int j = 0; j < second.size; j++) {
      Facet g = facets.get(second.at[j]);
      widest = Math.max(widest, g.high(axis) - g.low(axis));
    }
    for (int i = 0; i < first.size; i++) {
      Facet f = facets.get(first.at[(int) a[i]]);
      while (startOfB < second.size
          && facets.get(second.at[(int) b[startOfB]]).low(axis) < f.low(axis) - widest) {
        startOfB++;
      }
      for (int j = startOfB; j < second.size; j++) {
        Facet g = facets.get(second.at[(int) b[j]]);
        if (g.low(axis) > f.high(axis)) {
          break;
        }
        if (!same || f.id < g.id) {
          pair(f, g);
        }
      }
    }
  }

  private long[] order(IntList list, int axis) {
    double[] keys = new double[list.size];
    for (int i = 0; i < keys.length; i++) {
      keys[i] = facets.get(list.at[i]).low(axis);
    }
    return Ranks.sorted(keys);
  }

  private int longestAxis(IntList list) {
    int best = 0;
    double most = -1;
    for (int k = 0; k < 3; k++) {
      double from = Double.POSITIVE_INFINITY;
      double to = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < list.size; i++) {
        from = Math.min(from, facets.get(list.at[i]).low(k));
        to = Math.max(to, facets.get(list.at[i]).high(k));
      }
      if (to - from > most) {
        most = to - from;
        best = k;
      }
    }
    return best;
  }

  private static void pair(Facet f, Facet g) {
    if (f.meets(g)) {
      f.near.add(g.id);
      g.near.add(f.id);
    }
  }
}
