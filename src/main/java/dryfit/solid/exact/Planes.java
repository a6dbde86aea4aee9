package dryfit.solid.exact;

import java.util.Arrays;

/**
 * The table of planes. A plane is a primitive integer normal whose largest component is positive,
 * and a grid point on it; equal planes have equal ids, so that "coplanar" is a comparison of ids.
 */
final class Planes {
  int count;
  long[] nx;
  long[] ny;
  long[] nz;
  int[] px;
  int[] py;
  int[] pz;

  /** The axis of the largest component of the normal: the one to drop to see the plane flat. */
  byte[] drop;

  /** Sum of the absolute components of the normal. */
  double[] weight;

  private boolean[] small;
  private long[] offset;
  private final KeyMap first;
  private int[] next;

  Planes(int expected) {
    nx = new long[expected];
    ny = new long[expected];
    nz = new long[expected];
    px = new int[expected];
    py = new int[expected];
    pz = new int[expected];
    drop = new byte[expected];
    weight = new double[expected];
    small = new boolean[expected];
    offset = new long[expected];
    next = new int[expected];
    first = new KeyMap(expected);
  }

  /**
   * The plane through a grid point.
   *
   * @return {@code 2 * id}, plus one if the given normal points against the plane's own
   */
  int add(long ax, long ay, long az, int x, int y, int z) {
    int axis = largest(ax, ay, az);
    long lead = axis == 0 ? ax : axis == 1 ? ay : az;
    long by = Exact.divisor(ax, ay, az);
    int flipped = lead < 0 ? 1 : 0;
    if (flipped == 1) {
      by = -by;
    }
    long a = ax / by;
    long b = ay / by;
    long c = az / by;
    // Modulo 2^64: good enough to tell most planes apart, the point settles the rest.
    long d = a * x + b * y + c * z;
    long key = ((a * 0x9E3779B97F4A7C15L + b) * 0xBF58476D1CE4E5B9L + c) * 0x94D049BB133111EBL + d;
    int head = first.get(key);
    for (int i = head; i != KeyMap.NONE; i = next[i]) {
      if (nx[i] == a && ny[i] == b && nz[i] == c && offset[i] == d && side(x, y, z, i) == 0) {
        return 2 * i + flipped;
      }
    }
    if (count == px.length) {
      grow();
    }
    int id = count++;
    nx[id] = a;
    ny[id] = b;
    nz[id] = c;
    px[id] = x;
    py[id] = y;
    pz[id] = z;
    drop[id] = (byte) axis;
    weight[id] = (double) Math.abs(a) + Math.abs(b) + Math.abs(c);
    small[id] = weight[id] < 0x1p36;
    offset[id] = d;
    next[id] = head;
    first.put(key, id);
    return 2 * id + flipped;
  }

  /**
   * How far a grid point stands in front of the plane, in units of the normal's length; the sign is
   * exact, the size is good to a part in 2^52.
   */
  double side(int x, int y, int z, int plane) {
    long dx = (long) x - px[plane];
    long dy = (long) y - py[plane];
    long dz = (long) z - pz[plane];
    if (small[plane]) {
      return nx[plane] * dx + ny[plane] * dy + nz[plane] * dz;
    }
    return Exact.dot(nx[plane], ny[plane], nz[plane], dx, dy, dz);
  }

  /** As {@link #side(int, int, int, int)}, in doubles, for places off the grid. */
  double about(double x, double y, double z, int plane) {
    return nx[plane] * (x - px[plane]) + ny[plane] * (y - py[plane]) + nz[plane] * (z - pz[plane]);
  }

  long normal(int plane, int axis) {
    return axis == 0 ? nx[plane] : axis == 1 ? ny[plane] : nz[plane];
  }

  /** Exact sign of the given component of {@code normal(p) x normal(q)}. */
  int crossSign(int p, int q, int axis) {
    int i = axis == 2 ? 0 : axis + 1;
    int j = 3 - axis - i;
    return (int)
        Math.signum(Exact.dot(normal(p, i), -normal(p, j), 0, normal(q, j), normal(q, i), 0));
  }

  /** The axis along which {@code normal(p) x normal(q)} is longest; the planes must cross. */
  int crossAxis(int p, int q) {
    double x = (double) ny[p] * nz[q] - (double) nz[p] * ny[q];
    double y = (double) nz[p] * nx[q] - (double) nx[p] * nz[q];
    double z = (double) nx[p] * ny[q] - (double) ny[p] * nx[q];
    int axis = largest(x, y, z);
    while (crossSign(p, q, axis) == 0) {
      axis = (axis + 1) % 3;
    }
    return axis;
  }

  private static int largest(double x, double y, double z) {
    double a = Math.abs(x);
    double b = Math.abs(y);
    double c = Math.abs(z);
    return a >= b && a >= c ? 0 : b >= c ? 1 : 2;
  }

  private static int largest(long x, long y, long z) {
    long a = Math.abs(x);
    long b = Math.abs(y);
    long c = Math.abs(z);
    return a >= b && a >= c ? 0 : b >= c ? 1 : 2;
  }

  private void grow() {
    int to = 2 * count;
    nx = Arrays.copyOf(nx, to);
    ny = Arrays.copyOf(ny, to);
    nz = Arrays.copyOf(nz, to);
    px = Arrays.copyOf(px, to);
    py = Arrays.copyOf(py, to);
    pz = Arrays.copyOf(pz, to);
    drop = Arrays.copyOf(drop, to);
    weight = Arrays.copyOf(weight, to);
    small = Arrays.copyOf(small, to);
    offset = Arrays.copyOf(offset, to);
    next = Arrays.copyOf(next, to);
  }
}
