package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** The list of dimensions: what is typed there, and how it works without a mouse. */
class DimensionsWindowTest extends WindowTest {
  private static TextField field(FxRobot robot, String name) {
    return robot.lookup("#value-" + name).query();
  }

  private static void type(FxRobot robot, String name, String typed) {
    TextField field = field(robot, name);
    robot.interact(
        () -> {
          field.requestFocus();
          field.selectAll();
        });
    robot.write(typed);
  }

  @Test
  void aBadValueIsAnsweredInTheMakersWordsAndEscapePutsTheOldOneBack(FxRobot robot) {
    screen.open(HARBOUR);
    String before = screen.shown().document().text();
    type(robot, "seatTop", "900");
    robot.type(KeyCode.ENTER);
    OnScreen.await("the reason", () -> !robot.lookup("#refused-seatTop").queryAll().isEmpty());
    assertThat(text(robot, "#refused-seatTop"))
        .isEqualTo("“900” is outside its range. Seat top is a length from 380 to 480 mm.");
    assertThat(field(robot, "seatTop").getText()).isEqualTo("900");
    screen.photograph("40-not-taken");
    robot.type(KeyCode.ESCAPE);
    screen.settled();
    assertThat(field(robot, "seatTop").getText()).isEqualTo("440");
    assertThat(robot.lookup("#refused-seatTop").queryAll()).isEmpty();

    type(robot, "seatTop", "sofa");
    robot.type(KeyCode.TAB);
    OnScreen.await("the reason", () -> !robot.lookup("#refused-seatTop").queryAll().isEmpty());
    screen.settled();
    assertThat(field(robot, "seatTop").getText()).as("no wrong text stays").isEqualTo("440");
    assertThat(text(robot, "#refused-seatTop")).startsWith("“sofa” is neither");
    assertThat(screen.shown().document().text()).isEqualTo(before);

    type(robot, "seatTop", "17 3/8");
    robot.type(KeyCode.TAB);
    OnScreen.await("the reason", () -> !robot.lookup("#refused-seatTop").queryAll().isEmpty());
    assertThat(text(robot, "#refused-seatTop"))
        .isEqualTo(
            "“17 3/8” has no unit. In inches it is written 17 3/8 in. Seat top is a length from 380"
                + " to 480 mm.");
    assertThat(screen.shown().document().text()).isEqualTo(before);

    type(robot, "seatTop", "430");
    robot.type(KeyCode.TAB);
    screen.settled();
    assertThat(screen.shown().document().text()).contains("\"value\": 430");
  }

  @Test
  void aSizeWithWhichNoChairCanBeBuiltStandsThereAndSaysSo(FxRobot robot) {
    screen.open(HARBOUR);
    type(robot, "railThick", "400");
    robot.type(KeyCode.ENTER);
    OnScreen.await("the reason", () -> !robot.lookup("#refused-railThick").queryAll().isEmpty());
    assertThat(text(robot, "#refused-railThick")).startsWith("With this the chair cannot be built");
    assertThat(text(robot, "#verdict")).isEqualTo("cannot be built as it is written");
    robot.type(KeyCode.TAB);
    screen.settled();
    assertThat(field(robot, "railThick").getText()).as("as in the document").isEqualTo("400");
    assertThat(robot.lookup("#refused-seatTop").queryAll()).isEmpty();
    // Others go by themselves; this holds until the size is changed.
    WaitForAsyncUtils.sleep(DimensionRow.TOLD_SECONDS + 1, TimeUnit.SECONDS);
    assertThat(text(robot, "#refused-railThick")).startsWith("With this the chair cannot be built");
    assertThat(robot.lookup("#old").query().isVisible()).as("the picture is of before").isTrue();
    robot.clickOn("#unit");
    screen.settled();
    assertThat(field(robot, "railThick").getText()).as("in inches, 400 mm").isEqualTo("15 3/4");
    assertThat(text(robot, "#verdict")).isEqualTo("cannot be built as it is written");
    assertThat(tickets(robot)).as("findings of the chair before").isEmpty();
    robot.clickOn("#write-files");
    assertThat(text(robot, "#write-warning")).startsWith("As it is written the chair cannot be");
    assertThat(robot.lookup("#write-into").queryAll()).as("nothing to be chosen").isEmpty();
    robot.type(KeyCode.ESCAPE);
    robot.clickOn("#unit");
    screen.settled();
    screen.photograph("55-cannot-be-built");
    robot.clickOn("#undo");
    screen.settled();
    assertThat(field(robot, "railThick").getText()).isEqualTo("22");
    assertThat(robot.lookup("#old").query().isVisible()).isFalse();
    assertThat(OnScreen.ask(() -> screen.window.chair().getOpacity())).isEqualTo(1);
    assertThat(robot.lookup("#refused-railThick").queryAll()).isEmpty();
  }

