package dryfit.build;

import dryfit.geometry.Orientation;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Convex hull of points in a plane, by Andrew's monotone chain (1979). */
final class FlatHull {
  private FlatHull() {}

  /**
   * @param points pairs of numbers
   * @return the corners, anticlockwise; none stands off the line of its neighbours by less than two
   *     places that count as one
   */
  static List<double[]> of(List<double[]> points) {
    List<double[]> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.<double[]>comparingDouble(p -> p[0]).thenComparingDouble(p -> p[1]));
    List<double[]> hull = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      int floor = hull.size();
      double[] last = {Double.NaN, Double.NaN};
      for (double[] p : sorted) {
        // The same point again is no turn; only the exact, slow way would find that out.
        if (p[0] == last[0] && p[1] == last[1]) {
          continue;
        }
        last = p;
        while (hull.size() >= floor + 2 && !turnsLeft(hull, p)) {
          hull.remove(hull.size() - 1);
        }
        hull.add(p);
      }
      hull.remove(hull.size() - 1);
      Collections.reverse(sorted);
    }
    return withoutNearlyStraight(hull);
  }

  /** Without tolerance: the chain keeps its far corners only if no side is ever judged wrongly. */
  private static boolean turnsLeft(List<double[]> hull, double[] p) {
    double[] a = hull.get(hull.size() - 2);
    double[] b = hull.get(hull.size() - 1);
    return Orientation.of(a[0], a[1], b[0], b[1], p[0], p[1]) > 0;
  }

  private static List<double[]> withoutNearlyStraight(List<double[]> hull) {
    List<double[]> out = new ArrayList<>(hull);
    for (int i = 0; i < out.size() && out.size() > 3; ) {
      double[] a = out.get((i + out.size() - 1) % out.size());
      double[] b = out.get(i);
      double[] c = out.get((i + 1) % out.size());
      double area = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
      if (area <= Tolerances.coincident() * Math.hypot(c[0] - a[0], c[1] - a[1])) {
        out.remove(i);
        i = Math.max(0, i - 1);
      } else {
        i++;
      }
    }
    return out;
  }
}
