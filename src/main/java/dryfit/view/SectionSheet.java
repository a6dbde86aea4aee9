package dryfit.view;

import dryfit.export.TextStyle;
import dryfit.fit.JointSection;
import dryfit.geometry.Vec2;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.Shape;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

/**
 * A joint's section drawn true on a sheet: whole, with paper all round; what goes on too far is
 * broken off with a break line.
 */
final class SectionSheet extends Pane {
  private static final Font FIGURES = Font.font("DejaVu Sans", FontWeight.BOLD, 11);

  private static final Font NAMES = Font.font("DejaVu Sans", 10);

  /** Between two places that are tried for a name, pixels. */
  private static final double STEP = 4;

  /** So far from the edges of the sheet no break line reaches, pixels. */
  private static final double BROKEN = 11;

  /** Around a gap's figure, pixels. */
  private static final double ASIDE = 5;

  private final double width;
  private final double height;
  private final List<Bounds> taken = new ArrayList<>();

  SectionSheet(JointSection section, TextStyle style, double width, double height) {
    this.width = width;
    this.height = height;
    getStyleClass().add("sheet");
    setMinSize(width, height);
    setPrefSize(width, height);
    setMaxSize(width, height);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(
        "section "
            + section.title()
            + ", "
            + section.lie()
            + ", through "
            + section.cuts().stream()
                .map(cut -> Words.part(cut.label()))
                .collect(Collectors.joining("; ")));
    SheetWindow window = SheetWindow.of(section, width, height);
    Group wood = new Group();
    wood.setClip(window.edge());
    getChildren().add(wood);
    Path tenoned = null;
    Path mortised = null;
    for (JointSection.Cut cut : section.cuts()) {
      Path path = path(cut.outlines(), window);
      path.getStyleClass().addAll("cut", "cut-" + word(cut.role()));
      wood.getChildren().add(path);
      if (cut.role() == JointSection.Role.MORTISED) {
        mortised = path;
      } else if (cut.role() == JointSection.Role.TENONED) {
        tenoned = path;
        clash(wood, mortised, path);
      } else {
        clash(wood, tenoned, path);
        clash(wood, mortised, path);
      }
      for (Path line : window.breaks(cut.outlines())) {
        line.getStyleClass().add("break-line");
        getChildren().add(line);
      }
    }
    for (JointSection.Gap gap : section.gaps()) {
      mark(gap, style, window.x(gap.at()), window.y(gap.at()));
    }
    for (JointSection.Cut cut : section.cuts()) {
      name(cut, window);
    }
  }

  /** A part's name in its wood, if need be without its hand; left out where there is no room. */
  private void name(JointSection.Cut cut, SheetWindow window) {
    String whole = Words.part(cut.label());
    Path2D wood = wood(cut.outlines(), window);
    boolean left = cut.role() == JointSection.Role.MORTISED;
    for (String told : new String[] {whole, whole.replaceFirst(", (right|left)$", "")}) {
      if (isNamed(told, wood, left, cut.role())) {
        return;
      }
    }
  }

  private boolean isNamed(String told, Path2D wood, boolean left, JointSection.Role role) {
    Text measured = new Text(told);
    measured.setFont(NAMES);
    double w = Math.ceil(measured.getLayoutBounds().getWidth()) + 2;
    double h = Math.ceil(measured.getLayoutBounds().getHeight());
    for (double along = BROKEN; along + w <= width - BROKEN; along += STEP) {
      double x = left ? along : width - w - along;
      for (double y = BROKEN; y + h <= height - BROKEN; y += STEP) {
        Bounds place = new BoundingBox(x, y, w, h);
        if (wood.contains(x, y, w, h) && taken.stream().noneMatch(t -> t.intersects(place))) {
          taken.add(place);
          Label name = new Label(told);
          name.getStyleClass().addAll("wood-name", "name-" + word(role));
          name.setFont(NAMES);
          name.setMinSize(w, h);
          name.setMaxSize(w, h);
          name.relocate(x, y);
          getChildren().add(name);
          return true;
        }
      }
    }
    return false;
  }

