package dryfit.view;

import dryfit.export.TextStyle;
import dryfit.export.picture.Camera;
import dryfit.geometry.Vec3;
import dryfit.measure.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;

/** Two places pointed at on the chair, and how far it is from one to the other. */
final class Measuring extends Pane {
  private static final double ASIDE = 16;
  private static final double BELOW = 10;

  private final ChairView chair;
  private final ToggleButton word = new ToggleButton("measure");
  private final Line line = new Line();
  private final Circle first = new Circle(4);
  private final Circle second = new Circle(4);
  private final Label text = new Label();
  private final List<Picked> places = new ArrayList<>();
  private TextStyle style;
  private boolean missed;

  Measuring(ChairView chair) {
    this.chair = chair;
    setMouseTransparent(true);
    setMinSize(0, 0);
    line.getStyleClass().add("measure-line");
    first.getStyleClass().add("measure-end");
    second.getStyleClass().add("measure-end");
    text.getStyleClass().addAll("part-name", "measured");
    text.setId("measured");
    text.setManaged(false);
    text.setWrapText(true);
    getChildren().addAll(line, first, second, text);
    word.getStyleClass().setAll("word");
    word.setId("measure");
    word.setAccessibleText("measure between two places that are clicked");
    word.setOnAction(e -> clear());
    chair.orbit().addListener(o -> draw());
    widthProperty().addListener(o -> draw());
    heightProperty().addListener(o -> draw());
    draw();
  }

  /** The word that turns it on. */
  ToggleButton word() {
    return word;
  }

  boolean isOn() {
    return word.isSelected();
  }

  void show(TextStyle with) {
    style = with;
    draw();
  }

  /** Puts the tool down. */
  void end() {
    word.setSelected(false);
    clear();
  }

  void clear() {
    places.clear();
    missed = false;
    draw();
  }

  void pick(Picked place) {
    if (places.size() == 2) {
      places.clear();
    }
    places.add(place);
    missed = false;
    draw();
  }

  /** A click that met no wood. */
  void missed() {
    missed = true;
    draw();
  }

  private void draw() {
    boolean any = isOn() && getWidth() > 1 && style != null;
    first.setVisible(any && !places.isEmpty());
    second.setVisible(any && places.size() == 2);
    line.setVisible(second.isVisible());
    text.setVisible(any);
    if (!any) {
      return;
    }
    Camera.Sheet sheet = chair.orbit().get().camera().sheet((int) getWidth(), (int) getHeight());
    if (!places.isEmpty()) {
      put(first, sheet, places.get(0).at());
    }
    if (places.size() == 2) {
      put(second, sheet, places.get(1).at());
      line.setStartX(first.getCenterX());
      line.setStartY(first.getCenterY());
      line.setEndX(second.getCenterX());
      line.setEndY(second.getCenterY());
    }
    text.setText(told());
    double wide = Math.min(text.prefWidth(-1), getWidth() - 2 * ASIDE);
    text.resize(wide, text.prefHeight(wide));
    // Above where a place that was clicked lies below it, if none lies there.
    double low = getHeight() - text.getHeight() - BELOW;
    text.relocate(ASIDE, isFree(low) || !isFree(BELOW) ? low : BELOW);
  }

  private boolean isFree(double top) {
    return Stream.of(first, second)
        .filter(Circle::isVisible)
        .noneMatch(
            end ->
                end.getCenterY() > top - ASIDE
                    && end.getCenterY() < top + text.getHeight() + ASIDE
                    && end.getCenterX() < 2 * ASIDE + text.getWidth());
  }

  private static void put(Circle dot, Camera.Sheet sheet, Vec3 place) {
    dot.setCenterX(sheet.x(place));
    dot.setCenterY(sheet.y(place));
  }

  private String told() {
    if (places.size() < 2) {
      String next = places.isEmpty() ? "click the first place" : "click the second place";
      return missed ? "there is no wood: " + next + " on the chair" : next;
    }
    Picked from = places.get(0);
    Picked to = places.get(1);
    Vec3 d = to.at().minus(from.at());
    double level = Math.atan2(d.z(), Math.hypot(d.x(), d.y()));
    String told =
        style.length(d.length())
            + " apart: "
            + style.length(Math.abs(d.x()))
            + " across, "
            + style.length(Math.abs(d.y()))
            + " front to back, "
            + style.length(Math.abs(d.z()))
            + " up · "
            + Angle.degrees(Math.abs(level))
            + " from level";
    Vec3 own = from.frame().localDirection(d);
    return told
        + "\nas "
        + Words.part(from.part())
        + " lies: "
        + style.length(Math.abs(own.x()))
        + " the way of its length, "
        + style.length(Math.abs(own.y()))
        + " of its width, "
        + style.length(Math.abs(own.z()))
        + " of its thickness\n"
        + between(from, to)
        + Angle.degrees(from.angle(to));
  }

  private static String between(Picked from, Picked to) {
    if (from.edge() != to.edge()) {
      return "edge to face: ";
    }
    return from.edge() ? "edge to edge: " : "face to face: ";
  }
}
