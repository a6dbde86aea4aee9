package dryfit.document;

import java.io.IOException;
import java.io.InterruptedIOException;

/**
 * Work on a file that is done whole even if the program is told to end in the middle (Ctrl-C, or a
 * signal to end): the end waits for it, and work that has not begun by then does not begin.
 */
final class Unbroken implements AutoCloseable {
  /** Some work with files. */
  @FunctionalInterface
  interface Work {
    void run() throws IOException;
  }

  private boolean ending;
  private final Thread end = new Thread(this::end, "end of a file");

  private Unbroken() {}

  /**
   * @throws InterruptedIOException if the program is ending already
   */
  static Unbroken begin() throws InterruptedIOException {
    Unbroken one = new Unbroken();
    try {
      Runtime.getRuntime().addShutdownHook(one.end);
    } catch (IllegalStateException e) {
      throw ending(e);
    }
    return one;
  }

  /** Does the work, which the end of the program then waits for. */
  synchronized void whole(Work work) throws IOException {
    if (ending) {
      throw ending(null);
    }
    work.run();
  }

  private synchronized void end() {
    ending = true;
  }

  private static InterruptedIOException ending(IllegalStateException cause) {
    InterruptedIOException e = new InterruptedIOException("the program is ending");
    if (cause != null) {
      e.initCause(cause);
    }
    return e;
  }

  @Override
  public void close() {
    try {
      Runtime.getRuntime().removeShutdownHook(end);
    } catch (IllegalStateException e) {
      // The end has begun and runs it.
      return;
    }
  }
}
