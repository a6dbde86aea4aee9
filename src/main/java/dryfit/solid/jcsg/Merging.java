package dryfit.solid.jcsg;

import dryfit.geometry.Mesh;
import dryfit.geometry.MeshFailure;
import dryfit.geometry.Meshes;
import dryfit.geometry.Regions;
import dryfit.geometry.Triangulation;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * Makes faces of fragments: those of one plane that face the same way lose the sides they share,
 * and what is left are the loops of whole faces.
 */
final class Merging {
  private final List<Sheet> sheets;
  private final PlaneClasses classes;
  private final double[] xyz;
  private final Rims rims = new Rims();

  private Merging(List<Sheet> sheets, double[] xyz) {
    this.sheets = sheets;
    this.classes = new PlaneClasses(sheets);
    this.xyz = xyz;
  }

  /**
   * @throws MeshFailure if the faces do not close
   */
  static Mesh of(List<Fragment> fragments, Seams seams, List<Sheet> sheets) {
    Merging merging = new Merging(sheets, seams.coordinates());
    for (int i = 0; i < fragments.size(); i++) {
      merging.add(fragments.get(i), seams.loops().get(i));
    }
    merging.rims.requireClosed(merging.xyz);
    merging.rims.dissolveStraightCorners(merging.xyz);
    return merging.mesh();
  }

  private void add(Fragment fragment, int[] loop) {
    int plane = classes.root(fragment.sheet());
    boolean along = fragment.normal().dot(classes.normal(plane)) >= 0;
    int group = 2 * plane + (along ? 0 : 1);
    for (int i = 0; i < loop.length; i++) {
      rims.add(group, loop[i], loop[(i + 1) % loop.length], fragment.sheet());
    }
  }

  private Mesh mesh() {
    List<String> origins =
        new ArrayList<>(new TreeSet<>(sheets.stream().map(Sheet::origin).toList()));
    List<int[]> triangles = new ArrayList<>();
    List<Integer> originOfFace = new ArrayList<>();
    for (int group : rims.groups()) {
      Vec3 normal = classes.normal(group / 2);
      Vec3 outward = group % 2 == 0 ? normal : normal.negated();
      for (int[][] region : Regions.of(xyz, outward, rims.edges(group))) {
        triangles.add(Triangulation.ofFace(xyz, region));
        originOfFace.add(origins.indexOf(smallestOrigin(group, region)));
      }
    }
    int[] corners = triangles.stream().flatMapToInt(Arrays::stream).toArray();
    int[] faceOf = new int[corners.length / 3];
    int size = 0;
    for (int f = 0; f < triangles.size(); f++) {
      int count = triangles.get(f).length / 3;
      Arrays.fill(faceOf, size, size + count, f);
      size += count;
    }
    return Meshes.ofTriangles(
        xyz, corners, faceOf, originOfFace.stream().mapToInt(i -> i).toArray(), origins);
  }

  /**
   * A face merged of several has the origin that comes first, so that the answer is the same
   * whatever the order of the operands.
   */
  private String smallestOrigin(int group, int[][] region) {
    String best = null;
    for (int[] loop : region) {
      for (int i = 0; i < loop.length; i++) {
        int sheet = rims.sheet(group, loop[i], loop[(i + 1) % loop.length]);
        String origin = sheets.get(sheet).origin();
        best = best == null || origin.compareTo(best) < 0 ? origin : best;
      }
    }
    return best;
  }
}
