package dryfit.view;

import dryfit.build.Part;
import dryfit.export.picture.Camera;
import dryfit.export.picture.View;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.animation.AnimationTimer;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.TouchEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/**
 * The chair on its floor, and the hands on it: drag turns, with the right button or Shift it
 * slides, the wheel brings nearer what is under the pointer, a double click settles on it.
 */
final class ChairView extends Pane {
  /** Half a turn for a drag of so many pixels. */
  private static final double HALF_TURN = 420;

  private static final double SHARE = 0.88;

  /** So near to an edge the edge is meant, pixels. */
  private static final double EDGE = 6;

  private static final long FLIGHT = 350_000_000L; // nanoseconds

  private final Drawing drawing;
  private final ReadOnlyObjectWrapper<Orbit> orbit =
      new ReadOnlyObjectWrapper<>(new Orbit(Vec3.ZERO, 0.48, 0.36, 3000));
  private final ObjectProperty<Look> look = new SimpleObjectProperty<>(Look.PLAIN);
  private final ReadOnlyObjectWrapper<View> plain = new ReadOnlyObjectWrapper<>();
  private final Region paper = new Region();
  private final Label name = new Label();
  private final Flight flight = new Flight();
  private final Fingers fingers = new Fingers(this::turnBy, this::pinch);
  private Consumer<Optional<Touch>> onPick = touch -> {};
  private Shown shown;
  private View waiting = View.THREE_QUARTER;
  private double lastX;
  private double lastY;
  private boolean dragged;

  /**
   * A place on a part.
   *
   * @param number of the part in the chair
   * @param face of the part's mesh, or {@link Sawn#CUT}
   * @param at where it is seen, chair space
   */
  record Touch(String part, int number, int face, Vec3 at) {}

  /** Whether this machine can draw in 3D. */
  static boolean hasDepth() {
    return Platform.isSupported(ConditionalFeature.SCENE3D);
  }

  ChairView() {
    this(hasDepth() ? new SceneDrawing() : new PaperDrawing());
  }

  ChairView(Drawing drawing) {
    this.drawing = drawing;
    setId("chair");
    setMinSize(0, 0);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(
        "The chair. Arrow keys turn it, with Shift they slide it, plus and minus bring it nearer and"
            + " away, Home shows all of it, Enter takes up the part in the middle.");
    name.getStyleClass().add("part-name");
    name.setMouseTransparent(true);
    name.setVisible(false);
    name.setManaged(false);
    getStyleClass().add("chair");
    paper.getStyleClass().add("floor");
    paper.setManaged(false);
    // Its gradient is the same in every frame: drawn once, where the processor draws that is a
    // sixth.
    paper.setCache(true);
    getChildren().addAll(paper, drawing.node(), name);
    orbit.addListener((o, was, now) -> drawing.look(now));
    look.addListener((o, was, now) -> drawing.see(now));
    drawing.look(orbit.get());
    widthProperty().addListener(o -> resized());
    heightProperty().addListener(o -> resized());
    setOnMousePressed(this::pressed);
    setOnMouseDragged(this::drag);
    setOnMouseReleased(this::released);
    setOnMouseMoved(this::moved);
    setOnMouseExited(e -> hover(Optional.empty(), 0, 0));
    setOnScroll(this::scrolled);
    setOnZoom(
        e -> {
          // Fingers on the glass are followed one by one; this is the trackpad's.
          if (!(e.isDirect() && fingers.any())) {
            zoom(1 / e.getZoomFactor(), e.getX(), e.getY());
          }
        });
    addEventHandler(TouchEvent.ANY, fingers::handle);
    setOnKeyPressed(this::key);
  }

  ReadOnlyObjectProperty<Orbit> orbit() {
    return orbit.getReadOnlyProperty();
  }

  /** Where it stands, or where it is on its way to. */
  Orbit heading() {
    return flight.end();
  }

  /** Stands where another view stands. */
  void follow(Orbit other) {
    if (!other.equals(orbit.get())) {
      waiting = null;
      orbit.set(other);
    }
  }

  /** The plain view it stands in; null once it was turned by hand. */
  ReadOnlyObjectProperty<View> plain() {
    return plain.getReadOnlyProperty();
  }

  ObjectProperty<Look> look() {
    return look;
  }

