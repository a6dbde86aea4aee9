package dryfit.solid.exact;

import java.util.Arrays;

/**
 * Cuts facets with a plane. Corners that lie on the plane count as behind it for what is just in
 * front, and as in front of it for what is just behind: so every edge either crosses or does not,
 * and a section is always made of closed loops, whatever touches.
 */
final class Sections {
  private final Planes planes;
  private final Points points;
  private final double[] sideOf;
  private final int[] known;
  private int plane = -1;
  private int[] at = new int[16];
  private int[] turn = new int[16];
  private int size;

  Sections(Planes planes, Points points) {
    this.planes = planes;
    this.points = points;
    sideOf = new double[points.corners];
    known = new int[points.corners];
    Arrays.fill(known, -1);
  }

  private double side(int corner) {
    if (known[corner] != plane) {
      known[corner] = plane;
      sideOf[corner] = points.cornerSide(corner, plane);
    }
    return sideOf[corner];
  }

  /** Appends where the facet, not in the plane, passes through the plane; left is inside. */
  void cut(Facet facet, int plane, int label, Segments into) {
    this.plane = plane;
    boolean front = false;
    boolean back = false;
    boolean touches = false;
    for (int corner : facet.from) {
      double s = side(corner);
      front |= s > 0;
      back |= s < 0;
      touches |= s == 0;
    }
    if (!touches) {
      if (front && back) {
        cutOneWay(facet, label, Segments.FRONT | Segments.BACK, into);
      }
      return;
    }
    if (front) {
      cutOneWay(facet, label, Segments.FRONT, into);
    }
    if (back) {
      cutOneWay(facet, label, Segments.BACK, into);
    }
  }

  private boolean isFront(double side, int sides) {
    return side > 0 || (side == 0 && sides == Segments.BACK);
  }

  private void cutOneWay(Facet facet, int label, int sides, Segments into) {
    size = 0;
    for (int e = 0; e < facet.from.length; e++) {
      int a = facet.from[e];
      int b = facet.to[e];
      double sa = side(a);
      double sb = side(b);
      boolean fa = isFront(sa, sides);
      if (fa != isFront(sb, sides)) {
        int point =
            sa == 0
                ? a
                : sb == 0 ? b : points.crossing(a, b, facet.plane, facet.across[e], plane, sa, sb);
        cross(point, fa ? 1 : -1);
      }
    }
    if (size == 2 && facet.facing != 0) {
      int enter = turn[0] > 0 ? at[0] : at[1];
      int exit = turn[0] > 0 ? at[1] : at[0];
      if (enter != exit) {
        into.add(enter, exit, facet.plane, facet.facing > 0, label, 1, sides);
      }
      return;
    }
    sortAlong(facet.plane);
    int covered = 0;
    for (int k = 0; k + 1 < size; k++) {
      covered += turn[k];
      if (covered != 0 && at[k] != at[k + 1]) {
        into.add(at[k], at[k + 1], facet.plane, true, label, covered, sides);
      }
    }
  }

  private void cross(int point, int change) {
    if (size == at.length) {
      at = Arrays.copyOf(at, 2 * size);
      turn = Arrays.copyOf(turn, 2 * size);
    }
    at[size] = point;
    turn[size++] = change;
  }

  private void sortAlong(int line) {
    int axis = planes.crossAxis(plane, line);
    int sign = planes.crossSign(plane, line, axis);
    for (int k = 1; k < size; k++) {
      int point = at[k];
      int change = turn[k];
      int m = k;
      while (m > 0 && sign * points.compare(at[m - 1], point, axis) > 0) {
        at[m] = at[m - 1];
        turn[m] = turn[m - 1];
        m--;
      }
      at[m] = point;
      turn[m] = change;
    }
  }
}
