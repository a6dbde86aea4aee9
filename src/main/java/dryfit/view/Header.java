package dryfit.view;

import dryfit.app.OnDisk;
import dryfit.document.Design;
import dryfit.fit.FitReport;
import dryfit.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Polygon;

/** What the chair is called, its variants, and whether it fits. */
final class Header extends VBox {
  private final Session session;
  private final Label name = new Label();
  private final ObjectProperty<Length.Unit> unit;
  private final Button inUnit = new Button();
  private final Button saved = new Button();
  private final Button undo = new Button("take back");
  private final Button redo = new Button("do again");
  private final FlowPane variants = new FlowPane(8, 6);
  private final Label verdict = new Label();
  private final Label trying = new Label("trying it together …");

  /** Of the word for saving, pixels. */
  private static final double SAVING = 74;

  /** A tooth for what stops, a hollow diamond for what to look at, a square for what fits. */
  private static final Map<String, List<Double>> SHAPES =
      Map.of(
          "stops", List.of(-8.0, 0.0, 6.0, -8.0, 6.0, 8.0),
          "look", List.of(0.0, -7.0, 7.0, 0.0, 0.0, 7.0, -7.0, 0.0),
          "good", List.of(-6.0, -6.0, 6.0, -6.0, 6.0, 6.0, -6.0, 6.0));

  private final Polygon sign = new Polygon();
  private final Button another = new Button("+ another");
  private final FlowPane words = new FlowPane(14, 4);

  /**
   * @param unit what lengths are shown in; changed by a click
   * @param save saves the chair, asking for a file if need be
   * @param anotherVariant asks for a new variant
   */
  Header(
      Session session, ObjectProperty<Length.Unit> unit, Runnable save, Runnable anotherVariant) {
    this.session = session;
    this.unit = unit;
    getStyleClass().add("header");
    name.getStyleClass().add("chair-name");
    name.setId("chair-name");
    name.setMinWidth(USE_PREF_SIZE);
    inUnit.getStyleClass().setAll("word");
    inUnit.setId("unit");
    inUnit.setMinWidth(USE_PREF_SIZE);
    inUnit.setOnAction(
        e -> unit.set(unit.get() == Length.Unit.MM ? Length.Unit.IN : Length.Unit.MM));
    unit.addListener((o, was, now) -> unitWord());
    unitWord();
    saved.getStyleClass().setAll("word");
    saved.setId("save");
    saved.setMinWidth(USE_PREF_SIZE);
    saved.setOnAction(e -> save.run());
    undo.getStyleClass().setAll("word");
    undo.setId("undo");
    undo.setMinWidth(USE_PREF_SIZE);
    undo.setOnAction(e -> session.undo());
    redo.getStyleClass().setAll("word");
    redo.setId("redo");
    redo.setMinWidth(USE_PREF_SIZE);
    redo.setOnAction(e -> session.redo());
    steps(session.state().get());
    session.state().addListener((o, was, now) -> steps(now));
    session.onDisk().addListener(o -> saving());
    sign.visibleProperty().bind(verdict.textProperty().isNotEmpty());
    verdict.setId("verdict");
    verdict.setMinWidth(USE_PREF_SIZE);
    variants.setAlignment(Pos.CENTER_LEFT);
    variants.setMinWidth(0);
    HBox.setHgrow(variants, Priority.ALWAYS);
    another.getStyleClass().setAll("word");
    another.setId("another-variant");
    another.setAccessibleText("add another variant");
    another.setOnAction(e -> anotherVariant.run());
    trying.getStyleClass().add("quiet");
    trying.setId("trying");
    trying.managedProperty().bind(trying.visibleProperty());
    trying.setVisible(false);
    HBox right = new HBox(10, trying, sign, verdict);
    right.setAlignment(Pos.CENTER_RIGHT);
    right.setMinWidth(Region.USE_PREF_SIZE);
    HBox top = new HBox(18, name, variants, right);
    top.setAlignment(Pos.CENTER_LEFT);
    // As wide as its longest word, so that the others stay under the pointer.
    HBox saving = new HBox(saved);
    saving.setMinWidth(SAVING);
    words.getChildren().addAll(saving, undo, redo, inUnit);
    getChildren().addAll(top, words);
    session.shown().addListener((o, was, now) -> show(now));
    session
        .problems()
        .addListener(
            (o, was, now) -> {
              if (!now.isEmpty()) {
                verdict.setText("cannot be built as it is written");
                style("stops");
              } else if (session.shown().get() != null) {
                show(session.shown().get());
              }
            });
  }

