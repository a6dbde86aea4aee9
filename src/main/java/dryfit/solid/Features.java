package dryfit.solid;

import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The nearest points of two convex shapes by trying every corner against every face and every edge
 * against every edge: slow, and right also where shapes touch or run parallel.
 */
final class Features {
  private final Shape a;
  private final Shape b;
  private double least = Double.POSITIVE_INFINITY;
  private Vec3 onA = Vec3.ZERO;
  private Vec3 onB = Vec3.ZERO;

  /** A cell, or a polygon as its one face. */
  private static final class Shape {
    private final List<Vec3> points;
    private final int[][] faces;
    private final double[] planes;
    private final int[] edges;

    Shape(List<Vec3> points, int[][] faces, double[] planes, int[] edges) {
      this.points = points;
      this.faces = faces;
      this.planes = planes;
      this.edges = edges;
    }

    static Shape of(Convex cell) {
      return new Shape(cell.points(), cell.faces, cell.planes, cell.edges());
    }

    static Shape polygon(double[] corners) {
      int n = corners.length / 3;
      int[] loop = new int[n];
      int[] edges = new int[4 * n];
      List<Vec3> points = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        loop[i] = i;
        edges[4 * i] = i;
        edges[4 * i + 1] = (i + 1) % n;
        points.add(new Vec3(corners[3 * i], corners[3 * i + 1], corners[3 * i + 2]));
      }
      int[][] faces = {loop};
      return new Shape(points, faces, FacePlanes.of(corners, faces), edges);
    }

    boolean isSolid() {
      return faces.length > 1;
    }

    Vec3 normal(int f) {
      return new Vec3(planes[4 * f], planes[4 * f + 1], planes[4 * f + 2]);
    }

    double height(int f, Vec3 p) {
      return planes[4 * f] * p.x()
          + planes[4 * f + 1] * p.y()
          + planes[4 * f + 2] * p.z()
          - planes[4 * f + 3];
    }
  }

  private Features(Shape a, Shape b) {
    this.a = a;
    this.b = b;
  }

  static Distance distance(Convex a, Convex b) {
    return new Features(Shape.of(a), Shape.of(b)).measured();
  }

  /**
   * @throws IllegalArgumentException if the polygon has no area
   */
  static Distance distance(Convex a, double[] polygon) {
    return new Features(Shape.of(a), Shape.polygon(polygon)).measured();
  }

  private Distance measured() {
    Vec3 shared = shared();
    if (shared != null) {
      return new Distance(0, shared, shared);
    }
    for (Vec3 p : a.points) {
      for (int f = 0; f < b.faces.length; f++) {
        double h = b.height(f, p);
        if (Math.abs(h) < least) {
          Vec3 foot = p.minus(b.normal(f).times(h));
          if (above(b, f, foot)) {
            offer(p, foot);
          }
        }
      }
    }
    for (Vec3 p : b.points) {
      for (int f = 0; f < a.faces.length; f++) {
        double h = a.height(f, p);
        if (Math.abs(h) < least) {
          Vec3 foot = p.minus(a.normal(f).times(h));
          if (above(a, f, foot)) {
            offer(foot, p);
          }
        }
      }
    }
    int[] ea = a.edges;
    int[] eb = b.edges;
    for (int i = 0; i < ea.length; i += 4) {
      for (int j = 0; j < eb.length; j += 4) {
        edges(
            a.points.get(ea[i]),
            a.points.get(ea[i + 1]),
            b.points.get(eb[j]),
            b.points.get(eb[j + 1]));
      }
    }
    return new Distance(least, onA, onB);
  }

  private void offer(Vec3 p, Vec3 q) {
    double d = p.distance(q);
    if (d < least) {
      least = d;
      onA = p;
      onB = q;
    }
  }

  private static boolean above(Shape shape, int f, Vec3 foot) {
    int[] loop = shape.faces[f];
    Vec3 n = shape.normal(f);
    for (int i = 0; i < loop.length; i++) {
      Vec3 p = shape.points.get(loop[i]);
      Vec3 q = shape.points.get(loop[(i + 1) % loop.length]);
      if (q.minus(p).cross(foot.minus(p)).dot(n) < 0) {
        return false;
      }
    }
    return true;
  }

  /** The ends against the other edge, and the feet of the common perpendicular if on both. */
  private void edges(Vec3 p0, Vec3 p1, Vec3 q0, Vec3 q1) {
    offer(p0, onSegment(p0, q0, q1));
    offer(p1, onSegment(p1, q0, q1));
    offer(onSegment(q0, p0, p1), q0);
    offer(onSegment(q1, p0, p1), q1);
    Vec3 u = p1.minus(p0);
    Vec3 v = q1.minus(q0);
    Vec3 n = u.cross(v);
    double square = n.dot(n);
    if (square > 0) {
      Vec3 w = q0.minus(p0);
      double s = w.cross(v).dot(n) / square;
      double t = w.cross(u).dot(n) / square;
      if (s > 0 && s < 1 && t > 0 && t < 1) {
        offer(p0.plus(u.times(s)), q0.plus(v.times(t)));
      }
    }
  }

  private static Vec3 onSegment(Vec3 p, Vec3 a, Vec3 b) {
    Vec3 e = b.minus(a);
    double square = e.dot(e);
    double t = square > 0 ? Math.min(1, Math.max(0, p.minus(a).dot(e) / square)) : 0;
    return a.plus(e.times(t));
  }

  /** A point of both, or null: a face of b reaches into a, or a lies within b. */
  private Vec3 shared() {
    for (int[] loop : b.faces) {
      List<Vec3> rest = new ArrayList<>();
      for (int p : loop) {
        rest.add(b.points.get(p));
      }
      for (int f = 0; f < a.faces.length && !rest.isEmpty(); f++) {
        rest = below(rest, f);
      }
      if (!rest.isEmpty()) {
        return rest.stream().reduce(Vec3.ZERO, Vec3::plus).times(1.0 / rest.size());
      }
    }
    Vec3 p = a.points.get(0);
    boolean within = b.isSolid();
    for (int f = 0; f < b.faces.length && within; f++) {
      within = b.height(f, p) <= 0;
    }
    return within ? p : null;
  }

  private List<Vec3> below(List<Vec3> loop, int f) {
    List<Vec3> out = new ArrayList<>();
    for (int i = 0; i < loop.size(); i++) {
      Vec3 p = loop.get(i);
      Vec3 q = loop.get((i + 1) % loop.size());
      double hp = a.height(f, p);
      double hq = a.height(f, q);
      if (hp <= 0) {
        out.add(p);
      }
      if ((hp < 0 && hq > 0) || (hp > 0 && hq < 0)) {
        out.add(p.plus(q.minus(p).times(hp / (hp - hq))));
      }
    }
    return out;
  }
}
