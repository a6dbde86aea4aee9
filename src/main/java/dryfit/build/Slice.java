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
    List<Vec3> out = new ArrayList<>();
    for (int[] face : cell.faces()) {
      for (int i = 0; i < face.length; i++) {
        Vec3 a = cell.point(face[i]);
        Vec3 b = cell.point(face[(i + 1) % face.length]);
        double ha = plane.height(a);
        double hb = plane.height(b);
        if (ha == 0) {
          out.add(a);
        } else if (ha < 0 != hb < 0 && hb != 0) {
          out.add(a.plus(b.minus(a).times(ha / (ha - hb))));
        }
      }
    }
    return out;
  }
}
