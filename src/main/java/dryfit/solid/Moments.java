package dryfit.solid;

/** Sums over the points and faces of a cell. */
final class Moments {
  private Moments() {}

  /** Lowest x, y, z and highest x, y, z. */
  static double[] boxAround(double[] xyz) {
    double x0 = xyz[0];
    double y0 = xyz[1];
    double z0 = xyz[2];
    double x1 = x0;
    double y1 = y0;
    double z1 = z0;
    // Compared, not by Math.min, which looks after signs of zero.
    for (int i = 3; i < xyz.length; i += 3) {
      double x = xyz[i];
      double y = xyz[i + 1];
      double z = xyz[i + 2];
      x0 = x < x0 ? x : x0;
      y0 = y < y0 ? y : y0;
      z0 = z < z0 ? z : z0;
      x1 = x > x1 ? x : x1;
      y1 = y > y1 ? y : y1;
      z1 = z > z1 ? z : z1;
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