  void see(UnaryOperator<Look> change) {
    look.set(change.apply(look.get()));
  }

  /** Who is told of a click, on a part or beside all. */
  void onPick(Consumer<Optional<Touch>> told) {
    onPick = told;
  }

  void show(Shown next) {
    shown = next;
    drawing.show(next);
    settle();
  }

  /** Lays another design over the chair, in ink. */
  void lay(Optional<Shown> over) {
    drawing.lay(over);
  }

  /** Forgets where it stood: the next chair is another one. */
  void clear() {
    shown = null;
    look.set(Look.PLAIN);
    waiting = View.THREE_QUARTER;
  }

  private void resized() {
    paper.resize(getWidth(), getHeight());
    drawing.resize(getWidth(), getHeight());
    settle();
    if (plain.get() != null && shown != null && getWidth() > 1 && getHeight() > 1) {
      // A plain view is of the whole chair in whatever window there is.
      flight.stop();
      orbit.set(of(plain.get()));
    }
  }

  /** Takes the first view as soon as there is a chair and room to show it in. */
  private void settle() {
    if (shown != null && waiting != null && getWidth() > 1 && getHeight() > 1) {
      flight.stop();
      orbit.set(of(waiting));
      plain.set(waiting);
      waiting = null;
    }
  }

  private Orbit of(View view) {
    return Orbit.of(view, points(view.towardsEye()), getWidth() / getHeight(), SHARE);
  }

  private List<Vec3> points() {
    return points(orbit.get().camera().forward().negated());
  }

  /**
   * All that is drawn, where it is drawn; with every part hidden, where they would be.
   *
   * @param towardsEye whence it is looked at
   */
  private List<Vec3> points(Vec3 towardsEye) {
    List<Vec3> points = new ArrayList<>();
    List<Part> parts = shown.chair().parts();
    boolean any = parts.stream().anyMatch(p -> !look.get().hidden().contains(p.label()));
    for (int k = 0; k < parts.size(); k++) {
      if (any && look.get().hidden().contains(parts.get(k).label())) {
        continue;
      }
      Mesh mesh = parts.get(k).placedMesh();
      Vec3 moved = look.get().moved(k);
      for (int i = 0; i < mesh.pointCount(); i++) {
        points.add(mesh.point(i).plus(moved));
      }
    }
    Scale scale = look.get().scale().seenFrom(towardsEye);
    ScaleFigure.room(scale, shown.bounds()).ifPresent(points::addAll);
    return points;
  }

  /** Stands back as far as it takes to see all, looking from where it looks now. */
  void seeAll() {
    if (shown != null && getWidth() > 1) {
      flight.to(orbit.get().fitting(points(), getWidth() / getHeight(), SHARE));
    }
  }

  /**
   * The same, but only if something is out of the picture.
   *
   * @return where the eye goes to, if it goes
   */
  Optional<Orbit> seeAllThatIsCutOff() {
    if (shown == null || getWidth() <= 1) {
      return Optional.empty();
    }
    Camera camera = heading().camera();
    Camera.Sheet sheet = camera.sheet((int) getWidth(), (int) getHeight());
    boolean cutOff =
        points().stream()
            .anyMatch(p -> camera.depth(p) < 1 || !contains(new Point2D(sheet.x(p), sheet.y(p))));
    if (!cutOff) {
      return Optional.empty();
    }
    seeAll();
    return Optional.of(heading());
  }

  /** Goes to a place where the eye was before. */
  void goBack(Orbit to) {
    plain.set(null);
    flight.to(to);
  }

  /** Goes to a plain view, the whole chair in the picture. */
  void go(View view) {
    if (shown != null && getWidth() > 1) {
      flight.to(of(view));
      plain.set(view);
    }
  }

  /** Goes nearer to a place without turning. */
  void fly(Vec3 to, double distance) {
    plain.set(null);
    Orbit now = orbit.get();
    flight.to(new Orbit(to, now.azimuth(), Math.max(0.2, now.elevation()), distance));
  }

