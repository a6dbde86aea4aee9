package dryfit.solid;

import dryfit.geometry.Mesh;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * What the exact kernel is asked once corners are on its grid, worked out here from what it
 * promises: steps of 2^-14 mm within 2048 mm of the origin, doubled as often as it takes to reach
 * all corners. Its answer must be right for these shapes as if there were no grid.
 */
final class Gridded {
  private Gridded() {}

  /** The step of the grid, mm. */
  static double step(Csg what) {
    double reach = 0;
    for (Csg.Leaf leaf : leaves(what)) {
      for (double c : leaf.mesh().coordinates()) {
        reach = Math.max(reach, Math.abs(c));
      }
    }
    double step = 0x1p-14;
    while (Math.rint(reach / step) >= 0x1p25) {
      step *= 2;
    }
    return step;
  }

  /** The same expression of shapes whose corners are on the grid; all faces are triangles. */
  static Csg of(Csg what) {
    return of(what, step(what));
  }

  private static Csg of(Csg what, double step) {
    if (what instanceof Csg.Leaf leaf) {
      return new Csg.Leaf(of(leaf.mesh(), step), List.of());
    } else if (what instanceof Csg.Union union) {
      return new Csg.Union(of(union.of(), step));
    } else if (what instanceof Csg.Common common) {
      return new Csg.Common(of(common.of(), step));
    }
    Csg.Cut cut = (Csg.Cut) what;
    return new Csg.Cut(of(cut.from(), step), of(cut.tools(), step));
  }

  private static List<Csg> of(List<Csg> all, double step) {
    return all.stream().map(each -> of(each, step)).toList();
  }

  private static Mesh of(Mesh mesh, double step) {
    List<Vec3> points = new ArrayList<>();
    for (int i = 0; i < mesh.pointCount(); i++) {
      Vec3 p = mesh.point(i);
      points.add(new Vec3(near(p.x(), step), near(p.y(), step), near(p.z(), step)));
    }
    int[][][] faces = new int[mesh.triangleCount()][][];
    for (int t = 0; t < faces.length; t++) {
      faces[t] = new int[][] {{mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2)}};
    }
    return Meshes.ofFaces(points, faces, mesh.origin(0));
  }

  private static double near(double mm, double step) {
    return Math.rint(mm / step) * step;
  }

  private static List<Csg.Leaf> leaves(Csg what) {
    List<Csg.Leaf> out = new ArrayList<>();
    collect(what, out);
    return out;
  }

  private static void collect(Csg what, List<Csg.Leaf> into) {
    if (what instanceof Csg.Leaf leaf) {
      into.add(leaf);
    } else if (what instanceof Csg.Union union) {
      union.of().forEach(each -> collect(each, into));
    } else if (what instanceof Csg.Common common) {
      common.of().forEach(each -> collect(each, into));
    } else if (what instanceof Csg.Cut cut) {
      collect(cut.from(), into);
      cut.tools().forEach(each -> collect(each, into));
    }
  }
}
