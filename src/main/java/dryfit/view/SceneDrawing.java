package dryfit.view;

import dryfit.export.picture.Camera;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.AmbientLight;
import javafx.scene.DepthTest;
import javafx.scene.DirectionalLight;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.PerspectiveCamera;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.image.Image;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.DrawMode;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.transform.Affine;
import javafx.scene.transform.Translate;

/**
 * The chair in 3D. JavaFX space is chair space, millimetre for millimetre; the camera brings its
 * own idea of up.
 */
final class SceneDrawing implements Drawing {
  /** How much of the light a part lets by when wood is see-through, and when it only fades. */
  private static final double GLASS = 0.34;

  private static final double FAINT = 0.13;

  /** End grain and long grain alike: fresh sawn wood, the same in any light. */
  static final List<Color> SAWN =
      Stream.of("#ecdcba", "#d8b982", "#b99d74", "#e3c3a0", "#a98a66").map(Color::web).toList();

  private final Group floor = new Group();
  private final Group ink = new Group();
  private final Group wood = new Group();
  private final Group clashes = new Group();
  private final Group scale = new Group();
  private final LaidOver over = new LaidOver();
  private final PerspectiveCamera camera = new PerspectiveCamera(true);
  private final Affine stand = new Affine();
  private final DirectionalLight key = new DirectionalLight(Color.color(0.40, 0.385, 0.35));
  private final SubScene scene;
  private final Map<String, Image> textures = new HashMap<>();

  /** Kept, so that what looks as before is not given to the graphics again. */
  private final Map<Finish, PhongMaterial> finishes = new HashMap<>();

  private final Map<Color, PhongMaterial> inks = new HashMap<>();
  private final List<Drawn> drawn = new ArrayList<>();
  private Shown shown;

  /** Of each part's cut face. */
  private int[] tones = {};

  private Look how = Look.PLAIN;
  private Vec3 eye = Vec3.ZERO;

  /** How the wood of a part is seen. */
  private record Finish(String timber, Color tint) {}

  /** A part on screen. */
  private record Drawn(
      MeshView wood, MeshView ink, OutlineInk outline, MeshView cut, Affine place) {}

  SceneDrawing() {
    AmbientLight everywhere = new AmbientLight(Color.color(0.70, 0.66, 0.62));
    DirectionalLight sky = new DirectionalLight(Color.color(0.14, 0.14, 0.14));
    sky.setDirection(new javafx.geometry.Point3D(0.1, 0.1, -1));
    Group all =
        new Group(everywhere, sky, key, camera, floor, scale, ink, wood, over.node(), clashes);
    // Ink and floor bring their own light. To leave them out halves what a line costs to draw where
    // the processor draws.
    for (DirectionalLight light : List.of(sky, key)) {
      light.getScope().addAll(wood, scale, over.node());
    }
    scene = new SubScene(all, 10, 10, true, SceneAntialiasing.BALANCED);
    scene.setCamera(camera);
    scene.setFill(Color.TRANSPARENT);
    scene.setId("drawing");
    scene.setManaged(false);
    camera.setFieldOfView(Math.toDegrees(Orbit.ANGLE_OF_VIEW));
    camera.getTransforms().add(stand);
  }

  @Override
  public Node node() {
    return scene;
  }

  @Override
  public void resize(double width, double height) {
    scene.setWidth(width);
    scene.setHeight(height);
  }

  @Override
  public void look(Orbit from) {
    Camera c = from.camera();
    eye = c.eye();
    Vec3 r = c.right();
    Vec3 d = c.up().negated();
    Vec3 f = c.forward();
    stand.setToTransform(
        r.x(), d.x(), f.x(), eye.x(), r.y(), d.y(), f.y(), eye.y(), r.z(), d.z(), f.z(), eye.z());
    camera.setNearClip(Math.max(5, from.distance() * 0.04));
    camera.setFarClip(from.distance() + 20_000);
    Vec3 shine = r.times(0.6).plus(c.up().times(-0.6)).plus(f.times(0.75)).unit();
    key.setDirection(new javafx.geometry.Point3D(shine.x(), shine.y(), shine.z()));
    if (how.seeThrough() || how.fadeOthers()) {
      order();
    }
    outline();
  }

