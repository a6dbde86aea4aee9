package dryfit.solid.exact;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * All points of one evaluation. A point is a corner of a shape (on the grid), the place where an
 * edge of a shape passes through a plane, or the place where three planes meet. One place has one
 * id, whichever way it was found: near candidates are compared exactly.
 *
 * <p>Every point carries coordinates in grid steps, rounded to doubles. Predicates look at those
 * first and turn to exact numbers only where rounding could matter.
 */
final class Points {
  /**
   * Grid steps. Rounded coordinates below 2^25 stand within a few units of 2^-27 of the truth; what
   * differs by more than this is certainly different.
   */
  private static final double SURE = 0x1p-18;

  /** How many of the planes through a point are remembered. */
  private static final int KNOWN = 6;

  private final Planes planes;
  int count;
  int corners;
  double[] x;
  double[] y;
  double[] z;

  /** Bit 1, 2, 4: the rounded x, y, z is the true one. */
  private byte[] exact;

  private int[] known;
  private int[] edgeFrom;
  private int[] edgeTo;
  private int[] cutBy;
  private double[] fromSide;
  private double[] toSide;
  private BigInteger[][] meeting;
  private final KeyMap cornerAt;
  private final KeyMap byPlanes;
  private final KeyMap near;
  private int[] next;

  Points(Planes planes, int expected) {
    this.planes = planes;
    x = new double[expected];
    y = new double[expected];
    z = new double[expected];
    exact = new byte[expected];
    known = new int[expected * KNOWN];
    edgeFrom = new int[expected];
    edgeTo = new int[expected];
    cutBy = new int[expected];
    fromSide = new double[expected];
    toSide = new double[expected];
    meeting = new BigInteger[expected][];
    next = new int[expected];
    cornerAt = new KeyMap(expected / 2);
    byPlanes = new KeyMap(expected);
    near = new KeyMap(expected / 2);
  }

  /** The corner at a grid place; to be called before any other point is made. */
  int corner(int gx, int gy, int gz) {
    long key = cell(gx, gy, gz);
    int head = cornerAt.get(key);
    int found = cornerAmong(head, gx, gy, gz);
    if (found != KeyMap.NONE) {
      return found;
    }
    int id = append(gx, gy, gz, 7);
    corners = count;
    next[id] = head;
    cornerAt.put(key, id);
    return id;
  }

  private int cornerAmong(int head, double gx, double gy, double gz) {
    int i = head;
    while (i != KeyMap.NONE && (x[i] != gx || y[i] != gy || z[i] != gz)) {
      i = next[i];
    }
    return i;
  }

  /** Side of a corner towards a plane, exact in sign. */
  double cornerSide(int corner, int plane) {
    return planes.side((int) x[corner], (int) y[corner], (int) z[corner], plane);
  }

  /**
   * Where the edge between two corners, the line of planes {@code p} and {@code q}, passes through
   * a plane; the corners are on different sides.
   */
  int crossing(int a, int b, int p, int q, int plane, double sideA, double sideB) {
    long key = triple(p, q, plane);
    int found = byPlanes.get(key);
    if (found != KeyMap.NONE) {
      return found;
    }
    int from = Math.min(a, b);
    int to = Math.max(a, b);
    double s = from == a ? sideA : sideB;
    double t = from == a ? sideB : sideA;
    double part = s / (s - t);
    double cx = x[from] + part * (x[to] - x[from]);
    double cy = y[from] + part * (y[to] - y[from]);
    double cz = z[from] + part * (z[to] - z[from]);
    int bits = (x[from] == x[to] ? 1 : 0) | (y[from] == y[to] ? 2 : 0) | (z[from] == z[to] ? 4 : 0);
    if (planes.weight[plane] == 1) {
      int axis = planes.drop[plane];
      bits |= 1 << axis;
      cx = axis == 0 ? planes.px[plane] : cx;
      cy = axis == 1 ? planes.py[plane] : cy;
      cz = axis == 2 ? planes.pz[plane] : cz;
    }
    int before = count;
    int id = settle(cx, cy, cz, bits, p, q, plane);
    if (count > before) {
      edgeFrom[id] = from;
      edgeTo[id] = to;
      cutBy[id] = plane;
      fromSide[id] = Math.abs(s);
      toSide[id] = Math.abs(t);
      link(id, p, q, plane);
    }
    byPlanes.put(key, id);
    return id;
  }

