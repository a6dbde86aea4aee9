package dryfit.view;

import dryfit.fit.Finding;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;

/** How every test of the window begins and ends: a window of its own, with nothing kept yet. */
@ExtendWith(ApplicationExtension.class)
abstract class WindowTest {
  static final Path HARBOUR = Path.of("models/harbour-armchair.json");

  @TempDir static Path state;

  OnScreen screen;

  /** Not a {@code @Start} method: those are only found in the class of the test itself. */
  @BeforeEach
  void begin() {
    screen =
        OnScreen.ask(() -> new OnScreen(FxToolkit.toolkitContext().getRegisteredStage(), state));
  }

  @AfterEach
  void close() {
    screen.close();
  }

  /** What a control says. */
  static String text(FxRobot robot, String query) {
    return OnScreen.ask(() -> robot.lookup(query).<Labeled>query().getText());
  }

  /** The tickets of findings, in the order in which they hang. */
  static List<Button> tickets(FxRobot robot) {
    return robot.lookup(".ticket").queryAll().stream()
        .filter(n -> n.getUserData() instanceof Finding)
        .map(Button.class::cast)
        .toList();
  }

  /** Does something on the window's thread. */
  static void run(Runnable what) {
    OnScreen.ask(
        () -> {
          what.run();
          return null;
        });
  }
}
