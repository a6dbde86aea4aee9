package dryfit.solid;

import dryfit.geometry.Mesh;
import java.util.Arrays;
import java.util.List;

/** The surface of one cell; its faces are convex, so fans fill them. */
final class CellMesh {
  private CellMesh() {}

  static Mesh of(Convex cell, String origin) {
    int[][] faces = cell.faces;
    int triangleCount = Arrays.stream(faces).mapToInt(loop -> loop.length - 2).sum();
    int[] triangles = new int[3 * triangleCount];
    int[] faceOf = new int[triangleCount];
    int[][][] loops = new int[faces.length][][];
    int t = 0;
    for (int f = 0; f < faces.length; f++) {
      int[] loop = faces[f];
      loops[f] = new int[][] {loop};
      for (int i = 2; i < loop.length; i++) {
        triangles[3 * t] = loop[0];
        triangles[3 * t + 1] = loop[i - 1];
        triangles[3 * t + 2] = loop[i];
        faceOf[t++] = f;
      }
    }
    return new Mesh(cell.xyz, loops, triangles, faceOf, new int[faces.length], List.of(origin));
  }
}
