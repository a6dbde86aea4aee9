package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.export.TextStyle;
import dryfit.fit.Finding;
import dryfit.fit.JointSection;
import dryfit.measure.Length;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** Tickets and the card of a joint: what they say, and that all of it can be seen. */
class CardsWindowTest extends WindowTest {
  private void open(Path chair, String variant) {
    screen.open(chair);
    run(() -> screen.window.session().choose(variant));
    screen.settled();
  }

  /** Those of findings, and the one of the joints. */
  private static List<Button> everyTicket(FxRobot robot) {
    return robot.lookup(".ticket").queryAll().stream().map(Button.class::cast).toList();
  }

  private void takeUpTheFirst(FxRobot robot) {
    robot.clickOn(tickets(robot).get(0));
    screen.settled();
    screen.landed();
    OnScreen.await("the drawings", () -> robot.lookup(".sheet").queryAll().size() == 2);
  }

  private void size(double width, double height) {
    run(
        () -> {
          screen.stage.setWidth(width);
          screen.stage.setHeight(height);
        });
    screen.settled();
  }

  @Test
  void theDrawingComesFirstAndIsWhollyInSightAtEverySize(FxRobot robot) {
    open(HARBOUR, "deep tenons");
    takeUpTheFirst(robot);
    for (double[] size : new double[][] {{900, 600}, {1280, 800}, {1600, 1000}}) {
      size(size[0], size[1]);
      String at = size[0] + " x " + size[1];
      Node card = robot.lookup("#joint-card").query();
      for (Node sheet : robot.lookup(".sheet").queryAll()) {
        assertThat(inside(card, sheet)).as("a drawing at " + at).isTrue();
      }
      for (Node caption : robot.lookup(".caption").queryAll()) {
        assertThat(inside(card, caption)).as("a caption at " + at).isTrue();
      }
      if (size[1] >= 800) {
        assertThat(inside(card, robot.lookup("#accept").query())).as("accept at " + at).isTrue();
      }
      screen.photograph("43-card-" + (int) size[0]);
    }
    size(1280, 800);
  }

  private static boolean inside(Node frame, Node what) {
    return OnScreen.ask(
        () -> {
          Bounds outer = frame.localToScene(frame.getLayoutBounds());
          Bounds inner = what.localToScene(what.getLayoutBounds());
          return inner.getMinX() >= outer.getMinX() - 0.5
              && inner.getMaxX() <= outer.getMaxX() + 0.5
              && inner.getMinY() >= outer.getMinY() - 0.5
              && inner.getMaxY() <= outer.getMaxY() + 0.5;
        });
  }

  @Test
  void whatIsLeftToLookAtStandsBeforeWhatWasAccepted(FxRobot robot) {
    open(HARBOUR, "deep tenons");
    List<String> kinds =
        tickets(robot).stream()
            .filter(t -> t.getUserData() instanceof Finding)
            .map(t -> ((Finding) t.getUserData()))
            .map(f -> f.waived().isPresent() ? "accepted" : f.severity().name())
            .distinct()
            .toList();
    assertThat(kinds).containsExactly("STOPS", "LOOK", "KNOW", "accepted");
  }

  @Test
  void theCardSaysWhatTheTicketDoesNot(FxRobot robot) {
    open(HARBOUR, "deep tenons");
    Finding finding = (Finding) tickets(robot).get(0).getUserData();
    takeUpTheFirst(robot);
    List<String> said =
        OnScreen.ask(
            () ->
                robot.lookup("#joint-card").<Node>query().lookupAll("*").stream()
                    .filter(Labeled.class::isInstance)
                    .map(n -> ((Labeled) n).getText())
                    .toList());
    assertThat(said).noneMatch(text -> text.contains(finding.message()));
    assertThat(said)
        .contains(
            "limit from geometry: two pieces of wood cannot be in one place",
            "in the document: " + finding.pointer());
    assertThat(said.stream().filter(text -> text.startsWith("in the document"))).hasSize(1);
  }

  @Test
  void thePlaceInTheDocumentIsCopied(FxRobot robot) {
    open(HARBOUR, "deep tenons");
    Finding finding = (Finding) tickets(robot).get(0).getUserData();
    takeUpTheFirst(robot);
    robot.clickOn(".place");
    assertThat(OnScreen.ask(() -> Clipboard.getSystemClipboard().getString()))
        .isEqualTo(finding.pointer());
  }

  @Test
  void noGreenTicketStandsInTheRowOfAChairThatDoesNotFit(FxRobot robot) {
    open(HARBOUR, "as drawn");
    assertThat(robot.lookup(".edge-good").queryAll()).isNotEmpty();
    open(HARBOUR, "deep tenons");
    assertThat(robot.lookup(".edge-good").queryAll()).isEmpty();
    assertThat(robot.lookup("#tickets .good").queryAll()).isEmpty();
    List<Button> all = everyTicket(robot);
    assertThat(all.get(all.size() - 1).getAccessibleText())
        .isEqualTo("Joints: 24 of 28 joints go together as drawn; the others stop the build.");
  }

  @Test
  void aChairThatCannotBeBuiltHasNoTicketsOfTheOneBefore(FxRobot robot) {
    open(HARBOUR, "as drawn");
    List<String> before = everyTicket(robot).stream().map(Button::getAccessibleText).toList();
    // A rail so thick that it runs past its legs: sound as a document, but no chair.
    robot.clickOn("#find").write("rail thick");
    robot.doubleClickOn("#value-railThick").write("900").type(KeyCode.ENTER);
    OnScreen.await(
        "the verdict",
        () -> robot.lookup("#verdict").<Labeled>query().getText().startsWith("cannot be built"));
    screen.settled();
    List<String> told = everyTicket(robot).stream().map(Button::getAccessibleText).toList();
    assertThat(told)
        .isNotEmpty()
        .allSatisfy(t -> assertThat(t).startsWith("Cannot be built: ").doesNotContain("/parts"));
    assertThat(OnScreen.ask(() -> robot.lookup("#notice").<Labeled>query().getText()))
        .startsWith("Going along")
        .containsPattern("line \\d+ of the document");
    screen.photograph("46-cannot-be-built");
    robot.interact(() -> screen.window.session().undo());
    screen.settled();
    assertThat(everyTicket(robot).stream().map(Button::getAccessibleText).toList())
        .isEqualTo(before);
  }

