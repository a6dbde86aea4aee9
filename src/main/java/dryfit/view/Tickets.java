package dryfit.view;

import dryfit.build.Chair;
import dryfit.document.Problem;
import dryfit.export.TextStyle;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** What was found, as shop tickets, what stops the build first. */
final class Tickets extends ScrollPane {
  /** Of the whole row, pixels. */
  static final double HEIGHT = 168;

  private static final double WIDE = 316;
  private static final double WIDEST = 1200;

  /** Beside a ticket that was brought into sight, pixels. */
  private static final double EDGE = 12;

  /** Height there is for the words below the heading. */
  private static final double ROOM = 88;

  /** So many ways to free what locks are told. */
  private static final int MOST_FREES = 4;

  private static final PseudoClass TAKEN = PseudoClass.getPseudoClass("taken");

  /** Of what keeps a chair from being built, as many as are told one by one. */
  private static final int MOST = 12;

  private final HBox row = new HBox(12);
  private final Consumer<Finding> open;
  private List<Object> there = List.of();

  /** The variant that is told of. */
  private String of = "";

  private Optional<Finding> taken = Optional.empty();

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
    addEventFilter(ScrollEvent.SCROLL, this::wheel);
    setPrefHeight(HEIGHT);
    setMinHeight(HEIGHT);
  }

  /** Another chair comes. */
  void clear() {
    there = List.of();
    of = "";
    row.getChildren().clear();
    setHvalue(0);
  }

  void show(FitReport report, TextStyle style) {
    List<Object> now =
        List.of(
            report.findings(), style, report.joints().size(), report.chair().design().variant());
    if (now.equals(there)) {
      return;
    }
    String variant = report.chair().design().variant();
    if (!variant.equals(of)) {
      of = variant;
      setHvalue(0);
    }
    there = now;
    List<Node> tickets = new ArrayList<>();
    // What is done with comes last, so that nothing is left to look at out of sight.
    Words.told(report).stream()
        .sorted(Comparator.comparing((List<Finding> alike) -> alike.get(0).waived().isPresent()))
        .forEach(alike -> tickets.add(ticket(alike, report.chair(), style)));
    tickets.add(joints(report));
    row.getChildren().setAll(tickets);
    take(taken);
  }

  /**
   * Tells that the joints fit and the chair still locks: before all others, where it was green.
   *
   * @param holding which parts, as sentences
   * @param rest whether any other part comes apart
   * @param pull draws apart what comes apart
   */
  void locked(String holding, List<String> frees, boolean rest, Runnable pull) {
    // The next findings are shown anew, whether they are others or not.
    there = List.of();
    row.getChildren()
        .removeIf(n -> n.getId() != null && List.of("locked", "frees", "fits").contains(n.getId()));
    Button ticket =
        paper(
            TicketEdge.Kind.STOPS,
            "Cannot be put together",
            holding,
            rest ? "click to see what comes apart" : "no other part comes off");
    ticket.setId("locked");
    ticket.setOnAction(e -> pull.run());
    List<Node> tickets = new ArrayList<>(List.of(ticket));
    for (String free : frees.subList(0, Math.min(MOST_FREES, frees.size()))) {
      String text = free.substring(0, 1).toUpperCase(Locale.ROOT) + free.substring(1) + ".";
      Button way = paper(TicketEdge.Kind.KNOW, "What would free them", text, "");
      way.setId("frees");
      way.setOnAction(e -> pull.run());
      tickets.add(way);
    }
    row.getChildren().addAll(0, tickets);
  }

  /** What keeps the chair from being built: what was found before is of another one. */
  void cannotBeBuilt(List<Problem> problems) {
    there = List.of();
    List<Node> tickets = new ArrayList<>();
    for (Problem problem : problems.subList(0, Math.min(MOST, problems.size()))) {
      tickets.add(
          paper(
              TicketEdge.Kind.STOPS,
              "Cannot be built",
              Words.problem(problem),
              Words.line(problem)));
    }
    if (problems.size() > MOST) {
      int rest = problems.size() - MOST;
      tickets.add(paper(TicketEdge.Kind.KNOW, "And more", rest + " more like these.", ""));
    }
    row.getChildren().setAll(tickets);
  }

  /** Marks the ticket of a finding as the one in hand. */
  void take(Optional<Finding> finding) {
    taken = finding;
    for (Node ticket : row.getChildren()) {
      boolean held =
          ticket.getUserData() instanceof Finding f
              && finding.filter(t -> isSame(t, f)).isPresent();
      ticket.pseudoClassStateChanged(TAKEN, held);
    }
  }

  /** All of a ticket that stands half out of sight. */
  private void bringIn(Button ticket) {
    double over = row.getWidth() - getViewportBounds().getWidth();
    if (over > 0) {
      double at = getHvalue() * over;
      double least = ticket.getLayoutX() + ticket.getWidth() - getViewportBounds().getWidth();
      double wanted = Math.max(least + EDGE, Math.min(at, ticket.getLayoutX() - EDGE));
      setHvalue(Math.max(0, Math.min(1, wanted / over)));
    }
  }

  private static boolean isSame(Finding a, Finding b) {
    return a.check().equals(b.check())
        && a.parts().equals(b.parts())
        && a.joints().equals(b.joints());
  }

  /** A wheel turns up and down; the row goes along. */
  private void wheel(ScrollEvent e) {
    double over = row.getWidth() - getViewportBounds().getWidth();
    if (over > 0 && e.getDeltaX() == 0 && e.getDeltaY() != 0) {
      setHvalue(Math.max(0, Math.min(1, getHvalue() - e.getDeltaY() / over)));
      e.consume();
    }
  }

  private Button ticket(List<Finding> alike, Chair chair, TextStyle style) {
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
    String text = Words.spoken(f.message(), chair);
    Button ticket = paper(kind(f), Words.severity(f), text, foot);
    ticket.setOnAction(
        e -> {
          bringIn(ticket);
          take(Optional.of(f));
          open.accept(f);
        });
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

  /** What may be left alone; green only where nothing stops the build. */
  private static Button joints(FitReport report) {
    Set<String> bad =
        report.findings().stream()
            .filter(Finding::stopsTheBuild)
            .flatMap(f -> f.joints().stream())
            .collect(Collectors.toSet());
    int all = report.joints().size();
    long seated = report.joints().stream().filter(j -> !bad.contains(j.joint().label())).count();
    String joints = seated == 1 ? " joint goes together" : " joints go together";
    String about =
        "“" + report.chair().design().variant() + "” · " + report.chair().parts().size() + " parts";
    if (report.fitsOnlyAsAccepted()) {
      return paper(
          TicketEdge.Kind.LOOK,
          "Fits only as accepted",
          seated + joints + " as drawn, but something that was accepted would stop the build.",
          about);
    }
    if (report.fits()) {
      Button fits =
          paper(
              TicketEdge.Kind.GOOD,
              "Fits",
              seated
                  + joints
                  + " as drawn, each by itself; nothing is in the way of anything else.",
              about);
      fits.setId("fits");
      return fits;
    }
    if (all == 0) {
      return paper(
          TicketEdge.Kind.KNOW, "Joints", "There are none; parts are in each other's way.", about);
    }
    String others =
        bad.isEmpty()
            ? "Each of the "
                + all
                + joints.replace("joints go", "joints goes")
                + " by itself; it is"
                + " parts that are in each other's way."
            : seated + " of " + all + joints + " as drawn; the others stop the build.";
    return paper(TicketEdge.Kind.KNOW, "Joints", others, about);
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
