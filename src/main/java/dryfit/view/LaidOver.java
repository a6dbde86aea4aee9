package dryfit.view;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.DrawMode;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;

/**
 * A second design laid over the first: blue ink and a blue tint one can see through. Parts that are
 * the same in both are left out, so what is blue is what differs.
 */
final class LaidOver {
  /** How much of the light the tint holds back. */
  private static final double TINT = 0.30;

  /** Bright enough to show on dark walnut, dark enough on paper. */
  private static final Color BLUE = Color.web("#2b74d8");

  private final Group lines = new Group();
  private final Group tints = new Group();
  private final Group both = new Group(lines, tints);

  Node node() {
    return both;
  }

  void show(Shown under, Optional<Shown> over) {
    List<Node> ink = new ArrayList<>();
    List<Node> tint = new ArrayList<>();
    for (PartShape part : over.map(Shown::parts).orElse(List.of())) {
      if (under == null || under.parts().stream().noneMatch(p -> isSame(p, part))) {
        ink.add(ink(part));
        tint.add(tint(part));
      }
    }
    lines.getChildren().setAll(ink);
    tints.getChildren().setAll(tint);
  }

  private static boolean isSame(PartShape a, PartShape b) {
    Frame f = a.frame();
    Frame g = b.frame();
    return a.solid() == b.solid()
        && f.origin().distance(g.origin()) <= Tolerances.contact()
        && f.x().cross(g.x()).length() <= Tolerances.nearlyParallel()
        && f.y().cross(g.y()).length() <= Tolerances.nearlyParallel();
  }

  private static MeshView ink(PartShape part) {
    MeshView view = placed(new MeshView(part.creases()), part.frame());
    view.setDrawMode(DrawMode.LINE);
    view.setCullFace(CullFace.NONE);
    view.setMaterial(Floor.flat(BLUE));
    return view;
  }

  private static MeshView tint(PartShape part) {
    MeshView view = placed(new MeshView(part.wood()), part.frame());
    PhongMaterial glass = new PhongMaterial();
    // What is glass must bring its colour already weakened: the blending adds it as it is.
    glass.setDiffuseColor(
        Color.color(BLUE.getRed() * TINT, BLUE.getGreen() * TINT, BLUE.getBlue() * TINT, TINT));
    glass.setSpecularColor(Color.BLACK);
    view.setMaterial(glass);
    return view;
  }

  private static MeshView placed(MeshView view, Frame f) {
    Vec3 o = f.origin();
    Affine place = new Affine();
    place.setToTransform(
        f.x().x(), f.y().x(), f.z().x(), o.x(), f.x().y(), f.y().y(), f.z().y(), o.y(), f.x().z(),
        f.y().z(), f.z().z(), o.z());
    view.getTransforms().add(place);
    view.setMouseTransparent(true);
    return view;
  }
}
