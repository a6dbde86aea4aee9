package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** Variants in the window: the chair before its findings, what differs, one laid over the other. */
class BesideWindowTest extends WindowTest {
  @Test
  void theChairIsSeenFirstAndItsFindingsFollow(FxRobot robot) {
    screen.open(HARBOUR);
    List<Shown> seen = new ArrayList<>();
    OnScreen.ask(
        () -> {
          screen.window.session().shown().addListener((o, was, now) -> seen.add(now));
          return null;
        });
    TextField seat = robot.lookup("#value-seatTop").query();
    robot.doubleClickOn(seat).write("430").type(KeyCode.ENTER);
    screen.settled();
    assertThat(seen).hasSize(2);
    assertThat(seen.get(0).fit()).isEmpty();
    assertThat(seen.get(1).fit()).isPresent();
    assertThat(seen.get(1).is(seen.get(0))).isTrue();
    assertThat(seen.get(1).report().chair()).isSameAs(seen.get(0).chair());
  }

  @Test
  void whatDiffersIsToldAndTwoVariantsAreLaidOverEachOther(FxRobot robot) {
    screen.open(HARBOUR);
    robot.clickOn("#beside");
    OnScreen.await("three chairs", () -> robot.lookup(".beside").queryAll().size() == 3);
    screen.settled();
    List<String> told =
        robot.lookup(".differences .label").queryAll().stream()
            .map(n -> ((Labeled) n).getText())
            .toList();
    assertThat(told)
        .contains("seat top", "440.0 mm", "405.0 mm", "mass", "board measure, no allowances")
        .contains("angles at the bench", "gaps, walls and reveals", "findings that not all have")
        .contains("does not fit");
    assertThat(told).anyMatch(t -> t.startsWith("Stops the build: "));
    OnScreen.await(
        "which go together",
        () ->
            robot.lookup(".differences .label").queryAll().stream()
                .map(n -> ((Labeled) n).getText())
                .toList()
                .containsAll(List.of("can be put together", "yes", "not tried")));
    screen.photograph("15-side-by-side");
    ScrollPane below = robot.lookup("#differing").query();
    Node name = robot.lookup(".differences .heading").queryAll().iterator().next();
    double high = OnScreen.ask(() -> name.localToScene(0, 0).getY());
    Node figure = robot.lookup(".differences .figure").queryAll().iterator().next();
    assertThat(OnScreen.ask(() -> name.localToScene(0, 0).getX()))
        .as("each name over its figures")
        .isEqualTo(OnScreen.ask(() -> figure.localToScene(0, 0).getX()));
    OnScreen.ask(
        () -> {
          below.setVvalue(0.5);
          return null;
        });
    screen.settled();
    double then = OnScreen.ask(() -> name.localToScene(0, 0).getY());
    assertThat(then).as("names stay while the figures go by").isCloseTo(high, within(1.0));
    screen.photograph("49-differences-further-down");

    robot.clickOn("#lay-over");
    screen.settled();
    ChairView both = robot.lookup("#chair-over").query();
    assertThat(screen.wood(both)).as("one in wood").isGreaterThan(1000);
    assertThat(blue(OnScreen.picture(both))).as("the other in blue").isGreaterThan(1000);
    screen.photograph("17-laid-over");
    robot.clickOn("#over-it-in-blue-ink-2");
    screen.settled();
    screen.photograph("18-laid-over-tenons");
    robot.clickOn("#in-wood-1");
    screen.settled();
    assertThat(blue(OnScreen.picture(both))).isGreaterThan(1000);
    robot.clickOn("#lay-over");
    screen.settled();
    assertThat(robot.lookup(".beside").queryAll()).hasSize(3);
    robot.type(KeyCode.ESCAPE);
    assertThat(robot.lookup(".beside").queryAll()).as("Escape leads back").isEmpty();
  }

  @Test
  void theMakerChoosesWhichOfManyStandBesideEachOther(FxRobot robot) throws Exception {
    Path four = Files.copy(HARBOUR, state.resolve("four.json"));
    screen.open(four);
    OnScreen.ask(
        () -> {
          screen.window.session().addVariant("tall", why -> {});
          return null;
        });
    screen.settled();
    robot.clickOn("#beside");
    screen.settled();
    assertThat(names(robot)).containsExactly("as drawn", "low", "tall");
    screen.click(robot, "#beside-deep-tenons");
    assertThat(names(robot))
        .as("the oldest makes room")
        .containsExactly("low", "deep tenons", "tall");
    screen.photograph("16-chosen-beside");
    screen.click(robot, "#beside-low");
    assertThat(names(robot)).containsExactly("deep tenons", "tall");
    screen.click(robot, "#beside-tall");
    assertThat(names(robot)).as("two at least").containsExactly("deep tenons", "tall");
  }

  private static List<String> names(FxRobot robot) {
    return OnScreen.ask(
        () ->
            robot.lookup(".beside > .heading").queryAll().stream()
                .map(n -> ((Labeled) n).getText())
                .toList());
  }

  private static long blue(WritableImage image) {
    long count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        Color c = image.getPixelReader().getColor(x, y);
        count += c.getBlue() - c.getRed() > 0.12 ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void inASmallWindowEveryDesignCanBeChosenAndTheTableBeRead(FxRobot robot) {
    screen.open(Path.of("models/orchard-side-chair.json"));
    run(
        () -> {
          screen.stage.setWidth(900);
          screen.stage.setHeight(600);
        });
    robot.clickOn("#beside");
    OnScreen.await("the chairs", () -> robot.lookup(".beside").queryAll().size() >= 2);
    screen.settled();
    Node side = robot.lookup("#side-by-side").query();
    double edge = OnScreen.ask(() -> side.localToScene(side.getLayoutBounds()).getMaxX());
    List<Node> choices =
        robot.lookup(".view-bar .word").queryAll().stream().filter(Node::isVisible).toList();
    assertThat(choices).hasSizeGreaterThan(3);
    for (Node choice : choices) {
      assertThat(OnScreen.ask(() -> choice.localToScene(choice.getLayoutBounds()).getMaxX()))
          .as(choice.getId())
          .isLessThanOrEqualTo(edge);
    }
    screen.photograph("60-beside-in-a-small-window");
    // A ticket leads back to the one chair, and to the place in it.
    Button ticket = tickets(robot).get(0);
    run(ticket::fire);
    screen.settled();
    screen.landed();
    assertThat(robot.lookup("#side-by-side").queryAll()).isEmpty();
    assertThat(robot.lookup("#ring").query().isVisible()).isTrue();
    assertThat(robot.lookup("#joint-card").queryAll()).isNotEmpty();
  }
}
