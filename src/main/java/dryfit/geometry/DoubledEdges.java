package dryfit.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Gives a point in the middle to every edge that more than two triangles still share.
 *
 * <p>Two mortises of one leg can touch along an edge. The wood on either side of it is joined
 * beyond the edge's ends, so the ends cannot be doubled; a point in between can.
 */
final class DoubledEdges {
  private DoubledEdges() {}

  /** The same triangles if no edge is doubled. */
  static Triangles halved(Triangles mesh) {
    SortedSet<Long> doubled = doubled(mesh.corners());
    if (doubled.isEmpty()) {
      return mesh;
    }
    double[] xyz = Arrays.copyOf(mesh.xyz(), mesh.xyz().length + 3 * doubled.size());
    int middle = mesh.xyz().length / 3;
    List<int[]> triangles = new ArrayList<>();
    for (int t = 0; t < mesh.faces().length; t++) {
      int[] c = mesh.corners();
      triangles.add(new int[] {c[3 * t], c[3 * t + 1], c[3 * t + 2], mesh.faces()[t]});
    }
    for (long edge : doubled) {
      int a = (int) (edge >>> 32);
      int b = (int) edge;
      for (int k = 0; k < 3; k++) {
        xyz[3 * middle + k] = (xyz[3 * a + k] + xyz[3 * b + k]) / 2;
      }
      triangles = halvedAt(a, b, middle, triangles);
      middle++;
    }
    return new Triangles(
        xyz,
        triangles.stream().flatMapToInt(t -> Arrays.stream(t, 0, 3)).toArray(),
        triangles.stream().mapToInt(t -> t[3]).toArray());
  }

  private static List<int[]> halvedAt(int a, int b, int middle, List<int[]> triangles) {
    List<int[]> out = new ArrayList<>();
    for (int[] t : triangles) {
      int side = -1;
      for (int k = 0; k < 3; k++) {
        int from = t[k];
        int to = t[(k + 1) % 3];
        side = (from == a && to == b) || (from == b && to == a) ? k : side;
      }
      if (side < 0) {
        out.add(t);
      } else {
        int from = t[side];
        int to = t[(side + 1) % 3];
        int tip = t[(side + 2) % 3];
        out.add(new int[] {from, middle, tip, t[3]});
        out.add(new int[] {middle, to, tip, t[3]});
      }
    }
    return out;
  }

  private static SortedSet<Long> doubled(int[] corners) {
    Map<Long, Integer> uses = new HashMap<>();
    SortedSet<Long> doubled = new TreeSet<>();
    for (int i = 0; i < corners.length; i++) {
      int from = corners[i];
      int to = corners[i % 3 == 2 ? i - 2 : i + 1];
      if (uses.merge(((long) from << 32) | to, 1, Integer::sum) > 1) {
        doubled.add(((long) Math.min(from, to) << 32) | Math.max(from, to));
      }
    }
    return doubled;
  }
}
