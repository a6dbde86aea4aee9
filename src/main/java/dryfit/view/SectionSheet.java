package dryfit.view;

import dryfit.export.TextStyle;
import dryfit.fit.JointSection;
import dryfit.geometry.Vec2;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;

/** A joint's section drawn true on a sheet. */
final class SectionSheet extends Pane {

  SectionSheet(JointSection section, TextStyle style, double width, double height) {
    getStyleClass().add("sheet");
    setMinSize(width, height);
    setPrefSize(width, height);
    setMaxSize(width, height);
    setClip(new Rectangle(width, height));
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText("section " + section.title());
    Vec2 size = section.high().minus(section.low());
    double scale = Math.min(width / size.x(), height / size.y());
    double left = width / 2 - scale * (section.low().x() + section.high().x()) / 2;
    double top = height / 2 + scale * (section.low().y() + section.high().y()) / 2;
    Path tenoned = null;
    Path mortised = null;
    for (JointSection.Cut cut : section.cuts()) {
      Path path = path(cut.outlines(), scale, left, top);
      path.getStyleClass()
          .addAll("cut", "cut-" + cut.role().name().toLowerCase(java.util.Locale.ROOT));
      getChildren().add(path);
      if (cut.role() == JointSection.Role.MORTISED) {
        mortised = path;
      } else if (cut.role() == JointSection.Role.TENONED) {
        tenoned = path;
        clash(mortised, path);
      } else {
        clash(tenoned, path);
        clash(mortised, path);
      }
    }
    for (JointSection.Gap gap : section.gaps()) {
      mark(gap, style, left + scale * gap.at().x(), top - scale * gap.at().y(), width, height);
    }
  }

  private static Path path(List<List<Vec2>> outlines, double scale, double left, double top) {
    Path path = new Path();
    path.setFillRule(FillRule.EVEN_ODD);
    for (List<Vec2> outline : outlines) {
      for (int i = 0; i < outline.size(); i++) {
        double x = left + scale * outline.get(i).x();
        double y = top - scale * outline.get(i).y();
        path.getElements().add(i == 0 ? new MoveTo(x, y) : new LineTo(x, y));
      }
      path.getElements().add(new ClosePath());
    }
    return path;
  }

  /** Wood that two parts both claim. */
  private void clash(Path one, Path other) {
    if (one == null) {
      return;
    }
    // The outlines have a stroke and no fill until they are styled; only the areas count here.
    Shape both = Shape.intersect(area(one), area(other));
    if (both.getLayoutBounds().getWidth() > 1 && both.getLayoutBounds().getHeight() > 1) {
      both.getStyleClass().add("clash");
      getChildren().add(both);
    }
  }

  private static Path area(Path outline) {
    Path area = new Path(outline.getElements());
    area.setFillRule(FillRule.EVEN_ODD);
    area.setFill(Color.BLACK);
    area.setStroke(null);
    return area;
  }

  private void mark(
      JointSection.Gap gap, TextStyle style, double x, double y, double width, double height) {
    if (x < 0 || y < 0 || x > width || y > height) {
      return;
    }
    Circle dot = new Circle(x, y, 2);
    dot.getStyleClass().add("gap-dot");
    String value = style.gap(gap.value());
    Text text = new Text(value.substring(0, value.lastIndexOf(' ')));
    text.getStyleClass().add("gap-value");
    boolean bottom = gap.side().contains("bottom");
    double w = text.getLayoutBounds().getWidth();
    double tx = bottom ? x - w - 6 : x + 5;
    double ty = bottom ? y + 4 : y < height / 2 ? y - 5 : y + 14;
    text.relocate(
        Math.max(2, Math.min(tx, width - w - 2)), Math.max(2, Math.min(ty - 10, height - 16)));
    getChildren().addAll(dot, text);
  }
}
