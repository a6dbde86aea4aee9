package dryfit.view;

import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Point3D;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.Cylinder;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.Sphere;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import javafx.scene.transform.Rotate;

/** Draws what stands beside the chair: a sitter of dowels and balls, or a square rule. */
final class ScaleFigure {
  /** Clear of the chair, mm. */
  static final double ASIDE = 150;

  static final double RULE = 56; // mm, the side of the rule's square section
  private static final int RULE_PIXELS = 112;
  private static final Color LIMBS = Color.web("#9fb0bd");

  private ScaleFigure() {}

  static List<Node> nodes(Scale scale, Box chair) {
    if (scale instanceof Scale.Sits sits) {
      return sitter(sits, chair);
    }
    return scale instanceof Scale.Rule rule ? List.of(rule(rule.unit(), chair)) : List.of();
  }

  /** The farthest places of what stands beside the chair. */
  static Optional<List<Vec3>> room(Scale scale, Box chair) {
    if (scale instanceof Scale.Sits sits) {
      return Optional.of(
          Limb.of(sits, chair).stream()
              .flatMap(limb -> Stream.of(limb.from(), limb.to()).map(p -> around(p, limb)))
              .flatMap(box -> Stream.of(box.low(), box.high()))
              .toList());
    }
    Vec3 foot = new Vec3(chair.low().x() - ASIDE, chair.low().y(), 0);
    return scale instanceof Scale.Rule rule
        ? Optional.of(List.of(foot, foot.plus(new Vec3(0, 0, height(rule.unit(), chair)))))
        : Optional.empty();
  }

  private static Box around(Vec3 end, Limb limb) {
    double r = limb.radius();
    Vec3 reach = new Vec3(r * limb.wide(), r * limb.deep(), r);
    return new Box(end.minus(reach), end.plus(reach));
  }

  private static List<Node> sitter(Scale.Sits sits, Box chair) {
    List<Node> body = new ArrayList<>();
    Limb.of(sits, chair).forEach(limb -> add(body, limb));
    return body;
  }

  private static void add(List<Node> body, Limb of) {
    List<Node> pieces = new ArrayList<>(List.of(ball(of.from(), of.radius())));
    Vec3 along = of.to().minus(of.from());
    if (along.length() > 0) {
      pieces.add(ball(of.to(), of.radius()));
      Cylinder limb = new Cylinder(of.radius(), along.length(), 24);
      Vec3 middle = of.middle();
      limb.setTranslateX(middle.x());
      limb.setTranslateY(middle.y());
      limb.setTranslateZ(middle.z());
      // A cylinder of JavaFX stands along its y.
      Vec3 axis = Vec3.BACK.cross(along);
      if (axis.length() > 1) {
        double turn = Math.toDegrees(Math.acos(along.unit().y()));
        limb.getTransforms().add(new Rotate(turn, new Point3D(axis.x(), axis.y(), axis.z())));
      }
      limb.setMaterial(material());
      limb.setMouseTransparent(true);
      pieces.add(limb);
    }
    for (Node piece : pieces) {
      piece.setScaleX(of.wide());
      piece.setScaleY(of.deep());
    }
    body.addAll(pieces);
  }

  private static Node ball(Vec3 at, double radius) {
    Sphere ball = new Sphere(radius, 24);
    ball.setTranslateX(at.x());
    ball.setTranslateY(at.y());
    ball.setTranslateZ(at.z());
    ball.setMaterial(material());
    ball.setMouseTransparent(true);
    return ball;
  }

  private static PhongMaterial material() {
    PhongMaterial material = new PhongMaterial(LIMBS);
    material.setSpecularColor(Color.BLACK);
    return material;
  }

  /** How long a band of the rule is, mm. */
  static double step(Length.Unit unit) {
    return unit == Length.Unit.IN ? 2 * unit.mm() : 100;
  }

  /** How high the rule stands: whole bands, and no lower than the chair; mm. */
  static double height(Length.Unit unit, Box chair) {
    return Math.ceil(chair.high().z() / step(unit)) * step(unit);
  }

  private static Node rule(Length.Unit unit, Box chair) {
    double step = step(unit);
    double height = height(unit, chair);
    double x = chair.low().x() - ASIDE;
    double y = chair.low().y();
    TriangleMesh mesh = new TriangleMesh();
    double[][] corners = {{x, y}, {x + RULE, y}, {x + RULE, y + RULE}, {x, y + RULE}};
    for (double[] c : corners) {
      mesh.getPoints().addAll((float) c[0], (float) c[1], 0);
      mesh.getPoints().addAll((float) c[0], (float) c[1], (float) height);
    }
    mesh.getTexCoords().addAll(0, 1, 0, 0, 1, 1, 1, 0);
    for (int side = 0; side < 4; side++) {
      int a = 2 * side;
      int b = 2 * ((side + 1) % 4);
      mesh.getFaces().addAll(a, 0, b, 2, b + 1, 3, a, 0, b + 1, 3, a + 1, 1);
    }
    MeshView view = new MeshView(mesh);
    PhongMaterial material = new PhongMaterial(Color.BLACK);
    material.setSpecularColor(Color.BLACK);
    material.setSelfIlluminationMap(marks(height, step, unit));
    view.setMaterial(material);
    view.setCullFace(CullFace.NONE);
    view.setMouseTransparent(true);
    view.setId("scale-rule");
    return view;
  }

  /** Bands of light and dark wood with numbers, tenths or halves of them as marks between. */
  private static WritableImage marks(double height, double step, Length.Unit unit) {
    double pixels = RULE_PIXELS / RULE;
    Canvas canvas = new Canvas(RULE_PIXELS, Math.min(4096, height * pixels));
    double scale = canvas.getHeight() / height;
    GraphicsContext pen = canvas.getGraphicsContext2D();
    pen.setFont(Font.font("DejaVu Sans", FontWeight.BOLD, 46));
    pen.setTextAlign(TextAlignment.RIGHT);
    boolean inches = unit == Length.Unit.IN;
    int parts = inches ? 2 : 10;
    long bands = Math.round(height / step);
    for (long band = 0; band < bands; band++) {
      double top = canvas.getHeight() - (band + 1) * step * scale;
      pen.setFill(band % 2 == 0 ? Color.web("#f3e3b8") : Color.web("#cfae6a"));
      pen.fillRect(0, top, canvas.getWidth(), step * scale + 1);
      pen.setFill(Color.web("#2b241b"));
      pen.fillRect(0, top, canvas.getWidth(), 3);
      for (int i = 1; i < parts; i++) {
        pen.fillRect(0, top + i * step / parts * scale, 2 * i == parts ? 34 : 18, 2);
      }
      pen.fillText(Long.toString((band + 1) * (inches ? 2 : 100)), RULE_PIXELS - 3, top + 44);
    }
    return canvas.snapshot(new SnapshotParameters(), null);
  }
}
