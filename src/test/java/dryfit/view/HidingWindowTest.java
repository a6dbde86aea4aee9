package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** Parts are taken out of sight, and shown alone. */
class HidingWindowTest extends WindowTest {
  private Optional<String> at(javafx.geometry.Point2D place) {
    return OnScreen.ask(
        () -> {
          ChairView chair = screen.window.chair();
          javafx.geometry.Point2D own = chair.screenToLocal(place);
          return chair.touch(own.getX(), own.getY()).map(ChairView.Touch::part);
        });
  }

  @Test
  void aPartIsHiddenShownAloneAndAllAreShownAgain(FxRobot robot) {
    screen.open(HARBOUR);
    screen.click(robot, "#view-front");
    screen.landed();
    screen.settled();
    Shown shown = screen.shown();
    long all = screen.wood();
    javafx.geometry.Point2D leg = screen.pointOn(shown, "front-leg right");
    robot.clickOn(leg);
    screen.settled();
    robot.clickOn("#hide");
    screen.settled();
    long without = screen.wood();
    assertThat(without).as("pixels of wood without the leg").isLessThan(all * 98 / 100);
    assertThat(at(leg))
        .as("what is hidden is not pointed at")
        .isNotEqualTo(Optional.of("front-leg right"));
    screen.photograph("50-hidden");

    robot.clickOn("#show-all");
    screen.settled();
    assertThat(at(leg)).contains("front-leg right");

    robot.clickOn(leg);
    screen.settled();
    robot.clickOn("#show-alone");
    screen.settled();
    // Nothing taken up any more, for that is coloured.
    javafx.geometry.Bounds paper =
        OnScreen.ask(
            () -> screen.window.chair().localToScreen(screen.window.chair().getLayoutBounds()));
    robot.clickOn(paper.getMinX() + 8, paper.getMinY() + 8);
    screen.settled();
    long alone = screen.wood();
    assertThat(alone).as("pixels of the leg alone").isBetween(all / 100, all / 3);
    assertThat(at(leg)).contains("front-leg right");
    screen.photograph("51-alone");
    robot.clickOn("#show-all");
    screen.settled();
    assertThat(screen.wood()).as("all are there again").isGreaterThan(without);
  }
}
