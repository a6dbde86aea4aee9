package dryfit.fit;

import dryfit.fit.Assembly.Placed;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Which parts are their own mirror image in the chair's middle plane: each corner has another where
 * the mirror would put it, and the wood weighs the same on both sides. How flat faces were cut into
 * triangles is of no matter.
 */
final class SelfMirrored {
  private final Assembly assembly;
  private final Map<Integer, Boolean> known = new HashMap<>();

  SelfMirrored(Assembly assembly) {
    this.assembly = assembly;
  }

  boolean holds(int part) {
    return known.computeIfAbsent(part, p -> of(assembly.part(p)));
  }

  private static boolean of(Placed placed) {
    return Math.abs(placed.bounds().middle().x()) <= Tolerances.contact()
        && cornersMatch(placed.mesh())
        && Math.abs(MassProperties.of(placed.mesh()).centre().x()) <= Tolerances.contact();
  }

  private static boolean cornersMatch(Mesh mesh) {
    Vec3[] upwards =
        IntStream.range(0, mesh.pointCount())
            .mapToObj(mesh::point)
            .sorted(Comparator.comparingDouble(Vec3::z))
            .toArray(Vec3[]::new);
    int first = 0;
    for (Vec3 p : upwards) {
      while (upwards[first].z() < p.z() - Tolerances.contact()) {
        first++;
      }
      if (!hasMirrored(p, upwards, first)) {
        return false;
      }
    }
    return true;
  }

  private static boolean hasMirrored(Vec3 p, Vec3[] upwards, int first) {
    Vec3 mirrored = p.mirrored();
    for (int i = first; i < upwards.length && upwards[i].z() <= p.z() + Tolerances.contact(); i++) {
      if (upwards[i].distance(mirrored) <= Tolerances.contact()) {
        return true;
      }
    }
    return false;
  }
}
