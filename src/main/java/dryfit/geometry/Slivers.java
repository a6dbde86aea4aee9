package dryfit.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Takes triangles without area out of a closed surface and leaves it closed. One that names a point
 * twice is dropped; two back to back enclose nothing and both go; one in line, a-m-b with m
 * between, is replaced together with its neighbour a-b-d over its longest side by the two triangles
 * into which m and d divide them.
 */
final class Slivers {
  private final double[] xyz;
  private final List<int[]> triangles = new ArrayList<>();

  private Slivers(double[] xyz) {
    this.xyz = xyz;
  }

  /**
   * @throws MeshFailure if the surface is open or a triangle cannot be given area
   */
  static Triangles removed(Triangles mesh) {
    Slivers slivers = new Slivers(mesh.xyz());
    int[] c = mesh.corners();
    for (int t = 0; t < mesh.faces().length; t++) {
      int i = 3 * t;
      if (c[i] != c[i + 1] && c[i + 1] != c[i + 2] && c[i + 2] != c[i]) {
        slivers.triangles.add(new int[] {c[i], c[i + 1], c[i + 2], mesh.faces()[t]});
      }
    }
    slivers.cancelOpposites();
    slivers.flatten();
    return slivers.triangles();
  }

  private Triangles triangles() {
    int[] corners = new int[3 * triangles.size()];
    int[] faces = new int[triangles.size()];
    for (int t = 0; t < faces.length; t++) {
      System.arraycopy(triangles.get(t), 0, corners, 3 * t, 3);
      faces[t] = triangles.get(t)[3];
    }
    return new Triangles(xyz, corners, faces);
  }

  private void cancelOpposites() {
    Map<List<Integer>, Integer> open = new HashMap<>();
    boolean[] gone = new boolean[triangles.size()];
    for (int t = 0; t < triangles.size(); t++) {
      int[] c = triangles.get(t);
      Integer back = open.remove(fromSmallest(c[0], c[2], c[1]));
      if (back != null) {
        gone[t] = true;
        gone[back] = true;
      } else {
        open.put(fromSmallest(c[0], c[1], c[2]), t);
      }
    }
    List<int[]> kept = new ArrayList<>();
    for (int t = 0; t < gone.length; t++) {
      if (!gone[t]) {
        kept.add(triangles.get(t));
      }
    }
    triangles.clear();
    triangles.addAll(kept);
  }

  private static List<Integer> fromSmallest(int a, int b, int c) {
    if (a < b && a < c) {
      return List.of(a, b, c);
    }
    return b < c ? List.of(b, c, a) : List.of(c, a, b);
  }

  /** Each exchange shortens a longest side, but two slivers can trade places, hence the limit. */
  private void flatten() {
    int limit = 4 * triangles.size();
    for (int round = 0; round < limit; round++) {
      int sliver = firstSliver();
      if (sliver < 0) {
        return;
      }
      flip(sliver);
      cancelOpposites();
    }
    throw new MeshFailure("a triangle keeps no area");
  }

  private int firstSliver() {
    for (int t = 0; t < triangles.size(); t++) {
      int[] c = triangles.get(t);
      if (MeshCheck.isDegenerate(xyz, c[0], c[1], c[2])) {
        return t;
      }
    }
    return -1;
  }

  private void flip(int sliver) {
    int[] c = triangles.get(sliver);
    int side =
        List.of(0, 1, 2).stream()
            .max(Comparator.comparingDouble(k -> length(c[k], c[(k + 1) % 3])))
            .orElseThrow();
    int a = c[side];
    int b = c[(side + 1) % 3];
    int m = c[(side + 2) % 3];
    for (int t = 0; t < triangles.size(); t++) {
      int[] n = triangles.get(t);
      for (int k = 0; k < 3; k++) {
        if (t != sliver && n[k] == b && n[(k + 1) % 3] == a) {
          int d = n[(k + 2) % 3];
          triangles.set(sliver, new int[] {m, a, d, n[3]});
          triangles.set(t, new int[] {m, d, b, n[3]});
          return;
        }
      }
    }
    throw new MeshFailure("the surface is open");
  }

  private double length(int a, int b) {
    double dx = xyz[3 * a] - xyz[3 * b];
    double dy = xyz[3 * a + 1] - xyz[3 * b + 1];
    double dz = xyz[3 * a + 2] - xyz[3 * b + 2];
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }
}
