package dryfit.view;

import dryfit.geometry.Vec3;
import javafx.scene.paint.Material;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.DrawMode;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.transform.Affine;

/** The outline of one part in ink, drawn anew as the eye moves. */
final class OutlineInk {
  private final MeshView view = new MeshView();
  private PartShape of;
  private Vec3 from = Vec3.ZERO;

  /**
   * @param place where the part is drawn; moved by whoever owns it
   */
  OutlineInk(Affine place) {
    view.setMouseTransparent(true);
    view.setDrawMode(DrawMode.LINE);
    view.setCullFace(CullFace.NONE);
    view.getTransforms().add(place);
  }

  MeshView node() {
    return view;
  }

  void ink(Material ink, boolean seen) {
    view.setMaterial(ink);
    view.setVisible(seen);
  }

  /**
   * @param eye chair space
   * @param moved how far the part is drawn from its place
   */
  void look(PartShape part, Vec3 eye, Vec3 moved) {
    Vec3 local = part.frame().local(eye.minus(moved));
    boolean other = of == null || of.contour() != part.contour();
    if (part.contour().isEmpty() || !view.isVisible() || !other && local.equals(from)) {
      if (part.contour().isEmpty()) {
        view.setMesh(null);
        of = null;
      }
      return;
    }
    if (other) {
      TriangleMesh lines = new TriangleMesh();
      lines.getPoints().setAll(part.wood().getPoints());
      lines.getTexCoords().setAll(0, 0);
      view.setMesh(lines);
    }
    of = part;
    from = local;
    int[] ends = part.contour().seenFrom(local);
    int[] faces = new int[3 * ends.length];
    for (int line = 0; line < ends.length / 2; line++) {
      faces[6 * line] = ends[2 * line];
      faces[6 * line + 2] = ends[2 * line + 1];
      faces[6 * line + 4] = ends[2 * line + 1];
    }
    ((TriangleMesh) view.getMesh()).getFaces().setAll(faces);
  }
}
