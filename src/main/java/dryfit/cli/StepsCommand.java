package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.OpenChair;
import dryfit.build.Chair;
import dryfit.export.StepsText;
import dryfit.export.TextStyle;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(
    name = "steps",
    description = "Say in which order each part is cut, and from which faces.",
    footer = {"", "Example:", "  steps models/harbour-armchair.json"})
final class StepsCommand implements Callable<Integer> {
  private final Screen screen;

  @Mixin private ChairArguments chair;

  StepsCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit());
    }
    Chair built = ((OpenChair.Ready) opened).chair();
    screen.out().print(StepsText.of(built, TextStyle.of(built.design().unit())));
    return Exit.FITS.code();
  }
}
