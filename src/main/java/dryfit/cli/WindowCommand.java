package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.WindowStart.Ended;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "window",
    description = "Open the chair in a window: turn it, change it, see what does not fit.",
    footer = {"", "Examples:", "  window models/harbour-armchair.json", "  window"})
final class WindowCommand implements Callable<Integer> {
  private final Screen screen;
  private final Foreseen foreseen;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      description = "the chair document; without it, there are some to choose from")
  private Path file;

  @Option(
      names = "--until-shown",
      hidden = true,
      description = "close again when the chair and its findings are seen; to time a start")
  private boolean untilShown;

  WindowCommand(Screen screen, Foreseen foreseen) {
    this.screen = screen;
    this.foreseen = foreseen;
  }

  @Override
  public Integer call() {
    Ended ended =
        foreseen
            .window()
            .map(start -> start.open(Optional.ofNullable(file), untilShown))
            .orElse(new Ended.NoScreen("this program was packed without its window"));
    if (ended instanceof Ended.NoScreen none) {
      screen
          .err()
          .println("dryfit: " + none.why() + "; picture draws the chair into a file instead");
      return Exit.USAGE.code();
    }
    return Exit.FITS.code();
  }
}
