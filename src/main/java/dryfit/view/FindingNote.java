package dryfit.view;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan;
import dryfit.export.FindingText;
import dryfit.export.TextStyle;
import dryfit.fit.Finding;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/**
 * A finding to its last word, and the place to accept it: with a reason, which is written into the
 * document and stays in every report.
 */
final class FindingNote extends VBox {
  /** What nobody can accept, for nobody knows what it is. */
  private static final String NOT_MEASURED = "could-not-measure";

  private final Session session;
  private final Finding finding;
  private final TextField reason = new TextField();
  private final Label refused = new Label();
  private final VBox below = new VBox(5);
  private Shown shown;

  FindingNote(Session session, Finding finding, Shown shown, TextStyle style) {
    super(5);
    this.session = session;
    this.finding = finding;
    this.shown = shown;
    setId("finding-note");
    getStyleClass().add("finding-note");
    Label head = label(Words.severity(finding), "ticket-title");
    Label message = label(finding.message(), "ticket-text");
    message.setId("finding-message");
    getChildren().addAll(head, message);
    String figures = Words.figures(finding, style);
    if (!figures.isEmpty()) {
      getChildren().add(label(figures, "quiet"));
      getChildren().add(label("limit from " + FindingText.source(finding.source()), "quiet"));
    }
    if (!finding.pointer().isEmpty()) {
      getChildren().add(label("written at " + finding.pointer(), "quiet"));
    }
    reason.setId("accept-reason");
    reason.getStyleClass().add("find");
    reason.setPromptText("why you accept it");
    reason.setAccessibleText("why you accept this finding");
    reason.setOnAction(e -> accept());
    refused.getStyleClass().add("refused");
    refused.setWrapText(true);
    getChildren().add(below);
    standing(finding.waived());
  }

  /**
   * The chair was built anew.
   *
   * @return this if the finding stands as it did, one that tells what it has become, with the
   *     reason begun here, or nothing if it is gone
   */
  Optional<FindingNote> follow(Shown next, TextStyle style) {
    shown = next;
    Optional<Finding> still =
        next.report().findings().stream()
            .filter(f -> f.check().equals(finding.check()))
            .filter(f -> f.parts().equals(finding.parts()) && f.joints().equals(finding.joints()))
            .findFirst();
    if (still.isPresent() && !tellsTheSame(still.get())) {
      FindingNote changed = new FindingNote(session, still.get(), next, style);
      changed.reason.setText(reason.getText());
      return Optional.of(changed);
    }
    still.ifPresent(f -> standing(f.waived()));
    return still.map(f -> this);
  }

  /** Whichever unit it is told in. */
  private boolean tellsTheSame(Finding other) {
    return other.severity() == finding.severity()
        && Double.compare(other.measured(), finding.measured()) == 0;
  }

  private void standing(Optional<String> waived) {
    if (waived.isPresent()) {
      Label because = label("Accepted, because: " + waived.get(), "accepted");
      because.setId("accepted");
      below.getChildren().setAll(because);
    } else if (finding.check().equals(NOT_MEASURED)
        || finding.severity() == Finding.Severity.KNOW) {
      below.getChildren().clear();
    } else if (!below.getChildren().contains(reason)) {
      Button accept = new Button("accept it");
      accept.getStyleClass().setAll("word");
      accept.setId("accept");
      accept.setOnAction(e -> accept());
      below.getChildren().setAll(reason, accept, refused);
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
