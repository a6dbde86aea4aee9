package dryfit.solid.exact;

/** Asks what rounding to 32-bit floats would do to triangles. */
final class FloatShape {
  private FloatShape() {}

  /**
   * Whether every triangle keeps three different corners and a height. Then the rounded mesh is
   * closed too: equal corners weld, and edges still match.
   */
  static boolean holds(double[] xyz, int[] triangles) {
    for (int t = 0; t < triangles.length; t += 3) {
      if (!holds(xyz, 3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2])) {
        return false;
      }
    }
    return true;
  }

  private static boolean holds(double[] xyz, int a, int b, int c) {
    double ux = (float) xyz[b] - (double) (float) xyz[a];
    double uy = (float) xyz[b + 1] - (double) (float) xyz[a + 1];
    double uz = (float) xyz[b + 2] - (double) (float) xyz[a + 2];
    double vx = (float) xyz[c] - (double) (float) xyz[a];
    double vy = (float) xyz[c + 1] - (double) (float) xyz[a + 1];
    double vz = (float) xyz[c + 2] - (double) (float) xyz[a + 2];
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double twice = Math.max(Math.abs(nx), Math.max(Math.abs(ny), Math.abs(nz)));
    double u = Math.max(Math.abs(ux), Math.max(Math.abs(uy), Math.abs(uz)));
    double v = Math.max(Math.abs(vx), Math.max(Math.abs(vy), Math.abs(vz)));
    double w = Math.max(Math.abs(ux - vx), Math.max(Math.abs(uy - vy), Math.abs(uz - vz)));
    double longest = Math.max(u, Math.max(v, w));
    // Heights below a nanometre are rounding: floats this side of 2 m step by 2^-23 of a metre.
    return twice > 1e-6 * longest;
  }
}
