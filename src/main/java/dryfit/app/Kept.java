package dryfit.app;

import dryfit.document.ChairFile;
import dryfit.document.Difference;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Keeps unsaved work beside its file, in the state folder, and finds it again after a crash. Every
 * draft of every process has a file of its own there; only what a process that is gone has left
 * behind is offered.
 */
public final class Kept implements AutoCloseable {
  /** A change is on the disk after this long. */
  private static final Duration MOMENT = Duration.ofMillis(300);

  private static final String UNNAMED = "unnamed";
  private static final String ENDING = ".kept";

  private final Path folder;
  private final Duration moment;
  private final ExecutorService writer;

  /** What was left behind. */
  public sealed interface Found {
    /** Where it lies. */
    Path at();
  }

  /**
   * Work that can be brought back.
   *
   * @param file the file it belongs to, if it had one
   * @param when it was last changed
   * @param diskMoved whether that file says something else by now than when the work began
   * @param differences between the work and that file as it is now; none are told if either is
   *     unsound
   */
  public record Work(
      Path at,
      Optional<Path> file,
      String variant,
      String text,
      Instant when,
      boolean diskMoved,
      List<Difference> differences)
      implements Found {
    public Work {
      differences = List.copyOf(differences);
    }
  }

  /** Something that is not whole and cannot be brought back. */
  public record Broken(Path at, String message) implements Found {}

  public Kept(StateFolder state) {
    this(state, MOMENT);
  }

  Kept(StateFolder state, Duration moment) {
    this.folder = state.path().resolve("kept");
    this.moment = moment;
    this.writer =
        Executors.newSingleThreadExecutor(
            task -> {
              Thread thread = new Thread(task, "dryfit-kept");
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * Keeps a draft from now on. To be called on the draft's thread.
   *
   * @param trouble is told, on another thread, when something cannot be kept
   */
  public Keeping keep(Draft draft, Consumer<String> trouble) {
    return new Keeping(this, draft, writer, moment, trouble);
  }

  /** What was left behind of a file, the latest first. */
  public List<Found> found(Path file) {
    return lying(key(file));
  }

  /** All that was left behind, of chairs with a file and without, the latest first. */
  public List<Found> found() {
    return lying("");
  }

  /** Throws away what was found, when the maker does not want it or has been told of it. */
  public void discard(Found found) {
    try {
      Files.deleteIfExists(found.at());
    } catch (IOException e) {
      // It will be offered once more, which does no harm.
      return;
    }
  }

  /** Keeps nothing any more; what is kept stays. */
  @Override
  public void close() {
    writer.shutdown();
  }

  /** Where a draft's work goes; no other draft's goes there. */
  Path place(Optional<Path> file, String own) {
    return folder.resolve(file.map(Kept::key).orElse(UNNAMED) + "-" + own + ENDING);
  }

  private List<Found> lying(String key) {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files =
          all.filter(p -> key.isEmpty() || p.getFileName().toString().startsWith(key + "-"))
              .filter(p -> p.getFileName().toString().endsWith(ENDING))
              .sorted()
              .toList();
    } catch (IOException e) {
      return List.of();
    }
    List<Found> found = new ArrayList<>();
    files.forEach(file -> look(file).ifPresent(found::add));
    found.sort((a, b) -> when(b).compareTo(when(a)));
    return List.copyOf(found);
  }

  private static Instant when(Found found) {
    return found instanceof Work work ? work.when() : Instant.MIN;
  }

  /** Empty if its process still lives, or it has just gone. */
  private static Optional<Found> look(Path at) {
    try {
      // Bytes that are no text are read as something else, and the sum then tells.
      String written = new String(Files.readAllBytes(at), StandardCharsets.UTF_8);
      Optional<KeptFile> kept = KeptFile.read(written);
      if (kept.isEmpty()) {
        return Optional.of(
            new Broken(at, "Unsaved work was kept here, but the file is damaged: " + at));
      }
      KeptFile k = kept.get();
      if (k.owner().lives()) {
        return Optional.empty();
      }
      Optional<Path> file = Optional.of(k.file()).filter(f -> !f.isEmpty()).map(Path::of);
      return Optional.of(
          new Work(
              at,
              file,
              k.variant(),
              k.text(),
              Files.getLastModifiedTime(at).toInstant(),
              file.map(f -> !fingerprint(f).equals(k.disk())).orElse(false),
              file.map(f -> differences(f, k.text())).orElse(List.of())));
    } catch (IOException e) {
      return Files.exists(at)
          ? Optional.of(new Broken(at, "Unsaved work was kept here, but cannot be read: " + at))
          : Optional.empty();
    }
  }

  private static List<Difference> differences(Path file, String text) {
    return DocumentReader.read(file.toString(), text) instanceof Reading.Accepted<Document> work
            && DocumentReader.read(file) instanceof Reading.Accepted<Document> disk
        ? Difference.between(work.value(), disk.value())
        : List.of();
  }

  private static String fingerprint(Path file) {
    return ChairFile.read(file) instanceof Reading.Accepted<ChairFile> accepted
        ? accepted.value().fingerprint()
        : "";
  }

  /** A short name for a file, the same by whichever path it is reached. */
  private static String key(Path file) {
    return new ChairFile(real(file).toString(), false).fingerprint().substring(0, 24);
  }

  /** The path of a file itself, not of a link to it. */
  static Path real(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException e) {
      return file.toAbsolutePath().normalize();
    }
  }
}
