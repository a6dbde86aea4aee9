package dryfit.solid;

import dryfit.geometry.ConvexParts;
import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The solid an outline sweeps when it is moved straight out of its plane, as a saw cuts it. */
public final class Extrusion {
  private Extrusion() {}

  /**
   * @param outline a simple polygon in x and y of {@code frame}, either way round
   * @param low where it starts, along z of {@code frame}
   * @param high where it ends; above {@code low}
   * @param origin the JSON pointer all faces carry
   * @throws IllegalArgumentException if the outline is not simple or there is no height
   */
  public static Csg.Leaf of(
      List<Vec2> outline, double low, double high, Frame frame, String origin) {
    if (!(low < high)) {
      throw new IllegalArgumentException("an extrusion from " + low + " to " + high);
    }
    ConvexParts parts = ConvexParts.of(outline);
    List<Vec2> loop = parts.outline();
    int n = loop.size();
    double[] xyz = new double[6 * n];
    for (int i = 0; i < n; i++) {
      store(xyz, i, frame.place(new Vec3(loop.get(i).x(), loop.get(i).y(), low)));
      store(xyz, n + i, frame.place(new Vec3(loop.get(i).x(), loop.get(i).y(), high)));
    }
    List<Convex> cells = new ArrayList<>();
    for (int[] part : parts.parts()) {
      cells.add(cell(part, loop, low, high).placed(frame));
    }
    return new Csg.Leaf(mesh(xyz, n, parts.triangles(), origin), cells);
  }

  private static Convex cell(int[] part, List<Vec2> loop, double low, double high) {
    List<Vec3> base =
        Arrays.stream(part).mapToObj(p -> new Vec3(loop.get(p).x(), loop.get(p).y(), low)).toList();
    return Convex.prism(base, new Vec3(0, 0, high - low));
  }

  /** Faces 0 and 1 are the low and the high cap, then come the sides in the outline's order. */
  private static Mesh mesh(double[] xyz, int n, List<int[]> caps, String origin) {
    int[][][] faces = new int[n + 2][1][];
    faces[0][0] = new int[n];
    faces[1][0] = new int[n];
    int triangleCount = 2 * caps.size() + 2 * n;
    int[] triangles = new int[3 * triangleCount];
    int[] faceOf = new int[triangleCount];
    int t = 0;
    for (int[] cap : caps) {
      t = triangle(triangles, faceOf, t, 0, cap[2], cap[1], cap[0]);
      t = triangle(triangles, faceOf, t, 1, n + cap[0], n + cap[1], n + cap[2]);
    }
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      faces[0][0][i] = n - 1 - i;
      faces[1][0][i] = n + i;
      faces[i + 2][0] = new int[] {i, j, n + j, n + i};
      t = triangle(triangles, faceOf, t, i + 2, i, j, n + j);
      t = triangle(triangles, faceOf, t, i + 2, i, n + j, n + i);
    }
    return new Mesh(xyz, faces, triangles, faceOf, new int[n + 2], List.of(origin));
  }

  private static int triangle(int[] triangles, int[] faceOf, int t, int face, int... corners) {
    System.arraycopy(corners, 0, triangles, 3 * t, 3);
    faceOf[t] = face;
    return t + 1;
  }

  private static void store(double[] xyz, int i, Vec3 p) {
    xyz[3 * i] = p.x();
    xyz[3 * i + 1] = p.y();
    xyz[3 * i + 2] = p.z();
  }
}
