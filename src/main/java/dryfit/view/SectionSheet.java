package dryfit.view;

import dryfit.export.TextStyle;
import dryfit.fit.JointSection;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

  /** Half the stroke across the end of a measured line, pixels. */
  private static final double STROKE = 4;

  /** Around the place a ticket is about, pixels. */
  private static final double RING = 8;

  /**
   * @param about the place a ticket is about, chair space
   */
  SectionSheet(
      JointSection section, TextStyle style, Optional<Vec3> about, double width, double height) {
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
                .collect(Collectors.joining("; "))
            + section
                .wall()
                .map(w -> "; wood left " + bare(w.value(), style) + " at the " + w.face())
                .orElse(""));
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
    about.flatMap(section::seen).ifPresent(at -> ring(window.x(at), window.y(at)));
    section.wall().ifPresent(wall -> mark(wall, style, window));
    for (JointSection.Cut cut : section.cuts()) {
      name(cut, window);
    }
  }

  /** What the ticket that was taken up is about, ringed as in the chair. */
  private void ring(double x, double y) {
    Circle ring = new Circle(x, y, RING);
    ring.getStyleClass().add("ring");
    getChildren().add(ring);
    taken.add(ring.getLayoutBounds());
  }

  private static String bare(double mm, TextStyle style) {
    String told = style.gap(mm);
    return told.substring(0, told.lastIndexOf(' '));
  }

  /** The wood that is left, measured from the mortise to the face. */
  private void mark(JointSection.Wall wall, TextStyle style, SheetWindow window) {
    double x0 = window.x(wall.from());
    double y0 = window.y(wall.from());
    double x1 = window.x(wall.to());
    double y1 = window.y(wall.to());
    double length = Math.hypot(x1 - x0, y1 - y0);
    double acrossX = STROKE * (y1 - y0) / length;
    double acrossY = STROKE * (x0 - x1) / length;
    Path line = new Path();
    line.getStyleClass().add("wall-line");
    for (double[] end : new double[][] {{x0, y0}, {x1, y1}}) {
      line.getElements().add(new MoveTo(end[0] - acrossX, end[1] - acrossY));
      line.getElements().add(new LineTo(end[0] + acrossX, end[1] + acrossY));
    }
    line.getElements().addAll(new MoveTo(x0, y0), new LineTo(x1, y1));
    taken.add(line.getLayoutBounds());
    // Without room for its figure there is no line: the figure is below the drawings too.
    String told = "wood " + bare(wall.value(), style);
    boolean upright = Math.abs(y1 - y0) > Math.abs(x1 - x0);
    place(told, (x0 + x1) / 2, (y0 + y1) / 2, upright, RING + 2, STROKE + 1)
        .ifPresent(
            place -> {
              getChildren().add(line);
              put(told, "wall-value", place);
            });
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
    getChildren().add(dot);
    figure(bare(gap.value(), style), "gap-value", x, y, gap.side().contains("bottom"));
  }

  /** A figure at a place, if need be over another. */
  private void figure(String value, String look, double x, double y, boolean level) {
    Bounds place = place(value, x, y, level, ASIDE, 1).orElse(onSheet(value, x, y));
    put(value, look, place);
  }

  private void put(String value, String look, Bounds place) {
    taken.add(place);
    Label figure = new Label(value);
    figure.getStyleClass().add(look);
    figure.setFont(FIGURES);
    figure.setMinSize(place.getWidth(), place.getHeight());
    figure.setMaxSize(place.getWidth(), place.getHeight());
    figure.setPrefSize(place.getWidth(), place.getHeight());
    figure.relocate(place.getMinX(), place.getMinY());
    getChildren().add(figure);
  }

  private static Bounds size(String value) {
    Text measured = new Text(value);
    measured.setFont(FIGURES);
    Bounds bounds = measured.getLayoutBounds();
    return new BoundingBox(0, 0, Math.ceil(bounds.getWidth()) + 4, Math.ceil(bounds.getHeight()));
  }

  /**
   * Beside a place, on the sheet, and off the figures that are there; empty if there is no room.
   *
   * @param level rather beside the place than over or under it
   * @param aside right and left of it, so much is left free
   * @param clear over and under it, so much is left free
   */
  private Optional<Bounds> place(
      String value, double x, double y, boolean level, double aside, double clear) {
    double w = size(value).getWidth();
    double h = size(value).getHeight();
    double right = x + aside;
    double left = x - w - aside;
    double over = y - h - clear;
    double under = y + clear;
    double beside = y - h / 2;
    boolean high = y < height / 2;
    double[] xs = level ? new double[] {left, right} : new double[] {right, left};
    double[] ys =
        level
            ? new double[] {beside, over, under}
            : high ? new double[] {over, beside, under} : new double[] {under, beside, over};
    for (double px : xs) {
      for (double py : ys) {
        Bounds place = new BoundingBox(px, py, w, h);
        boolean onSheet = px >= 2 && py >= 2 && px + w <= width - 2 && py + h <= height - 2;
        if (onSheet && taken.stream().noneMatch(t -> t.intersects(place))) {
          return Optional.of(place);
        }
      }
    }
    return Optional.empty();
  }

  private Bounds onSheet(String value, double x, double y) {
    Bounds size = size(value);
    return new BoundingBox(
        Math.max(2, Math.min(x + ASIDE, width - size.getWidth() - 2)),
        Math.max(2, Math.min(y + 1, height - size.getHeight() - 2)),
        size.getWidth(),
        size.getHeight());
  }
}
