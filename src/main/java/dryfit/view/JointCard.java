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
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What is known about the joint, or the part, that is taken up. */
final class JointCard extends ScrollPane {
  private static final double WIDE = 300;

  private final Session session;
  private final ChairView chair;
  private final Consumer<String> open;
  private final VBox card = new VBox(6);
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
    card.getStyleClass().add("side");
    card.setId("joint-card");
    setContent(card);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    getStyleClass().add("side-scroll");
    setPrefWidth(WIDE + 44);
    setMinWidth(WIDE + 44);
  }

  void show(Shown next, TextStyle with) {
    shown = next;
    style = with;
    note = note.flatMap(n -> n.follow(next, with));
    fill();
  }

  /** Shows a finding above what it is about. */
  void finding(Finding finding) {
    note = Optional.of(new FindingNote(session, finding, shown, style));
    fill();
  }

  void joint(String label) {
    note = Optional.empty();
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
          sections -> fill(of, fit.get(), sections));
    } else {
      list();
    }
  }

  private void fill(Shown of, JointFit fit, List<JointSection> sections) {
    if (!of.is(shown) || !joint.equals(Optional.of(fit.joint().label()))) {
      return;
    }
    clear();
    title(Words.part(fit.joint().label()));
    Chair chair = of.chair();
    quiet(
        Words.part(chair.parts().get(fit.joint().tenoned()).label())
            + " into "
            + Words.part(chair.parts().get(fit.joint().mortised()).label())
            + " · "
            + fit.joint().plan().kind().word().replace('-', ' '));
    for (JointSection section : sections) {
      card.getChildren().add(new SectionSheet(section, style, WIDE, 0.62 * WIDE));
      quiet(section.title());
    }
    figures(fit);
    angles(JointAngles.of(chair, fit.joint()));
    quiet("written at " + fit.joint().plan().pointer());
    Button back = new Button("all joints");
    back.getStyleClass().setAll("word");
    back.setOnAction(e -> part(Optional.empty()));
    card.getChildren().add(back);
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
                    style.length(wall)));
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
    card.getChildren().clear();
    note.ifPresent(card.getChildren()::add);
  }

  private void list() {
    clear();
    if (part.isPresent() && shown.part(part.get()) >= 0) {
      Part of = shown.chair().parts().get(shown.part(part.get()));
      title(Words.part(of.label()));
      row("length", style.length(of.blank().length()));
      row("width", style.length(of.blank().width()));
      row("thickness", style.length(of.blank().thickness()));
      quiet("written at " + of.pointer());
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
    words.getChildren().add(word("show all", () -> chair.see(l -> l.hiding(Set.of()))));
    card.getChildren().add(words);
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

  private void quiet(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("quiet");
    label.setWrapText(true);
    label.setMaxWidth(WIDE);
    label.setMinHeight(USE_PREF_SIZE);
    card.getChildren().add(label);
  }

  private void row(String name, String value) {
    Label left = new Label(name);
    left.setWrapText(true);
    left.setMaxWidth(0.55 * WIDE);
    Label right = new Label(value);
    right.getStyleClass().add("figure");
    right.setWrapText(true);
    right.setMinHeight(Region.USE_PREF_SIZE);
    right.setMaxWidth(0.6 * WIDE);
    BorderPane row = new BorderPane();
    row.setLeft(left);
    row.setRight(right);
    row.getStyleClass().add("figure-row");
    card.getChildren().add(row);
  }
}
