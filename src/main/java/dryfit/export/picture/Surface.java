package dryfit.export.picture;

import dryfit.geometry.Mesh;
import java.util.Arrays;

/**
 * A mesh got ready for drawing: face normals, smooth corner normals, and the edges worth looking
 * at.
 */
final class Surface {
  /** Faces that turn less than this at an edge belong to one curved surface. */
  private static final double CREASE_COSINE = Math.cos(Math.toRadians(20));

  final double[] xyz;
  final int[] triangles;

  /** Unit normal of each triangle's face, 3 numbers a triangle. */
  final double[] faceNormals;

  /** Unit normal at each corner of each triangle, 9 numbers a triangle. */
  final float[] cornerNormals;

  /** Edges between two faces: from, to, one triangle, the other triangle. */
  final int[] edges;

  /** For each edge whether it is a crease, to be drawn from wherever it is seen. */
  final boolean[] crease;

  Surface(Mesh mesh) {
    xyz = mesh.coordinates();
    triangles = mesh.triangles();
    int count = mesh.triangleCount();
    int[] faceOf = new int[count];
    for (int t = 0; t < count; t++) {
      faceOf[t] = mesh.faceOf(t);
    }
    faceNormals = faceNormals(mesh.faceCount(), faceOf);
    cornerNormals = cornerNormals(mesh.pointCount());
    edges = edges(faceOf);
    crease = new boolean[edges.length / 4];
    for (int e = 0; e < crease.length; e++) {
      crease[e] = cosine(edges[4 * e + 2], edges[4 * e + 3]) < CREASE_COSINE;
    }
  }

  int triangleCount() {
    return triangles.length / 3;
  }

  private double cosine(int t, int u) {
    return faceNormals[3 * t] * faceNormals[3 * u]
        + faceNormals[3 * t + 1] * faceNormals[3 * u + 1]
        + faceNormals[3 * t + 2] * faceNormals[3 * u + 2];
  }

  /** Whether a triangle's face turns towards the eye. */
  boolean facesEye(int t, double ex, double ey, double ez) {
    int p = 3 * triangles[3 * t];
    return (ex - xyz[p]) * faceNormals[3 * t]
            + (ey - xyz[p + 1]) * faceNormals[3 * t + 1]
            + (ez - xyz[p + 2]) * faceNormals[3 * t + 2]
        > 0;
  }

  /** Summed over the face, so that a sliver of a triangle does not decide. */
  private double[] faceNormals(int faces, int[] faceOf) {
    double[] sum = new double[3 * faces];
    for (int t = 0; t < faceOf.length; t++) {
      double[] n = areaNormal(t);
      for (int k = 0; k < 3; k++) {
        sum[3 * faceOf[t] + k] += n[k];
      }
    }
    double[] out = new double[3 * faceOf.length];
    for (int t = 0; t < faceOf.length; t++) {
      int f = 3 * faceOf[t];
      double length =
          Math.sqrt(sum[f] * sum[f] + sum[f + 1] * sum[f + 1] + sum[f + 2] * sum[f + 2]);
      for (int k = 0; k < 3; k++) {
        out[3 * t + k] = length > 0 ? sum[f + k] / length : 0;
      }
    }
    return out;
  }

  private double[] areaNormal(int t) {
    int a = 3 * triangles[3 * t];
    int b = 3 * triangles[3 * t + 1];
    int c = 3 * triangles[3 * t + 2];
    double ux = xyz[b] - xyz[a];
    double uy = xyz[b + 1] - xyz[a + 1];
    double uz = xyz[b + 2] - xyz[a + 2];
    double vx = xyz[c] - xyz[a];
    double vy = xyz[c + 1] - xyz[a + 1];
    double vz = xyz[c + 2] - xyz[a + 2];
    return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
  }

  /** The mean of the faces round a corner that belong to the same curved surface. */
  private float[] cornerNormals(int points) {
    int[] start = new int[points + 1];
    for (int p : triangles) {
      start[p + 1]++;
    }
    for (int p = 0; p < points; p++) {
      start[p + 1] += start[p];
    }
    int[] at = Arrays.copyOf(start, points);
    int[] round = new int[triangles.length];
    for (int i = 0; i < triangles.length; i++) {
      round[at[triangles[i]]++] = i;
    }
    double[] weight = new double[triangles.length];
    for (int i = 0; i < triangles.length; i++) {
      weight[i] = cornerAngle(i);
    }
    float[] out = new float[3 * triangles.length];
    for (int i = 0; i < triangles.length; i++) {
      int t = i / 3;
      double x = 0;
      double y = 0;
      double z = 0;
      for (int k = start[triangles[i]]; k < start[triangles[i] + 1]; k++) {
        int u = round[k] / 3;
        if (cosine(t, u) >= CREASE_COSINE) {
          x += weight[round[k]] * faceNormals[3 * u];
          y += weight[round[k]] * faceNormals[3 * u + 1];
          z += weight[round[k]] * faceNormals[3 * u + 2];
        }
      }
      double length = Math.sqrt(x * x + y * y + z * z);
      out[3 * i] = (float) (length > 0 ? x / length : faceNormals[3 * t]);
      out[3 * i + 1] = (float) (length > 0 ? y / length : faceNormals[3 * t + 1]);
      out[3 * i + 2] = (float) (length > 0 ? z / length : faceNormals[3 * t + 2]);
    }
    return out;
  }

  private double cornerAngle(int corner) {
    int t = corner - corner % 3;
    int p = 3 * triangles[corner];
    int q = 3 * triangles[t + (corner + 1) % 3];
    int r = 3 * triangles[t + (corner + 2) % 3];
    double dot = 0;
    double qq = 0;
    double rr = 0;
    for (int k = 0; k < 3; k++) {
      double a = xyz[q + k] - xyz[p + k];
      double b = xyz[r + k] - xyz[p + k];
      dot += a * b;
      qq += a * a;
      rr += b * b;
    }
    double lengths = Math.sqrt(qq * rr);
    return lengths > 0 ? Math.acos(Math.max(-1, Math.min(1, dot / lengths))) : 0;
  }

  /** Pairs every directed edge with its reverse by sorting; edges inside a face are left out. */
  private int[] edges(int[] faceOf) {
    int n = triangles.length;
    long[] keys = new long[n];
    for (int i = 0; i < n; i++) {
      long a = triangles[i];
      long b = triangles[i - i % 3 + (i + 1) % 3];
      // Low end, high end, then the corner it starts at: both directions come side by side.
      keys[i] = (Math.min(a, b) << 42) | (Math.max(a, b) << 21) | i;
    }
    Arrays.sort(keys);
    int[] out = new int[2 * n];
    int size = 0;
    for (int k = 0; k + 1 < n; k++) {
      if (keys[k] >>> 21 == keys[k + 1] >>> 21) {
        int i = (int) (keys[k] & 0x1FFFFF);
        int j = (int) (keys[k + 1] & 0x1FFFFF);
        if (faceOf[i / 3] != faceOf[j / 3]) {
          out[size++] = (int) (keys[k] >>> 42);
          out[size++] = (int) (keys[k] >>> 21 & 0x1FFFFF);
          out[size++] = i / 3;
          out[size++] = j / 3;
        }
        k++;
      }
    }
    return Arrays.copyOf(out, size);
  }
}
