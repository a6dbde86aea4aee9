package dryfit.app;

import dryfit.app.MakeJigs.Told;
import dryfit.build.Chair;
import dryfit.build.Shelf;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.export.ComparePage;
import dryfit.export.TextStyle;
import dryfit.export.paper.Page;
import dryfit.fit.FitReport;
import dryfit.shop.template.TemplateMaker;
import dryfit.solid.Kernel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Sets of files that can be written of a chair. A set is first written whole beside its folder and
 * then moved into it, so what is broken off or fails leaves the folder as it was, and old files
 * never stand among new ones of another design.
 */
public final class Exporting {
  private final Document document;
  private final Chair chair;
  private final TextStyle style;
  private final Kernel kernel;
  private final Page.Paper paper;

  /** What can be written. For another set: a value here, and its line in {@link #fill}. */
  public enum What {
    SOLIDS("solids as STL", "each part lying down, and the chair put together"),
    NAMED_SOLIDS("solids as 3MF", "the same, with names and a unit"),
    JIGS("jigs", "printable jigs, each proved on its part; STL and 3MF"),
    BOARDS("boards", "the cut list, and the blanks laid out on your boards"),
    SHEETS("bench book", "each part and joint to work by; PDF, and for a telephone"),
    TEMPLATES("templates", "shaped parts at full size, and mouths of mortises"),
    COMPARISON("comparison of variants", "one page with pictures and all that differs");

    private final String word;
    private final String about;

    What(String word, String about) {
      this.word = word;
      this.about = about;
    }

    public String word() {
      return word;
    }

    /** What is in it, in half a sentence. */
    public String about() {
      return about;
    }
  }

  /** Watches the writing. */
  @FunctionalInterface
  public interface Follow {
    /**
     * Told after each file, and at moments in between.
     *
     * @param done files that are finished
     * @param all how many there will be, if that is known
     * @return whether to go on
     */
    boolean goOn(int done, OptionalInt all);
  }

  /** How it ended. */
  public sealed interface Outcome {
    /**
     * All files are in the folder.
     *
     * @param notes what the maker should know of them, such as a jig that cannot be made
     */
    record Done(Path folder, List<Path> files, List<String> notes) implements Outcome {
      public Done {
        files = List.copyOf(files);
        notes = List.copyOf(notes);
      }
    }

    /** Broken off; nothing was written. */
    record BrokenOff() implements Outcome {}

    /** Nothing was written, or not all could be moved in. */
    record Failed(String reason) implements Outcome {}
  }

  /** Unwinds the writing. */
  private static final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient Outcome outcome;

