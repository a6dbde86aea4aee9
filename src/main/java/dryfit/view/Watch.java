package dryfit.view;

import dryfit.app.OnDisk;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Looks at a file once a second and tells when it stands differently than it is known to. It tells
 * once for each way the file stands, not every second.
 */
final class Watch implements AutoCloseable {
  private static final long BETWEEN = 1000; // milliseconds

  private final Runnable moved;
  private final CountDownLatch end = new CountDownLatch(1);
  private Optional<OnDisk.Look> over = Optional.empty();
  private Optional<OnDisk> told = Optional.empty();

  /**
   * @param moved told on a thread of its own
   */
  Watch(Runnable moved) {
    this.moved = moved;
    Thread thread = new Thread(this::work, "watching the file");
    thread.setDaemon(true);
    thread.start();
  }

  private void work() {
    while (rest()) {
      look();
    }
  }

  /** Waits for the next look; false at the end. */
  private boolean rest() {
    try {
      return !end.await(BETWEEN, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      return false;
    }
  }

  /** What to look at from now on. */
  synchronized void over(Optional<OnDisk.Look> next) {
    over = next;
  }

  private void look() {
    Optional<OnDisk.Look> at;
    synchronized (this) {
      at = over;
    }
    Optional<OnDisk> now = at.map(OnDisk.Look::now);
    boolean other;
    synchronized (this) {
      boolean same = now.map(OnDisk.Same.class::isInstance).orElse(true);
      other = !isTold(now) && !(same && told.isEmpty());
      told = same ? Optional.empty() : now;
    }
    if (other) {
      moved.run();
    }
  }

  private boolean isTold(Optional<OnDisk> now) {
    return now.isPresent()
        && told.isPresent()
        && (now.get() instanceof OnDisk.Changed a && told.get() instanceof OnDisk.Changed b
            ? a.file().equals(b.file())
            : now.get().equals(told.get()));
  }

  @Override
  public void close() {
    end.countDown();
  }
}
