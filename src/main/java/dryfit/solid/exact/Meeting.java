package dryfit.solid.exact;

import java.math.BigInteger;

/** Places where planes meet, as exact fractions: x, y, z over a common positive divisor. */
final class Meeting {
  private Meeting() {}

  /** By Cramer's rule. */
  static BigInteger[] of(Planes planes, int p, int q, int r) {
    BigInteger[] a = normal(planes, p);
    BigInteger[] b = normal(planes, q);
    BigInteger[] c = normal(planes, r);
    BigInteger[] bc = cross(b, c);
    BigInteger[] ca = cross(c, a);
    BigInteger[] ab = cross(a, b);
    BigInteger w = a[0].multiply(bc[0]).add(a[1].multiply(bc[1])).add(a[2].multiply(bc[2]));
    BigInteger dp = offset(planes, p);
    BigInteger dq = offset(planes, q);
    BigInteger dr = offset(planes, r);
    BigInteger[] m = new BigInteger[4];
    for (int k = 0; k < 3; k++) {
      m[k] = dp.multiply(bc[k]).add(dq.multiply(ca[k])).add(dr.multiply(ab[k]));
    }
    m[3] = w;
    if (w.signum() < 0) {
      for (int k = 0; k < 4; k++) {
        m[k] = m[k].negate();
      }
    }
    return m;
  }

  /** Side of a place towards a plane. */
  static int side(Planes planes, int plane, BigInteger[] m) {
    BigInteger[] n = normal(planes, plane);
    return n[0].multiply(m[0])
        .add(n[1].multiply(m[1]))
        .add(n[2].multiply(m[2]))
        .subtract(offset(planes, plane).multiply(m[3]))
        .signum();
  }

  /** How far a grid point is in front of a plane, in units of the normal's length. */
  static BigInteger side(Planes planes, int plane, int x, int y, int z) {
    return Exact.bigDot(
        planes.nx[plane],
        planes.ny[plane],
        planes.nz[plane],
        (long) x - planes.px[plane],
        (long) y - planes.py[plane],
        (long) z - planes.pz[plane]);
  }

  /** {@code a s + b t} of grid coordinates. */
  static BigInteger blend(double a, BigInteger s, double b, BigInteger t) {
    return s.multiply(BigInteger.valueOf((long) a)).add(t.multiply(BigInteger.valueOf((long) b)));
  }

  /** The quotient as a double, good to 2^-40 and a rounding; |top / bottom| is below 2^26. */
  static double ratio(BigInteger top, BigInteger bottom) {
    return top.shiftLeft(40).divide(bottom).doubleValue() * 0x1p-40;
  }

  private static BigInteger[] normal(Planes planes, int p) {
    return new BigInteger[] {
      BigInteger.valueOf(planes.nx[p]),
      BigInteger.valueOf(planes.ny[p]),
      BigInteger.valueOf(planes.nz[p])
    };
  }

  private static BigInteger offset(Planes planes, int p) {
    return Exact.bigDot(
        planes.nx[p], planes.ny[p], planes.nz[p], planes.px[p], planes.py[p], planes.pz[p]);
  }

  private static BigInteger[] cross(BigInteger[] a, BigInteger[] b) {
    return new BigInteger[] {
      a[1].multiply(b[2]).subtract(a[2].multiply(b[1])),
      a[2].multiply(b[0]).subtract(a[0].multiply(b[2])),
      a[0].multiply(b[1]).subtract(a[1].multiply(b[0]))
    };
  }
}
