package dryfit.view;

import dryfit.document.Design;
import dryfit.document.Design.Dimension;
import dryfit.document.Problem;
import dryfit.document.Quantity;
import dryfit.measure.Fraction;
import dryfit.measure.Length;
import java.util.List;
import java.util.OptionalDouble;
import javafx.animation.PauseTransition;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** One dimension: its value to be typed over, its rule to be slid, what it is worked out from. */
final class DimensionRow extends VBox {
  private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");

  private final Session session;
  private final TextField field = new TextField();
  private final SteelRule rule = new SteelRule();
  private final Label below = new Label();
  private final Label refused = new Label();

  /** Letters that a field beside its name has room for. */
  private static final int SHORT = 9;

  /** Why something was not taken stays that long once the maker is elsewhere. */
  static final int TOLD_SECONDS = 15;

  private final PauseTransition toldLongEnough =
      new PauseTransition(Duration.seconds(TOLD_SECONDS));

  /** What is written of a value may be rounded by so much, mm or radians. */
  private static final double ALIKE = 0.005;

  private final Tooltip tip = new Tooltip();
  private Dimension dimension;
  private List<String> names = List.of();
  private Length.Unit shown;
  private Length.Unit document;

  /** What stands in the field when nobody has typed: an unaltered text changes nothing. */
  private String stood = "";

  /** What was typed last and not taken. */
  private String wrong = "";

  /** Where the mark was left, until a chair comes of it. */
  private OptionalDouble slidTo = OptionalDouble.empty();

  /** Whether no chair comes of what stands here: that is so until it is changed. */
  private boolean unbuilt;

  DimensionRow(Session session, String name) {
    super(1);
    this.session = session;
    getStyleClass().add("dimension");
    setId("dimension-" + name);
    Label word = new Label(Words.dimension(name));
    word.setLabelFor(field);
    word.setMinWidth(USE_PREF_SIZE);
    field.setId("value-" + name);
    field.getStyleClass().setAll("value");
    field.setPrefColumnCount(7);
    rule.setId("rule-" + name);
    below.setId("below-" + name);
    below.getStyleClass().add("quiet");
    refused.getStyleClass().add("refused");
    toldLongEnough.setOnFinished(e -> answered(""));
    refused.setId("refused-" + name);
    for (Label text : List.of(below, refused)) {
      text.setWrapText(true);
      text.setMinHeight(USE_PREF_SIZE);
    }
    BorderPane line = new BorderPane();
    line.setLeft(word);
    line.setRight(field);
    // A long formula needs the whole width; its name then goes above it.
    field.textProperty().addListener((o, was, now) -> lay(line, word, now.length() > SHORT));
    BorderPane.setAlignment(word, Pos.CENTER_LEFT);
    getChildren().addAll(line);
    field.setOnAction(e -> typed());
    field.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    field.focusedProperty().addListener((o, was, now) -> left(now));
    rule.onPress(session::press);
    rule.onLift(session::lift);
    rule.onSlide(this::slid);
  }

  private void lay(BorderPane line, Label word, boolean wide) {
    if (wide != (line.getTop() != null)) {
      line.setLeft(null);
      line.setTop(wide ? word : null);
      line.setLeft(wide ? null : word);
      // Never wider than the line, or all that lies below would be pushed out of sight.
      field.setPrefWidth(wide ? line.getWidth() : USE_COMPUTED_SIZE);
    }
  }

  void show(Dimension now, Design design, Length.Unit unit, String written) {
    dimension = now;
    names = design.dimensions().stream().map(Dimension::name).toList();
    shown = unit;
    document = design.unit().printed();
    boolean derived = !now.formula().isEmpty();
    below.setText(derived ? "= " + formula() : "written as " + withUnit(written));
    boolean rounded = !derived && !Entry.isAll(now.value(), unit);
    help(rounded ? below.getText() : "");
    boolean range = Double.isFinite(now.from()) && Double.isFinite(now.to()) && !derived;
    Quantity.Kind kind = now.value().kind();
    if (range) {
      double step =
          Double.isFinite(now.step())
              ? now.step()
              : Entry.step(now.from(), now.to(), kind, document);
      rule.limits(now.from(), now.to(), step);
      rule.reading(value -> told(Entry.shown(new Quantity(value, kind), shown)));
      follow(now.value().value());
    }
    has(rule, range);
    // Where what is shown is rounded in its own unit, what the document says stands below it.
    has(below, derived || rounded && unit == document);
    String name = Words.dimension(now.name());
    rule.setAccessibleText(name + ", to slide");
    field.setAccessibleText(name + accessibleUnit() + (derived ? ", worked out" : ""));
    if (!field.isFocused() || field.getText().equals(stood)) {
      // What was refused is no longer what stands there.
      answered("");
      write();
    }
  }

