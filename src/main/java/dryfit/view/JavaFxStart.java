package dryfit.view;

import dryfit.app.WindowStart;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Application;

/** Starts JavaFX. Not an {@code Application} itself, so that the plain class path is enough. */
public final class JavaFxStart implements WindowStart {

  @Override
  public Ended open(Optional<Path> file) {
    // Where the processor draws, JavaFX would give up 3D unless told that slow is good enough.
    if (System.getProperty("prism.forceGPU") == null) {
      System.setProperty("prism.forceGPU", "true");
    }
    try {
      Application.launch(
          WindowApplication.class,
          file.map(f -> List.of(f.toString())).orElse(List.of()).toArray(String[]::new));
      return new Ended.Closed();
    } catch (UnsupportedOperationException e) {
      return new Ended.NoScreen("a window cannot be opened here: there is no screen to open it on");
    }
  }
}
