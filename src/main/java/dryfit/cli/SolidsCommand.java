package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.FileNames;
import dryfit.app.OpenChair;
import dryfit.app.SolidFormat;
import dryfit.app.WriteSolids;
import dryfit.app.WrittenFiles;
import dryfit.export.SolidFile;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
    name = "solids",
    description = {
      "Write every part as a file of its own, and the assembled chair as one more: STL or 3MF in"
          + " millimetres, or glTF (.glb) in metres as that format wants it.",
      "Each file is read back and checked before it is listed."
    },
    footer = {
      "",
      "Examples:",
      "  solids models/low-stool.json",
      "  solids models/low-stool.json --variant high --to stl --in-place",
      "  solids models/low-stool.json --format 3mf"
    })
final class SolidsCommand implements Callable<Integer> {
  private final Screen screen;

  @Mixin private ChairArguments chair;

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description = "where the files go; without it, exports/ and the name of the chair's file")
  private Path to;

  @Option(
      names = "--in-place",
      description = "each part where it stands in the chair; without it, lying along x")
  private boolean inPlace;

  @Option(
      names = "--format",
      paramLabel = "NAME",
      converter = Formats.class,
      completionCandidates = Formats.class,
      description = "${COMPLETION-CANDIDATES}; normally the first")
  private SolidFormat format = SolidFormat.STL;

  @Option(names = "--ascii", description = "the text form of STL; without it, the binary form")
  private boolean ascii;

  @Spec private CommandSpec spec;

  SolidsCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    if (ascii && format != SolidFormat.STL) {
      throw new ParameterException(spec.commandLine(), "--ascii is a form of STL only");
    }
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit());
    }
    var built = ((OpenChair.Ready) opened).chair();
    Path folder = to != null ? to : FileNames.folder(built.design());
    ProgressBar bar = new ProgressBar(screen);
    // A file for each part, and one for the chair.
    int files = built.parts().size() + 1;
    int[] done = {0};
    bar.show(0, files);
    Exit exit =
        new WriteSolids(folder, inPlace, ascii ? SolidFormat.STL_TEXT : format)
            .write(
                built,
                result -> {
                  bar.clear();
                  tell(result);
                  bar.show(++done[0], files);
                });
    bar.clear();
    return exit.code();
  }

  private void tell(WrittenFiles result) {
    if (result instanceof WrittenFiles.Failed failed) {
      screen.notWritten(failed);
    } else if (result instanceof WrittenFiles.Finished<?> finished) {
      tell((SolidFile) finished.file());
    }
  }

  /** The size in both units: STL has none, and a size off by 25.4 is soon seen. */
  private void tell(SolidFile file) {
    Vec3 s = file.bounds().size();
    double inch = Length.Unit.IN.mm();
    screen
        .out()
        .println(
            String.format(
                Locale.ROOT,
                "%s  %.1f x %.1f x %.1f mm  (%.2f x %.2f x %.2f in)",
                file.path(),
                s.x(),
                s.y(),
                s.z(),
                s.x() / inch,
                s.y() / inch,
                s.z() / inch));
  }

  /** The formats by their words. */
  static final class Formats extends Words<SolidFormat> {
    Formats() {
      super(SolidFormat.words(), SolidFormat::named);
    }
  }
}
