package dryfit.app;

import dryfit.export.SafeFile;
import dryfit.export.UnsoundFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Keeps one draft: a moment after a change its text lies in the state folder, and after saving it
 * lies there no more. A crash leaves it there.
 */
public final class Keeping implements AutoCloseable {
  private final Kept kept;
  private final Draft draft;
  private final Executor writer;
  private final Duration moment;
  private final Consumer<String> trouble;
  private final Runnable stop;
  private final String own = UUID.randomUUID().toString();
  private final Object lock = new Object();

  /** What is to be on the disk next; guarded by {@link #lock}, like all below. */
  private Optional<Due> due = Optional.empty();

  private Optional<Path> lying = Optional.empty();
  private KeptFile.Owner owner = KeptFile.Owner.self();
  private boolean troubled;
  private boolean closed;

  /** Taken down on the draft's thread, written on another. */
  private record Due(Version version, Optional<Path> file, String disk, boolean unsaved) {}

  Keeping(Kept kept, Draft draft, Executor writer, Duration moment, Consumer<String> trouble) {
    this.kept = kept;
    this.draft = draft;
    this.writer = writer;
    this.moment = moment;
    this.trouble = trouble;
    this.stop = draft.whenChanged(version -> changed());
  }

  /**
   * Puts found work into the draft, as a step that can be taken back. It is thrown away where it
   * was found only after it is kept for this draft, so a crash in between loses nothing.
   */
  public void bringBack(Kept.Work work) {
    draft.text("bring back unsaved work", work.text());
    draft.choose(work.variant());
    if (now()) {
      kept.discard(work);
    }
  }

  /**
   * Writes at once what is due.
   *
   * @return whether the disk has it
   */
  public boolean now() {
    synchronized (lock) {
      Optional<Due> next = due;
      due = Optional.empty();
      return closed || next.map(this::write).orElse(!troubled);
    }
  }

  /**
   * Ends it and lets go of what is not saved, so that it is offered again, here too. To be called
   * on the draft's thread.
   */
  public void leave() {
    synchronized (lock) {
      boolean any = due.isPresent() || lying.isPresent();
      if (any && !closed) {
        owner = KeptFile.Owner.NOBODY;
        due = Optional.of(new Due(draft.now(), draft.file(), draft.knownOnDisk(), draft.unsaved()));
        now();
      }
      closed = true;
    }
    stop.run();
  }

  /** Ends it; to be called when the draft was saved or is let go, for nothing stays kept. */
  @Override
  public void close() {
    stop.run();
    synchronized (lock) {
      closed = true;
      clear();
    }
  }

  private void changed() {
    synchronized (lock) {
      boolean first = due.isEmpty();
      due = Optional.of(new Due(draft.now(), draft.file(), draft.knownOnDisk(), draft.unsaved()));
      if (first && !closed) {
        CompletableFuture.delayedExecutor(moment.toMillis(), TimeUnit.MILLISECONDS, writer)
            .execute(this::now);
      }
    }
  }

  private boolean write(Due next) {
    if (!next.unsaved()) {
      clear();
      return true;
    }
    Path place = kept.place(next.file(), own);
    KeptFile file =
        new KeptFile(
            owner,
            next.file().map(p -> Kept.real(p).toString()).orElse(""),
            next.disk(),
            next.version().variant(),
            next.version().text());
    byte[] bytes = file.written().getBytes(StandardCharsets.UTF_8);
    try {
      SafeFile.write(
          place,
          bytes,
          readBack -> {
            if (!Arrays.equals(bytes, readBack)) {
              throw new UnsoundFile("it reads back differently");
            }
          });
      lying.filter(old -> !old.equals(place)).ifPresent(this::remove);
      lying = Optional.of(place);
      troubled = false;
      return true;
    } catch (IOException | UnsoundFile e) {
      if (!troubled) {
        troubled = true;
        trouble.accept(
            "Unsaved work cannot be kept in " + place.getParent() + ": " + e.getMessage());
      }
      return false;
    }
  }

  private void clear() {
    lying.ifPresent(this::remove);
    lying = Optional.empty();
  }

  private void remove(Path old) {
    try {
      Files.deleteIfExists(old);
    } catch (IOException e) {
      trouble.accept("What was kept for safety cannot be thrown away: " + old);
    }
  }
}
