package dryfit.export.picture;

import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.Arrays;

/**
 * The outline of curved surfaces: the edges, no creases themselves, where a surface turns away from
 * the eye. Where that is depends on where the eye is.
 */
public final class Contour {
  private final Surface surface;

  /** Numbers of the edges that are no creases. */
  private final int[] smooth;

  private Contour(Surface surface) {
    this.surface = surface;
    int[] found = new int[surface.crease.length];
    int count = 0;
    for (int e = 0; e < found.length; e++) {
      if (!surface.crease[e] && !isFlat(e)) {
        found[count++] = e;
      }
    }
    smooth = Arrays.copyOf(found, count);
  }

  public static Contour of(Mesh mesh) {
    return new Contour(new Surface(mesh));
  }

  /** Within one flat face nothing turns away. */
  private boolean isFlat(int edge) {
    int a = 3 * surface.edges[4 * edge + 2];
    int b = 3 * surface.edges[4 * edge + 3];
    double[] n = surface.faceNormals;
    Vec3 one = new Vec3(n[a], n[a + 1], n[a + 2]);
    Vec3 other = new Vec3(n[b], n[b + 1], n[b + 2]);
    return one.cross(other).length() <= Tolerances.nearlyParallel();
  }

  /** Whether there is nothing curved, and so never an outline. */
  public boolean isEmpty() {
    return smooth.length == 0;
  }

  /**
   * Pairs of point numbers of the mesh: the ends of each edge of the outline.
   *
   * @param eye where it is seen from, in the mesh's own coordinates
   */
  public int[] seenFrom(Vec3 eye) {
    boolean[] towards = new boolean[surface.triangleCount()];
    for (int t = 0; t < towards.length; t++) {
      towards[t] = surface.facesEye(t, eye.x(), eye.y(), eye.z());
    }
    int[] ends = new int[2 * smooth.length];
    int count = 0;
    for (int e : smooth) {
      if (towards[surface.edges[4 * e + 2]] != towards[surface.edges[4 * e + 3]]) {
        ends[count++] = surface.edges[4 * e];
        ends[count++] = surface.edges[4 * e + 1];
      }
    }
    return Arrays.copyOf(ends, count);
  }
}
