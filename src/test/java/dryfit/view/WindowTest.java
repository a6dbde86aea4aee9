package dryfit.view;

import java.nio.file.Path;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;

/** How every test of the window begins: a window of its own, and a folder for what it keeps. */
@ExtendWith(ApplicationExtension.class)
abstract class WindowTest {
  static final Path HARBOUR = Path.of("models/harbour-armchair.json");

  @TempDir static Path state;

  OnScreen screen;

  /** The extension looks for what starts a window in the test's own class only. */
  @BeforeEach
  void begin() {
    Stage stage = FxToolkit.toolkitContext().getRegisteredStage();
    screen = OnScreen.ask(() -> new OnScreen(stage, state));
  }

  @AfterEach
  void close() {
    screen.close();
  }

  static String text(FxRobot robot, String query) {
    return OnScreen.ask(() -> robot.lookup(query).<Labeled>query().getText());
  }
}
