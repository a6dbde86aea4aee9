package dryfit.solid.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Takes slits out of the loops of a face. Where another sheet touches a face along an edge, the
 * loops run along that edge both ways. Once the sheets are told apart and have vertices of their
 * own, nothing is left there for the face to end at: it goes on across.
 */
final class Slits {
  private final int[] from;
  private final int[] next;
  private final int[] before;
  private final boolean[] gone;
  private final List<int[]> pairs = new ArrayList<>();

  private Slits(int[][] loops) {
    int size = Arrays.stream(loops).mapToInt(loop -> loop.length).sum();
    from = new int[size];
    next = new int[size];
    before = new int[size];
    gone = new boolean[size];
    int start = 0;
    for (int[] loop : loops) {
      for (int i = 0; i < loop.length; i++) {
        from[start + i] = loop[i];
        next[start + i] = start + (i + 1) % loop.length;
        before[next[start + i]] = start + i;
      }
      start += loop.length;
    }
  }

  /**
   * The loops without slits; the very same if there are none.
   *
   * @param loops vertices of one face, the outer loop first
   * @param x one coordinate of each vertex as the face is looked at from in front, y the other
   */
  static int[][] closed(int[][] loops, double[] x, double[] y) {
    if (!comesTwice(loops)) {
      return loops;
    }
    Slits slits = new Slits(loops);
    if (!slits.remove()) {
      return loops;
    }
    List<int[]> out = slits.rest();
    // The outer loop runs anticlockwise and is the only one to do so.
    out.sort((a, b) -> Double.compare(area(b, x, y), area(a, x, y)));
    return out.toArray(int[][]::new);
  }

  /** Whether a vertex does; without, there is no slit, and that is so for nearly every face. */
  private static boolean comesTwice(int[][] loops) {
    if (loops.length == 1 && loops[0].length == 3) {
      return false;
    }
    IntList corners = new IntList();
    for (int[] loop : loops) {
      for (int v : loop) {
        corners.add(v);
      }
    }
    int[] all = corners.toArray();
    Arrays.sort(all);
    for (int i = 1; i < all.length; i++) {
      if (all[i] == all[i - 1]) {
        return true;
      }
    }
    return false;
  }

  /** Takes out every edge that is there both ways, and tells whether there was one. */
  private boolean remove() {
    Map<Long, Integer> open = new HashMap<>();
    for (int e = 0; e < from.length; e++) {
      int to = from[next[e]];
      Integer opposite = open.remove((long) to << 32 | from[e]);
      if (opposite == null) {
        open.put((long) from[e] << 32 | to, e);
      } else {
        pairs.add(new int[] {e, opposite});
      }
    }
    pairs.forEach(pair -> remove(pair[0], pair[1]));
    return !pairs.isEmpty();
  }

  /** Joins what comes before an edge to what follows its opposite, and the other way round. */
  private void remove(int e, int opposite) {
    int beforeEdge = before[e];
    int afterEdge = next[e];
    int beforeOpposite = before[opposite];
    int afterOpposite = next[opposite];
    gone[e] = true;
    gone[opposite] = true;
    // At the tip of a slit the one follows the other, and there is nothing to join.
    if (afterOpposite != e) {
      join(beforeEdge, afterOpposite);
    }
    if (afterEdge != opposite) {
      join(beforeOpposite, afterEdge);
    }
  }

  private void join(int edge, int following) {
    next[edge] = following;
    before[following] = edge;
  }

  private List<int[]> rest() {
    List<int[]> out = new ArrayList<>();
    for (int e = 0; e < from.length; e++) {
      IntList loop = new IntList();
      for (int at = e; !gone[at]; at = next[at]) {
        gone[at] = true;
        loop.add(from[at]);
      }
      if (loop.size > 0) {
        out.add(loop.toArray());
      }
    }
    return out;
  }

  private static double area(int[] loop, double[] x, double[] y) {
    double twice = 0;
    for (int i = 0; i < loop.length; i++) {
      int a = loop[i];
      int b = loop[(i + 1) % loop.length];
      twice +=
          (x[a] - x[loop[0]]) * (y[b] - y[loop[0]]) - (x[b] - x[loop[0]]) * (y[a] - y[loop[0]]);
    }
    return twice / 2;
  }
}
