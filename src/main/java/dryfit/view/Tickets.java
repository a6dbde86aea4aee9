package dryfit.view;

import dryfit.export.FindingText;
import dryfit.export.TextStyle;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** What was found, as shop tickets, what stops the build first. */
final class Tickets extends ScrollPane {
  private static final double WIDE = 316;
  private static final double WIDEST = 1200;

  /** Height there is for the words below the heading. */
  private static final double ROOM = 88;

  private final HBox row = new HBox(12);
  private final Consumer<Finding> open;
  private List<Object> there = List.of();

  /**
   * @param open told which finding was taken up
   */
  Tickets(Consumer<Finding> open) {
    this.open = open;
    row.getStyleClass().add("tickets");
    row.setId("tickets");
    setContent(row);
    setFitToHeight(true);
    setVbarPolicy(ScrollBarPolicy.NEVER);
    getStyleClass().add("ticket-row");
    setPrefHeight(168);
    setMinHeight(168);
  }

  void show(FitReport report, TextStyle style) {
    List<Object> now = List.of(report.findings(), style, report.joints().size());
    if (now.equals(there)) {
      return;
    }
    there = now;
    List<Node> tickets = new ArrayList<>();
    for (List<Finding> alike : FindingText.alike(report.findings())) {
      tickets.add(ticket(alike, style));
    }
    tickets.add(good(report));
    row.getChildren().setAll(tickets);
  }

  private Button ticket(List<Finding> alike, TextStyle style) {
    Finding f = alike.get(0);
    String figures = Words.figures(f, style);
    String both = alike.size() > 1 ? "the same on the other side" : "";
    String foot =
        f.waived()
            .map(why -> "accepted: " + why)
            .orElse(
                Stream.of(figures, both)
                    .filter(t -> !t.isEmpty())
                    .collect(Collectors.joining(" · ")));
    Button ticket = paper(kind(f), Words.severity(f), f.message(), foot);
    ticket.setOnAction(e -> open.accept(f));
    ticket.setUserData(f);
    return ticket;
  }

  private static TicketEdge.Kind kind(Finding f) {
    if (f.waived().isPresent()) {
      return TicketEdge.Kind.KNOW;
    }
    return switch (f.severity()) {
      case STOPS -> TicketEdge.Kind.STOPS;
      case LOOK -> TicketEdge.Kind.LOOK;
      case KNOW -> TicketEdge.Kind.KNOW;
    };
  }

  private static Button good(FitReport report) {
    long bad =
        report.findings().stream()
            .filter(Finding::stopsTheBuild)
            .flatMap(f -> f.joints().stream())
            .distinct()
            .count();
    long seated = report.joints().size() - bad;
    boolean clear = report.fits();
    return paper(
        TicketEdge.Kind.GOOD,
        "Good",
        seated
            + (seated == 1 ? " joint goes" : " joints go")
            + " together as drawn"
            + (clear ? "; nothing is in the way of anything else." : "."),
        report.chair().parts().size() + " parts");
  }

  private static Button paper(TicketEdge.Kind kind, String head, String text, String foot) {
    Label title = new Label(head);
    title.getStyleClass().addAll("ticket-title", kind.name().toLowerCase(java.util.Locale.ROOT));
    Label body = new Label(text);
    body.setWrapText(true);
    body.getStyleClass().add("ticket-text");
    VBox words = new VBox(3, title, body);
    if (!foot.isEmpty()) {
      Label small = new Label(foot);
      small.setWrapText(true);
      small.getStyleClass().add("quiet");
      words.getChildren().add(small);
    }
    double wide = wide(text, foot);
    words.setPrefWidth(wide - 34);
    words.setMaxWidth(wide - 34);
    HBox whole = new HBox(8, new TicketEdge(kind), words);
    Button ticket = new Button();
    ticket.setGraphic(whole);
    ticket.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
    ticket.getStyleClass().setAll("ticket");
    ticket.setAlignment(javafx.geometry.Pos.TOP_LEFT);
    ticket.setMinWidth(wide);
    ticket.setMaxWidth(wide);
    ticket.setMaxHeight(Double.MAX_VALUE);
    ticket.setAccessibleText(head + ": " + text);
    ticket.setTooltip(new javafx.scene.control.Tooltip(text + (foot.isEmpty() ? "" : "\n" + foot)));
    ticket.getTooltip().setWrapText(true);
    ticket.getTooltip().setMaxWidth(420);
    return ticket;
  }

  /** As wide as it takes for the words to be read to their end. */
  private static double wide(String text, String foot) {
    double wide = WIDE;
    while (wide < WIDEST && high(text, wide - 40) + high(foot, wide - 40) > ROOM) {
      wide += 40;
    }
    return wide;
  }

  private static double high(String text, double wide) {
    if (text.isEmpty()) {
      return 0;
    }
    Text measured = new Text(text);
    measured.setFont(Font.font("DejaVu Sans", 12));
    measured.setWrappingWidth(wide);
    return measured.getLayoutBounds().getHeight();
  }
}
