package dryfit.cli;

import dryfit.app.FileNames;
import dryfit.app.OpenChair;
import dryfit.app.WriteSolids;
import dryfit.app.WrittenFiles;
import dryfit.export.ProblemsText;
import dryfit.export.StlFile;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
    name = "solids",
    description = {
      "Write every part as an STL file in millimetres, and assembled.stl with all parts in place.",
      "Each file is read back and checked before it is listed."
    },
    footer = {
      "",
      "Examples:",
      "  solids models/low-stool.json",
      "  solids models/low-stool.json --variant high --to stl --in-place"
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

  @Option(names = "--ascii", description = "the text form of STL; without it, the binary form")
  private boolean ascii;

  SolidsCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      screen.err().print(ProblemsText.of(refused.problems()));
      return refused.exit().code();
    }
    var built = ((OpenChair.Ready) opened).chair();
    Path folder = to != null ? to : FileNames.folder(built.design());
    StlFile.Form form = ascii ? StlFile.Form.ASCII : StlFile.Form.BINARY;
    return new WriteSolids(folder, inPlace, form).write(built, this::tell).code();
  }

  private void tell(WrittenFiles result) {
    if (result instanceof WrittenFiles.Failed failed) {
      screen.err().println(failed.path() + ": not written: " + failed.reason());
    } else if (result instanceof WrittenFiles.Finished<?> finished) {
      tell((StlFile) finished.file());
    }
  }

  /** The size in both units: STL has none, and a size off by 25.4 is soon seen. */
  private void tell(StlFile file) {
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
}
