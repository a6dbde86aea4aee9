package dryfit.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Takes a closed mesh to the coordinates that 32-bit files can hold, and keeps it closed.
 *
 * <p>Files such as STL store floats, whose step at 500 mm is 3e-5 mm, and no topology: whoever
 * reads them welds equal points. So what would happen in the reader happens here first: points are
 * rounded and welded, triangles that lost a side are dropped, pairs that fell onto each other
 * cancel, and triangles left without area give their longest side up to their neighbour.
 */
public final class FloatGrid {
  private final double[] xyz;
  private final List<int[]> triangles = new ArrayList<>();

  private FloatGrid(double[] xyz) {
    this.xyz = xyz;
  }

  /** Rounded points without repeats, and the triangles over them, none left out. */
  static Triangles welded(Mesh mesh) {
    double[] rounded = mesh.coordinates();
    for (int i = 0; i < rounded.length; i++) {
      rounded[i] = (float) rounded[i];
    }
    Map<Vec3, Integer> numbers = new LinkedHashMap<>();
    int[] number = new int[mesh.pointCount()];
    for (int i = 0; i < number.length; i++) {
      Vec3 p = new Vec3(rounded[3 * i], rounded[3 * i + 1], rounded[3 * i + 2]);
      number[i] = numbers.computeIfAbsent(p, k -> numbers.size());
    }
    double[] xyz = new double[3 * numbers.size()];
    int size = 0;
    for (Vec3 p : numbers.keySet()) {
      xyz[size++] = p.x();
      xyz[size++] = p.y();
      xyz[size++] = p.z();
    }
    int[] triangles = mesh.triangles();
    for (int i = 0; i < triangles.length; i++) {
      triangles[i] = number[triangles[i]];
    }
    return new Triangles(xyz, triangles, mesh.faceOfTriangle());
  }

  /**
   * The mesh as it will be written: every coordinate is a float, and it is closed, also for a
   * reader that welds equal points.
   *
   * @param mesh closed
   * @throws MeshFailure if it cannot be kept closed
   */
  public static Mesh snapped(Mesh mesh) {
    Triangles welded = welded(mesh);
    FloatGrid grid = new FloatGrid(welded.xyz());
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int[] c = Arrays.copyOfRange(welded.corners(), 3 * t, 3 * t + 3);
      if (c[0] != c[1] && c[1] != c[2] && c[2] != c[0]) {
        grid.triangles.add(new int[] {c[0], c[1], c[2], mesh.faceOf(t)});
      }
    }
    grid.cancelOpposites();
    grid.flattenSlivers();
    return grid.mesh(mesh);
  }

  private Mesh mesh(Mesh source) {
    int[] corners = new int[3 * triangles.size()];
    int[] faceOf = new int[triangles.size()];
    for (int t = 0; t < faceOf.length; t++) {
      System.arraycopy(triangles.get(t), 0, corners, 3 * t, 3);
      faceOf[t] = triangles.get(t)[3];
    }
    int[] originOfFace = new int[source.faceCount()];
    List<String> origins = new ArrayList<>();
    for (int f = 0; f < originOfFace.length; f++) {
      int known = origins.indexOf(source.origin(f));
      originOfFace[f] = known < 0 ? origins.size() : known;
      if (known < 0) {
        origins.add(source.origin(f));
      }
    }
    Mesh out = Meshes.ofTriangles(xyz, corners, faceOf, originOfFace, origins);
    List<String> problems = new ArrayList<>(MeshCheck.problems(out));
    problems.addAll(MeshCheck.problemsAsFloats(out));
    if (!problems.isEmpty()) {
      throw new MeshFailure("rounded to 32-bit floats, " + problems.get(0));
    }
    return out;
  }

  /** Two triangles back to back enclose nothing. */
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

  /**
   * A triangle in line, a-m-b with m between, is replaced together with its neighbour a-b-d over
   * its longest side by the two triangles that m and d divide them into. Each exchange shortens a
   * longest side, but two slivers can trade places, hence the limit.
   */
  private void flattenSlivers() {
    int limit = 4 * triangles.size();
    for (int round = 0; round < limit; round++) {
      int sliver = firstSliver();
      if (sliver < 0) {
        return;
      }
      flip(sliver);
      cancelOpposites();
    }
    throw new MeshFailure("rounded to 32-bit floats, a triangle keeps no area");
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
    throw new MeshFailure("rounded to 32-bit floats, the surface is open");
  }

  private double length(int a, int b) {
    double dx = xyz[3 * a] - xyz[3 * b];
    double dy = xyz[3 * a + 1] - xyz[3 * b + 1];
    double dz = xyz[3 * a + 2] - xyz[3 * b + 2];
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }
}