  /** The one place on all three planes. */
  int meet(int p, int q, int r) {
    long key = triple(p, q, r);
    int found = byPlanes.get(key);
    if (found != KeyMap.NONE) {
      return found;
    }
    BigInteger[] m = Meeting.of(planes, p, q, r);
    int bits = 0;
    double[] c = new double[3];
    for (int k = 0; k < 3; k++) {
      c[k] = Meeting.ratio(m[k], m[3]);
      if (m[k].remainder(m[3]).signum() == 0) {
        bits |= 1 << k;
      }
    }
    int before = count;
    int id = settle(c[0], c[1], c[2], bits, p, q, r);
    if (count > before) {
      edgeFrom[id] = -1;
      meeting[id] = m;
      link(id, p, q, r);
    }
    byPlanes.put(key, id);
    return id;
  }

  /** The point already at this place, or a new one with no planes yet. */
  private int settle(double cx, double cy, double cz, int bits, int p, int q, int r) {
    double rx = Math.rint(cx);
    double ry = Math.rint(cy);
    double rz = Math.rint(cz);
    if (Math.abs(cx - rx) < SURE && Math.abs(cy - ry) < SURE && Math.abs(cz - rz) < SURE) {
      int corner = cornerAmong(cornerAt.get(cell((int) rx, (int) ry, (int) rz)), rx, ry, rz);
      if (corner != KeyMap.NONE && isOn(corner, p, q, r)) {
        return corner;
      }
    }
    for (int k = 0; k < 8; k++) {
      // A place near a border between cells may be filed on the other side of it.
      long i = floor(cx + ((k & 1) == 0 ? -SURE : SURE));
      long j = floor(cy + ((k & 2) == 0 ? -SURE : SURE));
      long l = floor(cz + ((k & 4) == 0 ? -SURE : SURE));
      boolean repeat =
          ((k & 1) != 0 && i == floor(cx - SURE))
              || ((k & 2) != 0 && j == floor(cy - SURE))
              || ((k & 4) != 0 && l == floor(cz - SURE));
      for (int c = repeat ? KeyMap.NONE : near.get(cell(i, j, l)); c != KeyMap.NONE; c = next[c]) {
        if (Math.abs(x[c] - cx) < SURE
            && Math.abs(y[c] - cy) < SURE
            && Math.abs(z[c] - cz) < SURE
            && isOn(c, p, q, r)) {
          correct(c, cx, cy, cz, bits);
          return c;
        }
      }
    }
    int id = append(cx, cy, cz, bits);
    long key = cell(floor(cx), floor(cy), floor(cz));
    next[id] = near.get(key);
    near.put(key, id);
    return id;
  }

  /** A place found again in another way may be known better now. */
  private void correct(int point, double cx, double cy, double cz, int bits) {
    int better = bits & ~exact[point];
    x[point] = (better & 1) != 0 ? cx : x[point];
    y[point] = (better & 2) != 0 ? cy : y[point];
    z[point] = (better & 4) != 0 ? cz : z[point];
    exact[point] |= (byte) bits;
  }

  private boolean isOn(int point, int p, int q, int r) {
    return side(point, p) == 0 && side(point, q) == 0 && side(point, r) == 0;
  }

  /** Exactly where a point is: -1 behind the plane, 0 on it, 1 in front. */
  int side(int point, int plane) {
    double about = planes.about(x[point], y[point], z[point], plane);
    double sure = planes.weight[plane] * SURE;
    if (about > sure) {
      return 1;
    }
    if (about < -sure) {
      return -1;
    }
    if (point < corners) {
      return (int) Math.signum(cornerSide(point, plane));
    }
    for (int k = point * KNOWN; k < (point + 1) * KNOWN && known[k] >= 0; k++) {
      if (known[k] == plane) {
        return 0;
      }
    }
    int sign = exactSide(point, plane);
    if (sign == 0) {
      know(point, plane);
    }
    return sign;
  }

