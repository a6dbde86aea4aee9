package dryfit.export.picture;

import dryfit.geometry.Mesh;

/**
 * A surface got ready for whoever draws it: shading that is smooth over curves and sharp at
 * creases, and the creases themselves. The arrays are shared, not copied: do not write into them.
 *
 * @param xyz 3 numbers a point, mm
 * @param triangles 3 point numbers each, anticlockwise from outside
 * @param cornerNormals unit normals, 9 numbers a triangle
 * @param creases pairs of point numbers: the ends of each edge worth an ink line
 */
public record Inked(double[] xyz, int[] triangles, float[] cornerNormals, int[] creases) {

  public static Inked of(Mesh mesh) {
    Surface surface = new Surface(mesh);
    int count = 0;
    for (boolean crease : surface.crease) {
      count += crease ? 1 : 0;
    }
    int[] creases = new int[2 * count];
    int at = 0;
    for (int e = 0; e < surface.crease.length; e++) {
      if (surface.crease[e]) {
        creases[at++] = surface.edges[4 * e];
        creases[at++] = surface.edges[4 * e + 1];
      }
    }
    return new Inked(surface.xyz, surface.triangles, surface.cornerNormals, creases);
  }
}
