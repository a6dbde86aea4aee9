package dryfit.solid;

import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/** Builds the convex solid between two corresponding loops. */
final class Loft {
  private final List<Vec3> points = new ArrayList<>();
  private final List<int[]> faces = new ArrayList<>();

  private Loft() {}

  static Convex between(List<Vec3> a, List<Vec3> b) {
    if (a.size() != b.size() || a.size() < 3) {
      throw new IllegalArgumentException(
          "loops of " + a.size() + " and " + b.size() + " points do not make a solid");
    }
    Loft loft = new Loft();
    int n = a.size();
    int[] low = new int[n];
    int[] high = new int[n];
    for (int i = 0; i < n; i++) {
      low[i] = loft.number(a, i, low);
    }
    for (int i = 0; i < n; i++) {
      high[i] = loft.number(b, i, high);
    }
    if (!anticlockwiseFromOutside(a, b)) {
      reverse(low);
      reverse(high);
    }
    loft.cap(high, false);
    loft.cap(low, true);
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      loft.side(low[i], low[j], high[j], high[i]);
    }
    return Convex.of(loft.points, loft.faces.toArray(int[][]::new));
  }

  /** The number of point i of a loop; neighbours that coincide share one. */
  private int number(List<Vec3> loop, int i, int[] before) {
    Vec3 p = loop.get(i);
    if (i > 0 && p.distance(loop.get(i - 1)) <= Tolerances.coincident()) {
      return before[i - 1];
    }
    if (i > 0 && i == loop.size() - 1 && p.distance(loop.get(0)) <= Tolerances.coincident()) {
      return before[0];
    }
    points.add(p);
    return points.size() - 1;
  }

  private static boolean anticlockwiseFromOutside(List<Vec3> a, List<Vec3> b) {
    Vec3 along = middle(b).minus(middle(a));
    return area(a).plus(area(b)).dot(along) >= 0;
  }

  private static Vec3 middle(List<Vec3> loop) {
    return loop.stream().reduce(Vec3.ZERO, Vec3::plus).times(1.0 / loop.size());
  }

  private static Vec3 area(List<Vec3> loop) {
    Vec3 sum = Vec3.ZERO;
    for (int i = 2; i < loop.size(); i++) {
      sum = sum.plus(loop.get(i - 1).minus(loop.get(0)).cross(loop.get(i).minus(loop.get(0))));
    }
    return sum;
  }

  private static void reverse(int[] loop) {
    for (int i = 0, j = loop.length - 1; i < j; i++, j--) {
      int keep = loop[i];
      loop[i] = loop[j];
      loop[j] = keep;
    }
  }

  private void cap(int[] loop, boolean turned) {
    int[] facing = loop.clone();
    if (turned) {
      reverse(facing);
    }
    face(facing);
  }

  private void side(int a, int b, int c, int d) {
    sides(points, a, b, c, d).forEach(this::face);
  }

  /**
   * The side between four corners, anticlockwise from outside: one face if it is flat, else two,
   * divided along the diagonal that bulges outward.
   */
  static List<int[]> sides(List<Vec3> points, int a, int b, int c, int d) {
    double bulge = a == b || c == d ? 0 : heightOver(points, a, b, c, d);
    if (Math.abs(bulge) <= Tolerances.onPlane()) {
      return List.of(new int[] {a, b, c, d});
    } else if (bulge < 0) {
      return List.of(new int[] {a, b, c}, new int[] {a, c, d});
    }
    return List.of(new int[] {a, b, d}, new int[] {b, c, d});
  }

  /** How far d stands above the plane through a, b and c. */
  private static double heightOver(List<Vec3> points, int a, int b, int c, int d) {
    Vec3 o = points.get(a);
    Vec3 n = points.get(b).minus(o).cross(points.get(c).minus(o));
    return n.length() > 0 ? n.unit().dot(points.get(d).minus(o)) : 0;
  }

  /** Adds a face without repeated neighbours; one without area is left out. */
  private void face(int... loop) {
    int[] distinct = new int[loop.length];
    int n = 0;
    for (int p : loop) {
      if (n == 0 || distinct[n - 1] != p) {
        distinct[n++] = p;
      }
    }
    while (n > 1 && distinct[n - 1] == distinct[0]) {
      n--;
    }
    if (n >= 3) {
      faces.add(java.util.Arrays.copyOf(distinct, n));
    }
  }
}