  @Test
  void aNumberInAFormulaNeedsAUnitWhereAnotherIsShownThanWritten(FxRobot robot) {
    screen.open(HARBOUR);
    robot.clickOn("#unit");
    screen.settled();
    String before = screen.shown().document().text();
    type(robot, "seatTop", "arm rise * 2 - 1");
    robot.type(KeyCode.ENTER);
    OnScreen.await("the reason", () -> !robot.lookup("#refused-seatTop").queryAll().isEmpty());
    assertThat(text(robot, "#refused-seatTop"))
        .startsWith("“arm rise * 2 - 1” has a number without");
    assertThat(screen.shown().document().text()).isEqualTo(before);
    type(robot, "seatTop", "arm rise * 2 - 1 in");
    robot.type(KeyCode.ENTER);
    screen.settled();
    assertThat(screen.shown().document().text()).contains("\"armRise * 2 - 1 in\"");
  }

  @Test
  void aMarkStaysWhereItWasLeftWhileOlderChairsAreStillComing(FxRobot robot) {
    screen.open(HARBOUR);
    SteelRule rule = robot.lookup("#rule-seatTop").query();
    List<Double> stood = new ArrayList<>();
    run(rule::requestFocus);
    for (int i = 0; i < 6; i++) {
      robot.type(KeyCode.RIGHT);
    }
    double left = OnScreen.ask(() -> rule.value().get());
    run(() -> rule.value().addListener((o, was, now) -> stood.add(now.doubleValue())));
    screen.settled();
    assertThat(left).isEqualTo(470);
    assertThat(stood).as("places it went to by itself").allMatch(at -> at == 470);
    assertThat(screen.shown().document().text()).contains("\"value\": 470");

    // Slid and taken back before a chair came of it: the mark goes back too.
    run(
        () -> {
          rule.executeAccessibleAction(AccessibleAction.INCREMENT);
          screen.window.session().undo();
        });
    screen.settled();
    String told = field(robot, "seatTop").getText();
    assertThat(OnScreen.ask(() -> rule.value().get())).isEqualTo(Double.parseDouble(told));
    assertThat(screen.shown().document().text()).contains("\"value\": " + told);
  }

  @Test
  void aLongFormulaIsSeenWholeWhileItIsTyped(FxRobot robot) {
    screen.open(HARBOUR);
    double narrow = OnScreen.ask(() -> field(robot, "seatTop").getWidth());
    String formula = "arm rise * 2 + 10";
    type(robot, "seatTop", formula);
    screen.settled();
    TextField seat = field(robot, "seatTop");
    assertThat(seat.isFocused()).isTrue();
    assertThat(OnScreen.ask(seat::getWidth)).isGreaterThan(1.5 * narrow);
    Node panel = robot.lookup("#dimensions").query();
    double edge = OnScreen.ask(() -> panel.localToScene(panel.getLayoutBounds()).getMaxX());
    for (Node value : robot.lookup("#dimensions .value").queryAll()) {
      assertThat(OnScreen.ask(() -> value.localToScene(value.getLayoutBounds()).getMaxX()))
          .as(value.getId() + " is in sight")
          .isLessThan(edge);
    }
    screen.photograph("58-long-formula");
    robot.type(KeyCode.ESCAPE);
    screen.settled();
    assertThat(OnScreen.ask(seat::getWidth)).isEqualTo(narrow);
    assertThat(seat.getText()).isEqualTo("440");
  }

