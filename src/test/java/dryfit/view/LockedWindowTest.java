package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.control.Button;
import javafx.scene.control.Slider;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/**
 * A chair whose joints all fit and that still cannot be put together is not told as one that fits.
 */
class LockedWindowTest extends WindowTest {
  private static final Path MILLRACE = Path.of("models/millrace-armchair.json");

  @Test
  void aChairThatLocksIsNotGreenForLong(FxRobot robot) {
    screen.open(MILLRACE);
    run(() -> screen.window.session().choose("legs askew"));
    screen.settled();
    assertThat(screen.shown().report().fits()).as("each joint by itself").isTrue();
    OnScreen.await("the ticket", () -> !robot.lookup("#locked").queryAll().isEmpty());
    Button ticket = robot.lookup("#locked").query();
    assertThat(text(robot, "#verdict")).isEqualTo("fits, but cannot be put together");
    assertThat(ticket.getAccessibleText())
        .startsWith("Cannot be put together: Lock one another")
        .contains("seat");
    assertThat(OnScreen.ask(() -> ticket.getParent().getChildrenUnmodifiable().get(0)))
        .isSameAs(ticket);
    screen.photograph("53-cannot-be-put-together");
    robot.clickOn(ticket);
    screen.settled();
    assertThat(OnScreen.ask(() -> robot.lookup("#apart").<Slider>query().getValue())).isEqualTo(1);

    // As drawn it goes together, and the word is gone.
    run(() -> screen.window.session().choose("as drawn"));
    screen.settled();
    assertThat(text(robot, "#verdict")).startsWith("fits").doesNotContain("put together");
    assertThat(robot.lookup("#locked").queryAll()).isEmpty();
  }
}
