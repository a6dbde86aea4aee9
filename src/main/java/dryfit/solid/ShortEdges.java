package dryfit.solid;

import dryfit.measure.Tolerances;
import java.util.Arrays;

/** Draws edges too short to matter into a point; faces that lose their area go. */
final class ShortEdges {
  private ShortEdges() {}

  /** The cell without edges shorter than {@link Tolerances#onPlane}; null if nothing is left. */
  static Convex collapsed(double[] xyz, int[][] faces, double[] planes) {
    int[] stand = null;
    for (int[] loop : faces) {
      for (int i = 0; i < loop.length; i++) {
        int p = loop[i];
        int q = loop[i + 1 < loop.length ? i + 1 : 0];
        if (p < q && isShort(xyz, p, q)) {
          stand = stand == null ? numbers(xyz.length / 3) : stand;
          join(stand, p, q);
        }
      }
    }
    return stand == null ? new Convex(xyz, faces, planes) : rebuilt(xyz, faces, planes, stand);
  }

  private static boolean isShort(double[] xyz, int p, int q) {
    double x = xyz[3 * p] - xyz[3 * q];
    double y = xyz[3 * p + 1] - xyz[3 * q + 1];
    double z = xyz[3 * p + 2] - xyz[3 * q + 2];
    double limit = Tolerances.onPlane();
    return x * x + y * y + z * z <= limit * limit;
  }

  private static int[] numbers(int n) {
    int[] all = new int[n];
    for (int i = 0; i < n; i++) {
      all[i] = i;
    }
    return all;
  }

  private static void join(int[] stand, int p, int q) {
    int from = stand[q];
    int to = stand[p];
    for (int i = 0; i < stand.length; i++) {
      if (stand[i] == from) {
        stand[i] = to;
      }
    }
  }

  private static Convex rebuilt(double[] xyz, int[][] faces, double[] planes, int[] stand) {
    int[] renamed = new int[stand.length];
    Arrays.fill(renamed, -1);
    double[] points = new double[xyz.length];
    int count = 0;
    int[][] kept = new int[faces.length][];
    double[] keptPlanes = new double[planes.length];
    int keptCount = 0;
    for (int f = 0; f < faces.length; f++) {
      int[] loop = distinct(faces[f], stand);
      if (loop.length < 3) {
        continue;
      }
      for (int i = 0; i < loop.length; i++) {
        int p = loop[i];
        if (renamed[p] < 0) {
          System.arraycopy(xyz, 3 * p, points, 3 * count, 3);
          renamed[p] = count++;
        }
        loop[i] = renamed[p];
      }
      System.arraycopy(planes, 4 * f, keptPlanes, 4 * keptCount, 4);
      kept[keptCount++] = loop;
    }
    if (keptCount < 4) {
      return null;
    }
    return new Convex(
        Arrays.copyOf(points, 3 * count),
        Arrays.copyOf(kept, keptCount),
        Arrays.copyOf(keptPlanes, 4 * keptCount));
  }

  private static int[] distinct(int[] loop, int[] stand) {
    int[] out = new int[loop.length];
    int n = 0;
    for (int p : loop) {
      int q = stand[p];
      if (n == 0 || out[n - 1] != q) {
        out[n++] = q;
      }
    }
    while (n > 1 && out[n - 1] == out[0]) {
      n--;
    }
    return Arrays.copyOf(out, n);
  }
}
