package dryfit.solid;

import dryfit.measure.Tolerances;

/**
 * The moves that bring two convex cells to overlap: z is in {@code b - a} if a moved by z meets b.
 * It is convex, and this walks its faces: those of b, those of a turned round, and those that an
 * edge of each spans. Which pairs of edges do is read off the arcs that the edges make on the
 * sphere of normals (D. Gregorius, "The Separating Axis Test between Convex Polyhedra", Game
 * Developers Conference 2013; the method from memory).
 */
final class Minkowski {
  private Minkowski() {}

  /** Takes the faces, one after the other. */
  interface Faces {
    /**
     * All moves z have {@code n . z <= reach}.
     *
     * @return whether to go on
     */
    boolean face(double nx, double ny, double nz, double reach);
  }

  /** Walks the faces of {@code b - a} until one is refused; whether none was. */
  static boolean walk(Convex a, Convex b, Faces sink) {
    return facesOf(a, b, sink) && edgePairs(a, b, sink);
  }

  private static boolean facesOf(Convex a, Convex b, Faces sink) {
    double[] p = b.planes;
    for (int f = 0; f < b.faces.length; f++) {
      // Reach of b - a along n: that of b, which is on the face, less the least of a.
      double reach = -b.lowest(f, a.xyz);
      if (!sink.face(p[4 * f], p[4 * f + 1], p[4 * f + 2], reach)) {
        return false;
      }
    }
    double[] q = a.planes;
    for (int f = 0; f < a.faces.length; f++) {
      double reach = -a.lowest(f, b.xyz);
      if (!sink.face(-q[4 * f], -q[4 * f + 1], -q[4 * f + 2], reach)) {
        return false;
      }
    }
    return true;
  }

  private static boolean edgePairs(Convex a, Convex b, Faces sink) {
    int[] ea = a.edges();
    int[] eb = b.edges();
    for (int i = 0; i < ea.length; i += 4) {
      for (int j = 0; j < eb.length; j += 4) {
        if (!edgePair(a, ea, i, b, eb, j, sink)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean edgePair(
      Convex a, int[] ea, int i, Convex b, int[] eb, int j, Faces sink) {
    double[] x = a.xyz;
    double[] y = b.xyz;
    int a0 = 3 * ea[i];
    int a1 = 3 * ea[i + 1];
    int b0 = 3 * eb[j];
    int b1 = 3 * eb[j + 1];
    double ux = x[a1] - x[a0];
    double uy = x[a1 + 1] - x[a0 + 1];
    double uz = x[a1 + 2] - x[a0 + 2];
    double vx = y[b1] - y[b0];
    double vy = y[b1 + 1] - y[b0 + 1];
    double vz = y[b1 + 2] - y[b0 + 2];
    int al = 4 * ea[i + 2];
    int ar = 4 * ea[i + 3];
    int bl = 4 * eb[j + 2];
    int br = 4 * eb[j + 3];
    // The normals of b's faces lie on either side of the plane of a's arc, and the other way round.
    double left = along(b.planes, bl, ux, uy, uz);
    double right = along(b.planes, br, ux, uy, uz);
    if (left * right >= 0) {
      return true;
    }
    // Those of a are turned round, as a is subtracted.
    double turnedLeft = -along(a.planes, al, vx, vy, vz);
    double turnedRight = -along(a.planes, ar, vx, vy, vz);
    if (turnedLeft * turnedRight >= 0) {
      return true;
    }
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    double sine = length / Math.sqrt((ux * ux + uy * uy + uz * uz) * (vx * vx + vy * vy + vz * vz));
    if (!(sine > Tolerances.sameDirection())) {
      // Parallel edges span no face, and their normal would be noise.
      return true;
    }
    // The arcs' circles cross at two opposite points; the arcs do if both hold the same one.
    double bSide =
        nx * (b.planes[bl] + b.planes[br])
            + ny * (b.planes[bl + 1] + b.planes[br + 1])
            + nz * (b.planes[bl + 2] + b.planes[br + 2]);
    double aSide =
        nx * (a.planes[al] + a.planes[ar])
            + ny * (a.planes[al + 1] + a.planes[ar + 1])
            + nz * (a.planes[al + 2] + a.planes[ar + 2]);
    if (bSide * aSide >= 0) {
      return true;
    }
    double k = bSide > 0 ? 1 / length : -1 / length;
    nx *= k;
    ny *= k;
    nz *= k;
    // Where edges run almost together the normal is uncertain, but the reach along it need not be.
    double reach =
        sine > Tolerances.nearlyParallel()
            ? nx * (y[b0] - x[a0]) + ny * (y[b0 + 1] - x[a0 + 1]) + nz * (y[b0 + 2] - x[a0 + 2])
            : reach(a, b, nx, ny, nz);
    return sink.face(nx, ny, nz, reach);
  }

  private static double reach(Convex a, Convex b, double nx, double ny, double nz) {
    int p = 3 * b.farthest(nx, ny, nz);
    int q = 3 * a.farthest(-nx, -ny, -nz);
    return nx * (b.xyz[p] - a.xyz[q])
        + ny * (b.xyz[p + 1] - a.xyz[q + 1])
        + nz * (b.xyz[p + 2] - a.xyz[q + 2]);
  }

  private static double along(double[] planes, int k, double x, double y, double z) {
    return planes[k] * x + planes[k + 1] * y + planes[k + 2] * z;
  }
}