  @Test
  void theLastTicketIsBroughtIntoSightByTheWheel(FxRobot robot) {
    size(1280, 800);
    open(Path.of("models/weir-settee.json"), "slats too far apart");
    ScrollPane row = (ScrollPane) robot.lookup(".ticket-row").query();
    List<Button> all = everyTicket(robot);
    robot.moveTo(all.get(0));
    robot.scroll(120, javafx.geometry.VerticalDirection.UP);
    robot.scroll(240, javafx.geometry.VerticalDirection.DOWN);
    screen.settled();
    double end = OnScreen.ask(row::getHvalue);
    assertThat(end).as("the wheel moves the row").isEqualTo(1);
    for (Node text : all.get(all.size() - 1).lookupAll(".label")) {
      assertThat(inside(row, text)).isTrue();
    }
    for (Button ticket : all) {
      for (Node text : ticket.lookupAll(".label")) {
        Labeled words = (Labeled) text;
        double room = words.getHeight();
        double needed = OnScreen.ask(() -> words.prefHeight(words.getWidth()));
        assertThat(room).as(words.getText()).isGreaterThanOrEqualTo(needed - 0.5);
        Bounds paper = OnScreen.ask(() -> ticket.localToScene(ticket.getLayoutBounds()));
        Bounds inked = OnScreen.ask(() -> words.localToScene(words.getLayoutBounds()));
        assertThat(inked.getMaxY()).as(words.getText()).isLessThanOrEqualTo(paper.getMaxY());
      }
    }
    screen.photograph("44-last-ticket");
  }

  @Test
  void noDrawingOfAnyJointIsCutOffAtItsFrame(FxRobot robot) {
    TextStyle style = new TextStyle(Length.Unit.MM, 64, false, false);
    for (String chair : List.of("harbour-armchair", "kiln-stool", "ferry-ladder-back")) {
      screen.open(Path.of("models", chair + ".json"));
      Shown shown = screen.shown();
      for (var fit : shown.report().joints()) {
        for (JointSection section : JointSection.of(shown.chair(), fit)) {
          String of = chair + ", " + fit.joint().label() + ", " + section.title();
          OnScreen.ask(
              () -> {
                for (double high : new double[] {78, 150, 186}) {
                  holds(
                      new SectionSheet(section, style, Optional.empty(), 300, high), 300, high, of);
                }
                return null;
              });
        }
      }
    }
  }

  private static void holds(SectionSheet sheet, double wide, double high, String of) {
    List<Bounds> figures = new ArrayList<>();
    for (Node child : sheet.getChildrenUnmodifiable()) {
      Bounds b = child.getBoundsInParent();
      if (child instanceof Labeled figure) {
        Bounds at =
            new javafx.geometry.BoundingBox(
                figure.getLayoutX(),
                figure.getLayoutY(),
                figure.getMinWidth(),
                figure.getMinHeight());
        assertThat(figures).as(of).noneMatch(f -> f.intersects(at));
        figures.add(at);
        b = at;
      }
      if (!b.isEmpty()) {
        assertThat(b.getMinX()).as(of).isGreaterThanOrEqualTo(1);
        assertThat(b.getMinY()).as(of).isGreaterThanOrEqualTo(1);
        assertThat(b.getMaxX()).as(of).isLessThanOrEqualTo(wide - 1);
        assertThat(b.getMaxY()).as(of).isLessThanOrEqualTo(high - 1);
      }
    }
    assertThat(sheet.lookupAll(".gap-value")).as(of).hasSameSizeAs(sheet.lookupAll(".gap-dot"));
  }

  @Test
  void everyActionLooksLikeOneAndHasAName(FxRobot robot) {
    open(HARBOUR, "deep tenons");
    takeUpTheFirst(robot);
    for (ButtonBase action : robot.lookup(n -> n instanceof ButtonBase).<ButtonBase>queryAll()) {
      assertThat(action.getStyleClass())
          .as(action.getText())
          .containsAnyOf("word", "pill", "ticket", "place", "card");
      String name =
          action.getAccessibleText() == null ? action.getText() : action.getAccessibleText();
      assertThat(name).isNotBlank();
    }
    assertThat(robot.lookup("#accept").query().getStyleClass()).containsExactly("pill");
  }

  @Test
  void aReasonThatWasBegunIsEndedByEscape(FxRobot robot) {
    open(HARBOUR, "deep tenons");
    takeUpTheFirst(robot);
    robot.clickOn("#accept");
    assertThat(OnScreen.ask(() -> robot.lookup("#not-accepted").<Labeled>query().getText()))
        .isEqualTo("Write down why, for whoever reads this later.");
    robot.clickOn("#accept-reason").write("tried").type(KeyCode.ESCAPE);
    screen.settled();
    assertThat(
            OnScreen.ask(
                () ->
                    robot
                        .lookup("#accept-reason")
                        .<javafx.scene.control.TextField>query()
                        .getText()))
        .isEmpty();
    assertThat(OnScreen.ask(() -> robot.lookup("#not-accepted").<Labeled>query().getText()))
        .isEmpty();
  }
}