  @Test
  void whatWasWrittenInAnotherUnitStaysWrittenAndIsShownAsARuleShowsIt(FxRobot robot)
      throws Exception {
    Path own = Files.copy(Path.of("models/lantern-side-chair.json"), state.resolve("own.json"));
    screen.open(own);
    type(robot, "seatTop", "440 mm");
    robot.type(KeyCode.ENTER);
    screen.settled();
    assertThat(screen.shown().document().text()).contains("\"value\": \"440 mm\"");
    assertThat(field(robot, "seatTop").getText()).isEqualTo("17 21/64");
    assertThat(text(robot, "#below-seatTop")).isEqualTo("written as 440 mm");
    screen.photograph("41-another-unit");
    String written = screen.shown().document().text();
    robot.type(KeyCode.ENTER);
    robot.type(KeyCode.TAB);
    screen.settled();
    assertThat(screen.shown().document().text()).as("nothing was typed").isEqualTo(written);

    robot.clickOn("#unit");
    screen.settled();
    assertThat(field(robot, "seatTop").getText()).isEqualTo("440");
    assertThat(robot.lookup("#below-seatTop").queryAll()).isEmpty();
    assertThat(field(robot, "frontLeg").getText()).isEqualTo("47.63");
    assertThat(field(robot, "frontLeg").getAccessibleHelp()).isEqualTo("written as 1-7/8 in");
  }

  @Test
  void everyRowIsReachedByTabScrolledWhollyIntoSightAndSaidAloud(FxRobot robot) {
    screen.open(HARBOUR);
    ScrollPane list = (ScrollPane) robot.lookup("#dimensions .side-scroll").query();
    robot.interact(() -> robot.lookup("#find").query().requestFocus());
    int fields = robot.lookup(".value").queryAll().size();
    int met = 0;
    for (int i = 0; i < 3 * fields && met < fields; i++) {
      robot.type(KeyCode.TAB);
      Node held = OnScreen.ask(() -> screen.stage.getScene().getFocusOwner());
      if (held instanceof TextField field) {
        met++;
        assertThat(inside(list, field)).as(field.getId() + " is in sight").isTrue();
        assertThat(field.getAccessibleText()).as(field.getId()).isNotBlank();
        Node row = field.getParent().getParent();
        String note = ((DimensionRow) row).note();
        assertThat(OnScreen.ask(() -> robot.lookup("#help").<Labeled>query().getText()))
            .as("the note of what is in hand")
            .isEqualTo(note);
      } else {
        assertThat(held).isInstanceOf(SteelRule.class);
        assertThat(inside(list, held)).as(held.getId() + " is in sight").isTrue();
      }
    }
    assertThat(met).isEqualTo(fields);
    screen.photograph("42-last-dimension");
  }

  private static boolean inside(ScrollPane pane, Node node) {
    return OnScreen.ask(
        () -> {
          pane.layout();
          Bounds view = pane.localToScene(pane.getLayoutBounds());
          Bounds what = node.localToScene(node.getLayoutBounds());
          return what.getMinY() >= view.getMinY() - 0.5 && what.getMaxY() <= view.getMaxY() + 0.5;
        });
  }

  @Test
  void aRuleWorksByItsKeysAndByAScreenReader(FxRobot robot) {
    screen.open(HARBOUR);
    SteelRule rule = robot.lookup("#rule-seatTop").query();
    robot.interact(rule::requestFocus);
    robot.type(KeyCode.RIGHT);
    screen.settled();
    assertThat(screen.shown().document().text()).contains("\"value\": 445");
    robot.type(KeyCode.HOME);
    screen.settled();
    assertThat(screen.shown().document().text()).contains("\"value\": 380");
    robot.type(KeyCode.END);
    screen.settled();
    assertThat(screen.shown().document().text()).contains("\"value\": 480");
    robot.interact(() -> rule.executeAccessibleAction(AccessibleAction.DECREMENT));
    screen.settled();
    assertThat(screen.shown().document().text()).contains("\"value\": 475");
    assertThat(OnScreen.ask(() -> rule.queryAccessibleAttribute(AccessibleAttribute.TEXT)))
        .isEqualTo("seat top, to slide, 475 mm");
  }

  @Test
  void theSearchTellsWhenNothingIsCalledSoAndEscapeEndsIt(FxRobot robot) {
    screen.open(HARBOUR);
    int all = robot.lookup(".dimension").queryAll().size();
    robot.clickOn("#find").write("arm");
    assertThat(robot.lookup(".dimension").queryAll()).hasSizeBetween(1, all - 1);
    robot.write("adillo");
    assertThat(text(robot, "#none-found")).isEqualTo("No dimension has “armadillo” in its name.");
    robot.type(KeyCode.ESCAPE);
    assertThat(robot.lookup(".dimension").queryAll()).hasSize(all);
    assertThat(text(robot, "#below-armTop")).isEqualTo("= seat top + arm rise");
  }
}
