package dryfit.cli;

import dryfit.app.Exporting;
import dryfit.app.FileNames;
import dryfit.app.FitChair;
import dryfit.app.MakeBook;
import dryfit.app.OpenChair;
import dryfit.app.WrittenFiles;
import dryfit.build.Chair;
import dryfit.export.TextStyle;
import dryfit.export.paper.Page;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
    name = "sheets",
    description = {
      "Write a book for the bench: the chair from all sides, a page for every part and",
      "every joint, settings, the order of work, and what to measure at the dry fit.",
      "Ends with 4 if the chair does not fit; the book is written all the same."
    },
    footer = {
      "",
      "Examples:",
      "  sheets models/harbour-armchair.json",
      "  sheets models/orchard-side-chair.json --paper letter --to orchard.pdf",
      "  sheets models/kiln-stool.json --to stool.html"
    })
final class SheetsCommand implements Callable<Integer> {
  private final Screen screen;

  @Mixin private ChairArguments chair;

  @Mixin private UnitOption units = new UnitOption();

  @Option(names = "--decimals", description = "inches as decimals, not as fractions")
  private boolean decimals;

  @Option(
      names = "--paper",
      paramLabel = "A4|letter",
      converter = Papers.class,
      description = "size of the pages; without it A4, or letter for a document in inches")
  private Page.Paper paper;

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "where it goes; without it, exports/, the name of the chair's file, bench-book")
  private Path to;

  @Option(
      names = "--format",
      paramLabel = "pdf|html",
      converter = Formats.class,
      description =
          "paper, or one page for a telephone on which the chair can be turned; without it, what"
              + " the ending of FILE says, else pdf")
  private MakeBook.Format format;

  SheetsCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit());
    }
    Chair built = ((OpenChair.Ready) opened).chair();
    ProgressBar bar = new ProgressBar(screen);
    // Built, fitted, ordered, drawn.
    bar.show(1, 4);
    FitChair fit = FitChair.of(units.told(built));
    bar.show(2, 4);
    TextStyle usual = TextStyle.of(built.design().unit());
    TextStyle style = new TextStyle(units.or(usual.unit()), usual.denominator(), decimals, false);
    MakeBook maker =
        new MakeBook(style, paper != null ? paper : Exporting.usualPaper(built.design()));
    MakeBook.Format form = form();
    Path path =
        to != null ? to : FileNames.folder(built.design()).resolve("bench-book." + form.word());
    WrittenFiles written = maker.write(fit.report(), form, path, () -> bar.show(3, 4));
    bar.clear();
    if (written instanceof WrittenFiles.Failed failed) {
      screen.notWritten(failed);
      return written.exit().code();
    }
    screen.out().println(path);
    return fit.exit().code();
  }

  private MakeBook.Format form() {
    if (format != null) {
      return format;
    }
    String name = to == null ? "" : to.toString().toLowerCase(Locale.ROOT);
    return name.endsWith(".html") ? MakeBook.Format.HTML : MakeBook.Format.PDF;
  }

  /** The forms by their words. */
  static final class Formats extends Words<MakeBook.Format> {
    Formats() {
      super(
          Arrays.stream(MakeBook.Format.values()).map(MakeBook.Format::word).toList(),
          word ->
              Arrays.stream(MakeBook.Format.values())
                  .filter(f -> f.word().equals(word))
                  .findFirst());
    }
  }
}