    Stop(Outcome outcome) {
      super("", null, false, false);
      this.outcome = outcome;
    }
  }

  /**
   * @param document the one the chair is built from
   * @param paper what bench book, templates and boards are laid out on
   */
  public Exporting(
      Document document, Chair chair, TextStyle style, Kernel kernel, Page.Paper paper) {
    this.document = document;
    this.chair = chair;
    this.style = style;
    this.kernel = kernel;
    this.paper = paper;
  }

  /** Writes a set into a folder, which is made if it is missing. */
  public Outcome write(What what, Path folder, Follow follow) {
    Path target = folder.toAbsolutePath().normalize();
    Path staging = null;
    try {
      staging = Files.createTempDirectory(there(target), ".writing-");
      List<String> notes = fill(what, staging, follow);
      if (!follow.goOn(count(staging), OptionalInt.empty())) {
        return new Outcome.BrokenOff();
      }
      return new Outcome.Done(target, moved(staging, target), notes);
    } catch (Stop stop) {
      return stop.outcome;
    } catch (IOException e) {
      return new Outcome.Failed(WrittenFiles.reason(e) + ": " + target);
    } finally {
      if (staging != null) {
        clear(staging);
      }
    }
  }

  private List<String> fill(What what, Path to, Follow follow) {
    Watch watch = new Watch(follow);
    Optional<OptionalInt> solids = Optional.of(OptionalInt.of(chair.parts().size() + 1));
    switch (what) {
      case SOLIDS -> new WriteSolids(to, false, SolidFormat.STL).write(chair, watch.of(solids));
      case NAMED_SOLIDS ->
          new WriteSolids(to, false, SolidFormat.THREE_MF).write(chair, watch.of(solids));
      case JIGS -> new MakeJigs(to, kernel).make(chair, "", Optional.empty(), watch::jig);
      case BOARDS ->
          PlanBoards.of(chair, chair.design().boards())
              .write(to, style, paper, watch.of(Optional.empty()));
      case SHEETS -> book(to, watch);
      case TEMPLATES -> templates(to, watch);
      case COMPARISON -> watch.of(Optional.of(OptionalInt.of(1))).accept(comparison(to));
    }
    return watch.notes;
  }

  private WrittenFiles comparison(Path to) {
    List<String> all = new ArrayList<>(document.variants());
    all.add(0, Design.AS_DRAWN);
    Design.LengthUnit told = Design.LengthUnit.of(style.unit());
    byte[] page =
        ComparePage.bytes(CompareChairs.of(document, all, told, new Shelf(kernel)), style);
    return WrittenFiles.of(to.resolve("compared.html"), page);
  }

  /** On paper and for a telephone; it can be broken off between what takes long. */
  private void book(Path to, Watch watch) {
    FitReport report = FitChair.of(chair).report();
    MakeBook maker = new MakeBook(style, paper);
    MakeBook.Format[] forms = MakeBook.Format.values();
    for (MakeBook.Format form : forms) {
      watch.goOn(OptionalInt.of(forms.length));
      OptionalInt all = OptionalInt.of(forms.length);
      Path file = to.resolve("bench-book." + form.word());
      WrittenFiles written = maker.write(report, form, file, () -> watch.goOn(all));
      watch.file(written, OptionalInt.of(forms.length));
    }
  }

  private void templates(Path to, Watch watch) {
    TextStyle coarse = new TextStyle(style.unit(), DrawTemplates.FRACTIONS, false, false);
    DrawTemplates draw =
        new DrawTemplates(
            to, DrawTemplates.usual(chair.design()), coarse, Optional.of(paper), PaperFormat.PDF);
    draw.draw(chair, TemplateMaker.shaped(chair), watch::template);
    draw.mouths(chair, DrawTemplates.parts(chair), watch::template);
    if (watch.done == 0) {
      throw new Stop(new Outcome.Failed("no part of it needs a template"));
    }
  }

  /** What is in the printer of someone who writes in this unit. */
  public static Page.Paper usualPaper(Design design) {
    return design.unit() == Design.LengthUnit.IN ? Page.Paper.LETTER : Page.Paper.A4;
  }

  /** Counts what is told and breaks off where it is told to. */
  private static final class Watch {
    private final Follow follow;
    private final List<String> notes = new ArrayList<>();
    private int done;

    Watch(Follow follow) {
      this.follow = follow;
      goOn(OptionalInt.empty());
    }

    Consumer<WrittenFiles> of(Optional<OptionalInt> all) {
      return result -> file(result, all.orElse(OptionalInt.empty()));
    }

    private void file(WrittenFiles result, OptionalInt all) {
      if (result instanceof WrittenFiles.Failed failed) {
        throw new Stop(new Outcome.Failed(failed.path().getFileName() + ": " + failed.reason()));
      }
      done++;
      goOn(all);
    }

    private void jig(Told told) {
      if (told instanceof Told.File file) {
        file(file.result(), OptionalInt.empty());
        return;
      }
      if (told instanceof Told.NotMade not) {
        notes.add(not.name() + ": not made: " + not.because());
      } else if (told instanceof Told.NotProved not) {
        notes.add(not.jig().name() + ": left out, for its proof does not hold");
      }
      goOn(OptionalInt.empty());
    }

    private void template(DrawTemplates.Told told) {
      if (told instanceof DrawTemplates.Told.File file) {
        file(file.result(), OptionalInt.empty());
      } else if (told instanceof DrawTemplates.Told.NotDrawn not) {
        notes.add(not.part() + ": not drawn: " + not.because());
        goOn(OptionalInt.empty());
      }
    }

    private void goOn(OptionalInt all) {
      if (!follow.goOn(done, all)) {
        throw new Stop(new Outcome.BrokenOff());
      }
    }
  }

  private static int count(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return (int) files.count();
    }
  }

  /** The innermost folder that is there: where the set is written before it has a folder. */
  private static Path there(Path target) {
    Path folder = target;
    while (folder.getParent() != null && !Files.exists(folder)) {
      folder = folder.getParent();
    }
    return folder;
  }

  private static List<Path> moved(Path staging, Path target) throws IOException {
    List<Path> all;
    try (Stream<Path> files = Files.list(staging)) {
      all = files.sorted().toList();
    }
    Files.createDirectories(target);
    List<Path> there = new ArrayList<>();
    for (Path file : all) {
      Path place = target.resolve(file.getFileName());
      Files.move(file, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      there.add(place);
    }
    return there;
  }

  private static void clear(Path staging) {
    try (Stream<Path> all = Files.walk(staging)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(each);
      }
    } catch (IOException e) {
      // What cannot be thrown away is hidden, and in no one's way.
      return;
    }
  }
}
