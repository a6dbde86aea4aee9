package dryfit.view;

import dryfit.build.Part;
import dryfit.export.picture.Contour;
import dryfit.export.picture.Inked;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Solid;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;

/**
 * One part as JavaFX draws it, in the part's own frame.
 *
 * @param solid what it was made from: the same solid needs no new surface, wherever it now stands
 * @param wood its surface, textured along the grain
 * @param creases its edges, as triangles with no width
 * @param contour where its curved surfaces turn away
 */
record PartShape(
    Solid solid,
    Frame frame,
    String timber,
    TriangleMesh wood,
    TriangleMesh creases,
    Contour contour) {

  /** How much of the part one repeat of the texture covers: along the grain and across it, mm. */
  private static final double ALONG = 700;

  private static final double ACROSS = 130;

  static PartShape of(Part part) {
    Inked inked = Inked.of(part.solid().mesh());
    return new PartShape(
        part.solid(),
        part.frame(),
        part.plan().common().timber(),
        wood(inked, part),
        creases(inked),
        Contour.of(part.solid().mesh()));
  }

  /** The same surface where the part stands now. */
  PartShape placed(Part part) {
    return new PartShape(
        solid, part.frame(), part.plan().common().timber(), wood, creases, contour);
  }

  private static TriangleMesh wood(Inked inked, Part part) {
    TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
    int points = inked.xyz().length / 3;
    float[] xyz = new float[3 * points];
    float[] texture = new float[2 * points];
    Vec3 along = part.grain().unit();
    Vec3 across = (Math.abs(along.z()) > 0.8 ? Vec3.BACK : Vec3.UP).across(along).unit();
    Vec3 third = along.cross(across);
    // A different piece of the tree for each part.
    double shift = Math.floorMod(part.label().hashCode(), 997) / 997.0;
    for (int i = 0; i < points; i++) {
      Vec3 p = new Vec3(inked.xyz()[3 * i], inked.xyz()[3 * i + 1], inked.xyz()[3 * i + 2]);
      xyz[3 * i] = (float) p.x();
      xyz[3 * i + 1] = (float) p.y();
      xyz[3 * i + 2] = (float) p.z();
      texture[2 * i] = (float) (p.dot(along) / ALONG + shift);
      texture[2 * i + 1] = (float) ((p.dot(across) + 0.7 * p.dot(third)) / ACROSS + shift);
    }
    int[] faces = new int[3 * inked.triangles().length];
    for (int c = 0; c < inked.triangles().length; c++) {
      faces[3 * c] = inked.triangles()[c];
      faces[3 * c + 1] = c;
      faces[3 * c + 2] = inked.triangles()[c];
    }
    mesh.getPoints().setAll(xyz);
    mesh.getNormals().setAll(inked.cornerNormals());
    mesh.getTexCoords().setAll(texture);
    mesh.getFaces().setAll(faces);
    return mesh;
  }

  private static TriangleMesh creases(Inked inked) {
    TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_TEXCOORD);
    int[] ends = inked.creases();
    float[] xyz = new float[3 * ends.length];
    int[] faces = new int[3 * ends.length];
    for (int i = 0; i < ends.length; i++) {
      for (int k = 0; k < 3; k++) {
        xyz[3 * i + k] = (float) inked.xyz()[3 * ends[i] + k];
      }
    }
    for (int line = 0; line < ends.length / 2; line++) {
      faces[6 * line] = 2 * line;
      faces[6 * line + 2] = 2 * line + 1;
      faces[6 * line + 4] = 2 * line + 1;
    }
    mesh.getPoints().setAll(xyz);
    mesh.getTexCoords().setAll(0, 0);
    mesh.getFaces().setAll(faces);
    return mesh;
  }
}
