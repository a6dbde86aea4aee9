package dryfit.view;

import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.Line;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.QuadCurveTo;

/**
 * The left edge of a ticket. Its shape tells how much the ticket matters, so that colour need not:
 * saw teeth, a wave, a plain line, a row of punched holes.
 */
final class TicketEdge extends Region {
  private static final double WIDE = 12;
  private static final double PITCH = 10;

  /** What a ticket can say. */
  enum Kind {
    STOPS,
    LOOK,
    KNOW,
    GOOD
  }

  private final Kind kind;

  TicketEdge(Kind kind) {
    this.kind = kind;
    getStyleClass().add("ticket-edge");
    setMinWidth(WIDE);
    setPrefWidth(WIDE);
    setMaxWidth(WIDE);
    heightProperty().addListener(o -> cut());
  }

  private void cut() {
    getChildren().clear();
    double height = getHeight();
    switch (kind) {
      case STOPS -> getChildren().add(teeth(height));
      case LOOK -> getChildren().add(wave(height));
      case KNOW -> {
        Line line = new Line(5, 2, 5, height - 2);
        line.getStyleClass().add("edge-know");
        getChildren().add(line);
      }
      case GOOD -> {
        for (double y = PITCH / 2; y < height; y += PITCH) {
          Circle hole = new Circle(5, y, 2.6);
          hole.getStyleClass().add("edge-good");
          getChildren().add(hole);
        }
      }
    }
  }

  private static Path teeth(double height) {
    Path path = new Path(new MoveTo(WIDE - 3, 0));
    double pitch = height / Math.max(1, Math.round(height / PITCH));
    for (double y = 0; y < height - 0.01; y += pitch) {
      path.getElements().addAll(new LineTo(0, y + pitch / 2), new LineTo(WIDE - 3, y + pitch));
    }
    path.setFillRule(FillRule.NON_ZERO);
    path.getStyleClass().add("edge-stops");
    return path;
  }

  private static Path wave(double height) {
    Path path = new Path(new MoveTo(5, 0));
    double pitch = height / Math.max(1, Math.round(height / (2 * PITCH)));
    for (double y = 0; y < height - 0.01; y += pitch) {
      path.getElements().add(new QuadCurveTo(-1, y + pitch / 4, 5, y + pitch / 2));
      path.getElements().add(new QuadCurveTo(11, y + 3 * pitch / 4, 5, y + pitch));
    }
    path.getStyleClass().add("edge-look");
    return path;
  }
}
