package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.FitChair;
import dryfit.app.OpenChair;
import dryfit.document.Design;
import dryfit.export.AnglesText;
import dryfit.export.ProblemsText;
import dryfit.export.TextStyle;
import dryfit.fit.FitReport;
import dryfit.measure.Length;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
    name = "angles",
    description = {
      "Tell every angle of the chair, ready to be set out: rake, splay and sight lines,",
      "shoulders, saw settings, and the lean, opening and depth of every mortise.",
      "fit --json has the same numbers for other programs."
    },
    footer = {
      "",
      "Examples:",
      "  angles models/kiln-stool.json",
      "  angles models/orchard-side-chair.json --units mm"
    })
final class AnglesCommand implements Callable<Integer> {
  private final Screen screen;

  @Spec private CommandSpec spec;

  @Mixin private ChairArguments chair;

  @Option(
      names = "--units",
      paramLabel = "in|mm",
      description = "lengths in inches or millimetres; without it, as the document is written")
  private String units;

  AnglesCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    if (units != null && !Set.of("in", "mm").contains(units)) {
      throw new ParameterException(spec.commandLine(), "--units is in or mm, not '" + units + "'");
    }
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      screen.err().print(ProblemsText.of(refused.problems()));
      return refused.exit().code();
    }
    FitReport report = FitChair.of(((OpenChair.Ready) opened).chair()).report();
    screen.out().print(AnglesText.of(report, style(report.chair().design())));
    return Exit.FITS.code();
  }

  private TextStyle style(Design design) {
    TextStyle usual = TextStyle.of(design.unit());
    Length.Unit unit =
        units == null ? usual.unit() : units.equals("in") ? Length.Unit.IN : Length.Unit.MM;
    return new TextStyle(unit, usual.denominator(), false, screen.terminal());
  }
}