  /**
   * Goes nearer to a place, if it is not near yet, and turns as far as it takes to look at a cut.
   *
   * @param outward square to the cut face, out of the wood that is left
   * @param aslant how far off square the face may be looked at, radians
   * @param distance to be near, mm
   */
  void face(Vec3 to, Vec3 outward, double aslant, double distance) {
    plain.set(null);
    Orbit now = flight.end();
    double far = Math.min(distance, now.distance());
    flight.to(now.facing(outward, aslant).at(to).from(far));
  }

  // ---- hands ----

  private void pressed(MouseEvent e) {
    requestFocus();
    flight.stop();
    lastX = e.getX();
    lastY = e.getY();
    dragged = false;
  }

  private void drag(MouseEvent e) {
    double dx = e.getX() - lastX;
    double dy = e.getY() - lastY;
    if (!dragged && Math.hypot(dx, dy) < 3) {
      return;
    }
    dragged = true;
    if (e.isSynthesized()) {
      // The shadow of a finger, which is followed by itself.
      return;
    }
    lastX = e.getX();
    lastY = e.getY();
    hover(Optional.empty(), 0, 0);
    if (e.getButton() == MouseButton.SECONDARY || e.isShiftDown()) {
      set(orbit.get().slid(dx, dy, getHeight()));
    } else {
      turnBy(dx, dy);
    }
  }

  private void released(MouseEvent e) {
    if (dragged || shown == null || e.getButton() != MouseButton.PRIMARY) {
      return;
    }
    Optional<Touch> touch = touch(e.getX(), e.getY());
    if (e.getClickCount() == 2) {
      // Beside the chair there is nothing to settle on: all of it comes back into the picture.
      touch.ifPresentOrElse(t -> flight.to(orbit.get().at(t.at())), this::seeAll);
      plain.set(null);
    } else {
      onPick.accept(touch);
    }
  }

  private void moved(MouseEvent e) {
    hover(touch(e.getX(), e.getY()).map(Touch::part), e.getX(), e.getY());
  }

  private void hover(Optional<String> part, double x, double y) {
    if (!look.get().hovered().equals(part)) {
      see(l -> l.hovering(part));
    }
    name.setVisible(part.isPresent());
    part.ifPresent(
        p -> {
          name.setText(Words.part(p));
          name.autosize();
          name.relocate(
              Math.max(4, Math.min(x + 16, getWidth() - name.getWidth() - 6)),
              Math.max(4, Math.min(y + 18, getHeight() - name.getHeight() - 6)));
        });
  }

  private void scrolled(ScrollEvent e) {
    e.consume();
    if (e.isDirect() && fingers.any()) {
      return;
    }
    if (e.isDirect() || e.getTouchCount() > 1) {
      set(orbit.get().slid(e.getDeltaX(), e.getDeltaY(), getHeight()));
    } else {
      double wheel = e.getDeltaY() != 0 ? e.getDeltaY() : e.getDeltaX();
      zoom(Math.pow(1.1, -wheel / 40), e.getX(), e.getY());
    }
  }

  private void turnBy(double dx, double dy) {
    flight.stop();
    set(orbit.get().turned(-dx * Math.PI / HALF_TURN, dy * Math.PI / HALF_TURN));
  }

  /** Two fingers that move and spread: the chair goes with them. */
  private void pinch(Fingers.Pinch pinch) {
    flight.stop();
    set(orbit.get().slid(pinch.dx(), pinch.dy(), getHeight()));
    zoom(1 / pinch.spread(), pinch.x(), pinch.y());
  }

  private void zoom(double factor, double x, double y) {
    flight.stop();
    Vec3 fixed = touch(x, y).map(Touch::at).orElseGet(() -> onTargetPlane(x, y));
    set(orbit.get().zoomed(factor, fixed));
  }

  private Vec3 onTargetPlane(double x, double y) {
    Camera camera = orbit.get().camera();
    Vec3 ray = camera.sheet((int) getWidth(), (int) getHeight()).ray(x, y);
    return camera.eye().plus(ray.times(orbit.get().distance()));
  }

  /** What is looked at stays within what is drawn, so that the chair is never lost. */
  private void set(Orbit next) {
    plain.set(null);
    orbit.set(shown == null ? next : next.within(drawn()));
  }

