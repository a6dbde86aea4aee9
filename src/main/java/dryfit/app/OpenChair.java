package dryfit.app;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.build.Shelf;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Problem;
import dryfit.document.Reading;
import dryfit.solid.Kernel;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

/** From a file to a chair of finished solids, or to everything that keeps it from being one. */
public final class OpenChair {
  private OpenChair() {}

  /** What comes of opening. */
  public sealed interface Opened {
    Exit exit();
  }

  /** The chair is built. */
  public record Ready(Document document, Chair chair) implements Opened {
    @Override
    public Exit exit() {
      return Exit.FITS;
    }
  }

  /** The document is refused; at least one problem. */
  public record Refused(List<Problem> problems) implements Opened {
    public Refused {
      problems = List.copyOf(problems);
    }

    @Override
    public Exit exit() {
      return Exit.REFUSED;
    }
  }

  /**
   * Reads a document, applies a variant and builds the chair.
   *
   * @param variant one of the document's, or {@link Design#AS_DRAWN}
   * @throws dryfit.solid.KernelFailure if a solid could not be made, which is our fault
   */
  public static Opened open(Path file, String variant, Kernel kernel) {
    return open(file, variant, new Shelf(kernel));
  }

  /** The same, with what was made before at hand. */
  public static Opened open(Path file, String variant, Shelf shelf) {
    return built(DocumentReader.read(file), variant, shelf);
  }

  /** The same from a document that was read already, with a shelf that may know some of it. */
  static Opened built(Reading<Document> read, String variant, Shelf shelf) {
    return then(
        read,
        document ->
            then(
                document.design(variant),
                design ->
                    then(
                        lined(document, ChairBuilder.build(design, shelf)),
                        chair -> new Ready(document, chair))));
  }

  /** What the builder refuses knows its place in the document; here it gets its line as well. */
  private static Reading<Chair> lined(Document document, Reading<Chair> built) {
    return built instanceof Reading.Refused<Chair> refused
        ? new Reading.Refused<>(
            refused.problems().stream().map(p -> p.onLine(document.lineOf(p.pointer()))).toList())
        : built;
  }

  private static <T> Opened then(Reading<T> reading, Function<T, Opened> next) {
    if (reading instanceof Reading.Accepted<T> accepted) {
      return next.apply(accepted.value());
    }
    return new Refused(((Reading.Refused<T>) reading).problems());
  }
}
