package dryfit.solid;

import java.util.Arrays;

/**
 * The point nearest to the origin of one to four points' hull, and the share each has in it. A flat
 * simplex falls back to its sides, so that no share is ever divided by nothing.
 */
final class Simplex {
  private static final int[][] SIDES = {{0, 1, 2}, {0, 1, 3}, {0, 2, 3}, {1, 2, 3}};
  private static final int[][] EDGES = {{0, 1}, {0, 2}, {1, 2}};

  private final double[][] w;

  /** The shares of the points in the nearest one; they sum to 1. */
  final double[] share = new double[4];

  private final double[] trial = new double[4];

  double x;
  double y;
  double z;

  /** Whether the origin lies in a tetrahedron that is not flat. */
  boolean holdsOrigin;

  private double least;

  Simplex(double[][] w) {
    this.w = w;
  }

  /** Finds the nearest point of the first {@code size} points. */
  void nearest(int size) {
    least = Double.POSITIVE_INFINITY;
    holdsOrigin = false;
    switch (size) {
      case 1 -> {
        clearTrial();
        trial[0] = 1;
        offer();
      }
      case 2 -> segment(0, 1);
      case 3 -> triangle(0, 1, 2);
      default -> tetrahedron();
    }
  }

  private void clearTrial() {
    Arrays.fill(trial, 0);
  }

  private void offer() {
    double tx = 0;
    double ty = 0;
    double tz = 0;
    for (int i = 0; i < 4; i++) {
      if (trial[i] != 0) {
        tx += trial[i] * w[i][0];
        ty += trial[i] * w[i][1];
        tz += trial[i] * w[i][2];
      }
    }
    double square = tx * tx + ty * ty + tz * tz;
    if (square < least) {
      least = square;
      x = tx;
      y = ty;
      z = tz;
      System.arraycopy(trial, 0, share, 0, 4);
    }
  }

  private void segment(int i, int j) {
    double ex = w[j][0] - w[i][0];
    double ey = w[j][1] - w[i][1];
    double ez = w[j][2] - w[i][2];
    double square = ex * ex + ey * ey + ez * ez;
    double t = -(w[i][0] * ex + w[i][1] * ey + w[i][2] * ez);
    double share = square > 0 ? Math.min(1, Math.max(0, t / square)) : 0;
    clearTrial();
    trial[i] = 1 - share;
    trial[j] = share;
    offer();
  }

  /** Inside if the shares of the foot of the origin are all positive, else nearest on an edge. */
  private void triangle(int i, int j, int k) {
    double[] a = w[i];
    double[] b = w[j];
    double[] c = w[k];
    double ux = b[0] - a[0];
    double uy = b[1] - a[1];
    double uz = b[2] - a[2];
    double vx = c[0] - a[0];
    double vy = c[1] - a[1];
    double vz = c[2] - a[2];
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double square = nx * nx + ny * ny + nz * nz;
    if (square > 0) {
      double shareB = -mixed(a[0], a[1], a[2], vx, vy, vz, nx, ny, nz) / square;
      double shareC = mixed(a[0], a[1], a[2], ux, uy, uz, nx, ny, nz) / square;
      if (shareB > 0 && shareC > 0 && shareB + shareC < 1) {
        clearTrial();
        trial[i] = 1 - shareB - shareC;
        trial[j] = shareB;
        trial[k] = shareC;
        offer();
        return;
      }
    }
    int[] at = {i, j, k};
    for (int[] edge : EDGES) {
      segment(at[edge[0]], at[edge[1]]);
    }
  }

  private void tetrahedron() {
    double whole = volume(w[0], w[1], w[2], w[3]);
    double[] origin = {0, 0, 0};
    double s0 = volume(origin, w[1], w[2], w[3]) / whole;
    double s1 = volume(w[0], origin, w[2], w[3]) / whole;
    double s2 = volume(w[0], w[1], origin, w[3]) / whole;
    double s3 = volume(w[0], w[1], w[2], origin) / whole;
    if (s0 > 0 && s1 > 0 && s2 > 0 && s3 > 0) {
      holdsOrigin = true;
      x = 0;
      y = 0;
      z = 0;
      double sum = s0 + s1 + s2 + s3;
      share[0] = s0 / sum;
      share[1] = s1 / sum;
      share[2] = s2 / sum;
      share[3] = s3 / sum;
      return;
    }
    for (int[] side : SIDES) {
      triangle(side[0], side[1], side[2]);
    }
  }

  private static double volume(double[] a, double[] b, double[] c, double[] d) {
    return mixed(
        b[0] - a[0],
        b[1] - a[1],
        b[2] - a[2],
        c[0] - a[0],
        c[1] - a[1],
        c[2] - a[2],
        d[0] - a[0],
        d[1] - a[1],
        d[2] - a[2]);
  }

  /** The triple product p . (q x r). */
  private static double mixed(
      double px,
      double py,
      double pz,
      double qx,
      double qy,
      double qz,
      double rx,
      double ry,
      double rz) {
    return px * (qy * rz - qz * ry) + py * (qz * rx - qx * rz) + pz * (qx * ry - qy * rx);
  }
}
