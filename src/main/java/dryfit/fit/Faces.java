package dryfit.fit;

import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;

/** What the flat faces of a mesh look like. */
final class Faces {
  private Faces() {}

  /** The outward unit normal of a face, by Newell's sum over its outer loop. */
  static Vec3 normal(Mesh mesh, int face) {
    int[] loop = mesh.loops(face)[0];
    Vec3 first = mesh.point(loop[0]);
    Vec3 sum = Vec3.ZERO;
    for (int i = 0; i < loop.length; i++) {
      Vec3 a = mesh.point(loop[i]).minus(first);
      Vec3 b = mesh.point(loop[(i + 1) % loop.length]).minus(first);
      sum = sum.plus(a.cross(b));
    }
    return sum.unit();
  }
}
