package dryfit.view;

import dryfit.app.StateFolder;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.stage.Stage;

/** The window as JavaFX starts it: with one argument the chair to open, or none. */
public final class WindowApplication extends Application {
  private ChairWindow window;

  @Override
  public void start(Stage stage) {
    window = new ChairWindow(stage, StateFolder.usual(), new SystemDesk(stage, getHostServices()));
    List<String> files = getParameters().getUnnamed();
    if (files.isEmpty()) {
      window.offer();
    } else {
      window.open(Path.of(files.get(0)));
    }
    stage.show();
  }

  @Override
  public void stop() {
    window.close();
  }
}