  private void outline() {
    for (int i = 0; i < drawn.size(); i++) {
      drawn.get(i).outline().look(shown.parts().get(i), eye, how.moved(i));
    }
  }

  @Override
  public void lay(Optional<Shown> other) {
    over.show(shown, other);
  }

  @Override
  public void show(Shown next) {
    if (next.is(shown) && next.number() != 0) {
      // The same chair, only fitted by now.
      shown = next;
      glow();
      floor.getChildren().remove(1, floor.getChildren().size());
      Floor.footprint(next).ifPresent(floor.getChildren()::add);
      return;
    }
    boolean same = shown != null && shown.parts().size() == next.parts().size();
    shown = next;
    tones = Tones.of(next.chair());
    if (!same) {
      drawn.clear();
      for (int i = 0; i < next.parts().size(); i++) {
        drawn.add(drawn());
      }
    }
    floor.getChildren().setAll(Floor.shadow(next));
    Floor.footprint(next).ifPresent(floor.getChildren()::add);
    beside();
    paint();
  }

  private void glow() {
    clashes.getChildren().setAll(shown.clashes().stream().flatMap(c -> glow(c).stream()).toList());
  }

  /** Over everything, wherever it is: what cannot be must be seen. */
  private Optional<MeshView> glow(Clash clash) {
    // Parts that are pulled apart claim nothing together; those that stay together take it along.
    List<Integer> parts = clash.parts().stream().map(shown::part).toList();
    if (parts.contains(-1)) {
      // One of them is gone, and the findings without it are still to come.
      return Optional.empty();
    }
    List<Vec3> moved = parts.stream().map(how::moved).toList();
    if (moved.get(0).distance(moved.get(1)) > Tolerances.contact()) {
      return Optional.empty();
    }
    return clash.mesh(how.cut().map(Sawn::plane)).map(mesh -> glow(mesh, moved.get(0)));
  }

  private static MeshView glow(TriangleMesh mesh, Vec3 moved) {
    MeshView glow = new MeshView(mesh);
    glow.getTransforms().add(new Translate(moved.x(), moved.y(), moved.z()));
    glow.setMaterial(Floor.flat(Color.web("#d8261a")));
    glow.setCullFace(CullFace.NONE);
    glow.setDepthTest(DepthTest.DISABLE);
    glow.setMouseTransparent(true);
    return glow;
  }

  private static Drawn drawn() {
    Affine place = new Affine();
    MeshView wood = new MeshView();
    wood.setMouseTransparent(true);
    wood.getTransforms().add(place);
    MeshView ink = new MeshView();
    ink.setMouseTransparent(true);
    ink.setDrawMode(DrawMode.LINE);
    ink.setCullFace(CullFace.NONE);
    ink.getTransforms().add(place);
    MeshView cut = new MeshView();
    cut.setMouseTransparent(true);
    cut.setCullFace(CullFace.NONE);
    cut.getTransforms().add(place);
    return new Drawn(wood, ink, new OutlineInk(place), cut, place);
  }

  private void beside() {
    scale.getChildren().setAll(ScaleFigure.nodes(how.scale(), shown.bounds()));
  }

  @Override
  public void see(Look next) {
    boolean other = !next.scale().equals(how.scale());
    how = next;
    if (shown != null) {
      if (other) {
        beside();
      }
      paint();
    }
  }

  private void paint() {
    for (int i = 0; i < drawn.size(); i++) {
      Drawn d = drawn.get(i);
      PartShape part = shown.parts().get(i);
      place(d.place(), part.frame(), how.moved(i));
      surface(d, part, i);
      String label = shown.chair().parts().get(i).label();
      boolean seen = !how.hidden().contains(label);
      d.wood().setVisible(seen);
      d.ink().setVisible(seen);
      d.cut().setVisible(seen);
      d.wood().setMaterial(material(part.timber(), label));
      d.ink().setMaterial(inkFor(label));
      d.outline().ink(d.ink().getMaterial(), seen && how.cut().isEmpty());
    }
    outline();
    glow();
    // What is pulled down would be cut off by the floor.
    // The shadow is that of the whole chair.
    floor.getChildren().stream().findFirst().ifPresent(s -> s.setVisible(how.hidden().isEmpty()));
    floor.setVisible(how.moved().stream().allMatch(m -> m.length() <= Tolerances.contact()));
    order();
  }

