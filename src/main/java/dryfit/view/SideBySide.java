package dryfit.view;

import dryfit.document.Design.Dimension;
import dryfit.export.TextStyle;
import dryfit.fit.Finding;
import dryfit.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Up to three designs of one document beside each other, turned together, and what differs. */
final class SideBySide extends BorderPane {
  /** As many go beside each other. */
  static final int MOST = 3;

  private final HBox chairs = new HBox(1);
  private final GridPane table = new GridPane();
  private final List<ChairView> views = new ArrayList<>();

  SideBySide() {
    setId("side-by-side");
    setMinSize(0, 0);
    chairs.setMinSize(0, 0);
    table.getStyleClass().add("differences");
    ScrollPane below = new ScrollPane(table);
    below.getStyleClass().add("side-scroll");
    below.setPrefHeight(150);
    below.setFitToWidth(true);
    setCenter(chairs);
    setBottom(below);
  }

  List<ChairView> views() {
    return List.copyOf(views);
  }

  void show(List<Shown> designs, TextStyle style) {
    while (views.size() > designs.size()) {
      views.remove(views.size() - 1);
      chairs.getChildren().remove(views.size());
    }
    while (views.size() < designs.size()) {
      add();
    }
    for (int i = 0; i < designs.size(); i++) {
      views.get(i).show(designs.get(i));
      VBox column = (VBox) chairs.getChildren().get(i);
      ((Label) column.getChildren().get(0)).setText(designs.get(i).design().variant());
    }
    fill(designs, style);
  }

  private void add() {
    ChairView view = new ChairView();
    view.setId("chair-" + views.size());
    view.orbit().addListener((o, was, now) -> views.forEach(other -> other.follow(now)));
    Label name = new Label();
    name.getStyleClass().add("heading");
    VBox column = new VBox(name, view);
    column.getStyleClass().add("beside");
    column.setMinSize(0, 0);
    HBox.setHgrow(column, Priority.ALWAYS);
    VBox.setVgrow(view, Priority.ALWAYS);
    column.setPrefWidth(100);
    views.add(view);
    chairs.getChildren().add(column);
  }

  private void fill(List<Shown> designs, TextStyle style) {
    table.getChildren().clear();
    row(0, "", designs.stream().map(d -> d.design().variant()).toList(), true);
    int row = 1;
    row(row++, "stops the build", counts(designs, Finding.Severity.STOPS), false);
    row(row++, "to look at", counts(designs, Finding.Severity.LOOK), false);
    for (String name : names(designs)) {
      List<String> values = designs.stream().map(d -> value(d, name, style.unit())).toList();
      if (Set.copyOf(values).size() > 1) {
        row(row++, Words.dimension(name), values, false);
      }
    }
  }

  private static List<String> counts(List<Shown> designs, Finding.Severity severity) {
    return designs.stream()
        .map(
            d ->
                d.report().findings().stream()
                    .filter(f -> f.severity() == severity && f.waived().isEmpty())
                    .count())
        .map(count -> Long.toString(count))
        .toList();
  }

  private static Set<String> names(List<Shown> designs) {
    Set<String> names = new LinkedHashSet<>();
    designs.forEach(d -> d.design().dimensions().forEach(each -> names.add(each.name())));
    return names;
  }

  private static String value(Shown design, String name, Length.Unit unit) {
    Optional<Dimension> dimension =
        design.design().dimensions().stream().filter(d -> d.name().equals(name)).findFirst();
    return dimension.map(d -> Entry.shown(d.value(), unit)).orElse("none");
  }

  private void row(int number, String name, List<String> values, boolean head) {
    table.add(new Label(name), 0, number);
    for (int i = 0; i < values.size(); i++) {
      Label value = new Label(values.get(i));
      value.getStyleClass().add(head ? "heading" : "figure");
      table.add(value, i + 1, number);
    }
  }
}
