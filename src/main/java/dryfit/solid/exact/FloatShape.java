package dryfit.solid.exact;

import dryfit.measure.Tolerances;

/** Asks what rounding to 32-bit floats would do to triangles. */
final class FloatShape {
  /** Millimetres: some steps of a double at the end of the grid, which is the noise in points. */
  private static final double DOUBLE_STEPS = 0x1p-38;

  private FloatShape() {}

  /**
   * Whether every triangle has a height and keeps it, and three different corners, and the whole a
   * volume. Then the rounded mesh is closed too: equal corners weld, and edges still match.
   */
  static boolean holds(double[] xyz, int[] triangles) {
    for (int t = 0; t < triangles.length; t += 3) {
      if (!holds(xyz, 3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2])) {
        return false;
      }
    }
    return triangles.length == 0 || volume(xyz, triangles) > 0;
  }

  /** Six times the volume between the rounded corners: a film can come out on its other side. */
  private static double volume(double[] xyz, int[] triangles) {
    int o = 3 * triangles[0];
    double sum = 0;
    for (int t = 0; t < triangles.length; t += 3) {
      int a = 3 * triangles[t];
      int b = 3 * triangles[t + 1];
      int c = 3 * triangles[t + 2];
      double ax = (float) xyz[a] - (double) (float) xyz[o];
      double ay = (float) xyz[a + 1] - (double) (float) xyz[o + 1];
      double az = (float) xyz[a + 2] - (double) (float) xyz[o + 2];
      double bx = (float) xyz[b] - (double) (float) xyz[o];
      double by = (float) xyz[b + 1] - (double) (float) xyz[o + 1];
      double bz = (float) xyz[b + 2] - (double) (float) xyz[o + 2];
      double cx = (float) xyz[c] - (double) (float) xyz[o];
      double cy = (float) xyz[c + 1] - (double) (float) xyz[o + 1];
      double cz = (float) xyz[c + 2] - (double) (float) xyz[o + 2];
      sum += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    }
    return sum;
  }

  private static boolean holds(double[] xyz, int a, int b, int c) {
    return height(
                (float) xyz[b] - (double) (float) xyz[a],
                (float) xyz[b + 1] - (double) (float) xyz[a + 1],
                (float) xyz[b + 2] - (double) (float) xyz[a + 2],
                (float) xyz[c] - (double) (float) xyz[a],
                (float) xyz[c + 1] - (double) (float) xyz[a + 1],
                (float) xyz[c + 2] - (double) (float) xyz[a + 2])
            > Tolerances.coincident()
        && height(
                xyz[b] - xyz[a],
                xyz[b + 1] - xyz[a + 1],
                xyz[b + 2] - xyz[a + 2],
                xyz[c] - xyz[a],
                xyz[c + 1] - xyz[a + 1],
                xyz[c + 2] - xyz[a + 2])
            > DOUBLE_STEPS;
  }

  /** The height of a triangle with sides u and v, but for a factor below two. */
  private static double height(double ux, double uy, double uz, double vx, double vy, double vz) {
    double twice =
        Math.max(
            Math.abs(uy * vz - uz * vy),
            Math.max(Math.abs(uz * vx - ux * vz), Math.abs(ux * vy - uy * vx)));
    double u = Math.max(Math.abs(ux), Math.max(Math.abs(uy), Math.abs(uz)));
    double v = Math.max(Math.abs(vx), Math.max(Math.abs(vy), Math.abs(vz)));
    double w = Math.max(Math.abs(ux - vx), Math.max(Math.abs(uy - vy), Math.abs(uz - vz)));
    double longest = Math.max(u, Math.max(v, w));
    return longest > 0 ? twice / longest : 0;
  }
}
