package dryfit.build;

import dryfit.geometry.Frame;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is taken out of a board to hollow it: on every line from the deepest place to the rim the
 * depth is {@code deep (1 - s^2)}, with s from 0 to 1, so that it is level where it is deepest. Its
 * volume below the board's face is half the area of the rim times the depth, whatever the rim. It
 * reaches above the face so that nothing is left standing there.
 *
 * <p>Rings like the rim, but smaller, go down to the deepest place; between two of them the flat
 * facets stand off the parabola by at most {@link Tolerances#facet}. Over one side of the rim they
 * are convex, and so that is a cell.
 */
final class Dish {
  private Dish() {}

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
            cells(points, n, rings, deepest, page)));
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

  private static List<Convex> cells(List<Vec3> points, int n, int rings, Vec2 deepest, Frame page) {
    Vec3 above = page.place(new Vec3(deepest.x(), deepest.y(), Shapes.SPARE));
    List<Convex> cells = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      List<Vec3> corners = new ArrayList<>(List.of(above, points.get(0)));
      for (int k = 1; k <= rings + 1; k++) {
        corners.add(points.get(number(k, i, n)));
        corners.add(points.get(number(k, i + 1, n)));
      }
      cells.add(Convex.hull(corners));
    }
    return cells;
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
