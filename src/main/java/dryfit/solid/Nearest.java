package dryfit.solid;

import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;

/**
 * The nearest points of two convex point sets, by walking a simplex of differences towards the
 * origin (E. G. Gilbert, D. W. Johnson and S. S. Keerthi, IEEE Journal of Robotics and Automation
 * 4(2), 1988). It only claims to have found them when the separating plane it ends with proves the
 * distance; near contact rounding can deny it that proof, and then it says so.
 */
final class Nearest {
  private static final int MOST_ROUNDS = 64;

  private final double[] a;
  private final double[] b;
  private final int[] ia = new int[4];
  private final int[] ib = new int[4];
  private final double[][] w = new double[4][3];
  private final Simplex simplex = new Simplex(w);
  private int size;
  private final boolean found;

  Nearest(double[] a, double[] b) {
    this.a = a;
    this.b = b;
    this.found = search();
  }

  /** Whether the answer is proved. */
  boolean found() {
    return found;
  }

  Distance distance() {
    double[] p = blend(a, ia);
    double[] q = blend(b, ib);
    Vec3 onA = new Vec3(p[0], p[1], p[2]);
    Vec3 onB = new Vec3(q[0], q[1], q[2]);
    return simplex.holdsOrigin
        ? new Distance(0, onA, onA)
        : new Distance(onA.distance(onB), onA, onB);
  }

  private double[] blend(double[] points, int[] index) {
    double[] sum = new double[3];
    for (int i = 0; i < size; i++) {
      for (int axis = 0; axis < 3; axis++) {
        sum[axis] += simplex.share[i] * points[3 * index[i] + axis];
      }
    }
    return sum;
  }

  private boolean search() {
    put(0, 0, 0);
    size = 1;
    simplex.nearest(1);
    double before = Double.POSITIVE_INFINITY;
    for (int step = 0; step < MOST_ROUNDS; step++) {
      double x = simplex.x;
      double y = simplex.y;
      double z = simplex.z;
      double square = x * x + y * y + z * z;
      if (!(square < before) || square <= Tolerances.onPlane() * Tolerances.onPlane()) {
        return false;
      }
      before = square;
      int p = extreme(a, -x, -y, -z);
      int q = extreme(b, x, y, z);
      double reach =
          x * (a[3 * p] - b[3 * q])
              + y * (a[3 * p + 1] - b[3 * q + 1])
              + z * (a[3 * p + 2] - b[3 * q + 2]);
      // The plane across (x, y, z) through the extreme points proves a distance of reach / length.
      if (square - reach <= Tolerances.onPlane() * Math.sqrt(square)) {
        return true;
      }
      put(size++, p, q);
      simplex.nearest(size);
      keepOnlyWhatCarries();
      if (simplex.holdsOrigin) {
        return true;
      }
    }
    return false;
  }

  private void put(int at, int p, int q) {
    ia[at] = p;
    ib[at] = q;
    for (int axis = 0; axis < 3; axis++) {
      w[at][axis] = a[3 * p + axis] - b[3 * q + axis];
    }
  }

  private void keepOnlyWhatCarries() {
    int kept = 0;
    for (int i = 0; i < size; i++) {
      if (simplex.share[i] > 0) {
        if (kept != i) {
          simplex.share[kept] = simplex.share[i];
          put(kept, ia[i], ib[i]);
        }
        kept++;
      }
    }
    size = kept;
  }

  private static int extreme(double[] points, double dx, double dy, double dz) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < points.length; i += 3) {
      double at = dx * points[i] + dy * points[i + 1] + dz * points[i + 2];
      if (at > most) {
        most = at;
        best = i / 3;
      }
    }
    return best;
  }
}
