package dryfit.solid;

/** Sums over the points and faces of a cell. */
final class Moments {
  private Moments() {}

  /** Lowest x, y, z and highest x, y, z. */
  static double[] boxAround(double[] xyz) {
    double x0 = Double.POSITIVE_INFINITY;
    double y0 = x0;
    double z0 = x0;
    double x1 = Double.NEGATIVE_INFINITY;
    double y1 = x1;
    double z1 = x1;
    for (int i = 0; i < xyz.length; i += 3) {
      x0 = Math.min(x0, xyz[i]);
      y0 = Math.min(y0, xyz[i + 1]);
      z0 = Math.min(z0, xyz[i + 2]);
      x1 = Math.max(x1, xyz[i]);
      y1 = Math.max(y1, xyz[i + 1]);
      z1 = Math.max(z1, xyz[i + 2]);
    }
    return new double[] {x0, y0, z0, x1, y1, z1};
  }

  /**
   * Volume and centroid by the divergence theorem: tetrahedra from the middle of the box, which is
   * inside, so that all terms have one sign and nothing cancels.
   */
  static double[] of(double[] xyz, int[][] faces, double[] box) {
    double ox = (box[0] + box[3]) / 2;
    double oy = (box[1] + box[4]) / 2;
    double oz = (box[2] + box[5]) / 2;
    double six = 0;
    double mx = 0;
    double my = 0;
    double mz = 0;
    for (int[] loop : faces) {
      int a = 3 * loop[0];
      double ax = xyz[a] - ox;
      double ay = xyz[a + 1] - oy;
      double az = xyz[a + 2] - oz;
      for (int i = 2; i < loop.length; i++) {
        int b = 3 * loop[i - 1];
        int c = 3 * loop[i];
        double bx = xyz[b] - ox;
        double by = xyz[b + 1] - oy;
        double bz = xyz[b + 2] - oz;
        double cx = xyz[c] - ox;
        double cy = xyz[c + 1] - oy;
        double cz = xyz[c + 2] - oz;
        double v = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
        six += v;
        mx += v * (ax + bx + cx);
        my += v * (ay + by + cy);
        mz += v * (az + bz + cz);
      }
    }
    if (!(six > 0)) {
      return new double[] {six / 6, ox, oy, oz};
    }
    double k = 1 / (4 * six);
    return new double[] {six / 6, ox + mx * k, oy + my * k, oz + mz * k};
  }
}
