package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Design;
import dryfit.fit.Finding;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.SubScene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/**
 * What a maker does at the bench beside turning the chair: accept, vary, measure, compare sizes.
 */
class MakerWindowTest extends WindowTest {
  @Test
  void aFindingThatIsTakenUpFollowsToAnotherVariantOrGoes(FxRobot robot) {
    screen.open(Path.of("models/orchard-side-chair.json"));
    OnScreen.ask(
        () -> {
          screen.window.session().choose("unmitred");
          return null;
        });
    screen.settled();
    // What is to be looked at there is only good to know where the tips are mitred.
    Button ticket =
        OnScreen.ask(
            () ->
                tickets(robot).stream()
                    .filter(t -> ((Finding) t.getUserData()).severity() == Finding.Severity.LOOK)
                    .findFirst()
                    .orElseThrow());
    Finding look = (Finding) ticket.getUserData();
    robot.clickOn(ticket);
    screen.settled();
    assertThat(robot.lookup("#accept").queryAll()).hasSize(1);
    OnScreen.ask(
        () -> {
          screen.window.session().choose("as drawn");
          return null;
        });
    screen.settled();
    assertThat(robot.lookup("#accept").queryAll()).isEmpty();
    assertThat(tickets(robot)).noneMatch(t -> ((Finding) t.getUserData()).equals(look));
  }

  @Test
  void aFindingIsAcceptedWithAReasonThatCanBeTakenBack(FxRobot robot) throws Exception {
    Path own = state.resolve("accept.json");
    // The chair without the waivers it ships with.
    Files.writeString(
        own, Files.readString(HARBOUR).replaceFirst("(?s)  \"waived\": \\[.*?\n  \\],\n", ""));
    screen.open(own);
    Button ticket = OnScreen.ask(() -> tickets(robot).get(0));
    Finding finding = (Finding) ticket.getUserData();
    assertThat(finding.severity()).isEqualTo(Finding.Severity.LOOK);
    robot.clickOn(ticket);
    screen.settled();
    screen.landed();
    assertThat(text(robot, "#finding-note .place"))
        .isEqualTo("in the document: " + finding.pointer());
    screen.photograph("23-finding-to-its-end");
    robot.clickOn("#accept");
    screen.settled();
    assertThat(screen.shown().document().text()).as("no reason").isEqualTo(Files.readString(own));
    robot.clickOn("#accept-reason").write("tried it in pine").type(KeyCode.ENTER);
    screen.settled();
    assertThat(text(robot, "#accepted")).isEqualTo("Accepted, because: tried it in pine");
    assertThat(screen.shown().document().text())
        .contains("\"check\": \"" + finding.check() + "\"")
        .contains("\"because\": \"tried it in pine\"");
    assertThat(
            screen.shown().report().findings().stream()
                .filter(f -> f.waived().equals(java.util.Optional.of("tried it in pine"))))
        .isNotEmpty();
    screen.photograph("24-accepted");
    robot.clickOn("#accept-no-longer");
    screen.settled();
    assertThat(screen.shown().document().text()).isEqualTo(Files.readString(own));
    assertThat(robot.lookup("#accepted").queryAll()).isEmpty();
    assertThat(robot.lookup("#accept").queryAll()).as("may be accepted again").hasSize(1);
    robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
    screen.settled();
    assertThat(text(robot, "#accepted")).isEqualTo("Accepted, because: tried it in pine");
    robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
    screen.settled();
    assertThat(screen.shown().document().text()).isEqualTo(Files.readString(own));
    assertThat(robot.lookup("#accepted").queryAll()).isEmpty();
  }

  @Test
  void anAcceptanceThatAcceptsNothingIsTakenOut(FxRobot robot) throws Exception {
    Path own = state.resolve("idle.json");
    String idle =
        "\"waived\": [\n    { \"check\": \"rocks\", \"because\": \"the floor is not level\" },\n";
    Files.writeString(own, Files.readString(HARBOUR).replaceFirst("\"waived\": \\[\n", idle));
    screen.open(own);
    Button ticket =
        OnScreen.ask(
            () ->
                tickets(robot).stream()
                    .filter(t -> ((Finding) t.getUserData()).check().equals("waiver-idle"))
                    .findFirst()
                    .orElseThrow());
    OnScreen.ask(
        () -> {
          ticket.fire();
          return null;
        });
    screen.settled();
    Button takeOut = robot.lookup("#take-out").query();
    // Twice, as with a hasty hand: only this one goes.
    OnScreen.ask(
        () -> {
          takeOut.fire();
          takeOut.fire();
          return null;
        });
    screen.settled();
    assertThat(screen.shown().document().text()).isEqualTo(Files.readString(HARBOUR));
  }

