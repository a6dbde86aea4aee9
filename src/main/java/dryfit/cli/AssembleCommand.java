package dryfit.cli;

import dryfit.app.OpenChair;
import dryfit.app.OrderParts;
import dryfit.app.OrderParts.UnknownPart;
import dryfit.build.Chair;
import dryfit.export.AssemblyJson;
import dryfit.export.AssemblyText;
import dryfit.export.TextStyle;
import dryfit.fit.order.Onlooker;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
    name = "assemble",
    description = {
      "Find an order in which the parts go together, each step a straight push, or what keeps them",
      "from it. The last line is the answer."
    },
    footer = {
      "",
      "Examples:",
      "  assemble models/harbour-armchair.json",
      "  assemble models/low-stool.json --glued 'front-leg right, front-rail, front-leg left'",
      "  assemble models/kiln-stool.json --json"
    })
final class AssembleCommand implements Callable<Integer> {
  private final Screen screen;

  @Spec private CommandSpec spec;

  @Mixin private ChairArguments chair;

  @Option(
      names = "--glued",
      paramLabel = "PARTS",
      description =
          "parts, commas between, that are put together beforehand and move as one; may be repeated")
  private List<String> glued = new ArrayList<>();

  @Option(names = "--json", description = "the order for other programs, always in millimetres")
  private boolean json;

  AssembleCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit(), json);
    }
    OrderParts order = ordered(((OpenChair.Ready) opened).chair());
    if (json) {
      screen.print(AssemblyJson.bytes(order.assembling()));
    } else {
      TextStyle usual = TextStyle.of(order.assembling().chair().design().unit());
      TextStyle style =
          new TextStyle(usual.unit(), usual.denominator(), usual.decimals(), screen.terminal());
      screen.out().print(AssemblyText.of(order.assembling(), style));
    }
    return order.exit().code();
  }

  private OrderParts ordered(Chair built) {
    List<List<String>> groups =
        glued.stream().map(g -> Arrays.stream(g.split(",")).map(String::strip).toList()).toList();
    ProgressBar bar = new ProgressBar(screen);
    bar.show(0, built.parts().size());
    try {
      OrderParts order = OrderParts.of(built, groups, new OnBar(bar, built.parts().size()));
      bar.clear();
      return order;
    } catch (UnknownPart e) {
      throw new ParameterException(spec.commandLine(), "--glued: " + e.getMessage(), e);
    }
  }

  /** Shows how far the search has come, and what it is at. */
  private static final class OnBar implements Onlooker {
    private final ProgressBar bar;
    private final int all;
    private int parts;

    OnBar(ProgressBar bar, int all) {
      this.bar = bar;
      this.all = all;
    }

    @Override
    public void settled(int known) {
      parts = known;
      bar.show(parts, all);
    }

    @Override
    public void now(String doing) {
      // Not yet full: a full bar is cleared, and this still takes a while.
      bar.show(Math.min(parts, all - 1), all, doing);
    }
  }
}
