package dryfit.cli;

import dryfit.app.CompareChairs;
import dryfit.app.CompareChairs.Compared;
import dryfit.app.CompareChairs.NotAll;
import dryfit.app.CompareChairs.Wanted;
import dryfit.app.Exit;
import dryfit.app.KernelChoice;
import dryfit.app.WrittenFiles;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import dryfit.export.CompareJson;
import dryfit.export.ComparePage;
import dryfit.export.CompareText;
import dryfit.export.TextStyle;
import dryfit.fit.compare.Comparison;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "compare",
    description = {
      "Lay designs side by side: what differs in dimensions, angles, parts and blanks,",
      "gaps, weight and findings. The first is what the others are held against."
    },
    footer = {
      "",
      "Examples:",
      "  compare models/harbour-armchair.json",
      "  compare models/harbour-armchair.json --variant low --page low.html",
      "  compare models/low-stool.json models/kiln-stool.json --all"
    })
final class CompareCommand implements Callable<Integer> {
  private final Screen screen;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "the chair document")
  private Path file;

  @Parameters(
      index = "1..*",
      paramLabel = "OTHER",
      description = "other chair documents, each as drawn")
  private List<Path> others = new ArrayList<>();

  @Option(
      names = "--variant",
      paramLabel = "NAME",
      description =
          "a variant of FILE, may be repeated; one alone is held against the chair as drawn, and"
              + " without any all are")
  private List<String> variants = new ArrayList<>();

  @Option(names = "--all", description = "also what is the same")
  private boolean all;

  @Option(names = "--json", description = "every figure for other programs, always in millimetres")
  private boolean json;

  @Option(
      names = "--page",
      paramLabel = "FILE.html",
      description = "write a page with pictures side by side and laid over each other")
  private Path page;

  CompareCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    List<Wanted> wanted = CompareChairs.wanted(file, chosen(), others);
    for (Wanted again : CompareChairs.repeated(file, chosen(), others)) {
      screen
          .err()
          .println(again.file() + ", " + again.variant() + ", is named twice; it is compared once");
    }
    if (wanted.size() < 2 && (!others.isEmpty() || !variants.isEmpty())) {
      throw new ParameterException(
          spec.commandLine(),
          "there is nothing to compare " + file + " with: name another file, or a --variant");
    }
    ProgressBar bar = new ProgressBar(screen);
    bar.show(0, wanted.size());
    CompareChairs.Outcome outcome =
        CompareChairs.of(
            wanted, KernelChoice.USUAL.kernel(), done -> bar.show(done, wanted.size()));
    bar.clear();
    if (outcome instanceof NotAll not) {
      return screen.refused(not.problems(), not.exit(), json);
    }
    Comparison comparison = ((Compared) outcome).comparison();
    TextStyle usual = TextStyle.of(comparison.sides().get(0).report().chair().design().unit());
    if (json) {
      screen.print(CompareJson.bytes(comparison));
    } else {
      TextStyle style = new TextStyle(usual.unit(), usual.denominator(), true, screen.terminal());
      screen.out().print(CompareText.of(comparison, style, all));
    }
    return page == null ? Exit.FITS.code() : write(ComparePage.bytes(comparison, usual));
  }

  /** Those that were named; otherwise, if no other file was, all that the document has. */
  private List<String> chosen() {
    if (variants.isEmpty()
        && others.isEmpty()
        && DocumentReader.read(file) instanceof Reading.Accepted<Document> read) {
      List<String> every = new ArrayList<>(read.value().variants());
      every.add(0, dryfit.document.Design.AS_DRAWN);
      return every;
    }
    return variants;
  }

  private int write(byte[] html) {
    WrittenFiles result = CompareChairs.write(html, page);
    if (result instanceof WrittenFiles.Failed failed) {
      screen.notWritten(failed);
    } else {
      screen.err().println("page written: " + page);
    }
    return result.exit().code();
  }
}