  /** What is left of a part, or all of it; only what differs is given to the graphics. */
  private void surface(Drawn d, PartShape part, int number) {
    Optional<Cutaway> left =
        how.cut().map(Sawn::parts).filter(all -> number < all.size()).map(all -> all.get(number));
    TriangleMesh wood = left.map(Cutaway::left).orElse(part.wood());
    if (d.wood().getMesh() != wood) {
      d.wood().setMesh(wood);
      d.ink().setMesh(left.map(Cutaway::creases).orElse(part.creases()));
    }
    d.cut().setMesh(left.map(Cutaway::cut).orElse(null));
    Color sawn = SAWN.get(Math.min(tones[number], SAWN.size() - 1));
    d.cut().setMaterial(inks.computeIfAbsent(sawn, Floor::flat));
  }

  private static void place(Affine place, Frame f, Vec3 moved) {
    Vec3 o = f.origin().plus(moved);
    place.setToTransform(
        f.x().x(), f.y().x(), f.z().x(), o.x(), f.x().y(), f.y().y(), f.z().y(), o.y(), f.x().z(),
        f.y().z(), f.z().z(), o.z());
  }

  private boolean isChosen(String label) {
    return how.chosen().contains(label);
  }

  private double opacity(String label) {
    if (how.fadeOthers() && !isChosen(label)) {
      return FAINT;
    }
    return how.seeThrough() ? GLASS : 1;
  }

  private PhongMaterial material(String timber, String label) {
    double a = opacity(label);
    boolean lit = how.hovered().filter(label::equals).isPresent();
    Color tint =
        isChosen(label)
            ? Color.color(0.78, 0.90, 1.0)
            : lit ? Color.color(1, 1, 1) : Color.color(0.93, 0.93, 0.93);
    // What is glass must bring its colour already weakened: the blending adds it as it is.
    Color weakened = Color.color(tint.getRed() * a, tint.getGreen() * a, tint.getBlue() * a, a);
    return finishes.computeIfAbsent(new Finish(timber, weakened), this::finish);
  }

  private PhongMaterial finish(Finish of) {
    PhongMaterial material = new PhongMaterial(of.tint());
    material.setDiffuseMap(textures.computeIfAbsent(of.timber(), WoodTexture::of));
    material.setSpecularColor(Color.BLACK);
    return material;
  }

  private PhongMaterial inkFor(String label) {
    boolean lit = how.hovered().filter(label::equals).isPresent();
    boolean faint = how.fadeOthers() && !isChosen(label);
    Color colour =
        isChosen(label)
            ? Color.web("#1d4f91")
            : lit ? Color.web("#7a4a12") : faint ? Color.web("#b9ac98") : Color.web("#4a3a28");
    return inks.computeIfAbsent(colour, Floor::flat);
  }

  /** Ink first, solid wood next, glass last and the farthest first, for JavaFX does not sort. */
  private void order() {
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      numbers.add(i);
    }
    numbers.sort(
        Comparator.comparing((Integer i) -> opacity(label(i)) < 1)
            .thenComparing(i -> opacity(label(i)) < 1 ? -distance(i) : i));
    List<Node> inOrder = new ArrayList<>();
    drawn.forEach(d -> inOrder.add(d.cut()));
    numbers.forEach(i -> inOrder.add(drawn.get(i).wood()));
    if (!wood.getChildren().equals(inOrder)) {
      wood.getChildren().setAll(inOrder);
    }
    List<Node> lines = new ArrayList<>();
    drawn.forEach(
        d -> {
          lines.add(d.ink());
          lines.add(d.outline().node());
        });
    if (!ink.getChildren().equals(lines)) {
      ink.getChildren().setAll(lines);
    }
  }

  private String label(int part) {
    return shown.chair().parts().get(part).label();
  }

  private double distance(int part) {
    return shown
        .chair()
        .parts()
        .get(part)
        .solid()
        .mesh()
        .bounds()
        .middle()
        .minus(shown.parts().get(part).frame().local(eye))
        .length();
  }
}
