package dryfit.view;

import dryfit.export.TextStyle;
import dryfit.measure.Length;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Ways to see how the parts fit: through the wood, sawn open, pulled apart. */
final class Seeing {
  private final ChairView chair;
  private final ToggleButton through = word("see through");
  private final ToggleButton fade = word("fade the rest");
  private final ToggleButton sitter = word("sitter");
  private final ToggleButton rule = word("rule");
  private final ToggleButton woman = word(Sitter.WOMAN.word());
  private final ToggleButton man = word(Sitter.MAN.word());
  private final Slicing slicing;
  private final Pulling pulling;
  private final Label tall = new Label();
  private final VBox sitting;
  private Length.Unit unit = Length.Unit.MM;

  /** What is on only so that what was taken up is seen. */
  private final Set<ToggleButton> forSight = new HashSet<>();

  /** Between what stands in one row below the chair, in pixels. */
  private static final double BETWEEN = 22;

  /** A row to pull the chair apart needs that much, in pixels. */
  private static final double SHORTEST = 260;

  Seeing(Session session, ChairView chair) {
    this.chair = chair;
    this.slicing = new Slicing(session, chair);
    this.pulling = new Pulling(session, chair);
    through.setOnAction(e -> on(through, through.isSelected(), false));
    fade.setOnAction(e -> on(fade, fade.isSelected(), false));
    // A slice lays open what was seen through for the sake of one place.
    slicing.word().selectedProperty().addListener((o, was, now) -> clear(through, false));
    sitter.setAccessibleText("a sitter beside the chair");
    rule.setAccessibleText("a rule beside the chair");
    sitter.setOnAction(e -> scaled(rule));
    rule.setOnAction(e -> scaled(sitter));
    woman.setSelected(true);
    woman.setOnAction(e -> sits(woman, man));
    man.setOnAction(e -> sits(man, woman));
    tall.getStyleClass().add("quiet");
    tall.setId("sitter-size");
    tall.setWrapText(true);
    tall.setMinHeight(Label.USE_PREF_SIZE);
    chair
        .orbit()
        .addListener(
            o -> {
              Scale now = chair.look().get().scale();
              Scale clear = clear(now);
              if (!clear.equals(now)) {
                chair.see(l -> l.beside(clear));
              }
            });
    sitting = new VBox(2, new HBox(12, woman, man), tall);
    sitting.setVisible(false);
    if (!ChairView.hasDepth()) {
      onPaper();
    }
  }

  private void sits(ToggleButton chosen, ToggleButton other) {
    chosen.setSelected(true);
    other.setSelected(false);
    beside();
  }

  private void scaled(ToggleButton other) {
    other.setSelected(false);
    beside();
    // Once the words below have their room.
    Platform.runLater(chair::seeAll);
  }

  private void beside() {
    sitting.setVisible(sitter.isSelected());
    Sitter who = woman.isSelected() ? Sitter.WOMAN : Sitter.MAN;
    tall.setText(
        "sits beside the chair; stands "
            + tall(who.stature())
            + ", hollow of the knee at "
            + tall(who.hollow())
            + " · "
            + Sitter.SOURCE);
    Scale scale =
        sitter.isSelected()
            ? new Scale.Sits(who, false)
            : rule.isSelected() ? new Scale.Rule(unit) : new Scale.None();
    chair.see(l -> l.beside(clear(scale)));
  }

  /** Where it does not stand before the chair. */
  private Scale clear(Scale scale) {
    return scale.seenFrom(chair.orbit().get().camera().forward().negated());
  }

  /** Bodies are not told to the tenth of a millimetre. */
  private String tall(double mm) {
    return unit == Length.Unit.IN
        ? new TextStyle(unit, 8, false, false).length(mm)
        : Length.decimal(mm, unit, 0);
  }

  /** The words that go with the views. */
  List<ToggleButton> words() {
    return List.of(through, fade, slicing.word());
  }