  /** A box around all that is drawn, where it is drawn. */
  private Box drawn() {
    Box box = shown.bounds();
    for (int i = 0; i < shown.chair().parts().size(); i++) {
      Vec3 moved = look.get().moved(i);
      if (!moved.equals(Vec3.ZERO)) {
        Box home = shown.chair().parts().get(i).placedMesh().bounds();
        box = box.with(new Box(home.low().plus(moved), home.high().plus(moved)));
      }
    }
    List<Vec3> scale = ScaleFigure.room(look.get().scale(), shown.bounds()).orElse(List.of());
    return scale.isEmpty() ? box : box.with(Box.around(scale));
  }

  /** What is under a place of the picture, the nearest part that is not hidden. */
  Optional<Touch> touch(double x, double y) {
    if (shown == null || getWidth() < 2 || getHeight() < 2) {
      return Optional.empty();
    }
    Camera camera = orbit.get().camera();
    Vec3 ray = camera.sheet((int) getWidth(), (int) getHeight()).ray(x, y).unit();
    Touch nearest = null;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < shown.chair().parts().size(); i++) {
      Part part = shown.chair().parts().get(i);
      if (look.get().hidden().contains(part.label())) {
        continue;
      }
      Vec3 from = camera.eye().minus(look.get().moved(i));
      List<Rays.Hit> hits = part.solid().rays().placed(part.frame()).hits(from, ray);
      Optional<Rays.Hit> first =
          look.get().cut().isPresent()
              ? look.get().cut().get().first(hits, from, ray)
              : hits.stream().findFirst();
      if (first.isPresent() && first.get().distance() < least) {
        least = first.get().distance();
        Vec3 at = camera.eye().plus(ray.times(least));
        nearest = new Touch(part.label(), i, first.get().face(), at);
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** What a touch means to someone who measures: the edge close by, or the face. */
  Picked picked(Touch touch) {
    double pixel = orbit.get().pixel(getHeight());
    Vec3 moved = look.get().moved(touch.number());
    Part part = shown.chair().parts().get(touch.number());
    if (touch.face() == Sawn.CUT) {
      Vec3 out = look.get().cut().orElseThrow().plane().normal();
      return new Picked(part.label(), part.frame(), touch.at().minus(moved), false, out);
    }
    return Picked.of(part, touch.at().minus(moved), touch.face(), EDGE * pixel);
  }

  private void key(KeyEvent e) {
    // The name beside the pointer would stay where its part no longer is.
    hover(Optional.empty(), 0, 0);
    double step = Math.toRadians(7.5);
    Orbit now = orbit.get();
    KeyCode code = e.getCode();
    if (code.isArrowKey()) {
      double x = code == KeyCode.LEFT ? -1 : code == KeyCode.RIGHT ? 1 : 0;
      double y = code == KeyCode.UP ? -1 : code == KeyCode.DOWN ? 1 : 0;
      flight.stop();
      set(
          e.isShiftDown()
              ? now.slid(30 * x, 30 * y, getHeight())
              : now.turned(step * x, -step * y));
    } else if (code == KeyCode.PLUS || code == KeyCode.ADD || code == KeyCode.EQUALS) {
      set(now.zoomed(1 / 1.15, now.target()));
    } else if (code == KeyCode.MINUS || code == KeyCode.SUBTRACT) {
      set(now.zoomed(1.15, now.target()));
    } else if (code == KeyCode.HOME) {
      go(View.THREE_QUARTER);
    } else if (code == KeyCode.ENTER) {
      onPick.accept(touch(getWidth() / 2, getHeight() / 2));
    } else {
      return;
    }
    e.consume();
  }

  /** From here to there, slowing down. */
  private final class Flight extends AnimationTimer {
    private Orbit from;
    private Orbit to;
    private long began;
    private boolean flying;

    /** Where it goes, or where the eye is when it goes nowhere. */
    Orbit end() {
      return flying ? to : orbit.get();
    }

    void to(Orbit end) {
      from = orbit.get();
      to = end;
      began = 0;
      flying = true;
      start();
    }

    @Override
    public void stop() {
      flying = false;
      super.stop();
    }

    @Override
    public void handle(long now) {
      if (began == 0) {
        began = now;
      }
      double t = Math.min(1, (double) (now - began) / FLIGHT);
      double share = 1 - Math.pow(1 - t, 3);
      orbit.set(t < 1 ? from.towards(to, share) : to);
      if (t >= 1) {
        stop();
      }
    }
  }
}
