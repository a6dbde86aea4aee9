package dryfit.build;

import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/** Cuts convex cells with a plane. */
final class Slice {
  private Slice() {}

  /** The corners of every cell's section, in no order; empty where the plane passes by. */
  static List<Vec3> points(List<Convex> cells, Plane plane) {
    List<Vec3> all = new ArrayList<>();
    for (Convex cell : cells) {
      all.addAll(points(cell, plane));
    }
    return all;
  }

  /** The corners of one cell's section, in no order, some perhaps twice. */
  static List<Vec3> points(Convex cell, Plane plane) {
    if (cell.isBeside(plane)) {
      return List.of();
    }
    List<Vec3> out = new ArrayList<>();
    for (int[] face : cell.faces()) {
      Vec3 a = cell.point(face[face.length - 1]);
      double ha = plane.height(a);
      for (int corner : face) {
        Vec3 b = cell.point(corner);
        double hb = plane.height(b);
        if (hb == 0) {
          out.add(b);
        } else if (ha < 0 != hb < 0 && ha != 0) {
          out.add(a.plus(b.minus(a).times(ha / (ha - hb))));
        }
        a = b;
        ha = hb;
      }
    }
    return out;
  }
}
