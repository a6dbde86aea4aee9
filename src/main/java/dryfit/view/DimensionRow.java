package dryfit.view;

import dryfit.document.Design;
import dryfit.document.Design.Dimension;
import dryfit.document.Quantity;
import dryfit.measure.Length;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;

/** One dimension: its value to be typed over, its rule to be slid, what it is worked out from. */
final class DimensionRow extends VBox {
  /** Steps of a rule whose dimension names none. */
  private static final int STEPS = 100;

  private final Session session;
  private final TextField field = new TextField();
  private final SteelRule rule = new SteelRule();
  private final Label formula = new Label();
  private final Label refused = new Label();
  private Dimension dimension;
  private Length.Unit shown;
  private Length.Unit document;

  DimensionRow(Session session, String name) {
    super(1);
    this.session = session;
    getStyleClass().add("dimension");
    Label word = new Label(Words.dimension(name));
    word.setLabelFor(field);
    field.setId("value-" + name);
    field.getStyleClass().setAll("value");
    field.setPrefColumnCount(7);
    field.setAccessibleText(Words.dimension(name));
    rule.setId("rule-" + name);
    rule.setAccessibleText(Words.dimension(name) + ", to slide");
    formula.getStyleClass().add("quiet");
    formula.setWrapText(true);
    refused.getStyleClass().add("refused");
    refused.setId("refused-" + name);
    refused.setWrapText(true);
    BorderPane line = new BorderPane();
    line.setLeft(word);
    line.setRight(field);
    BorderPane.setAlignment(word, javafx.geometry.Pos.CENTER_LEFT);
    getChildren().addAll(line);
    field.setOnAction(e -> typed());
    field
        .focusedProperty()
        .addListener(
            (o, was, now) -> {
              if (!now && refused.getText().isEmpty()) {
                write();
              }
            });
    rule.onPress(session::press);
    rule.onLift(session::lift);
    rule.onSlide(this::slid);
  }

  void show(Dimension now, Design design, Length.Unit unit) {
    dimension = now;
    shown = unit;
    document = design.unit().printed();
    if (!now.note().isEmpty() && field.getTooltip() == null) {
      Tooltip help = new Tooltip(now.note());
      Tooltip.install(this, help);
      field.setAccessibleHelp(now.note());
      rule.setAccessibleHelp(now.note());
    }
    boolean derived = !now.formula().isEmpty();
    formula.setText(derived ? "= " + now.formula() : "");
    boolean range = Double.isFinite(now.from()) && Double.isFinite(now.to()) && !derived;
    if (range) {
      double step = Double.isFinite(now.step()) ? now.step() : (now.to() - now.from()) / STEPS;
      rule.limits(now.from(), now.to(), step);
      if (!rule.held()) {
        rule.value().set(now.value().value());
      }
    }
    has(rule, range);
    has(formula, derived);
    if (!field.isFocused()) {
      // What was refused is no longer what stands there.
      answered(Optional.empty());
      write();
    }
  }

  private void write() {
    if (dimension != null) {
      field.setText(Entry.shown(dimension.value(), shown));
    }
  }

  private void typed() {
    String entry = Entry.meant(field.getText(), dimension, shown, document);
    session.dimension(dimension.name(), entry, this::answered);
  }

  private void slid() {
    double value = rule.value().get();
    Quantity.Kind kind = dimension.value().kind();
    field.setText(Entry.shown(new Quantity(value, kind), shown));
    session.dimension(dimension.name(), Entry.written(value, kind, document), this::answered);
  }

  private void answered(Optional<String> why) {
    refused.setText(why.orElse(""));
    has(refused, why.isPresent());
    field.pseudoClassStateChanged(
        javafx.css.PseudoClass.getPseudoClass("refused"), why.isPresent());
    if (why.isEmpty() && field.isFocused()) {
      field.selectAll();
    }
  }

  private void has(javafx.scene.Node node, boolean wanted) {
    if (wanted != getChildren().contains(node)) {
      if (wanted) {
        getChildren().add(node);
      } else {
        getChildren().remove(node);
      }
    }
  }

  boolean matches(String text) {
    return dimension != null
        && (Words.dimension(dimension.name()) + " " + dimension.name() + " " + dimension.note())
            .toLowerCase(java.util.Locale.ROOT)
            .contains(text);
  }
}
