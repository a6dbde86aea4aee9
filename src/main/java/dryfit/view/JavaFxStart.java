package dryfit.view;

import dryfit.app.Ahead;
import dryfit.app.WindowStart;
import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;

/** Starts JavaFX. Not an {@code Application} itself, so that the plain class path is enough. */
public final class JavaFxStart implements WindowStart {
  /** JavaFX warns of how it was started, and of 3D once for every surface; both are meant so. */
  private static final Logger TALK = Logger.getLogger("javafx");

  @Override
  public Ended open(Optional<Path> file, boolean untilShown) {
    // Where the processor draws, JavaFX would give up 3D unless told that slow is good enough.
    if (System.getProperty("prism.forceGPU") == null) {
      System.setProperty("prism.forceGPU", "true");
    }
    TALK.setLevel(Level.SEVERE);
    WindowApplication.start(
        new WindowApplication.Start(
            file, file.map(Ahead::building).orElse(Ahead.nothing()), untilShown));
    try {
      Application.launch(WindowApplication.class);
      return new Ended.Closed();
    } catch (UnsupportedOperationException e) {
      return new Ended.NoScreen("a window cannot be opened here: there is no screen to open it on");
    }
  }
}