  /** A chair built of where the mark was before does not take it back there. */
  private void follow(double value) {
    boolean late = slidTo.isPresent() && Math.abs(slidTo.getAsDouble() - value) > ALIKE;
    if (!rule.held() && !(late && session.busy().get())) {
      slidTo = OptionalDouble.empty();
      rule.value().set(value);
    }
  }

  /** Nothing more is on its way: the mark stands where the document has it. */
  void settle() {
    slidTo = OptionalDouble.empty();
    if (dimension != null) {
      follow(dimension.value().value());
    }
  }

  private void help(String written) {
    String both = dimension.note() + (dimension.note().isEmpty() ? "" : "\n") + written;
    String help = both.strip();
    tip.setText(help);
    if (help.isEmpty()) {
      Tooltip.uninstall(this, tip);
    } else {
      Tooltip.install(this, tip);
    }
    field.setAccessibleHelp(help);
    rule.setAccessibleHelp(help);
  }

  /** A bare number is in the document's unit. */
  private String withUnit(String written) {
    boolean bare = Fraction.parse(written).isPresent();
    return bare && dimension.value().kind() == Quantity.Kind.LENGTH
        ? written + " " + document.symbol()
        : written;
  }

  /** Its note, which says what it measures; empty if there is none. */
  String note() {
    return dimension.note();
  }

  private String formula() {
    String told = Words.formula(dimension.formula(), names);
    // Bare numbers of a formula stay those of the document, whatever is shown.
    return shown == document || !told.matches(".*\\d.*")
        ? told
        : told + "   (numbers in " + (document == Length.Unit.IN ? "inches" : "millimetres") + ")";
  }

  private String accessibleUnit() {
    return dimension.value().kind() != Quantity.Kind.LENGTH
        ? ""
        : shown == Length.Unit.IN ? ", inches" : ", millimetres";
  }

  private String told(String value) {
    return dimension.value().kind() == Quantity.Kind.LENGTH ? value + " " + shown.symbol() : value;
  }

  private void write() {
    if (dimension != null) {
      stood = Entry.shown(dimension.value(), shown);
      field.setText(stood);
    }
  }

  private void key(KeyEvent e) {
    if (e.getCode() == KeyCode.ESCAPE
        && (!field.getText().equals(stood) || !refused.getText().isEmpty())) {
      answered("");
      write();
      field.selectAll();
      e.consume();
    }
  }

  /** Leaving the field takes what was typed, as Enter does. */
  private void left(boolean focused) {
    if (focused || dimension == null) {
      toldLongEnough.stop();
      return;
    }
    if (field.getText().equals(stood) || field.getText().equals(wrong)) {
      field.pseudoClassStateChanged(REFUSED, false);
      write();
      if (!unbuilt) {
        toldLongEnough.playFromStart();
      }
    } else {
      typed();
    }
  }

  private void typed() {
    String typed = field.getText();
    if (typed.equals(stood)) {
      answered("");
      return;
    }
    NotTaken not = new NotTaken(dimension, typed, names, shown);
    if (typed.isBlank()) {
      wrong = typed;
      answered(not.empty());
      return;
    }
    if (Entry.isInchFraction(typed, dimension, shown)) {
      wrong = typed;
      answered(not.inches());
      return;
    }
    if (Entry.lacksUnit(typed, dimension, shown, document)) {
      wrong = typed;
      answered(not.noUnit());
      return;
    }
    String entry = Entry.meant(typed, dimension, shown, document, names);
    session.dimension(dimension.name(), entry, why -> taken(typed, not, why));
  }

  private void taken(String typed, NotTaken not, List<Problem> why) {
    if (why.isEmpty()) {
      // The chair that comes of it tells how it is shown.
      stood = typed;
    } else {
      wrong = typed;
    }
    answered(why.isEmpty() ? "" : not.why(why));
  }

  private void slid() {
    double value = rule.value().get();
    slidTo = OptionalDouble.of(value);
    Quantity.Kind kind = dimension.value().kind();
    stood = Entry.shown(new Quantity(value, kind), shown);
    field.setText(stood);
    NotTaken not = new NotTaken(dimension, told(stood), names, shown);
    session.dimension(
        dimension.name(),
        Entry.written(value, kind, document),
        why -> answered(why.isEmpty() ? "" : not.why(why)));
  }

  /** What stands there is in the document, and no chair comes of it. */
  void cannotBeBuilt() {
    toldLongEnough.stop();
    unbuilt = true;
    refused.setText("With this the chair cannot be built; “take back” undoes it.");
    has(refused, true);
  }

  /**
   * @param why empty if it was taken
   */
  private void answered(String why) {
    toldLongEnough.stop();
    unbuilt = false;
    refused.setText(why);
    has(refused, !why.isEmpty());
    field.pseudoClassStateChanged(REFUSED, !why.isEmpty() && field.isFocused());
    if (field.isFocused()) {
      if (why.isEmpty()) {
        field.selectAll();
      }
    } else if (!why.isEmpty()) {
      // The sentence tells what was typed; the field tells what holds.
      write();
      toldLongEnough.playFromStart();
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
