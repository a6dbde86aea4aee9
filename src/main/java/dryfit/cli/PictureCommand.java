package dryfit.cli;

import dryfit.app.DrawPicture;
import dryfit.app.FileNames;
import dryfit.app.FitChair;
import dryfit.app.OpenChair;
import dryfit.app.WrittenFiles;
import dryfit.build.Chair;
import dryfit.export.picture.View;
import dryfit.fit.Finding;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
    name = "picture",
    description = "Draw the chair into a PNG file.",
    footer = {
      "",
      "Examples:",
      "  picture models/low-stool.json",
      "  picture models/low-stool.json --view front --size 800x600 --to front.png"
    })
final class PictureCommand implements Callable<Integer> {
  private final Screen screen;

  @Mixin private ChairArguments chair;

  @Option(
      names = "--view",
      paramLabel = "VIEW",
      converter = Views.class,
      completionCandidates = Views.class,
      description = "from where: ${COMPLETION-CANDIDATES}; normally the first")
  private View view = View.THREE_QUARTER;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      converter = PictureSize.Reader.class,
      description = "width and height in pixels; normally 1200x900")
  private PictureSize size = new PictureSize(1200, 900);

  @Option(names = "--findings", description = "ring what the dry fit found, in red")
  private boolean findings;

  @Option(
      names = "--to",
      paramLabel = "FILE.png",
      description = "where it goes; without it, exports/, the name of the chair's file, the view")
  private Path to;

  PictureCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit());
    }
    Chair built = ((OpenChair.Ready) opened).chair();
    List<Finding> found = findings ? FitChair.of(built).report().findings() : List.of();
    Path path = to != null ? to : FileNames.folder(built.design()).resolve(view.word() + ".png");
    WrittenFiles result =
        new DrawPicture(view, size.width(), size.height()).draw(built, found, path);
    if (result instanceof WrittenFiles.Failed failed) {
      screen.notWritten(failed);
    } else {
      screen.out().println(path + "  " + size.width() + " x " + size.height() + " pixels");
    }
    return result.exit().code();
  }

  /** The views by their words. */
  static final class Views extends Words<View> {
    Views() {
      super(View.words(), View::named);
    }
  }
}
