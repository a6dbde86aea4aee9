package dryfit.solid;

import dryfit.geometry.Plane;

/** Planes of face loops, four numbers a face: the outward unit normal and the offset. */
final class FacePlanes {
  private FacePlanes() {}

  /**
   * @throws IllegalArgumentException if a face has fewer than three corners or no area
   */
  static double[] of(double[] xyz, int[][] faces) {
    double[] planes = new double[4 * faces.length];
    for (int f = 0; f < faces.length; f++) {
      if (!fit(xyz, faces[f], planes, f)) {
        throw new IllegalArgumentException("face " + f + " has no area");
      }
    }
    return planes;
  }

  /**
   * Newell's normal and the mean offset of the corners: right for any flat loop, whichever corners
   * are in line (M. E. Newell, in I. E. Sutherland, R. F. Sproull and R. A. Schumacker, "A
   * Characterization of Ten Hidden-Surface Algorithms", ACM Computing Surveys 6(1), 1974).
   *
   * @return whether the loop has an area
   */
  static boolean fit(double[] xyz, int[] loop, double[] planes, int f) {
    int first = 3 * loop[0];
    double ox = xyz[first];
    double oy = xyz[first + 1];
    double oz = xyz[first + 2];
    double nx = 0;
    double ny = 0;
    double nz = 0;
    double mx = 0;
    double my = 0;
    double mz = 0;
    for (int i = 0; i < loop.length; i++) {
      int p = 3 * loop[i];
      int q = 3 * loop[(i + 1) % loop.length];
      double px = xyz[p] - ox;
      double py = xyz[p + 1] - oy;
      double pz = xyz[p + 2] - oz;
      double qx = xyz[q] - ox;
      double qy = xyz[q + 1] - oy;
      double qz = xyz[q + 2] - oz;
      nx += py * qz - pz * qy;
      ny += pz * qx - px * qz;
      nz += px * qy - py * qx;
      mx += px;
      my += py;
      mz += pz;
    }
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (loop.length < 3 || !(length > 0)) {
      return false;
    }
    nx /= length;
    ny /= length;
    nz /= length;
    int n = loop.length;
    planes[4 * f] = nx;
    planes[4 * f + 1] = ny;
    planes[4 * f + 2] = nz;
    planes[4 * f + 3] = nx * ox + ny * oy + nz * oz + (nx * mx + ny * my + nz * mz) / n;
    return true;
  }

  static void store(double[] planes, int f, Plane plane) {
    planes[4 * f] = plane.normal().x();
    planes[4 * f + 1] = plane.normal().y();
    planes[4 * f + 2] = plane.normal().z();
    planes[4 * f + 3] = plane.offset();
  }
}
