package dryfit.app;

import dryfit.app.OpenChair.Opened;
import dryfit.app.OpenChair.Ready;
import dryfit.app.OpenChair.Refused;
import dryfit.build.Shelf;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.Problem;
import dryfit.document.Reading;
import dryfit.export.SafeFile;
import dryfit.export.UnsoundFile;
import dryfit.fit.DryFit;
import dryfit.fit.compare.Comparison;
import dryfit.fit.compare.Comparison.Side;
import dryfit.solid.Kernel;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;

/** Lays several chairs side by side. */
public final class CompareChairs {
  private CompareChairs() {}

  /** A chair that is asked for: a file and one of its variants. */
  public record Wanted(Path file, String variant) {
    /** The same however the path to its file is written. */
    private Wanted normal() {
      return new Wanted(file.toAbsolutePath().normalize(), variant);
    }
  }

  /** What comes of it. */
  public sealed interface Outcome {}

  /** All of them could be built. */
  public record Compared(Comparison comparison) implements Outcome {}

  /** One of them could not: what kept it, and the code to end with. */
  public record NotAll(List<Problem> problems, Exit exit) implements Outcome {
    public NotAll {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Builds, fits and compares.
   *
   * @param wanted at least one; the first is what the others are held against
   * @param done is told how many of them are fitted, one after the other
   */
  public static Outcome of(List<Wanted> wanted, Kernel kernel, IntConsumer done) {
    Shelf shelf = new Shelf(kernel);
    List<Side> sides = new ArrayList<>();
    for (Wanted w : wanted) {
      Opened opened = OpenChair.open(w.file(), w.variant(), shelf);
      if (opened instanceof Refused refused) {
        return new NotAll(refused.problems(), refused.exit());
      }
      sides.add(new Side(name(w, wanted), DryFit.of(((Ready) opened).chair())));
      done.accept(sides.size());
    }
    return new Compared(Comparison.of(sides));
  }

  /**
   * The designs of one document that can be built, fitted and compared; without sides if none can.
   *
   * @param variants of the document, or {@link Design#AS_DRAWN}; what cannot be built is left out
   * @param told the unit in which findings speak
   */
  public static Comparison of(
      Document document, List<String> variants, Design.LengthUnit told, Shelf shelf) {
    List<Side> sides = new ArrayList<>();
    for (String variant : variants) {
      if (OpenChair.built(new Reading.Accepted<>(document), variant, shelf) instanceof Ready r) {
        sides.add(new Side(variant, DryFit.of(r.chair().toldIn(told))));
      }
    }
    return sides.isEmpty() ? new Comparison(List.of(), List.of(), List.of()) : Comparison.of(sides);
  }

  /**
   * Which chairs are meant: with one variant of one file, it is held against the chair as drawn.
   */
  public static List<Wanted> wanted(Path file, List<String> variants, List<Path> others) {
    Map<Wanted, Wanted> all = new LinkedHashMap<>();
    asked(file, variants, others).forEach(w -> all.putIfAbsent(w.normal(), w));
    return List.copyOf(all.values());
  }

  private static List<Wanted> asked(Path file, List<String> variants, List<Path> others) {
    List<Wanted> all = new ArrayList<>();
    if (others.isEmpty() && variants.size() < 2 || variants.isEmpty()) {
      all.add(new Wanted(file, Design.AS_DRAWN));
    }
    variants.forEach(v -> all.add(new Wanted(file, v)));
    others.forEach(o -> all.add(new Wanted(o, Design.AS_DRAWN)));
    return all;
  }

  /** What is asked for more than once, as it was asked the second time; it is compared once. */
  public static List<Wanted> repeated(Path file, List<String> variants, List<Path> others) {
    Map<Wanted, Boolean> seen = new LinkedHashMap<>();
    List<Wanted> again = new ArrayList<>();
    for (Wanted w : asked(file, variants, others)) {
      if (seen.put(w.normal(), true) != null) {
        again.add(w);
      }
    }
    return again;
  }

  private static String name(Wanted w, List<Wanted> all) {
    if (all.stream().allMatch(o -> o.file().equals(w.file()))) {
      return w.variant();
    }
    // Two folders may each have a chair.json.
    boolean alike =
        all.stream()
            .anyMatch(
                o ->
                    !o.file().equals(w.file())
                        && o.file().getFileName().equals(w.file().getFileName()));
    return (alike ? w.file() : w.file().getFileName()) + ", " + w.variant();
  }

  /** Writes a page or a picture of it, whole or not at all. */
  public static WrittenFiles write(byte[] bytes, Path path) {
    try {
      SafeFile.write(
          path,
          bytes,
          readBack -> {
            if (!Arrays.equals(bytes, readBack)) {
              throw new UnsoundFile("the file reads back differently");
            }
          });
      return new WrittenFiles.Finished<>(path);
    } catch (IOException e) {
      return WrittenFiles.Failed.of(path, e);
    } catch (UnsoundFile e) {
      return WrittenFiles.Failed.of(path, e);
    }
  }
}