  @Test
  void aNewVariantBeginsAsTheChosenOneIs(FxRobot robot) throws Exception {
    Path own = Files.copy(HARBOUR, state.resolve("vary.json"));
    screen.open(own);
    robot.clickOn("low");
    screen.settled();
    robot.clickOn("#another-variant");
    screen.photograph("25-another-variant");
    robot.write("very low").type(KeyCode.ENTER);
    screen.settled();
    assertThat(screen.shown().design().variant()).isEqualTo("very low");
    assertThat(values(screen.shown().design()))
        .isEqualTo(values(design(screen.shown(), "low")))
        .isNotEqualTo(values(design(screen.shown(), Design.AS_DRAWN)));
    robot.clickOn("#another-variant").write("very low").type(KeyCode.ENTER);
    OnScreen.await(
        "the reason",
        () ->
            robot.lookup("#question .refused").queryAll().stream()
                .anyMatch(n -> ((Labeled) n).getText().contains("is there already")));
    screen.photograph("26-refused-name");
    robot.type(KeyCode.ESCAPE);
    assertThat(OnScreen.ask(() -> robot.lookup("#question").query().isVisible())).isFalse();
    robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
    screen.settled();
    assertThat(screen.shown().document().text()).isEqualTo(Files.readString(own));
    assertThat(screen.shown().design().variant()).isEqualTo("low");
  }

  private static List<Object> values(Design design) {
    return design.dimensions().stream().map(d -> (Object) d.value()).toList();
  }

  private static Design design(Shown shown, String variant) {
    return ((dryfit.document.Reading.Accepted<Design>) shown.document().design(variant)).value();
  }

  @Test
  void aFileThatIsChangedOutsideIsNoticedWhileItIsOpen(FxRobot robot) throws Exception {
    Path own = Files.copy(HARBOUR, state.resolve("outside.json"));
    screen.open(own);
    String theirs = Files.readString(HARBOUR).replace("Harbour armchair", "Quay armchair");
    Files.writeString(own, theirs);
    OnScreen.await("the question", () -> robot.lookup("#question").query().isVisible());
    screen.settled();
    screen.photograph("27-changed-outside");
    robot.clickOn("#take-theirs");
    screen.settled();
    assertThat(text(robot, "#chair-name")).isEqualTo("Quay armchair");
    Files.delete(own);
    OnScreen.await("the word", () -> robot.lookup("#notice").query().isVisible());
    assertThat(text(robot, "#notice")).startsWith("The file is gone");
    assertThat(screen.shown().document().text()).isEqualTo(theirs);
    assertThat(text(robot, "#save")).isEqualTo("save");
    robot.clickOn("#save");
    screen.settled();
    assertThat(own).hasContent(theirs);
    OnScreen.await("nothing to say any more", () -> !robot.lookup("#notice").query().isVisible());
    OnScreen.await("saved", () -> robot.lookup("#save").<Button>query().getText().equals("saved"));
  }

  @Test
  void aNewChairIsSavedUnderItsNameAndNotAmongTheDemoChairs(FxRobot robot) {
    screen.open(HARBOUR);
    robot.clickOn("#another-chair");
    OnScreen.await("the kinds", () -> !robot.lookup("#new-stool").queryAll().isEmpty());
    robot.clickOn("#new-stool");
    OnScreen.await("the stool", () -> screen.window.session().shown().get() != null);
    screen.settled();
    robot.clickOn("#save");
    screen.settled();
    assertThat(screen.desk.proposed).hasSize(1).allMatch(name -> name.endsWith("stool.json"));
    assertThat(screen.desk.folders)
        .doesNotContain(HARBOUR.toAbsolutePath().getParent())
        .allMatch(Path::isAbsolute);
  }

  @Test
  void anotherChairIsToldFromItsFirstTicketOn(FxRobot robot) {
    screen.open(Path.of("models/weir-settee.json"));
    run(() -> screen.window.session().choose("slats too far apart"));
    screen.settled();
    ScrollPane strip = robot.lookup(".ticket-row").query();
    Button last = tickets(robot).get(tickets(robot).size() - 1);
    run(() -> strip.setHvalue(1));
    screen.settled();
    screen.open(HARBOUR);
    assertThat(OnScreen.ask(strip::getHvalue)).isZero();
    assertThat(tickets(robot)).doesNotContain(last);
  }

  @Test
  void aTicketThatIsHalfOutOfSightComesIntoIt(FxRobot robot) {
    screen.open(HARBOUR);
    run(() -> screen.window.session().choose("deep tenons"));
    screen.settled();
    ScrollPane strip = robot.lookup(".ticket-row").query();
    run(() -> strip.setHvalue(0.2));
    screen.settled();
    Button first = tickets(robot).get(0);
    assertThat(OnScreen.ask(() -> first.localToScene(0, 0).getX())).isNegative();
    run(first::fire);
    screen.settled();
    assertThat(OnScreen.ask(() -> first.localToScene(0, 0).getX())).isNotNegative();
  }

