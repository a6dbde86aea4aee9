package dryfit.build;

import dryfit.geometry.Frame;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What is taken out of a board to hollow it: on every line from the deepest place to the rim the
 * depth is {@code deep (1 - s^2)}, with s from 0 to 1, so that it is level where it is deepest. Its
 * volume below the board's face is half the area of the rim times the depth, whatever the rim. It
 * reaches above the face so that nothing is left standing there.
 *
 * <p>Rings like the rim, but smaller, go down to the deepest place; between two of them the flat
 * facets stand off the parabola by at most {@link Tolerances#facet}. Over a convex stretch of the
 * rim they are convex, and so that is a cell.
 */
final class Dish {
  private Dish() {}

  /** A stretch of a rim seen under more than this is not one cell: well below half a turn. */
  private static final double WIDEST = 3.0;

  /**
   * @param rim on the face, z = 0 of {@code page}; wood is below
   * @param deepest seen from which the rim may hide nothing of itself
   * @return nothing if it does
   */
  static Optional<Csg.Leaf> of(
      List<Vec2> rim, Vec2 deepest, double deep, Frame page, String origin) {
    List<Vec2> loop = anticlockwise(rim);
    int n = loop.size();
    for (int i = 0; i < n; i++) {
      Vec2 a = loop.get(i).minus(deepest);
      Vec2 b = loop.get((i + 1) % n).minus(deepest);
      if (a.cross(b) <= Tolerances.coincident() * a.distance(b)) {
        return Optional.empty();
      }
    }
    int rings = rings(deep);
    List<Vec3> points = new ArrayList<>();
    for (int k = 0; k <= rings + 1; k++) {
      // The last ring stands straight above the rim.
      double s = Math.min(1, (double) k / rings);
      double z = k > rings ? Shapes.SPARE : -deep * (1 - s * s);
      for (int i = 0; i < (k == 0 ? 1 : n); i++) {
        Vec2 p = deepest.plus(loop.get(i).minus(deepest).times(s));
        points.add(page.place(new Vec3(p.x(), p.y(), z)));
      }
    }
    return Optional.of(
        new Csg.Leaf(
            Meshes.ofFaces(points, faces(n, rings), origin),
            cells(points, loop, rings, deepest, page)));
  }

  /** A chord over h of deep x s^2 is off by deep h^2 / 4. */
  private static int rings(double deep) {
    return Math.max(2, (int) Math.ceil(Math.sqrt(deep / (4 * Tolerances.facet()))));
  }

  private static int number(int k, int i, int n) {
    return k == 0 ? 0 : 1 + (k - 1) * n + i % n;
  }

  private static int[][][] faces(int n, int rings) {
    List<int[][]> faces = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      faces.add(new int[][] {{0, number(1, i + 1, n), number(1, i, n)}});
    }
    for (int k = 1; k <= rings; k++) {
      for (int i = 0; i < n; i++) {
        faces.add(
            new int[][] {
              {number(k, i, n), number(k, i + 1, n), number(k + 1, i + 1, n), number(k + 1, i, n)}
            });
      }
    }
    int[] lid = new int[n];
    for (int i = 0; i < n; i++) {
      lid[i] = number(rings + 1, i, n);
    }
    faces.add(new int[][] {lid});
    return faces.toArray(int[][][]::new);
  }

  /** One cell if the rim is convex; otherwise one for each stretch of it that is. */
  private static List<Convex> cells(
      List<Vec3> points, List<Vec2> loop, int rings, Vec2 deepest, Frame page) {
    int n = loop.size();
    int start = 0;
    while (start < n && !isHollow(loop, start)) {
      start++;
    }
    if (start == n) {
      int[][] outer = Arrays.stream(faces(n, rings)).map(face -> face[0]).toArray(int[][]::new);
      return List.of(Convex.of(points, outer));
    }
    List<Convex> cells = new ArrayList<>();
    int from = start;
    double turned = 0;
    for (int i = start; i < start + n; i++) {
      Vec2 a = loop.get(i % n).minus(deepest);
      Vec2 b = loop.get((i + 1) % n).minus(deepest);
      double angle = Math.atan2(a.cross(b), a.dot(b));
      if (i > from && (isHollow(loop, i % n) || turned + angle > WIDEST)) {
        cells.add(stretch(points, from, i, n, rings, deepest, page));
        from = i;
        turned = 0;
      }
      turned += angle;
    }
    cells.add(stretch(points, from, start + n, n, rings, deepest, page));
    return cells;
  }

  /** Whether the rim turns inward at a corner. */
  private static boolean isHollow(List<Vec2> loop, int i) {
    int n = loop.size();
    Vec2 before = loop.get(i).minus(loop.get((i + n - 1) % n));
    Vec2 after = loop.get((i + 1) % n).minus(loop.get(i));
    return before.cross(after) < 0;
  }

  /** The cell over the rim's corners from one to another, with a flat side at each. */
  private static Convex stretch(
      List<Vec3> points, int from, int to, int n, int rings, Vec2 deepest, Frame page) {
    List<Vec3> corners =
        new ArrayList<>(
            List.of(points.get(0), page.place(new Vec3(deepest.x(), deepest.y(), Shapes.SPARE))));
    int wide = to - from + 1;
    for (int k = 1; k <= rings + 1; k++) {
      for (int i = from; i <= to; i++) {
        corners.add(points.get(number(k, i, n)));
      }
    }
    List<int[]> faces = new ArrayList<>();
    for (int i = 0; i + 1 < wide; i++) {
      faces.add(new int[] {0, 2 + i + 1, 2 + i});
      for (int k = 1; k <= rings; k++) {
        int low = 2 + (k - 1) * wide + i;
        faces.add(new int[] {low, low + 1, low + 1 + wide, low + wide});
      }
    }
    int[] lid = new int[wide + 1];
    int[] first = new int[rings + 3];
    int[] last = new int[rings + 3];
    lid[0] = 1;
    first[rings + 2] = 1;
    last[0] = 1;
    for (int i = 0; i < wide; i++) {
      lid[i + 1] = 2 + rings * wide + i;
    }
    for (int k = 1; k <= rings + 1; k++) {
      first[k] = 2 + (k - 1) * wide;
      last[rings + 2 - k] = 2 + k * wide - 1;
    }
    faces.add(lid);
    faces.add(first);
    faces.add(last);
    return Convex.of(corners, faces.toArray(int[][]::new));
  }

  private static List<Vec2> anticlockwise(List<Vec2> loop) {
    double twice = 0;
    for (int i = 0; i < loop.size(); i++) {
      twice += loop.get(i).cross(loop.get((i + 1) % loop.size()));
    }
    if (twice > 0) {
      return loop;
    }
    List<Vec2> turned = new ArrayList<>(loop);
    java.util.Collections.reverse(turned);
    return turned;
  }
}
