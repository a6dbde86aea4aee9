package dryfit.view;

import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.DrawMode;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;

/** The floor in 3D: only what lies on it is drawn, and only from above. */
final class Floor {
  /** How dark the darkest shadow is. */
  private static final double DARKEST = 0.34;

  /** Above the shadow, so that the two do not claim the same place, mm. */
  private static final float ABOVE = 0.5f;

  private Floor() {}

  /** The soft shadow of a chair. */
  static Node shadow(Shown shown) {
    MeshView shadow = new MeshView(square(shown.floor()));
    PhongMaterial material = new PhongMaterial();
    // Black is black whether or not it was weakened by its own opacity.
    material.setDiffuseMap(image(shown.floor()));
    material.setSpecularColor(Color.BLACK);
    shadow.setMaterial(material);
    shadow.setCullFace(CullFace.BACK);
    shadow.setMouseTransparent(true);
    return shadow;
  }

  /** What its feet enclose, once that is known. */
  static Optional<Node> footprint(Shown shown) {
    return shown.fit().flatMap(fit -> Footprint.of(fit.whole())).map(Floor::outline);
  }

  /** Ink on the floor round the feet. */
  private static MeshView outline(Footprint footprint) {
    TriangleMesh mesh = new TriangleMesh();
    List<Vec3> corners = footprint.corners();
    corners.forEach(c -> mesh.getPoints().addAll((float) c.x(), (float) c.y(), ABOVE));
    mesh.getTexCoords().addAll(0, 0);
    for (int i = 0; i < corners.size(); i++) {
      int next = (i + 1) % corners.size();
      mesh.getFaces().addAll(i, 0, next, 0, next, 0);
    }
    MeshView view = new MeshView(mesh);
    view.setDrawMode(DrawMode.LINE);
    view.setCullFace(CullFace.NONE);
    view.setMaterial(flat(Color.web("#8a7a63")));
    view.setMouseTransparent(true);
    view.setId("footprint");
    return view;
  }

  private static TriangleMesh square(FloorPicture floor) {
    TriangleMesh mesh = new TriangleMesh();
    for (Vec3 corner : floor.corners()) {
      mesh.getPoints().addAll((float) corner.x(), (float) corner.y(), 0);
    }
    mesh.getTexCoords().addAll(0, 1, 1, 1, 1, 0, 0, 0);
    mesh.getFaces().addAll(0, 0, 1, 1, 2, 2, 0, 0, 2, 2, 3, 3);
    return mesh;
  }

  private static WritableImage image(FloorPicture floor) {
    int n = FloorPicture.PIXELS;
    int[] pixels = new int[n * n];
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (int) Math.round(255 * DARKEST * floor.dark()[i]) << 24;
    }
    WritableImage image = new WritableImage(n, n);
    image.getPixelWriter().setPixels(0, 0, n, n, PixelFormat.getIntArgbInstance(), pixels, 0, n);
    return image;
  }

  /** A material that looks the same in any light. */
  static PhongMaterial flat(Color colour) {
    WritableImage one = new WritableImage(1, 1);
    one.getPixelWriter().setColor(0, 0, colour);
    PhongMaterial material = new PhongMaterial(Color.BLACK);
    material.setSpecularColor(Color.BLACK);
    material.setSelfIlluminationMap(one);
    return material;
  }
}