  /** Something else to click, after the words that are there. */
  void add(String text, String id, Runnable does) {
    Button word = new Button(text);
    word.getStyleClass().setAll("word");
    word.setId(id);
    word.setOnAction(e -> does.run());
    words.getChildren().add(word);
  }

  private void show(Shown shown) {
    if (shown == null) {
      return;
    }
    Design design = shown.design();
    name.setText(design.name());
    variants(shown);
    shown.fit().ifPresent(this::verdict);
  }

  private void steps(Session.State state) {
    saving();
    undo.setDisable(state.undoable().isEmpty());
    redo.setDisable(state.redoable().isEmpty());
    undo.setTooltip(state.undoable().map(what -> new Tooltip("take back: " + what)).orElse(null));
    redo.setTooltip(state.redoable().map(what -> new Tooltip("do again: " + what)).orElse(null));
  }

  /** What is on the bench may be as it was saved, and yet not as the file is by now. */
  private void saving() {
    boolean unsaved = session.state().get().unsaved();
    boolean differs = session.onDisk().get() instanceof OnDisk.Changed;
    boolean gone = session.onDisk().get() instanceof OnDisk.Gone;
    saved.setText(unsaved || gone ? "save" : differs ? "file differs" : "saved");
    saved.setDisable(!unsaved && !gone);
  }

  private void unitWord() {
    boolean mm = unit.get() == Length.Unit.MM;
    // What a click does, as all other words beside it.
    inUnit.setText(mm ? "show inches" : "show millimetres");
    inUnit.setAccessibleText(
        mm ? "shown in millimetres; change to inches" : "shown in inches; change to millimetres");
  }

  private void variants(Shown shown) {
    List<String> names = new ArrayList<>();
    names.add(Design.AS_DRAWN);
    names.addAll(shown.document().variants());
    List<String> there = pills().stream().map(ToggleButton::getText).toList();
    if (!there.equals(names)) {
      variants.getChildren().clear();
      for (String variant : names) {
        ToggleButton pill = new ToggleButton(variant);
        pill.getStyleClass().setAll("pill");
        pill.setAccessibleText("variant: " + variant);
        pill.setOnAction(
            e -> {
              mark(variant);
              session.choose(variant);
            });
        variants.getChildren().add(pill);
      }
      variants.getChildren().add(another);
    }
    mark(shown.design().variant());
  }

  /** No group of JavaFX's: its arrows choose without anyone being told. */
  private void mark(String variant) {
    pills().forEach(p -> p.setSelected(p.getText().equals(variant)));
  }

  private List<ToggleButton> pills() {
    return variants.getChildren().stream()
        .filter(ToggleButton.class::isInstance)
        .map(ToggleButton.class::cast)
        .toList();
  }

  private void verdict(FitReport report) {
    verdict.setText(Words.verdict(report));
    boolean clear = verdict.getText().equals("fits");
    style(clear ? "good" : report.fits() ? "look" : "stops");
  }

  /** All fits, and still it cannot be put together. */
  void locked(FitReport report) {
    verdict.setText(Words.verdict(report) + ", but cannot be put together");
    style("stops");
  }

  /** Says that it is not yet known whether the chair goes together, as long as that is so. */
  void trying(ReadOnlyBooleanProperty looking) {
    trying.visibleProperty().bind(looking);
  }

  /** A chair is on its way to the bench. */
  void expect(String file) {
    name.setText(file);
    verdict.setText("");
    variants.getChildren().clear();
  }

  private void style(String severity) {
    verdict.getStyleClass().setAll("label", "verdict", severity);
    sign.getStyleClass().setAll("sign", severity);
    sign.getPoints().setAll(SHAPES.get(severity));
  }
}
