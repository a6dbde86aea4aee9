package dryfit.solid.exact;

import java.util.List;

/**
 * Counts from outside: how often a leaf covers a place in a plane, just in front of the plane and
 * just behind it, seen along a line within the plane that comes from the left, a hair above the
 * place, and ends a hair before it. What touches the line counts by the rules of {@link Sections},
 * so no direction has to be tried twice.
 */
final class Rays {
  private final Planes planes;
  private final Points points;
  private final List<Facet> facets;
  private final int[] leafStart;
  private final Sections sections;
  private final Segments far;

  Rays(Planes planes, Points points, List<Facet> facets, int[] leafStart, Sections sections) {
    this.planes = planes;
    this.points = points;
    this.facets = facets;
    this.leafStart = leafStart;
    this.sections = sections;
    far = new Segments(planes, points);
  }

  /** Adds what the given segments say about each label to {@code counts}, two for each label. */
  void count(Segments segments, int labels, int point, int[] counts) {
    double height = points.along(point, segments.j);
    for (int s = 0; s < segments.count; s++) {
      int label = segments.label[s];
      if (label >= labels) {
        continue;
      }
      int p = segments.p[s];
      int q = segments.q[s];
      double a = points.along(p, segments.j);
      double b = points.along(q, segments.j);
      if ((a > height + 1 && b > height + 1) || (a < height - 1 && b < height - 1)) {
        continue;
      }
      boolean pLow = points.compare(p, point, segments.j) <= 0;
      boolean qLow = points.compare(q, point, segments.j) <= 0;
      if (pLow == qLow) {
        continue;
      }
      // Downward segments have the right on their left.
      int down = pLow ? -1 : 1;
      if (down * segments.left[s] * points.side(point, segments.line[s]) > 0) {
        int change = down * segments.times[s];
        counts[2 * label] += (segments.sides[s] & Segments.FRONT) != 0 ? change : 0;
        counts[2 * label + 1] += (segments.sides[s] & Segments.BACK) != 0 ? change : 0;
      }
    }
  }

  /** Whether the line meets the facet's box along the axis that the plane is seen along. */
  private boolean passes(Facet facet, int plane, int point) {
    int drop = planes.drop[plane];
    double slope = (double) planes.normal(plane, far.i) / planes.normal(plane, drop);
    double here = points.along(point, far.i);
    double there = points.along(point, drop);
    double a = there - slope * (facet.low(far.i) - here);
    double b = there - slope * (Math.min(facet.high(far.i), here) - here);
    // The slope is at most one, and coordinates are good to far less than a grid step.
    return Math.min(a, b) <= facet.high(drop) + 3 && Math.max(a, b) >= facet.low(drop) - 3;
  }

  /** The same for those facets of a leaf that are not marked as counted already. */
  void countFar(int leaf, int label, int plane, int point, boolean[] counted, int[] counts) {
    far.reset(plane);
    double height = points.along(point, far.j);
    double here = points.along(point, far.i);
    for (int f = leafStart[leaf]; f < leafStart[leaf + 1]; f++) {
      Facet facet = facets.get(f);
      if (facet.low(far.j) <= height + 1
          && facet.high(far.j) >= height - 1
          && facet.low(far.i) <= here + 1
          && facet.plane != plane
          && !counted[f]
          && passes(facet, plane, point)) {
        sections.cut(facet, plane, label, far);
      }
    }
    count(far, label + 1, point, counts);
  }
}