  private static String word(JointSection.Role role) {
    return role.name().toLowerCase(Locale.ROOT);
  }

  private static Path2D wood(List<List<Vec2>> outlines, SheetWindow window) {
    Path2D wood = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (List<Vec2> outline : outlines) {
      for (int i = 0; i < outline.size(); i++) {
        double x = window.x(outline.get(i));
        double y = window.y(outline.get(i));
        if (i == 0) {
          wood.moveTo(x, y);
        } else {
          wood.lineTo(x, y);
        }
      }
      wood.closePath();
    }
    return wood;
  }

  private static Path path(List<List<Vec2>> outlines, SheetWindow window) {
    Path path = new Path();
    path.setFillRule(FillRule.EVEN_ODD);
    for (List<Vec2> outline : outlines) {
      for (int i = 0; i < outline.size(); i++) {
        double x = window.x(outline.get(i));
        double y = window.y(outline.get(i));
        path.getElements().add(i == 0 ? new MoveTo(x, y) : new LineTo(x, y));
      }
      path.getElements().add(new ClosePath());
    }
    return path;
  }

  /** Wood that two parts both claim. */
  private static void clash(Group wood, Path one, Path other) {
    if (one == null) {
      return;
    }
    // The outlines have a stroke and no fill until they are styled; only the areas count here.
    Shape both = Shape.intersect(area(one), area(other));
    if (both.getLayoutBounds().getWidth() > 1 && both.getLayoutBounds().getHeight() > 1) {
      both.getStyleClass().add("clash");
      wood.getChildren().add(both);
    }
  }

  private static Path area(Path outline) {
    Path area = new Path(outline.getElements());
    area.setFillRule(FillRule.EVEN_ODD);
    area.setFill(Color.BLACK);
    area.setStroke(null);
    return area;
  }

  private void mark(JointSection.Gap gap, TextStyle style, double x, double y) {
    if (x < 0 || y < 0 || x > width || y > height) {
      return;
    }
    Circle dot = new Circle(x, y, 2);
    taken.add(dot.getLayoutBounds());
    dot.getStyleClass().add("gap-dot");
    String told = style.gap(gap.value());
    String value = told.substring(0, told.lastIndexOf(' '));
    Text measured = new Text(value);
    measured.setFont(FIGURES);
    double w = Math.ceil(measured.getLayoutBounds().getWidth()) + 4;
    double h = Math.ceil(measured.getLayoutBounds().getHeight());
    Bounds place = place(x, y, w, h, gap.side().contains("bottom"));
    taken.add(place);
    Label figure = new Label(value);
    figure.getStyleClass().add("gap-value");
    figure.setFont(FIGURES);
    figure.setMinSize(w, h);
    figure.setMaxSize(w, h);
    figure.setPrefSize(w, h);
    figure.relocate(place.getMinX(), place.getMinY());
    getChildren().addAll(dot, figure);
  }

  /** Beside the dot, on the sheet, and off the figures that are there; else on the sheet. */
  private Bounds place(double x, double y, double w, double h, boolean bottom) {
    double right = x + ASIDE;
    double left = x - w - ASIDE;
    double over = y - h - 1;
    double under = y + 1;
    double level = y - h / 2;
    boolean high = y < height / 2;
    double[] xs = bottom ? new double[] {left, right} : new double[] {right, left};
    double[] ys =
        bottom
            ? new double[] {level, over, under}
            : high ? new double[] {over, level, under} : new double[] {under, level, over};
    for (double px : xs) {
      for (double py : ys) {
        Bounds place = new BoundingBox(px, py, w, h);
        boolean onSheet = px >= 2 && py >= 2 && px + w <= width - 2 && py + h <= height - 2;
        if (onSheet && taken.stream().noneMatch(t -> t.intersects(place))) {
          return place;
        }
      }
    }
    return new BoundingBox(
        Math.max(2, Math.min(xs[0], width - w - 2)),
        Math.max(2, Math.min(ys[0], height - h - 2)),
        w,
        h);
  }
}
