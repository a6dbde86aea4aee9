package dryfit.view;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;

/**
 * Work that must not hold up the window, nor the chair that is being changed: one thing after the
 * other on a thread of its own. Of errands of one kind that wait, only the newest is run.
 */
final class Errands {
  private final Deque<Errand> waiting = new ArrayDeque<>();
  private final Consumer<Throwable> trouble;
  private final Runnable onIdle;
  private boolean running;
  private boolean closed;

  private record Errand(String kind, Runnable does) {}

  /**
   * @param trouble told of faults, on the errands' thread
   * @param onIdle told, on the same thread, when nothing is left to do
   */
  Errands(String name, Consumer<Throwable> trouble, Runnable onIdle) {
    this.trouble = trouble;
    this.onIdle = onIdle;
    Thread worker = new Thread(this::work, name);
    worker.setDaemon(true);
    worker.start();
  }

  /**
   * @param kind empty is no kind: such an errand is never dropped
   */
  synchronized void run(String kind, Runnable does) {
    if (!kind.isEmpty()) {
      waiting.removeIf(e -> e.kind().equals(kind));
    }
    waiting.add(new Errand(kind, does));
    notifyAll();
  }

  /** Whether nothing is being done and nothing waits. */
  synchronized boolean idle() {
    return !running && waiting.isEmpty();
  }

  /** Ends the thread after what it is doing. */
  synchronized void close() {
    closed = true;
    waiting.clear();
    notifyAll();
  }

  private void work() {
    for (Errand next = next(); next != null; next = next()) {
      try {
        next.does().run();
      } catch (RuntimeException | StackOverflowError fault) {
        trouble.accept(fault);
      }
      boolean idle;
      synchronized (this) {
        running = false;
        idle = waiting.isEmpty();
      }
      if (idle) {
        onIdle.run();
      }
    }
  }

  /** Waits for the next; null at the end. */
  private synchronized Errand next() {
    try {
      while (waiting.isEmpty() && !closed) {
        wait();
      }
    } catch (InterruptedException e) {
      return null;
    }
    Errand next = closed ? null : waiting.poll();
    running = next != null;
    return next;
  }
}