  @Test
  void findingsSpeakTheUnitThatWasClicked(FxRobot robot) {
    screen.open(HARBOUR);
    String before = OnScreen.ask(() -> ((Finding) tickets(robot).get(0).getUserData()).message());
    assertThat(before).contains(" mm");
    robot.clickOn("#unit");
    screen.settled();
    for (Button ticket : OnScreen.ask(() -> tickets(robot))) {
      assertThat(((Finding) ticket.getUserData()).message()).doesNotContain(" mm");
    }
    screen.photograph("12-inches");
    robot.clickOn("#unit");
    screen.settled();
    assertThat(OnScreen.ask(() -> ((Finding) tickets(robot).get(0).getUserData()).message()))
        .isEqualTo(before);
  }

  @Test
  void placesAreMeasuredAlongTheirPartAndFacesAgainstEachOther(FxRobot robot) {
    screen.open(HARBOUR);
    screen.click(robot, "#view-front");
    screen.landed();
    robot.clickOn("#measure");
    Shown shown = screen.shown();
    for (String label : List.of("front-leg right", "front-leg left")) {
      robot.clickOn(screen.pointOn(shown, label));
    }
    screen.settled();
    assertThat(text(robot, "#measured"))
        .contains("as front leg, right lies: ")
        .contains(" the way of its length, ")
        .containsPattern("(face|edge) to (face|edge): ");
    robot.clickOn("#unit");
    screen.settled();
    Labeled told = robot.lookup("#measured").query();
    double right = OnScreen.ask(() -> told.getBoundsInParent().getMaxX());
    assertThat(right).isLessThanOrEqualTo(OnScreen.ask(() -> screen.window.chair().getWidth()));
    screen.photograph("11-measured");
  }

  @Test
  void aSitterOrARuleStandsBesideTheChair(FxRobot robot) {
    screen.open(HARBOUR);
    WritableImage plain = OnScreen.picture(screen.window.chair());
    robot.clickOn("#view-front");
    screen.landed();
    robot.clickOn("#sitter");
    robot.moveTo("#chair").scroll(4, javafx.geometry.VerticalDirection.DOWN);
    screen.settled();
    assertThat(text(robot, "#sitter-size")).contains("stands 1626 mm").contains("ANSUR II");
    OnScreen.ask(
        () -> {
          screen.window.chair().seeAll();
          return null;
        });
    screen.landed();
    screen.photograph("28-sitter");
    for (String below : new String[] {"#sitter-size", "#measure"}) {
      javafx.scene.Node node = robot.lookup(below).query();
      double right = OnScreen.ask(() -> node.localToScene(node.getBoundsInLocal()).getMaxX());
      double most =
          OnScreen.ask(
              () -> {
                ChairView chair = screen.window.chair();
                return chair.localToScene(chair.getBoundsInLocal()).getMaxX();
              });
      assertThat(right).as(below + " is not cut off").isLessThanOrEqualTo(most);
    }
    assertThat(OnScreen.difference(plain, OnScreen.picture(screen.window.chair())))
        .isGreaterThan(0.03);
    robot.clickOn("#a-man");
    screen.settled();
    assertThat(text(robot, "#sitter-size")).contains("stands 1755 mm");
    robot.clickOn("#rule");
    screen.settled();
    assertThat(OnScreen.ask(() -> screen.window.chair().look().get().scale()))
        .isEqualTo(new Scale.Rule(dryfit.measure.Length.Unit.MM));
    screen.photograph("29-rule");
    robot.clickOn("#unit");
    screen.settled();
    assertThat(OnScreen.ask(() -> screen.window.chair().look().get().scale()))
        .isEqualTo(new Scale.Rule(dryfit.measure.Length.Unit.IN));
    screen.photograph("30-rule-inches");
  }

  @Test
  void theFootprintIsOnTheFloor(FxRobot robot) {
    screen.open(HARBOUR);
    SubScene drawn = (SubScene) screen.window.chair().lookup("#drawing");
    assertThat(OnScreen.ask(() -> drawn.getRoot().lookupAll("#footprint"))).hasSize(1);
    Footprint print = Footprint.of(screen.shown().report().whole()).orElseThrow();
    assertThat(print.corners()).hasSize(4);
    double width = 0;
    for (dryfit.geometry.Vec3 c : print.corners()) {
      width = Math.max(width, 2 * c.x());
      assertThat(c.z()).isCloseTo(0, within(0.5));
    }
    assertThat(width).isBetween(500.0, 600.0);
  }
}
