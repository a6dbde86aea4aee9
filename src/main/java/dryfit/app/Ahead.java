package dryfit.app;

import dryfit.app.OpenChair.Opened;
import dryfit.build.Shelf;
import dryfit.document.Design;
import java.nio.file.Path;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** A chair built before anybody asks for it, while the rest of the program is still starting. */
public final class Ahead {
  private Ahead() {}

  /**
   * Begins to open a file, on a thread of its own.
   *
   * @return waits for it and gives what {@link OpenChair#open} gives, or throws what it throws
   */
  public static Supplier<Opened> opening(Path file, String variant) {
    FutureTask<Opened> task =
        begun(() -> OpenChair.open(file, variant, KernelChoice.USUAL.kernel()));
    return () -> {
      try {
        return task.get();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return OpenChair.open(file, variant, KernelChoice.USUAL.kernel());
      } catch (ExecutionException e) {
        if (e.getCause() instanceof Error error) {
          throw error;
        }
        // Opening throws nothing that would have to be declared.
        throw (RuntimeException) e.getCause();
      }
    };
  }

  /**
   * Begins to build a file's chair as drawn, on a thread of its own. Only what was made on the way
   * is kept, on a shelf; whoever opens the chair finds most of the work done.
   *
   * @return waits for it and gives the shelf, to one thread; an empty one where the chair cannot be
   *     built, for why is told when it is opened
   */
  public static Supplier<Shelf> building(Path file) {
    FutureTask<Shelf> task =
        begun(
            () -> {
              Shelf shelf = new Shelf(KernelChoice.USUAL.kernel());
              OpenChair.open(file, Design.AS_DRAWN, shelf);
              return shelf;
            });
    return () -> shelf(task);
  }

  /** Nothing built ahead. */
  public static Supplier<Shelf> nothing() {
    return () -> new Shelf(KernelChoice.USUAL.kernel());
  }

  private static <T> FutureTask<T> begun(Supplier<T> work) {
    FutureTask<T> task = new FutureTask<>(work::get);
    Thread builder = new Thread(task, "building ahead");
    builder.setDaemon(true);
    builder.start();
    return task;
  }

  private static Shelf shelf(FutureTask<Shelf> task) {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return nothing().get();
    } catch (ExecutionException e) {
      // What a build that broke off has left is not to be trusted; it is told when it is built.
      return nothing().get();
    }
  }
}
