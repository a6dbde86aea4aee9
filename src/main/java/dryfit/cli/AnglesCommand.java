package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.FitChair;
import dryfit.app.OpenChair;
import dryfit.document.Design;
import dryfit.export.AnglesText;
import dryfit.export.TextStyle;
import dryfit.fit.FitReport;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

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

  @Mixin private ChairArguments chair;

  @Mixin private UnitOption units = new UnitOption();

  AnglesCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit());
    }
    FitReport report = FitChair.of(((OpenChair.Ready) opened).chair()).report();
    screen.out().print(AnglesText.of(report, style(report.chair().design())));
    return Exit.FITS.code();
  }

  private TextStyle style(Design design) {
    TextStyle usual = TextStyle.of(design.unit());
    return new TextStyle(units.or(usual.unit()), usual.denominator(), false, screen.terminal());
  }
}
