package dryfit.cli;

import dryfit.app.CompareChairs;
import dryfit.app.Exit;
import dryfit.app.KernelChoice;
import dryfit.app.SweepChair;
import dryfit.app.SweepChair.NotUnderstood;
import dryfit.app.WrittenFiles;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import dryfit.export.SweepOut;
import dryfit.export.TextStyle;
import dryfit.fit.compare.Sweep;
import dryfit.fit.compare.Sweeping;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.IntConsumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "sweep",
    description = {
      "Run one dimension through a range: a table of what comes of it, and where the chair",
      "fits, to 0.1 mm. The last line is the answer."
    },
    footer = {
      "",
      "Examples:",
      "  sweep models/low-stool.json 'seatTop from 400 to 460 step 10'",
      "  sweep models/kiln-stool.json 'seatThick from 26 to 40 step 2' --page seat.html"
    })
final class SweepCommand implements Callable<Integer> {
  private final Screen screen;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "the chair document")
  private Path file;

  @Parameters(
      index = "1",
      paramLabel = "RANGE",
      description = "which dimension, in one text: 'seatTop from 400 to 460 step 10'")
  private String words;

  @Option(
      names = "--variant",
      paramLabel = "NAME",
      description = "a variant of the document; without it, the chair as drawn")
  private String variant = Design.AS_DRAWN;

  @Option(names = "--json", description = "every figure at every step, always in millimetres")
  private boolean json;

  @Option(names = "--page", paramLabel = "FILE.html", description = "write a page of plots")
  private Path page;

  SweepCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    Reading<Document> reading = DocumentReader.read(file);
    if (reading instanceof Reading.Refused<Document> refused) {
      return screen.refused(refused.problems(), Exit.REFUSED, json);
    }
    Document document = ((Reading.Accepted<Document>) reading).value();
    Reading<Design> design = SweepChair.design(document, variant);
    if (design instanceof Reading.Refused<Design> refused) {
      return screen.refused(refused.problems(), Exit.REFUSED, json);
    }
    Design accepted = ((Reading.Accepted<Design>) design).value();
    Sweep.Plan plan = plan(accepted);
    Sweep sweep = SweepChair.of(document, plan, KernelChoice.USUAL, progress(plan));
    new ProgressBar(screen).clear();
    TextStyle usual = TextStyle.of(accepted.unit());
    if (json) {
      screen.print(SweepOut.json(sweep));
    } else {
      TextStyle style = new TextStyle(usual.unit(), usual.denominator(), true, screen.terminal());
      screen.out().print(SweepOut.text(sweep, style));
    }
    int exit = sweep.allowed().isEmpty() ? Exit.DOES_NOT_FIT.code() : Exit.FITS.code();
    return page == null ? exit : written(SweepOut.page(sweep, accepted.name(), usual), exit);
  }

  private Sweep.Plan plan(Design design) {
    try {
      return SweepChair.plan(design, words);
    } catch (NotUnderstood e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
  }

  /**
   * On a terminal, a bar, and then a line that counts what is tried between; nothing where no one
   * is watching.
   */
  private IntConsumer progress(Sweep.Plan plan) {
    long steps = Sweeping.values(plan);
    ProgressBar bar = new ProgressBar(screen);
    return n -> {
      if (n < steps) {
        bar.show(n, (int) steps);
      } else if (screen.terminal()) {
        String of = n <= steps ? n + " of " + steps : steps + ", and " + (n - steps) + " between";
        screen.err().print("\r\u001b[K" + of);
        screen.err().flush();
      }
    };
  }

  private int written(byte[] html, int exit) {
    WrittenFiles result = CompareChairs.write(html, page);
    if (result instanceof WrittenFiles.Failed failed) {
      screen.notWritten(failed);
      return failed.exit().code();
    }
    screen.err().println("page written: " + page);
    return exit;
  }
}
