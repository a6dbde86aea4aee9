package dryfit.view;

import dryfit.app.StateFolder;
import dryfit.build.Shelf;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;

/** The window as JavaFX starts it. */
public final class WindowApplication extends Application {
  /** JavaFX makes the application itself, so this cannot be handed to it. */
  private static final AtomicReference<Start> START = new AtomicReference<>();

  /** So long at most it waits for a chair to be seen, nanoseconds. */
  private static final long PATIENCE = 60_000_000_000L;

  /** So long at most the bench stays bare, nanoseconds. */
  private static final long EMPTY = 600_000_000L;

  private ChairWindow window;

  /**
   * How to begin.
   *
   * @param file the chair to open; without one, some are offered
   * @param ahead what is being built of it already
   * @param untilShown whether to close as soon as the chair and its findings have been seen
   */
  record Start(Optional<Path> file, Supplier<Shelf> ahead, boolean untilShown) {}

  /** Says how the next window begins. */
  static void start(Start start) {
    START.set(start);
  }

  @Override
  public void start(Stage stage) {
    Start start = START.get();
    SystemDesk desk = new SystemDesk(stage, getHostServices());
    window = new ChairWindow(stage, StateFolder.usual(), desk, start.ahead());
    if (start.file().isPresent()) {
      window.open(start.file().get());
      stage.show();
      furnishOnceSeen();
    } else {
      window.furnish();
      window.offer();
      stage.show();
    }
    if (start.untilShown()) {
      closeWhenSeen();
    }
  }

  /**
   * While the first picture of the chair is being drawn, which takes the renderer long, the rest of
   * the window is made; and without it, where the chair takes long to build.
   */
  private void furnishOnceSeen() {
    long began = System.nanoTime();
    new AnimationTimer() {
      private int frames;

      @Override
      public void handle(long now) {
        if (window.isSeen() && ++frames > 2 || System.nanoTime() - began > EMPTY) {
          stop();
          window.furnish();
        }
      }
    }.start();
  }

  private void closeWhenSeen() {
    long began = System.nanoTime();
    new AnimationTimer() {
      private int frames;

      @Override
      public void handle(long now) {
        // What is told in one frame is on the screen two frames later.
        if (window.isAtRest() && ++frames > 2 || System.nanoTime() - began > PATIENCE) {
          stop();
          Platform.exit();
        }
      }
    }.start();
  }

  @Override
  public void stop() {
    window.close();
  }
}
