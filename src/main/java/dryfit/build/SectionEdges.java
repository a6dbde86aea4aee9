package dryfit.build;

import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The edges of a section that matter to a part coming in: the mouth, which faces along {@code u},
 * the outside edge, which faces along {@code l}, and the inside edge across from that. The section
 * is taken as its convex hull.
 */
final class SectionEdges {
  private final Vec3 origin;
  private final Vec3 u;
  private final Vec3 l;
  private final double[] mouth;
  private final double[] outside;
  private final double[] inside;

  private SectionEdges(
      Vec3 origin, Vec3 u, Vec3 l, double[] mouth, double[] outside, double[] inside) {
    this.origin = origin;
    this.u = u;
    this.l = l;
    this.mouth = mouth;
    this.outside = outside;
    this.inside = inside;
  }

  /** Lines are held as {nu, nl, d}: the points with nu·a + nl·b = d, normal of unit length. */
  static SectionEdges of(List<Vec3> corners, Vec3 u, Vec3 l) {
    Vec3 origin = corners.get(0);
    List<double[]> flat = new ArrayList<>();
    for (Vec3 c : corners) {
      flat.add(new double[] {c.minus(origin).dot(u), c.minus(origin).dot(l)});
    }
    List<double[]> hull = hull(flat);
    double[] mouth = null;
    double[] outside = null;
    double[] inside = null;
    for (int i = 0; i < hull.size(); i++) {
      double[] line = line(hull.get(i), hull.get((i + 1) % hull.size()));
      mouth = mouth == null || line[0] > mouth[0] ? line : mouth;
      outside = outside == null || line[1] > outside[1] ? line : outside;
      inside = inside == null || line[1] < inside[1] ? line : inside;
    }
    return new SectionEdges(origin, u, l, mouth, outside, inside);
  }

  /** On the mouth, {@code by} in from the outside edge. */
  Vec3 mouthAtOutside(double by) {
    return place(cross(mouth, new double[] {outside[0], outside[1], outside[2] - by}));
  }

  /** On the mouth, {@code by} in from the inside edge. */
  Vec3 mouthAtInside(double by) {
    return place(cross(mouth, new double[] {inside[0], inside[1], inside[2] - by}));
  }

  /** On the mouth, {@code by} outward of the middle between outside and inside edge. */
  Vec3 mouthAtMiddle(double by) {
    double[] a = cross(mouth, outside);
    double[] b = cross(mouth, inside);
    return mouthAt((a[1] + b[1]) / 2 + by);
  }

  /** On the mouth, where the coordinate along {@code l}, from the section's first corner, is so. */
  Vec3 mouthAt(double lateral) {
    return place(cross(mouth, new double[] {0, 1, lateral}));
  }

  /** On the mouth, where the chair coordinate along {@code axis} is {@code value}. */
  Vec3 mouthWhere(Vec3 axis, double value) {
    return place(cross(mouth, new double[] {u.dot(axis), l.dot(axis), value - origin.dot(axis)}));
  }

  private Vec3 place(double[] p) {
    return origin.plus(u.times(p[0])).plus(l.times(p[1]));
  }

  private static double[] cross(double[] a, double[] b) {
    double det = a[0] * b[1] - a[1] * b[0];
    return new double[] {(a[2] * b[1] - a[1] * b[2]) / det, (a[0] * b[2] - a[2] * b[0]) / det};
  }

  /** The outward line of an edge of an anticlockwise hull. */
  private static double[] line(double[] a, double[] b) {
    double du = b[0] - a[0];
    double dl = b[1] - a[1];
    double length = Math.hypot(du, dl);
    double nu = dl / length;
    double nl = -du / length;
    return new double[] {nu, nl, nu * a[0] + nl * a[1]};
  }

  /** Convex hull, anticlockwise, by Andrew's monotone chain (1979). */
  private static List<double[]> hull(List<double[]> points) {
    List<double[]> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.<double[]>comparingDouble(p -> p[0]).thenComparingDouble(p -> p[1]));
    List<double[]> hull = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      int floor = hull.size();
      for (double[] p : sorted) {
        while (hull.size() >= floor + 2 && !turnsLeft(hull, p)) {
          hull.remove(hull.size() - 1);
        }
        hull.add(p);
      }
      hull.remove(hull.size() - 1);
      java.util.Collections.reverse(sorted);
    }
    return hull;
  }

  private static boolean turnsLeft(List<double[]> hull, double[] p) {
    double[] a = hull.get(hull.size() - 2);
    double[] b = hull.get(hull.size() - 1);
    double area = (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
    // Points nearer to the line than two places that count as one do not make a corner.
    return area > dryfit.measure.Tolerances.coincident() * Math.hypot(p[0] - a[0], p[1] - a[1]);
  }
}
