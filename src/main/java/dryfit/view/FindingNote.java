package dryfit.view;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design.Waiver;
import dryfit.document.JointPlan;
import dryfit.export.FindingText;
import dryfit.fit.Finding;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * What the ticket of a finding has no room for, and the place to accept it: with a reason, which is
 * written into the document and stays in every report.
 */
final class FindingNote extends VBox {
  /** What nobody can accept, for nobody knows what it is. */
  private static final String NOT_MEASURED = "could-not-measure";

  /** What accepts nothing any more; its place in the document is that of the acceptance. */
  private static final String IDLE = "waiver-idle";

  private final Session session;
  private final Finding finding;
  private final TextField reason = new TextField();
  private final Label refused = new Label();
  private final VBox below = new VBox(5);
  private Shown shown;

  /** Whether a reason can be written here. */
  private boolean open;

  FindingNote(Session session, Finding finding, Shown shown) {
    super(5);
    this.session = session;
    this.finding = finding;
    this.shown = shown;
    setId("finding-note");
    getStyleClass().add("finding-note");
    Label head = label(Words.severity(finding), "ticket-title");
    if (finding.waived().isEmpty()) {
      head.getStyleClass().add(finding.severity().name().toLowerCase(Locale.ROOT));
    }
    // What was found stands on the ticket; here is what the ticket has no room for.
    getChildren().addAll(head, below);
    if (finding.severity() != Finding.Severity.KNOW) {
      String limit = finding.source().limit();
      String source = (limit.isEmpty() ? "limit" : limit.replace('-', ' ')) + " from ";
      getChildren().add(label(source + FindingText.source(finding.source()), "quiet"));
    }
    if (!finding.pointer().isEmpty()) {
      getChildren().add(new DocumentPlace(finding.pointer()));
    }
    reason.setId("accept-reason");
    reason.getStyleClass().add("find");
    reason.setPromptText("why you accept it");
    reason.setAccessibleText("why you accept this finding");
    reason.setOnAction(e -> accept());
    refused.getStyleClass().add("refused");
    refused.setId("not-accepted");
    refused.setWrapText(true);
    refused.setMinHeight(USE_PREF_SIZE);
    refused.managedProperty().bind(refused.textProperty().isNotEmpty());
    reason.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    standing(finding.waived());
  }

  /**
   * The chair was built anew.
   *
   * @return this if the finding stands as it did, one that tells what it has become, with the
   *     reason begun here, or nothing if it is gone
   */
  Optional<FindingNote> follow(Shown next) {
    shown = next;
    Optional<Finding> still =
        next.report().findings().stream()
            .filter(f -> f.check().equals(finding.check()))
            .filter(f -> f.parts().equals(finding.parts()) && f.joints().equals(finding.joints()))
            .findFirst();
    if (still.isPresent() && !tellsTheSame(still.get())) {
      FindingNote changed = new FindingNote(session, still.get(), next);
      changed.reason.setText(reason.getText());
      return Optional.of(changed);
    }
    return still.map(f -> this);
  }

  /** Whichever unit it is told in. */
  private boolean tellsTheSame(Finding other) {
    return other.severity() == finding.severity()
        && other.waived().equals(finding.waived())
        && Double.compare(other.measured(), finding.measured()) == 0;
  }

  /** The place in the chair that the finding is about, chair space. */
  Vec3 at() {
    return finding.at();
  }

  /** Whether its place in the document is within another. */
  boolean isIn(String pointer) {
    return finding.pointer().equals(pointer) || finding.pointer().startsWith(pointer + "/");
  }

  private void standing(Optional<String> waived) {
    if (waived.isPresent()) {
      Label because = label("Accepted, because: " + waived.get(), "accepted");
      because.setId("accepted");
      Button noLonger = pill("accept it no longer", "accept-no-longer", this::acceptNoLonger);
      below.getChildren().setAll(because, noLonger);
      int others = acceptedTogether();
      if (others > 0) {
        String findings = others == 1 ? "another finding" : others + " other findings";
        below.getChildren().add(label("The same words accept " + findings + ".", "quiet"));
      }
      below.getChildren().add(refused);
      open = false;
    } else if (finding.check().equals(IDLE)) {
      below
          .getChildren()
          .setAll(pill("take it out of the document", "take-out", this::takeOut), refused);
      open = false;
    } else if (finding.check().equals(NOT_MEASURED)
        || finding.severity() == Finding.Severity.KNOW) {
      below.getChildren().clear();
      open = false;
    } else if (!open) {
      Button accept = pill("accept it", "accept", this::accept);
      accept.setAccessibleText("accept this finding, for the reason beside");
      HBox.setHgrow(reason, Priority.ALWAYS);
      below.getChildren().setAll(new HBox(8, reason, accept), refused);
      open = true;
    }
  }

  /** How many findings, told apart on the tickets, go unaccepted with this one. */
  private int acceptedTogether() {
    List<Waiver> own = shown.report().accepting(finding);
    long all =
        Words.told(shown.report()).stream()
            .map(alike -> alike.get(0))
            .filter(f -> shown.report().accepting(f).stream().anyMatch(own::contains))
            .count();
    return (int) Math.max(0, all - 1);
  }

  private void takeOut() {
    withdraw(
        shown.design().waived().stream()
            .filter(w -> w.pointer().equals(finding.pointer()))
            .toList());
  }

  private void acceptNoLonger() {
    withdraw(shown.report().accepting(finding));
  }

  private void withdraw(List<Waiver> waivers) {
    session.acceptNoLonger(finding.check(), waivers, why -> refused.setText(why.orElse("")));
  }

  private static Button pill(String text, String id, Runnable does) {
    Button pill = new Button(text);
    pill.getStyleClass().setAll("pill");
    pill.setId(id);
    pill.setMinWidth(USE_PREF_SIZE);
    pill.setOnAction(e -> does.run());
    return pill;
  }

  private void key(KeyEvent e) {
    if (e.getCode() == KeyCode.ESCAPE
        && !(reason.getText().isEmpty() && refused.getText().isEmpty())) {
      reason.clear();
      refused.setText("");
      e.consume();
    }
  }

  private void accept() {
    String because = reason.getText().strip();
    if (because.isEmpty()) {
      refused.setText("Write down why, for whoever reads this later.");
      return;
    }
    session.waive(
        finding.check(),
        joint(),
        joint().isEmpty() ? part() : "",
        because,
        why -> refused.setText(why.orElse("")));
  }

  /** As the document calls it; both hands of a pair are accepted together. */
  private String joint() {
    return finding.joints().stream()
        .findFirst()
        .flatMap(
            label ->
                shown.chair().joints().stream().filter(j -> j.label().equals(label)).findFirst())
        .map(Joint::plan)
        // A groove follows from its panel; no document names it.
        .filter(plan -> plan.kind() != JointPlan.Kind.GROOVE)
        .or(this::bringsPieces)
        .map(JointPlan::name)
        .orElse("");
  }

  /** The joint that brought the dowel, loose tenon or wedge that is found fault with. */
  private Optional<JointPlan> bringsPieces() {
    return shown.chair().joints().stream()
        .filter(j -> shown.chair().pieces(j).stream().anyMatch(finding.parts()::contains))
        .map(Joint::plan)
        .findFirst();
  }

  private String part() {
    return finding.parts().stream()
        .findFirst()
        .flatMap(
            label ->
                shown.chair().parts().stream().filter(p -> p.label().equals(label)).findFirst())
        .map(Part::plan)
        .map(plan -> plan.common().name())
        .orElse("");
  }

  private static Label label(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
