package dryfit.solid.fuzz;

import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;

/**
 * Expressions as trees of planes by Apache Commons Geometry, a library that shares nothing with our
 * kernels.
 */
public final class CommonsRegions {
  /** What it takes for one place, mm; it has no exact arithmetic and needs some room. */
  public static final Precision.DoubleEquivalence PRECISION =
      Precision.doubleEquivalenceOfEpsilon(1e-7);

  private CommonsRegions() {}

  /** The region of a whole expression, leaves and all. */
  public static RegionBSPTree3D of(Csg what) {
    if (what instanceof Csg.Leaf leaf) {
      return of(leaf.mesh());
    } else if (what instanceof Csg.Union union) {
      return union.of().stream()
          .map(CommonsRegions::of)
          .reduce(CommonsRegions::union)
          .orElseThrow();
    } else if (what instanceof Csg.Common common) {
      return common.of().stream()
          .map(CommonsRegions::of)
          .reduce(CommonsRegions::common)
          .orElseThrow();
    }
    Csg.Cut cut = (Csg.Cut) what;
    RegionBSPTree3D left = of(cut.from());
    for (Csg tool : cut.tools()) {
      left = minus(left, of(tool));
    }
    return left;
  }

  /** The region inside a closed surface. */
  public static RegionBSPTree3D of(Mesh mesh) {
    List<org.apache.commons.geometry.euclidean.threed.PlaneConvexSubset> triangles =
        new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      triangles.add(
          Planes.triangleFromVertices(
              vector(mesh.point(mesh.corner(t, 0))),
              vector(mesh.point(mesh.corner(t, 1))),
              vector(mesh.point(mesh.corner(t, 2))),
              PRECISION));
    }
    return RegionBSPTree3D.from(triangles);
  }

  public static RegionBSPTree3D union(RegionBSPTree3D a, RegionBSPTree3D b) {
    RegionBSPTree3D out = RegionBSPTree3D.empty();
    out.union(a, b);
    return out;
  }

  public static RegionBSPTree3D common(RegionBSPTree3D a, RegionBSPTree3D b) {
    RegionBSPTree3D out = RegionBSPTree3D.empty();
    out.intersection(a, b);
    return out;
  }

  public static RegionBSPTree3D minus(RegionBSPTree3D a, RegionBSPTree3D b) {
    RegionBSPTree3D out = RegionBSPTree3D.empty();
    out.difference(a, b);
    return out;
  }

  private static Vector3D vector(Vec3 p) {
    return Vector3D.of(p.x(), p.y(), p.z());
  }
}
