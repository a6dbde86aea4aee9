package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.geometry.Mesh;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Plain questions to a mesh, written apart from the code under test. */
final class Surfaces {
  private Surfaces() {}

  static double volume(Mesh mesh) {
    double six = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      six +=
          mesh.point(mesh.corner(t, 0))
              .dot(mesh.point(mesh.corner(t, 1)).cross(mesh.point(mesh.corner(t, 2))));
    }
    return six / 6;
  }

  /** Triangles and loops each use every edge once in each direction, and every point is used. */
  static void assertClosed(Mesh mesh) {
    List<int[]> triangles = new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      triangles.add(new int[] {mesh.corner(t, 0), mesh.corner(t, 1), mesh.corner(t, 2)});
    }
    List<int[]> loops = new ArrayList<>();
    for (int f = 0; f < mesh.faceCount(); f++) {
      loops.addAll(List.of(mesh.loops(f)));
    }
    for (List<int[]> rings : List.of(triangles, loops)) {
      Set<Long> edges = new HashSet<>();
      Set<Integer> used = new HashSet<>();
      for (int[] ring : rings) {
        for (int i = 0; i < ring.length; i++) {
          used.add(ring[i]);
          assertThat(edges.add((long) ring[i] << 32 | ring[(i + 1) % ring.length])).isTrue();
        }
      }
      for (long edge : edges) {
        assertThat(edges).contains(edge << 32 | edge >>> 32);
      }
      assertThat(used).hasSize(mesh.pointCount());
    }
  }
}
