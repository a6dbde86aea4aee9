package dryfit.solid.exact;

import dryfit.geometry.FloatGrid;
import dryfit.geometry.Mesh;
import java.util.List;
import java.util.TreeMap;

/** Numbers vertices, fills faces, and hands over the mesh. */
final class MeshMaker {
  private final Planes planes;
  private final Points points;
  private final Grid grid;
  private final Surface surface;

  MeshMaker(Planes planes, Points points, Grid grid, Surface surface) {
    this.planes = planes;
    this.points = points;
    this.grid = grid;
    this.surface = surface;
  }

  /**
   * The mesh.
   *
   * @throws dryfit.geometry.MeshFailure if 32-bit floats cannot hold it
   */
  Mesh mesh() {
    if (surface.faces.isEmpty()) {
      return Mesh.EMPTY;
    }
    Umbrellas umbrellas = new Umbrellas(planes, points, surface);
    umbrellas.build();
    int n = umbrellas.vertices;
    double[][] at = new double[3][n];
    double[] xyz = new double[3 * n];
    for (int c = 0; c < surface.corners(); c++) {
      int v = umbrellas.vertexOf[c];
      int m = umbrellas.middleOf[c];
      for (int k = 0; k < 3; k++) {
        at[k][v] = points.along(surface.point.at[c], k);
        if (m >= 0) {
          at[k][m] = (at[k][v] + points.along(surface.point.at[surface.next(c)], k)) / 2;
        }
      }
    }
    for (int v = 0; v < n; v++) {
      for (int k = 0; k < 3; k++) {
        xyz[3 * v + k] = grid.mm(at[k][v]);
      }
    }
    List<Face> faces = surface.faces;
    int[][][] loops = new int[faces.size()][][];
    int[] originOfFace = new int[faces.size()];
    TreeMap<String, Integer> origins = new TreeMap<>();
    for (Face f : faces) {
      origins.put(f.origin(), 0);
    }
    int number = 0;
    for (var entry : origins.entrySet()) {
      entry.setValue(number++);
    }
    IntList triangles = new IntList();
    Filling[] fillings = new Filling[6];
    IntList faceOfTriangle = new IntList();
    for (int f = 0; f < loops.length; f++) {
      Face face = faces.get(f);
      loops[f] = surface.loops(f, umbrellas.vertexOf, umbrellas.middleOf);
      originOfFace[f] = origins.get(face.origin());
      int drop = planes.drop[face.plane()];
      boolean front = face.facing() > 0;
      int view = front ? drop : 3 + drop;
      double[] across = at[(drop + (front ? 1 : 2)) % 3];
      double[] up = at[(drop + (front ? 2 : 1)) % 3];
      if (fillings[view] == null) {
        fillings[view] = new Filling(across, up, triangles);
      }
      fillings[view].fill(loops[f]);
      loops[f] = Slits.closed(loops[f], across, up);
      while (3 * faceOfTriangle.size < triangles.size) {
        faceOfTriangle.add(f);
      }
    }
    int[] corners = triangles.toArray();
    Mesh mesh =
        new Mesh(
            xyz,
            loops,
            corners,
            faceOfTriangle.toArray(),
            originOfFace,
            List.copyOf(origins.keySet()));
    return FloatShape.holds(xyz, corners) ? mesh : FloatGrid.snapped(mesh);
  }
}
