package dryfit.view;

import java.util.function.DoubleFunction;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/** A steel rule with a sliding mark: a value between two limits, in steps. */
final class SteelRule extends Region {
  private static final double HIGH = 22;
  private static final int MOST_LINES = 50;
  private static final int TEN = 10;

  private final DoubleProperty value = new SimpleDoubleProperty();
  private final Rectangle mark = new Rectangle(5, HIGH - 4);
  private double from;
  private double to = 1;
  private double step = 0.01;
  private Runnable onPress = () -> {};
  private Runnable onLift = () -> {};
  private Runnable onSlide = () -> {};
  private DoubleFunction<String> reading = value -> "";
  private boolean held;

  SteelRule() {
    getStyleClass().add("rule");
    mark.getStyleClass().add("rule-mark");
    mark.setManaged(false);
    setMinHeight(HIGH);
    setPrefHeight(HIGH);
    setMaxHeight(HIGH);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.SLIDER);
    value.addListener(o -> place());
    widthProperty().addListener(o -> divide());
    setOnMousePressed(
        e -> {
          requestFocus();
          held = true;
          onPress.run();
          slide(e);
        });
    setOnMouseDragged(this::slide);
    setOnMouseReleased(
        e -> {
          held = false;
          onLift.run();
        });
    setOnKeyPressed(this::key);
  }

  void limits(double least, double greatest, double by) {
    if (least != from || greatest != to || by != step) {
      from = least;
      to = greatest;
      step = by;
      divide();
    }
  }

  /** How a value is said aloud. */
  void reading(DoubleFunction<String> told) {
    reading = told;
  }

  DoubleProperty value() {
    return value;
  }

  /** Whether a hand is on it. */
  boolean held() {
    return held;
  }

  void onPress(Runnable told) {
    onPress = told;
  }

  void onLift(Runnable told) {
    onLift = told;
  }

  /** Told when the maker moved the mark. */
  void onSlide(Runnable told) {
    onSlide = told;
  }

  private void slide(MouseEvent e) {
    move(from + (to - from) * e.getX() / getWidth());
  }

  private void key(KeyEvent e) {
    double wanted =
        switch (e.getCode()) {
          case LEFT, DOWN -> value.get() - step;
          case RIGHT, UP -> value.get() + step;
          case PAGE_DOWN -> value.get() - TEN * step;
          case PAGE_UP -> value.get() + TEN * step;
          case HOME -> from;
          case END -> to;
          default -> Double.NaN;
        };
    if (!Double.isNaN(wanted)) {
      move(wanted);
      e.consume();
    }
  }

  private void move(double wanted) {
    double stepped = from + Math.round((wanted - from) / step) * step;
    double within = Math.max(from, Math.min(to, stepped));
    if (within != value.get()) {
      value.set(within);
      onSlide.run();
    }
  }

  private void divide() {
    getChildren().clear();
    double width = getWidth();
    if (width < 10) {
      return;
    }
    double steps = (to - from) / step;
    int lines = (int) Math.max(2, Math.min(MOST_LINES, Math.round(steps)));
    double bottom = HIGH - 1.5;
    Line edge = new Line(0.5, bottom, width - 0.5, bottom);
    edge.getStyleClass().add("rule-line");
    edge.setManaged(false);
    getChildren().add(edge);
    for (int i = 0; i <= lines; i++) {
      double x = Math.floor(i * (width - 1) / lines) + 0.5;
      double tall = i % 10 == 0 ? 11 : i % 5 == 0 ? 8 : 5;
      Line line = new Line(x, bottom, x, bottom - tall);
      line.getStyleClass().add("rule-line");
      line.setManaged(false);
      getChildren().add(line);
    }
    getChildren().add(mark);
    place();
  }

  private void place() {
    double share = Math.max(0, Math.min(1, (value.get() - from) / (to - from)));
    mark.setX(share * getWidth() - 2.5);
    mark.setY(3);
    notifyAccessibleAttributeChanged(AccessibleAttribute.VALUE);
    notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
  }

  @Override
  public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
    switch (action) {
      case INCREMENT -> move(value.get() + step);
      case DECREMENT -> move(value.get() - step);
      case SET_VALUE -> {
        if (parameters.length > 0 && parameters[0] instanceof Number wanted) {
          move(wanted.doubleValue());
        }
      }
      default -> super.executeAccessibleAction(action, parameters);
    }
  }

  @Override
  public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
    return switch (attribute) {
      case VALUE -> value.get();
      case MIN_VALUE -> from;
      case MAX_VALUE -> to;
      case TEXT -> getAccessibleText() + ", " + reading.apply(value.get());
      default -> super.queryAccessibleAttribute(attribute, parameters);
    };
  }
}
