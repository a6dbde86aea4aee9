package dryfit.view;

import dryfit.build.Chair;
import dryfit.export.DatumText;
import dryfit.export.FindingSaid;
import dryfit.export.TextStyle;
import dryfit.fit.compare.Comparison;
import dryfit.fit.compare.Comparison.Row;
import dryfit.fit.compare.Comparison.Side;
import dryfit.fit.compare.Datum;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;

/** What differs between designs: figures in their groups, then findings that not all have. */
final class DifferenceTable extends GridPane {
  private static final double NAME = 300;

  /** Narrower, its words would be broken; then the table is slid. */
  private static final double LEAST_NAME = 170;

  /**
   * Rows there are whatever differs: the names, whether each fits, and whether it goes together.
   */
  private static final int ALWAYS = 3;

  /** The hand in the name of a part or joint, at its end; not a way that something goes. */
  private static final String HAND = ", (?:right|left)(:|$)";

  private final DoubleProperty down = new SimpleDoubleProperty();
  private List<Label> together = List.of();
  private int rows;

  DifferenceTable() {
    getStyleClass().add("differences");
  }

  /**
   * @param comparison only what differs
   */
  void show(Comparison comparison, TextStyle style) {
    getChildren().clear();
    rows = 0;
    List<Side> sides = comparison.sides();
    row("", sides.stream().map(Side::name).toList(), true);
    stay();
    row("", sides.stream().map(s -> s.report().verdict()).toList(), false);
    together = row("can be put together", sides.stream().map(s -> "").toList(), false);
    for (Datum.Group group : Datum.Group.values()) {
      group(comparison, group, style);
    }
    if (!comparison.findings().isEmpty()) {
      head("findings that not all have");
    }
    Chair chair = sides.get(0).report().chair();
    for (FindingSaid said : FindingSaid.of(comparison.findings())) {
      String what = Words.severity(said.finding()) + ": " + Words.spoken(said.message(), chair);
      row(what, said.present().stream().map(has -> has ? "found" : "–").toList(), false);
    }
    if (sides.size() < 2) {
      head("This chair has no other variant to hold beside it.");
    } else if (rows == ALWAYS) {
      head("They are the same in every figure and finding.");
    }
  }

  /**
   * Says which of the designs can be put together.
   *
   * @param answers one for each design of the table
   */
  void together(List<String> answers) {
    for (int i = 0; i < Math.min(answers.size(), together.size()); i++) {
      together.get(i).setText(answers.get(i));
    }
  }

  /**
   * Keeps the names of the designs in sight while the rest goes by under them.
   *
   * @param pane scrolls this table
   */
  void stayIn(ScrollPane pane) {
    down.bind(
        Bindings.createDoubleBinding(
            () ->
                pane.getVvalue() * Math.max(0, getHeight() - pane.getViewportBounds().getHeight()),
            pane.vvalueProperty(),
            pane.viewportBoundsProperty(),
            heightProperty()));
  }

  private void stay() {
    Region behind = new Region();
    behind.getStyleClass().add("stays");
    add(behind, 0, 0, REMAINING, 1);
    behind.toBack();
    for (Node cell : getChildren()) {
      cell.translateYProperty().bind(down);
      cell.setViewOrder(-1);
    }
  }

  private void group(Comparison comparison, Datum.Group group, TextStyle style) {
    Map<List<String>, List<Row>> alike = new LinkedHashMap<>();
    for (Row row : comparison.rows()) {
      if (row.key().group() == group) {
        if (DatumText.differs(row, style)) {
          List<String> same = new ArrayList<>(DatumText.of(row, style));
          same.add(name(row).replaceAll(HAND, "$1"));
          alike.computeIfAbsent(same, k -> new ArrayList<>()).add(row);
        }
      }
    }
    if (!alike.isEmpty()) {
      head(group.word());
    }
    for (List<Row> rowsAlike : alike.values()) {
      String name = name(rowsAlike.get(0));
      boolean both = rowsAlike.size() == 2;
      row(
          both ? name.replaceAll(HAND, ", both hands$1") : name,
          DatumText.of(rowsAlike.get(0), style),
          false);
    }
  }

  private static String name(Row row) {
    boolean dimension = row.key().group() == Datum.Group.DIMENSION;
    String subject =
        dimension ? Words.dimension(row.key().subject()) : Words.part(row.key().subject());
    // Some figures of the whole chair name a part in their words.
    String own = row.key().what();
    String what = own.contains(" at ") ? Words.part(own) : own;
    return subject + (subject.isEmpty() || what.isEmpty() ? "" : ": ") + what;
  }

  private void head(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("group");
    add(label, 0, rows++, REMAINING, 1);
  }

  private List<Label> row(String name, List<String> values, boolean head) {
    List<Label> cells = new ArrayList<>();
    Label first = new Label(name);
    first.setWrapText(true);
    first.setPrefWidth(NAME);
    first.setMinWidth(LEAST_NAME);
    first.setMinHeight(USE_PREF_SIZE);
    cells.add(first);
    for (String text : values) {
      Label value = new Label(text);
      value.getStyleClass().add(head ? "heading" : "figure");
      value.setMinWidth(USE_PREF_SIZE);
      cells.add(value);
    }
    cells.forEach(cell -> setValignment(cell, VPos.TOP));
    addRow(rows++, cells.toArray(Node[]::new));
    return cells.subList(1, cells.size());
  }
}
