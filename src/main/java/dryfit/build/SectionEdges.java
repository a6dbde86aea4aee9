package dryfit.build;

import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The edges of a section that matter to a part coming in: the mouth, which faces along {@code u},
 * the outside edge, which faces along {@code l}, and the inside edge across from that. The section
 * is taken as its convex hull. Where a section is round, an edge of it is only one facet of many;
 * there the line that touches the section and looks the wanted way counts as its edge.
 */
final class SectionEdges {
  /** An edge this share of the section's size across is a face, not a facet of a round one. */
  private static final double FACE = 0.25;

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
    List<double[]> hull = FlatHull.of(flat);
    return new SectionEdges(origin, u, l, edge(hull, 1, 0), edge(hull, 0, 1), edge(hull, 0, -1));
  }

  /** The edge of an anticlockwise hull that looks most towards (eu, el), a direction of an axis. */
  private static double[] edge(List<double[]> hull, int eu, int el) {
    double[] best = null;
    double length = 0;
    double reach = Double.NEGATIVE_INFINITY;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < hull.size(); i++) {
      double[] a = hull.get(i);
      double[] b = hull.get((i + 1) % hull.size());
      double[] line = line(a, b);
      if (best == null || line[0] * eu + line[1] * el > best[0] * eu + best[1] * el) {
        best = line;
        length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      }
      reach = Math.max(reach, a[0] * eu + a[1] * el);
      double across = eu == 0 ? a[0] : a[1];
      low = Math.min(low, across);
      high = Math.max(high, across);
    }
    return length >= FACE * (high - low) ? best : new double[] {eu, el, reach};
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
}
