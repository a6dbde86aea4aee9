package dryfit.solid;

import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The shortest distance between two things and where it is taken.
 *
 * @param length millimetres; 0 if they touch or overlap
 * @param onFirst the nearest point of the first
 * @param onSecond the nearest point of the second; if they overlap, both are some shared point
 */
public record Distance(double length, Vec3 onFirst, Vec3 onSecond) {

  /** Between two cells, to about 1e-9 mm. */
  public static Distance between(Convex a, Convex b) {
    Nearest nearest = new Nearest(a.xyz, b.xyz);
    return nearest.found() ? nearest.distance() : Features.distance(a, b);
  }

  /**
   * Between a cell and a flat convex polygon.
   *
   * @param polygon its corners in order, either way round
   * @throws IllegalArgumentException if it has fewer than three corners or no area
   */
  public static Distance toPolygon(Convex cell, List<Vec3> polygon) {
    double[] corners = Convex.packed(polygon);
    Nearest nearest = new Nearest(cell.xyz, corners);
    return nearest.found() ? nearest.distance() : Features.distance(cell, corners);
  }

  /**
   * Between two solids, the pairs of cells whose boxes are nearest first.
   *
   * @param cutoff distances above this do not matter; it may be infinite
   * @return nothing if they are farther apart than {@code cutoff}
   */
  public static Optional<Distance> between(List<Convex> a, List<Convex> b, double cutoff) {
    long[] pairs = new long[a.size() * b.size()];
    int count = 0;
    for (int i = 0; i < a.size(); i++) {
      for (int j = 0; j < b.size(); j++) {
        double gap = boxGap(a.get(i).box, b.get(j).box);
        if (gap <= cutoff) {
          // Rounded down, so that a pair never looks farther apart than it is.
          float key = Math.max(0, Math.nextDown((float) gap));
          pairs[count++] = (long) Float.floatToIntBits(key) << 32 | (i * b.size() + j);
        }
      }
    }
    Arrays.sort(pairs, 0, count);
    Distance best = null;
    double limit = cutoff;
    for (int k = 0; k < count; k++) {
      if (Float.intBitsToFloat((int) (pairs[k] >>> 32)) > limit || limit <= Tolerances.onPlane()) {
        break;
      }
      int pair = (int) pairs[k];
      Distance each = between(a.get(pair / b.size()), b.get(pair % b.size()));
      if (best == null ? each.length <= limit : each.length < limit) {
        best = each;
        limit = each.length;
      }
    }
    return Optional.ofNullable(best);
  }

  private static double boxGap(double[] a, double[] b) {
    double sum = 0;
    for (int axis = 0; axis < 3; axis++) {
      double gap = Math.max(0, Math.max(a[axis] - b[axis + 3], b[axis] - a[axis + 3]));
      sum += gap * gap;
    }
    return Math.sqrt(sum);
  }
}