  /** On paper wood is not seen through, and nothing is moved or sawn. */
  private void onPaper() {
    for (Node needsDepth : List.of(through, fade, slicing.word(), pulling.slider())) {
      needsDepth.setDisable(true);
    }
  }

  /**
   * The sliders below the chair, and what can be held against it.
   *
   * @param more words after those
   */
  VBox sliders(Node more) {
    HBox against = new HBox(11, sitter, rule, more);
    against.getStyleClass().add("against");
    against.setMinWidth(HBox.USE_PREF_SIZE);
    against.setAlignment(Pos.CENTER_LEFT);
    FlowPane below = new FlowPane(BETWEEN, 4, pulling.row(), against);
    below.setRowValignment(VPos.CENTER);
    below.setMinWidth(0);
    // Both in one row, the slider as long as there is room; in a narrow window one below the other.
    pulling
        .row()
        .prefWidthProperty()
        .bind(
            Bindings.createDoubleBinding(
                () -> {
                  double left = below.getWidth() - against.getWidth() - BETWEEN;
                  return Math.floor(left >= SHORTEST ? left : below.getWidth());
                },
                below.widthProperty(),
                against.widthProperty()));
    sitting.managedProperty().bind(sitting.visibleProperty());
    VBox box = new VBox(6, sitting, slicing.row(), pulling.told(), below);
    box.getStyleClass().add("sliders");
    box.setMaxHeight(VBox.USE_PREF_SIZE);
    return box;
  }

  void show(Shown next, Length.Unit in) {
    if (in != unit) {
      unit = in;
      beside();
    }
    slicing.show(next, unit);
    pulling.show(next);
  }

  /** A slice begins at what is taken up. */
  void take(Optional<Slicing.Place> place) {
    slicing.take(place);
  }

  /**
   * Makes what was taken up seen at once: fades the rest if it stands before it, and lets see
   * through wood that it is in. What was done for that alone is undone with the next that is free.
   *
   * @param behind whether other parts stand before it
   * @param within whether it is in the wood of its own parts
   */
  void clear(boolean behind, boolean within) {
    clear(fade, behind);
    // A slice goes through it already.
    clear(through, within && !slicing.word().isSelected());
  }

  private void clear(ToggleButton way, boolean wanted) {
    if (wanted && !way.isSelected() && !way.isDisabled()) {
      on(way, true, true);
    } else if (!wanted && forSight.contains(way)) {
      on(way, false, false);
    }
  }

  private void on(ToggleButton way, boolean on, boolean onlyForSight) {
    if (onlyForSight) {
      forSight.add(way);
    } else {
      forSight.remove(way);
    }
    way.setSelected(on);
    chair.see(l -> l.seeThrough(through.isSelected()).fadingOthers(fade.isSelected()));
  }

  /** Draws apart what comes apart. */
  void pullApart() {
    pulling.start();
  }

  /** Puts back what was pulled apart. */
  void together() {
    pulling.end();
  }

  /** Told when the parts begin to come apart. */
  void onApart(Runnable told) {
    pulling
        .slider()
        .valueProperty()
        .addListener(
            (o, was, now) -> {
              if (was.doubleValue() == 0 && now.doubleValue() > 0) {
                told.run();
              }
            });
  }

  /** Everything together, whole and solid again. */
  void plain() {
    through.setSelected(false);
    fade.setSelected(false);
    forSight.clear();
    slicing.end();
    sitter.setSelected(false);
    rule.setSelected(false);
    beside();
    pulling.end();
  }

  /** A word that is on or off. */
  static ToggleButton word(String text) {
    ToggleButton word = new ToggleButton(text);
    word.getStyleClass().setAll("word");
    word.setId(text.replace(' ', '-'));
    return word;
  }

  /** From 0 to 1. */
  static Slider slider(String name) {
    Slider slider = new Slider(0, 1, 0);
    slider.setBlockIncrement(0.05);
    slider.setAccessibleText(name);
    return slider;
  }
}