  private int exactSide(int point, int plane) {
    if (edgeFrom[point] < 0) {
      return Meeting.side(planes, plane, meeting[point]);
    }
    int a = edgeFrom[point];
    int b = edgeTo[point];
    double p = cornerSide(a, plane);
    double q = cornerSide(b, plane);
    if (p >= 0 && q >= 0) {
      return p + q > 0 ? 1 : 0;
    }
    if (p <= 0 && q <= 0) {
      return -1;
    }
    // The point divides the edge as its ends' distances from the cutting plane; all four sizes are
    // good to a part in 2^52, so the two products are good to a part in 2^50.
    double forP = p * toSide[point];
    double forQ = q * fromSide[point];
    double sum = forP + forQ;
    if (Math.abs(sum) > 0x1p-49 * (Math.abs(forP) + Math.abs(forQ))) {
      return (int) Math.signum(sum);
    }
    if (Math.max(Math.abs(p), Math.abs(q)) < 0x1p53
        && Math.max(toSide[point], fromSide[point]) < 0x1p53) {
      return (int)
          Math.signum(
              Exact.dot((long) p, (long) q, 0, (long) toSide[point], (long) fromSide[point], 0));
    }
    return Meeting.side(planes, plane, place(point));
  }

  /** Homogeneous exact coordinates: x, y, z and their common divisor, which is positive. */
  private BigInteger[] place(int point) {
    if (point < corners) {
      return new BigInteger[] {
        BigInteger.valueOf((long) x[point]),
        BigInteger.valueOf((long) y[point]),
        BigInteger.valueOf((long) z[point]),
        BigInteger.ONE
      };
    }
    if (meeting[point] == null) {
      int a = edgeFrom[point];
      int b = edgeTo[point];
      BigInteger s = Meeting.side(planes, cutBy[point], (int) x[a], (int) y[a], (int) z[a]).abs();
      BigInteger t = Meeting.side(planes, cutBy[point], (int) x[b], (int) y[b], (int) z[b]).abs();
      meeting[point] =
          new BigInteger[] {
            Meeting.blend(x[a], t, x[b], s),
            Meeting.blend(y[a], t, y[b], s),
            Meeting.blend(z[a], t, z[b], s),
            s.add(t)
          };
    }
    return meeting[point];
  }

  double along(int point, int axis) {
    return axis == 0 ? x[point] : axis == 1 ? y[point] : z[point];
  }

  /** Exact order of two points along a coordinate axis. */
  int compare(int p, int q, int axis) {
    double d = along(p, axis) - along(q, axis);
    if (d > SURE) {
      return 1;
    }
    if (d < -SURE) {
      return -1;
    }
    if (p == q) {
      return 0;
    }
    if ((exact[p] & exact[q] & (1 << axis)) != 0) {
      return (int) Math.signum(d);
    }
    BigInteger[] a = place(p);
    BigInteger[] b = place(q);
    return a[axis].multiply(b[3]).compareTo(b[axis].multiply(a[3]));
  }

  private int append(double cx, double cy, double cz, int bits) {
    if (count == x.length) {
      grow();
    }
    x[count] = cx;
    y[count] = cy;
    z[count] = cz;
    exact[count] = (byte) bits;
    known[count * KNOWN] = -1;
    return count++;
  }

  private void link(int id, int p, int q, int r) {
    int k = id * KNOWN;
    known[k] = p;
    known[k + 1] = q;
    known[k + 2] = r;
    known[k + 3] = -1;
  }

  private void know(int point, int plane) {
    int k = point * KNOWN;
    int end = k + KNOWN;
    while (k < end && known[k] >= 0) {
      k++;
    }
    if (k < end) {
      known[k] = plane;
      if (k + 1 < end) {
        known[k + 1] = -1;
      }
    }
  }

  private static long floor(double c) {
    // Off the integers, where most meeting points of square work lie.
    return (long) Math.floor(c + 0.375);
  }

  private static long cell(long i, long j, long k) {
    return (i * 0x9E3779B97F4A7C15L + j) * 0xBF58476D1CE4E5B9L + k;
  }

  private static long triple(int p, int q, int r) {
    long low = Math.min(p, Math.min(q, r));
    long high = Math.max(p, Math.max(q, r));
    long middle = (long) p + q + r - low - high;
    return (low << 42) | (middle << 21) | high;
  }

  private void grow() {
    int to = 2 * count;
    x = Arrays.copyOf(x, to);
    y = Arrays.copyOf(y, to);
    z = Arrays.copyOf(z, to);
    exact = Arrays.copyOf(exact, to);
    known = Arrays.copyOf(known, to * KNOWN);
    edgeFrom = Arrays.copyOf(edgeFrom, to);
    edgeTo = Arrays.copyOf(edgeTo, to);
    cutBy = Arrays.copyOf(cutBy, to);
    fromSide = Arrays.copyOf(fromSide, to);
    toSide = Arrays.copyOf(toSide, to);
    meeting = Arrays.copyOf(meeting, to);
    next = Arrays.copyOf(next, to);
  }
}
