package dryfit.solid.exact;

import java.math.BigInteger;

/** Sums of three products of longs, without rounding. */
final class Exact {
  private Exact() {}

  /**
   * {@code ax*bx + ay*by + az*bz} as the nearest double or one beside it; the sign is always right,
   * and a result below 2^53 is exact. The true value must fit in 127 bits.
   */
  static double dot(long ax, long ay, long az, long bx, long by, long bz) {
    long low = ax * bx;
    long high = Math.multiplyHigh(ax, bx);
    long part = ay * by;
    low += part;
    high += Math.multiplyHigh(ay, by) + (Long.compareUnsigned(low, part) < 0 ? 1 : 0);
    part = az * bz;
    low += part;
    high += Math.multiplyHigh(az, bz) + (Long.compareUnsigned(low, part) < 0 ? 1 : 0);
    if (high == low >> 63) {
      return low;
    }
    double lowest = (low >>> 11) * 0x1p11 + (low & 0x7ff);
    return high * 0x1p64 + lowest;
  }

  static BigInteger bigDot(long ax, long ay, long az, long bx, long by, long bz) {
    return times(ax, bx).add(times(ay, by)).add(times(az, bz));
  }

  private static BigInteger times(long a, long b) {
    return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
  }

  /** The greatest common divisor of three numbers, not all zero. */
  static long divisor(long a, long b, long c) {
    return divisor(Math.abs(a), divisor(Math.abs(b), Math.abs(c)));
  }

  private static long divisor(long a, long b) {
    if (a == 0) {
      return b;
    }
    if (b == 0) {
      return a;
    }
    int shift = Long.numberOfTrailingZeros(a | b);
    long x = a >> Long.numberOfTrailingZeros(a);
    long y = b;
    do {
      y >>= Long.numberOfTrailingZeros(y);
      if (x > y) {
        long t = x;
        x = y;
        y = t;
      }
      y -= x;
    } while (y != 0);
    return x << shift;
  }
}
