package dryfit.cli;

import dryfit.app.OpenChair;
import dryfit.app.SpreadChair;
import dryfit.export.SpreadJson;
import dryfit.export.SpreadText;
import dryfit.export.TextStyle;
import dryfit.fit.spread.Spreads;
import dryfit.measure.Length;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
    name = "spread",
    description = {
      "What small errors of your cuts add up to: how far each gap, wall, set-back and",
      "diagonal may come out, how likely it is beyond its limit, and which cut to take",
      "most care with. Goes by the key \"accuracy\" of the document."
    },
    footer = {
      "",
      "Examples:",
      "  spread models/low-stool.json",
      "  spread models/harbour-armchair.json --all --units in"
    })
final class SpreadCommand implements Callable<Integer> {
  private final Screen screen;

  @Mixin private ChairArguments chair;

  @Option(names = "--all", description = "every figure")
  private boolean all;

  @Mixin private UnitOption units = new UnitOption();

  @Option(names = "--json", description = "all of it for other programs, always in millimetres")
  private boolean json;

  SpreadCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit(), json);
    }
    Spreads spreads = SpreadChair.of((OpenChair.Ready) opened, chair.kernel);
    if (json) {
      screen.print(SpreadJson.bytes(spreads));
    } else {
      TextStyle usual = TextStyle.of(spreads.chair().design().unit());
      Length.Unit unit = units.or(usual.unit());
      TextStyle style = new TextStyle(unit, usual.denominator(), true, screen.terminal());
      screen.out().print(SpreadText.of(spreads, style, all));
    }
    return opened.exit().code();
  }
}
