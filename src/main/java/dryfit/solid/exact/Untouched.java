package dryfit.solid.exact;

import java.util.Arrays;
import java.util.List;

/**
 * Facets that nothing comes near. They are kept or dropped whole, and those that hang together by
 * corners share their answer.
 */
final class Untouched {
  private final Points points;
  private final Expression expression;
  private final List<Facet> facets;
  private final int[] leafStart;
  private final Neighbours neighbours;
  private final Rays rays;
  private final boolean[] none;

  Untouched(
      Planes planes,
      Points points,
      Expression expression,
      List<Facet> facets,
      int[] leafStart,
      Neighbours neighbours) {
    this.points = points;
    this.expression = expression;
    this.facets = facets;
    this.leafStart = leafStart;
    this.neighbours = neighbours;
    rays = new Rays(planes, points, facets, leafStart, new Sections(planes, points));
    none = new boolean[facets.size()];
  }

  static boolean isUntouched(Facet f) {
    return f.near.size == 0 && f.loops != null && f.facing != 0;
  }

  void add(List<Face> into) {
    Sets patches = new Sets();
    int[] answer = new int[points.corners];
    boolean[] inside = new boolean[leafStart.length - 1];
    for (int l = 0; l < leafStart.length - 1; l++) {
      patches.reset(points.corners);
      Arrays.fill(answer, 0);
      for (int f = leafStart[l]; f < leafStart[l + 1]; f++) {
        if (isUntouched(facets.get(f))) {
          int[] corners = facets.get(f).from;
          for (int i = 1; i < corners.length; i++) {
            patches.join(corners[0], corners[i]);
          }
        }
      }
      for (int f = leafStart[l]; f < leafStart[l + 1]; f++) {
        Facet facet = facets.get(f);
        if (isUntouched(facet)) {
          int patch = patches.find(facet.from[0]);
          if (answer[patch] == 0) {
            answer[patch] = 2 + decide(facet, inside);
          }
          int keep = answer[patch] - 2;
          if (keep != 0) {
            into.add(Face.of(facet, keep < 0));
          }
        }
      }
    }
  }

  /** 1 if the facet's outside is outside the result, -1 if its inside is, 0 if it is no surface. */
  private int decide(Facet facet, boolean[] inside) {
    int point = facet.from[0];
    for (int l = 0; l < inside.length; l++) {
      inside[l] = l != facet.leaf && isInside(l, facet, point);
    }
    boolean outer = expression.holds(inside);
    inside[facet.leaf] = true;
    boolean inner = expression.holds(inside);
    return inner == outer ? 0 : inner ? 1 : -1;
  }

  private boolean isInside(int leaf, Facet facet, int point) {
    for (int k = 0; k < 3; k++) {
      double c = points.along(point, k);
      if (c < neighbours.low(leaf, k) || c > neighbours.high(leaf, k)) {
        return false;
      }
    }
    int[] counts = new int[2];
    rays.countFar(leaf, 0, facet.plane, point, none, counts);
    return counts[0] > 0;
  }
}
