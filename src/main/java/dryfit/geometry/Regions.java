package dryfit.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Finds the regions of a plane that a set of directed edges surrounds, the region on the left of
 * each edge as seen against the normal. A region is an outer loop and its holes. Regions that only
 * touch in a corner come out apart.
 */
public final class Regions {
  private final double[] xy;

  private Regions(double[] xy) {
    this.xy = xy;
  }

  /**
   * The regions, in the order of their edges.
   *
   * @param xyz 3 numbers a point
   * @param normal towards the viewer; need not have unit length
   * @param edges pairs of point numbers, from and to; as many leave a point as arrive
   * @return for each region its loops, outer first
   * @throws MeshFailure if the edges do not close
   */
  public static List<int[][]> of(double[] xyz, Vec3 normal, List<int[]> edges) {
    Regions regions = new Regions(PlaneAxes.facing(normal).flatten(xyz));
    return regions.nested(regions.loops(edges));
  }

  /** The loops alone, holes among them, in the order of their edges. */
  static List<int[]> loops(double[] xyz, Vec3 normal, List<int[]> edges) {
    return new Regions(PlaneAxes.facing(normal).flatten(xyz)).loops(edges);
  }

  private List<int[]> loops(List<int[]> edges) {
    Map<Integer, List<Integer>> leaving = new TreeMap<>();
    for (int e = 0; e < edges.size(); e++) {
      leaving.computeIfAbsent(edges.get(e)[0], k -> new ArrayList<>(1)).add(e);
    }
    List<int[]> loops = new ArrayList<>();
    boolean[] walked = new boolean[edges.size()];
    for (int e = 0; e < edges.size(); e++) {
      if (!walked[e]) {
        List<Integer> corners = new ArrayList<>();
        int at = e;
        do {
          walked[at] = true;
          corners.add(edges.get(at)[0]);
          at = following(edges, at, leaving, walked, e);
        } while (at != e);
        loops.add(corners.stream().mapToInt(i -> i).toArray());
      }
    }
    return loops;
  }

  /**
   * The edge that leaves where {@code edge} arrives with the narrowest corner of region between.
   */
  private int following(
      List<int[]> edges,
      int edge,
      Map<Integer, List<Integer>> leaving,
      boolean[] walked,
      int start) {
    int here = edges.get(edge)[1];
    List<Integer> ways =
        leaving.getOrDefault(here, List.of()).stream()
            .filter(w -> !walked[w] || w == start)
            .toList();
    if (ways.isEmpty()) {
      throw new MeshFailure("the edges of a face do not close");
    }
    if (ways.size() == 1) {
      return ways.get(0);
    }
    double back = direction(here, edges.get(edge)[0]);
    return ways.stream()
        .min(
            Comparator.<Integer>comparingDouble(
                    w -> turnFrom(direction(here, edges.get(w)[1]), back))
                .thenComparingInt(w -> w))
        .orElseThrow();
  }

  private double direction(int from, int to) {
    return Math.atan2(xy[2 * to + 1] - xy[2 * from + 1], xy[2 * to] - xy[2 * from]);
  }

  private static double turnFrom(double from, double to) {
    double turn = to - from;
    return turn > 0 ? turn : turn + 2 * Math.PI;
  }

  private List<int[][]> nested(List<int[]> loops) {
    List<int[]> outer = new ArrayList<>();
    List<int[]> holes = new ArrayList<>();
    for (int[] loop : loops) {
      (area(loop) > 0 ? outer : holes).add(loop);
    }
    List<List<int[]>> regions = new ArrayList<>();
    for (int[] loop : outer) {
      regions.add(new ArrayList<>(List.of(loop)));
    }
    for (int[] hole : holes) {
      int home = -1;
      for (int i = 0; i < outer.size(); i++) {
        if (contains(outer.get(i), hole)
            && (home < 0 || area(outer.get(i)) < area(outer.get(home)))) {
          home = i;
        }
      }
      if (home < 0) {
        throw new MeshFailure("a hole in a face has no face around it");
      }
      regions.get(home).add(hole);
    }
    return regions.stream().map(r -> r.toArray(int[][]::new)).toList();
  }

  private double area(int[] loop) {
    double sum = 0;
    double ox = xy[2 * loop[0]];
    double oy = xy[2 * loop[0] + 1];
    for (int i = 0; i < loop.length; i++) {
      int a = 2 * loop[i];
      int b = 2 * loop[(i + 1) % loop.length];
      sum += (xy[a] - ox) * (xy[b + 1] - oy) - (xy[b] - ox) * (xy[a + 1] - oy);
    }
    return sum / 2;
  }

  /** The loops do not cross, so one place of the hole that is not on the other loop decides. */
  private boolean contains(int[] loop, int[] hole) {
    for (int corner : hole) {
      int side = side(loop, xy[2 * corner], xy[2 * corner + 1]);
      if (side != 0) {
        return side > 0;
      }
    }
    int a = hole[0];
    int b = hole[1];
    return side(loop, (xy[2 * a] + xy[2 * b]) / 2, (xy[2 * a + 1] + xy[2 * b + 1]) / 2) > 0;
  }

  /** 1 inside, -1 outside, 0 on the loop. */
  private int side(int[] loop, double x, double y) {
    boolean inside = false;
    for (int i = 0; i < loop.length; i++) {
      int a = 2 * loop[i];
      int b = 2 * loop[(i + 1) % loop.length];
      double turn = Orientation.of(xy[a], xy[a + 1], xy[b], xy[b + 1], x, y);
      boolean within =
          x >= Math.min(xy[a], xy[b])
              && x <= Math.max(xy[a], xy[b])
              && y >= Math.min(xy[a + 1], xy[b + 1])
              && y <= Math.max(xy[a + 1], xy[b + 1]);
      if (turn == 0 && within) {
        return 0;
      }
      boolean up = xy[a + 1] <= y && xy[b + 1] > y;
      boolean down = xy[b + 1] <= y && xy[a + 1] > y;
      if ((up && turn > 0) || (down && turn < 0)) {
        inside = !inside;
      }
    }
    return inside ? 1 : -1;
  }
}
