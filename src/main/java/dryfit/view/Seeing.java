package dryfit.view;

import dryfit.export.TextStyle;
import dryfit.fit.order.Assembling;
import dryfit.geometry.Box;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Ways to see how the parts fit: through the wood, sawn open, pulled apart. */
final class Seeing {
  private final Session session;
  private final ChairView chair;
  private final ToggleButton through = word("see through");
  private final ToggleButton fade = word("fade the rest");
  private final ToggleButton slice = word("slice");
  private final Slider apart = slider("how far the parts are pulled apart");
  private final Slider where = slider("where the slice is");
  private final ToggleButton side = word("from the side");
  private final ToggleButton sitter = word("sitter");
  private final ToggleButton rule = word("rule");
  private final ToggleButton woman = word(Sitter.WOMAN.word());
  private final ToggleButton man = word(Sitter.MAN.word());
  private final HBox slicing;
  private final Label tall = new Label();
  private final FlowPane sitting;
  private Length.Unit unit = Length.Unit.MM;
  private Shown shown;
  private Optional<Apart> order = Optional.empty();

  Seeing(Session session, ChairView chair) {
    this.session = session;
    this.chair = chair;
    through.setOnAction(e -> chair.see(l -> l.seeThrough(through.isSelected())));
    fade.setOnAction(e -> chair.see(l -> l.fadingOthers(fade.isSelected())));
    slice.setOnAction(e -> sliced());
    side.setOnAction(
        e -> {
          side.setText(side.isSelected() ? "from the front" : "from the side");
          cut();
        });
    where.setValue(0.5);
    where.setId("slice-at");
    where.valueProperty().addListener(o -> cut());
    apart.setId("apart");
    apart.valueProperty().addListener(o -> pull());
    slicing = new HBox(14, new Label("slice"), where, side);
    slicing.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(where, Priority.ALWAYS);
    sitter.setAccessibleText("a sitter beside the chair");
    rule.setAccessibleText("a rule beside the chair");
    sitter.setOnAction(e -> scaled(rule));
    rule.setOnAction(e -> scaled(sitter));
    ToggleGroup one = new ToggleGroup();
    one.getToggles().addAll(woman, man);
    woman.setSelected(true);
    woman.setOnAction(e -> woman.setSelected(true));
    man.setOnAction(e -> man.setSelected(true));
    one.selectedToggleProperty().addListener(o -> beside());
    tall.getStyleClass().add("quiet");
    tall.setId("sitter-size");
    sitting = new FlowPane(12, 2, woman, man, tall);
    sitting.setVisible(false);
    if (!ChairView.hasDepth()) {
      onPaper();
    }
  }

  private void scaled(ToggleButton other) {
    other.setSelected(false);
    beside();
    chair.seeAll();
  }

  private void beside() {
    sitting.setVisible(sitter.isSelected());
    Sitter who = woman.isSelected() ? Sitter.WOMAN : Sitter.MAN;
    TextStyle style = new TextStyle(unit, 8, false, false);
    tall.setText(
        "stands "
            + style.length(who.stature())
            + ", hollow of the knee at "
            + style.length(who.hollow())
            + " · "
            + Sitter.SOURCE);
    Scale scale =
        sitter.isSelected()
            ? new Scale.Sits(who)
            : rule.isSelected() ? new Scale.Rule(unit) : new Scale.None();
    chair.see(l -> l.beside(scale));
  }

  /** The words that go with the views. */
  List<ToggleButton> words() {
    return List.of(through, fade, slice);
  }

  /** On paper wood is not seen through, nothing is moved, and nothing stands beside the chair. */
  private void onPaper() {
    for (Node needsDepth : List.of(through, fade, slice, sitter, rule, apart)) {
      needsDepth.setDisable(true);
    }
  }

  /**
   * The sliders below the chair, and what can be held against it.
   *
   * @param more words after those
   */
  VBox sliders(Node more) {
    Label together = fixed("together");
    Label pulled = fixed("pulled apart");
    apart.setMinWidth(60);
    HBox pulling = new HBox(14, together, apart, pulled);
    HBox.setHgrow(apart, Priority.ALWAYS);
    HBox.setHgrow(pulling, Priority.ALWAYS);
    HBox against = new HBox(11, sitter, rule, more);
    against.getStyleClass().add("against");
    against.setMinWidth(HBox.USE_PREF_SIZE);
    HBox below = new HBox(22, pulling, against);
    for (HBox row : List.of(pulling, against, below)) {
      row.setAlignment(Pos.CENTER_LEFT);
    }
    slicing.setVisible(false);
    slicing.managedProperty().bind(slicing.visibleProperty());
    sitting.managedProperty().bind(sitting.visibleProperty());
    VBox box = new VBox(6, sitting, slicing, below);
    box.getStyleClass().add("sliders");
    box.setMaxHeight(VBox.USE_PREF_SIZE);
    return box;
  }

  void show(Shown next, Length.Unit in) {
    if (in != unit) {
      unit = in;
      beside();
    }
    if (next.is(shown)) {
      shown = next;
      return;
    }
    shown = next;
    order = Optional.empty();
    if (apart.getValue() > 0) {
      pull();
    }
    if (slice.isSelected()) {
      cut();
    }
  }

  /** Everything together, whole and solid again. */
  void plain() {
    through.setSelected(false);
    fade.setSelected(false);
    slice.setSelected(false);
    slicing.setVisible(false);
    sitter.setSelected(false);
    rule.setSelected(false);
    beside();
    apart.setValue(0);
  }

  private void sliced() {
    slicing.setVisible(slice.isSelected());
    if (slice.isSelected()) {
      cut();
    } else {
      chair.see(l -> l.cut(Optional.empty()));
    }
  }

  private void cut() {
    if (!slice.isSelected() || shown == null) {
      return;
    }
    Shown of = shown;
    Box box = of.bounds();
    double share = where.getValue();
    Vec3 at = box.low().plus(box.size().times(share));
    Plane plane =
        side.isSelected() ? Plane.through(at, Vec3.BACK.negated()) : Plane.through(at, Vec3.RIGHT);
    session.workOut(
        "slice", () -> Cutaway.of(of, plane), cut -> see(of, l -> l.cut(Optional.of(cut))));
  }

  private void pull() {
    if (shown == null) {
      return;
    }
    if (apart.getValue() == 0) {
      chair.see(l -> l.moving(List.of()));
    } else if (order.isPresent()) {
      List<Vec3> moved = order.get().moved(apart.getValue());
      chair.see(l -> l.moving(moved));
    } else {
      Shown of = shown;
      session.workOut(
          "apart",
          () -> Apart.of(Assembling.of(of.chair())),
          found -> {
            if (of.is(shown)) {
              order = Optional.of(found);
              pull();
            }
          });
    }
  }

  private void see(Shown of, UnaryOperator<Look> change) {
    if (of.is(shown) && slice.isSelected()) {
      chair.see(change);
    }
  }

  private static Label fixed(String text) {
    Label label = new Label(text);
    label.setMinWidth(Label.USE_PREF_SIZE);
    return label;
  }

  private static ToggleButton word(String text) {
    ToggleButton word = new ToggleButton(text);
    word.getStyleClass().setAll("word");
    word.setId(text.replace(' ', '-'));
    return word;
  }

  private static Slider slider(String name) {
    Slider slider = new Slider(0, 1, 0);
    slider.setBlockIncrement(0.05);
    slider.setAccessibleText(name);
    return slider;
  }
}
