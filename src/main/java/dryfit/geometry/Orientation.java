package dryfit.geometry;

import java.math.BigDecimal;

/**
 * On which side of a directed line a point lies, never wrong through rounding. Plane coordinates.
 */
public final class Orientation {
  private Orientation() {}

  /**
   * Above this share of its terms the determinant's sign is certain. The bound is (3 + 16u)u with u
   * = 2^-53, from J. R. Shewchuk, "Adaptive Precision Floating-Point Arithmetic and Fast Robust
   * Geometric Predicates", Discrete & Computational Geometry 18 (1997), section 4.1.
   */
  private static final double CERTAIN = (3 + 16 * 0x1p-53) * 0x1p-53;

  /**
   * Twice the signed area of a triangle: positive if a, b, c turn anticlockwise, zero only if they
   * are exactly in line. The sign is exact, the size is good to double precision.
   */
  public static double of(double ax, double ay, double bx, double by, double cx, double cy) {
    double left = (ax - cx) * (by - cy);
    double right = (ay - cy) * (bx - cx);
    double det = left - right;
    if ((left >= 0 && right <= 0) || (left <= 0 && right >= 0)) {
      // The signs of the products are exact, and so is that of a sum of like signs.
      return det;
    }
    if (Math.abs(det) > CERTAIN * (Math.abs(left) + Math.abs(right))) {
      return det;
    }
    return exact(ax, ay, bx, by, cx, cy);
  }

  private static double exact(double ax, double ay, double bx, double by, double cx, double cy) {
    BigDecimal x = new BigDecimal(cx);
    BigDecimal y = new BigDecimal(cy);
    BigDecimal left = new BigDecimal(ax).subtract(x).multiply(new BigDecimal(by).subtract(y));
    BigDecimal right = new BigDecimal(ay).subtract(y).multiply(new BigDecimal(bx).subtract(x));
    BigDecimal det = left.subtract(right);
    double size = det.doubleValue();
    // A determinant too small for a double keeps its sign.
    return size == 0 ? det.signum() * Double.MIN_VALUE : size;
  }
}
