package dryfit.view;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.export.TextStyle;
import dryfit.fit.Finding;
import dryfit.fit.JointAngles;
import dryfit.fit.JointFit;
import dryfit.fit.JointSection;
import dryfit.measure.Angle;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * What is known about the joint, or the part, that is taken up: its drawings stay where they are,
 * all else is scrolled below them.
 */
final class JointCard extends VBox {
  private static final double WIDE = 300;

  /** Of the whole card, pixels. */
  static final double WIDTH = WIDE + 44;

  /** Letters of a value beyond which it needs more than a third of the width. */
  private static final int LONG = 12;

  /** Height that all but the drawings needs at least, pixels. */
  private static final double REST = 262;

  private static final double LEAST_SHEET = 78;
  private static final double MOST_SHEET = 186;

  private final Session session;
  private final ChairView chair;
  private final Consumer<String> open;
  private final VBox head = new VBox(4);
  private final VBox card = new VBox(6);

  private final ScrollPane scroll;
  private List<JointSection> sections = List.of();
  private Shown shown;
  private TextStyle style;
  private Optional<String> joint = Optional.empty();
  private Optional<String> part = Optional.empty();
  private Optional<FindingNote> note = Optional.empty();

  /**
   * @param open told the label of a joint that was clicked
   */
  JointCard(Session session, ChairView chair, Consumer<String> open) {
    this.session = session;
    this.chair = chair;
    this.open = open;
    head.getStyleClass().add("side-head");
    head.setMinHeight(USE_PREF_SIZE);
    card.getStyleClass().add("side-rest");
    setId("joint-card");
    scroll = new ScrollPane(card);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("side-scroll");
    scroll.setMinHeight(0);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head, scroll);
    setPrefWidth(WIDTH);
    setMinWidth(WIDTH);
    setMinHeight(0);
    heightProperty().addListener(o -> draw());
  }

  void show(Shown next, TextStyle with) {
    shown = next;
    style = with;
    note = note.flatMap(n -> n.follow(next));
    fill();
  }

  /** Shows a finding above what it is about. */
  void finding(Finding finding) {
    note = Optional.of(new FindingNote(session, finding, shown));
    fill();
  }

  void joint(String label) {
    // What was found at it is told whichever way the maker came here; the worst comes first.
    note =
        Optional.ofNullable(shown).stream()
            .flatMap(s -> s.report().findings().stream())
            .filter(f -> f.severity() != Finding.Severity.KNOW && f.joints().contains(label))
            .findFirst()
            .map(f -> new FindingNote(session, f, shown));
    joint = Optional.of(label);
    part = Optional.empty();
    fill();
  }

  void part(Optional<String> label) {
    note = Optional.empty();
    joint = Optional.empty();
    part = label;
    fill();
  }

  private void fill() {
    if (shown == null) {
      return;
    }
    Optional<JointFit> fit = joint.flatMap(shown::joint);
    if (fit.isPresent()) {
      Shown of = shown;
      session.workOut(
          "section",
          () -> JointSection.of(of.chair(), fit.get()),
          drawn -> fill(of, fit.get(), drawn));
    } else {
      list();
    }
  }

  private void fill(Shown of, JointFit fit, List<JointSection> drawn) {
    if (!of.is(shown) || !joint.equals(Optional.of(fit.joint().label()))) {
      return;
    }
    clear();
    Chair chair = of.chair();
    head(
        fit.joint().label(),
        Words.part(chair.parts().get(fit.joint().tenoned()).label())
            + " into "
            + Words.part(chair.parts().get(fit.joint().mortised()).label())
            + " · "
            + fit.joint().plan().kind().word().replace('-', ' '));
    sections = drawn;
    draw();
    figures(fit);
    angles(JointAngles.of(chair, fit.joint()));
    String pointer = fit.joint().plan().pointer();
    if (note.filter(n -> n.isIn(pointer)).isEmpty()) {
      card.getChildren().add(new DocumentPlace(pointer));
    }
  }

  private void head(String label, String about) {
    Label name = new Label(Words.part(label));
    name.getStyleClass().add("heading");
    name.setWrapText(true);
    name.setMinHeight(USE_PREF_SIZE);
    HBox.setHgrow(name, Priority.ALWAYS);
    name.setMaxWidth(Double.MAX_VALUE);
    Button back =
        word(
            "all joints",
            () -> {
              chair.see(l -> l.choosing(List.of()));
              part(Optional.empty());
            });
    back.setMinWidth(USE_PREF_SIZE);
    HBox line = new HBox(10, name, back);
    line.setMaxWidth(WIDE);
    Label quiet = new Label(about);
    quiet.getStyleClass().add("quiet");
    quiet.setWrapText(true);
    quiet.setMaxWidth(WIDE);
    quiet.setMinHeight(USE_PREF_SIZE);
    head.getChildren().addAll(line, quiet);
  }

  /** The sections of the joint in hand, as large as there is room for. */
  private void draw() {
    head.getChildren().removeIf(SectionSheet.class::isInstance);
    head.getChildren().removeIf(n -> n.getStyleClass().contains("caption"));
    double high = Math.max(LEAST_SHEET, Math.min(MOST_SHEET, (getHeight() - REST) / 2));
    for (JointSection section : sections) {
      Label caption =
          new Label(
              section.title()
                  + " · "
                  + section.lie()
                  + " · gaps in "
                  + (style.inches() ? "inches" : "mm"));
      caption.getStyleClass().addAll("quiet", "caption");
      head.getChildren().addAll(sheet(section, Math.floor(high)), caption);
    }
  }

  private SectionSheet sheet(JointSection section, double high) {
    return new SectionSheet(section, style, note.map(FindingNote::at), WIDE, high);
  }

  private void figures(JointFit fit) {
    gap("cheek gap, each side", fit.cheek());
    gap("edge gap", fit.edge());
    gap("bottom gap", fit.bottom());
    gap("shoulder gap", fit.shoulder());
    fit.wall()
        .ifPresent(
            wall ->
                row(
                    "least wall left" + (fit.wallFace().isEmpty() ? "" : ", " + fit.wallFace()),
                    style.gap(wall)));
    if (!fit.joint().tenons().isEmpty()) {
      row("depth, square to the face", style.length(fit.depthSquare()));
      row("depth along the tenon", style.length(fit.depthAlong()));
    }
    if (fit.glueLong() + fit.glueOther() > 0) {
      row("glue, long grain", style.area(fit.glueLong()));
    }
  }

  private void angles(JointAngles angles) {
    angles
        .mortise()
        .filter(m -> !m.lean().isSquare())
        .ifPresent(
            m -> {
              row("lean off square", Angle.degrees(m.lean().offSquare()));
              row(
                  "lean along, towards " + m.along().towards(),
                  Angle.degrees(m.along().angle().offSquare()));
              row(
                  "lean across, towards " + m.across().towards(),
                  Angle.degrees(m.across().angle().offSquare()));
            });
    angles
        .shoulder()
        .ifPresent(
            s -> {
              if (s.offSquare().isSquare()) {
                row("shoulder", "square both ways");
              } else {
                s.wide().ifPresent(line -> bevel(line.face(), line.angle()));
                s.narrow().ifPresent(line -> bevel(line.face(), line.angle()));
              }
            });
  }

  private void bevel(String face, dryfit.measure.BenchAngle angle) {
    if (!angle.isSquare()) {
      row(
          "shoulder on the " + face,
          Angle.degrees(angle.offSquare())
              + " · "
              + angle.slope(style.unit(), style.denominator()));
    }
  }

  private void gap(String name, JointFit.Gap gap) {
    if (gap.least().isPresent() && gap.greatest().isPresent()) {
      String least = style.gap(gap.least().getAsDouble());
      String most = style.gap(gap.greatest().getAsDouble());
      row(
          name,
          least.equals(most) ? least : least.substring(0, least.indexOf(' ')) + " to " + most);
    }
  }

  private void clear() {
    head.getChildren().clear();
    sections = List.of();
    card.getChildren().clear();
    scroll.setVvalue(0);
    note.ifPresent(
        n -> {
          n.setMaxWidth(WIDE);
          card.getChildren().add(n);
        });
  }

  private void list() {
    clear();
    if (part.isPresent() && shown.part(part.get()) >= 0) {
      Part of = shown.chair().parts().get(shown.part(part.get()));
      title(Words.part(of.label()));
      row("length", style.length(of.blank().length()));
      // As a board is bought: the frame of a part may lie either way in it.
      double across = of.blank().width();
      double through = of.blank().thickness();
      row("width", style.length(Math.max(across, through)));
      row("thickness", style.length(Math.min(across, through)));
      card.getChildren().add(new DocumentPlace(of.pointer()));
      hiding(of.label());
    } else if (!chair.look().get().hidden().isEmpty()) {
      hiding("");
    }
    title("Joints");
    for (JointFit fit : shown.report().joints()) {
      if (part.isEmpty() || touches(fit.joint(), part.get())) {
        Button word = new Button(Words.part(fit.joint().label()));
        word.getStyleClass().setAll("word");
        word.setUserData(fit.joint().label());
        word.setOnAction(e -> open.accept(fit.joint().label()));
        card.getChildren().add(word);
      }
    }
  }

  /**
   * @param label of the part that is taken up; empty for none
   */
  private void hiding(String label) {
    HBox words = new HBox(14);
    if (!label.isEmpty()) {
      words.getChildren().add(word("hide", () -> hide(label)));
      words.getChildren().add(word("show alone", () -> alone(label)));
    }
    words.getChildren().add(word("show all", this::all));
    card.getChildren().add(words);
  }

  private void all() {
    chair.see(l -> l.hiding(Set.of()));
    fill();
  }

  private void hide(String label) {
    Set<String> hidden = new TreeSet<>(chair.look().get().hidden());
    hidden.add(label);
    chair.see(l -> l.hiding(hidden));
    part(Optional.empty());
  }

  private void alone(String label) {
    Set<String> hidden = new TreeSet<>();
    shown.chair().parts().forEach(p -> hidden.add(p.label()));
    hidden.remove(label);
    chair.see(l -> l.hiding(hidden));
  }

  private static Button word(String text, Runnable does) {
    Button word = new Button(text);
    word.getStyleClass().setAll("word");
    word.setId(text.replace(' ', '-'));
    word.setOnAction(e -> does.run());
    return word;
  }

  private boolean touches(Joint of, String label) {
    return shown.chair().parts().get(of.tenoned()).label().equals(label)
        || shown.chair().parts().get(of.mortised()).label().equals(label);
  }

  private void title(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("heading");
    label.setWrapText(true);
    label.setMaxWidth(WIDE);
    card.getChildren().add(label);
  }

  private void row(String name, String value) {
    Label left = new Label(name);
    left.setWrapText(true);
    // A long value takes room from its name; together they never run over the edge.
    double share = value.length() > LONG ? 0.42 : 0.6;
    left.setMaxWidth(share * WIDE);
    left.setMinHeight(Region.USE_PREF_SIZE);
    Label right = new Label(value);
    right.getStyleClass().add("figure");
    right.setWrapText(true);
    right.setMinHeight(Region.USE_PREF_SIZE);
    right.setMaxWidth((0.98 - share) * WIDE);
    BorderPane row = new BorderPane();
    row.setLeft(left);
    row.setRight(right);
    row.getStyleClass().add("figure-row");
    row.setMaxWidth(WIDE);
    card.getChildren().add(row);
  }
}
