package dryfit.geometry;

import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A simple outline divided into convex parts: cut into triangles, whose diagonals are then taken
 * out again wherever both ends stay convex. That leaves at most four times the fewest possible
 * parts (S. Hertel and K. Mehlhorn, "Fast triangulation of simple polygons", FCT 1983).
 * Deterministic.
 */
public final class ConvexParts {
  private final List<Vec2> outline;
  private final List<int[]> triangles;
  private final List<int[]> parts;

  private ConvexParts(List<Vec2> outline, List<int[]> triangles, List<int[]> parts) {
    this.outline = outline;
    this.triangles = triangles;
    this.parts = parts;
  }

  /**
   * @param outline a simple polygon, either way round; repeated points are dropped
   * @throws IllegalArgumentException if it has no area, or touches or crosses itself
   */
  public static ConvexParts of(List<Vec2> outline) {
    List<Vec2> loop = anticlockwise(distinct(outline));
    SimpleOutline.require(loop);
    List<int[]> triangles = new Ears(loop).triangles();
    return new ConvexParts(List.copyOf(loop), triangles, merged(loop, triangles));
  }

  /** The points, anticlockwise, each once; the numbers below count in this list. */
  public List<Vec2> outline() {
    return outline;
  }

  /** Triangles that fill the outline and use every point of it, anticlockwise; copies. */
  public List<int[]> triangles() {
    return triangles.stream().map(int[]::clone).toList();
  }

  /** Convex loops that fill the outline, anticlockwise, without points in line; copies. */
  public List<int[]> parts() {
    return parts.stream().map(int[]::clone).toList();
  }

  private static List<Vec2> distinct(List<Vec2> outline) {
    List<Vec2> loop = new ArrayList<>();
    for (Vec2 p : outline) {
      if (loop.isEmpty() || p.distance(loop.get(loop.size() - 1)) > Tolerances.coincident()) {
        loop.add(p);
      }
    }
    while (loop.size() > 1
        && loop.get(0).distance(loop.get(loop.size() - 1)) <= Tolerances.coincident()) {
      loop.remove(loop.size() - 1);
    }
    return loop;
  }

  private static List<Vec2> anticlockwise(List<Vec2> loop) {
    if (twiceArea(loop) < 0) {
      Collections.reverse(loop);
    }
    return loop;
  }

  private static double twiceArea(List<Vec2> loop) {
    double sum = 0;
    for (int i = 2; i < loop.size(); i++) {
      Vec2 o = loop.get(0);
      sum += loop.get(i - 1).minus(o).cross(loop.get(i).minus(o));
    }
    return sum;
  }

  /** Takes out diagonals, the longest first: that leaves compact parts. */
  private static List<int[]> merged(List<Vec2> points, List<int[]> triangles) {
    int n = points.size();
    Map<Long, Integer> partOfEdge = new HashMap<>();
    List<int[]> diagonals = new ArrayList<>();
    int[][] parts = triangles.toArray(int[][]::new);
    for (int t = 0; t < parts.length; t++) {
      for (int i = 0; i < 3; i++) {
        int a = parts[t][i];
        int b = parts[t][(i + 1) % 3];
        partOfEdge.put(key(a, b, n), t);
        if (partOfEdge.containsKey(key(b, a, n))) {
          diagonals.add(new int[] {Math.min(a, b), Math.max(a, b)});
        }
      }
    }
    diagonals.sort(
        Comparator.<int[]>comparingDouble(d -> -points.get(d[0]).distance(points.get(d[1])))
            .thenComparingInt(d -> d[0])
            .thenComparingInt(d -> d[1]));
    for (int[] d : diagonals) {
      int left = partOfEdge.get(key(d[0], d[1], n));
      int right = partOfEdge.get(key(d[1], d[0], n));
      int[] both = joined(parts[left], parts[right], d[0], d[1]);
      if (bothEndsConvex(points, both, d)) {
        for (int i = 0; i < parts[right].length; i++) {
          int[] loop = parts[right];
          partOfEdge.put(key(loop[i], loop[(i + 1) % loop.length], n), left);
        }
        parts[left] = both;
        parts[right] = null;
      }
    }
    return Arrays.stream(parts)
        .filter(part -> part != null)
        .map(part -> withoutPointsInLine(points, part))
        .toList();
  }

  private static long key(int a, int b, int n) {
    return (long) a * n + b;
  }

  /** The loop around two parts, where the left one has the edge a to b and the right one b to a. */
  private static int[] joined(int[] left, int[] right, int a, int b) {
    int[] both = new int[left.length + right.length - 2];
    int at = 0;
    int start = indexOf(left, b);
    for (int i = 0; i < left.length; i++) {
      both[at++] = left[(start + i) % left.length];
    }
    int after = indexOf(right, a);
    for (int i = 1; i < right.length - 1; i++) {
      both[at++] = right[(after + i) % right.length];
    }
    return both;
  }

  private static int indexOf(int[] loop, int p) {
    int i = 0;
    while (loop[i] != p) {
      i++;
    }
    return i;
  }

  private static boolean bothEndsConvex(List<Vec2> points, int[] loop, int[] ends) {
    for (int end : ends) {
      if (turn(points, loop, indexOf(loop, end)) < 0) {
        return false;
      }
    }
    return true;
  }

  private static int turn(List<Vec2> points, int[] loop, int i) {
    int n = loop.length;
    return Ears.turn(
        points.get(loop[(i + n - 1) % n]), points.get(loop[i]), points.get(loop[(i + 1) % n]));
  }

  private static int[] withoutPointsInLine(List<Vec2> points, int[] loop) {
    int[] kept = new int[loop.length];
    int n = 0;
    for (int i = 0; i < loop.length; i++) {
      if (turn(points, loop, i) != 0) {
        kept[n++] = loop[i];
      }
    }
    return Arrays.copyOf(kept, n);
  }
}
