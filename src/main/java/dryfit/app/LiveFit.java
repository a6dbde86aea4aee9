package dryfit.app;

import dryfit.build.Chair;
import dryfit.build.Shelf;
import dryfit.document.Document;
import dryfit.document.Problem;
import dryfit.fit.DryFit;
import dryfit.fit.FitReport;
import dryfit.solid.Kernel;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Builds and fits a draft in the background while it is being changed. Whoever asks never waits;
 * the newest version wins, and those that were overtaken before their turn are never built. What
 * was built stays on a shelf, so that a change makes only what it touches.
 *
 * <p>Results come in the order of the versions, on a thread of its own. A chair comes first and its
 * findings after it, because the eye waits for the chair. While versions keep coming every chair
 * that was begun is shown, but findings are only worked out now and then; those of the last version
 * always are.
 */
public final class LiveFit implements AutoCloseable {
  /** Findings come at least this often while versions keep coming, in nanoseconds. */
  private static final long FINDINGS_EVERY = TimeUnit.MILLISECONDS.toNanos(150);

  private final Kernel kernel;
  private final Supplier<Shelf> first;
  private final Consumer<Result> listener;
  private final Thread worker;
  private final Object lock = new Object();

  /** The version whose turn is next; guarded by {@link #lock}, like all below. */
  private Optional<Version> wanted = Optional.empty();

  /** Rises with every cancelling: what was begun under a lower number is told to nobody. */
  private long era;

  private boolean working;
  private boolean closed;

  /** What comes of a version. */
  public sealed interface Result {
    /** {@link Version#number} of the version. */
    long number();
  }

  /** The chair stands; its findings follow, unless a newer version overtakes them. */
  public record Built(long number, Document document, Chair chair) implements Result {}

  /** The chair and everything that was found. */
  public record Fitted(long number, Document document, FitReport report) implements Result {}

  /** It cannot be built as it is written. */
  public record Refused(Version version, List<Problem> problems) implements Result {
    public Refused {
      problems = List.copyOf(problems);
    }

    @Override
    public long number() {
      return version.number();
    }
  }

  /** A fault of ours, such as {@link dryfit.solid.KernelFailure}. */
  public record Failed(long number, Throwable fault) implements Result {}

  /** As below, with an empty shelf. */
  public LiveFit(Kernel kernel, Consumer<Result> listener) {
    this(kernel, () -> new Shelf(kernel), listener);
  }

  /**
   * Starts the thread.
   *
   * @param first gives the shelf to begin with, on that thread, which waits for it
   * @param listener is told of every result; what it does holds up the next one, so a window only
   *     passes it on to its own thread
   */
  public LiveFit(Kernel kernel, Supplier<Shelf> first, Consumer<Result> listener) {
    this.kernel = kernel;
    this.first = first;
    this.listener = listener;
    this.worker = new Thread(this::work, "dryfit-live-fit");
    worker.setDaemon(true);
    worker.start();
  }

  /** Asks for a version; one asked for before, and not begun, is forgotten. */
  public void show(Version version) {
    synchronized (lock) {
      wanted = Optional.of(version);
      lock.notifyAll();
    }
  }

  /** Forgets what was asked for; of what is being built no more is told. */
  public void cancel() {
    synchronized (lock) {
      wanted = Optional.empty();
      era++;
    }
  }

  /** Whether nothing is being worked on and nothing waits. */
  public boolean idle() {
    synchronized (lock) {
      return !working && wanted.isEmpty();
    }
  }

  /** Cancels and ends the thread. */
  @Override
  public void close() {
    synchronized (lock) {
      closed = true;
      wanted = Optional.empty();
      era++;
      lock.notifyAll();
    }
  }

  private record Turn(Version version, long era) {}

  private void work() {
    Shelf shelf = first.get();
    // So that the first chair has its findings however fast versions come.
    long lastFindings = System.nanoTime() - FINDINGS_EVERY;
    for (Optional<Turn> next = next(); next.isPresent(); next = next()) {
      Turn turn = next.get();
      Version version = turn.version();
      try {
        OpenChair.Opened opened = OpenChair.built(version.reading(), version.variant(), shelf);
        if (opened instanceof OpenChair.Ready ready) {
          tell(turn, new Built(version.number(), ready.document(), ready.chair()));
          if (isWorthFitting(turn, lastFindings)) {
            FitReport report = DryFit.of(ready.chair());
            lastFindings = System.nanoTime();
            tell(turn, new Fitted(version.number(), ready.document(), report));
          }
        } else {
          tell(turn, new Refused(version, ((OpenChair.Refused) opened).problems()));
        }
      } catch (RuntimeException | StackOverflowError fault) {
        // What a build that broke off has left on the shelf is not to be trusted.
        shelf = new Shelf(kernel);
        tell(turn, new Failed(version.number(), fault));
      }
    }
  }

  /** Waits for the next version; empty at the end. */
  private Optional<Turn> next() {
    synchronized (lock) {
      working = false;
      lock.notifyAll();
      try {
        while (!closed && wanted.isEmpty()) {
          lock.wait();
        }
      } catch (InterruptedException e) {
        closed = true;
      }
      Optional<Turn> turn = wanted.filter(v -> !closed).map(v -> new Turn(v, era));
      wanted = Optional.empty();
      working = turn.isPresent();
      return turn;
    }
  }

  private boolean isWorthFitting(Turn turn, long lastFindings) {
    synchronized (lock) {
      return turn.era() == era
          && (wanted.isEmpty() || System.nanoTime() - lastFindings >= FINDINGS_EVERY);
    }
  }

  private void tell(Turn turn, Result result) {
    boolean told;
    synchronized (lock) {
      told = turn.era() == era;
    }
    if (told) {
      listener.accept(result);
    }
  }
}
