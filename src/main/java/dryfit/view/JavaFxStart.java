package dryfit.view;

import dryfit.app.Ahead;
import dryfit.app.WindowStart;
import dryfit.build.Shelf;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.control.Label;

/** Starts JavaFX. Not an {@code Application} itself, so that the plain class path is enough. */
public final class JavaFxStart implements WindowStart {
  /** JavaFX warns of how it was started, and of 3D once for every surface; both are meant so. */
  private static final Logger TALK = Logger.getLogger("javafx");

  /** What is on its way since {@link #begin}. */
  private Optional<Begun> begun = Optional.empty();

  private record Begun(
      Optional<Path> file, Optional<Supplier<Shelf>> ahead, FutureTask<Void> toolkit) {}

  @Override
  public void begin(Optional<Path> file) {
    FutureTask<Void> toolkit =
        new FutureTask<>(
            () -> {
              prepare();
              // The first control of all has the style of all controls read.
              Platform.startup(Label::new);
              return null;
            });
    Thread starting = new Thread(toolkit, "starting JavaFX");
    starting.setDaemon(true);
    starting.start();
    begun = Optional.of(new Begun(file, file.map(Ahead::building), toolkit));
  }

  @Override
  public Ended open(Optional<Path> file, boolean untilShown) {
    Supplier<Shelf> ahead =
        begun
            .filter(b -> b.file().equals(file))
            .flatMap(Begun::ahead)
            .or(() -> file.map(Ahead::building))
            .orElse(Ahead.nothing());
    prepare();
    WindowApplication.start(new WindowApplication.Start(file, ahead, untilShown));
    try {
      awaitToolkit();
      Application.launch(WindowApplication.class);
      return new Ended.Closed();
    } catch (UnsupportedOperationException e) {
      return new Ended.NoScreen("a window cannot be opened here: there is no screen to open it on");
    }
  }

  private static void prepare() {
    // Where the processor draws, JavaFX would give up 3D unless told that slow is good enough.
    if (System.getProperty("prism.forceGPU") == null) {
      System.setProperty("prism.forceGPU", "true");
    }
    TALK.setLevel(Level.SEVERE);
  }

  /**
   * Until the toolkit runs, if it was begun.
   *
   * @throws UnsupportedOperationException if there is no screen
   */
  private void awaitToolkit() {
    if (begun.isEmpty()) {
      return;
    }
    try {
      begun.get().toolkit().get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    }
  }
}
