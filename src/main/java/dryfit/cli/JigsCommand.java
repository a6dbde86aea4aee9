package dryfit.cli;

import dryfit.app.FileNames;
import dryfit.app.MakeJigs;
import dryfit.app.OpenChair;
import dryfit.app.WrittenFiles;
import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.document.JigKind;
import dryfit.export.SolidFile;
import dryfit.geometry.Vec3;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "jigs",
    description = {
      "Make jigs to print: guides, gauges, sticks and cradles, each proved on the finished part"
          + " before it is written, as STL and as 3MF in millimetres.",
      "Those that the document lists under jigs, or every one there is."
    },
    footer = {
      "",
      "Examples:",
      "  jigs models/low-stool.json --joint \"side rail to front leg\"",
      "  jigs models/kiln-stool.json --kind angle-guide --to jigs",
      "",
      "A jig does not make a machine safe: clamp it and the part, keep hands off the",
      "line of the drill, and follow the machine's manual."
    })
final class JigsCommand implements Callable<Integer> {
  private final Screen screen;

  @Mixin private ChairArguments chair;

  @Spec private CommandSpec spec;

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description = "where the files go; without it, exports/, the chair's file, and jigs")
  private Path to;

  @Option(names = "--joint", paramLabel = "NAME", description = "only for this joint")
  private String joint = "";

  @Option(
      names = "--kind",
      paramLabel = "NAME",
      converter = Kinds.class,
      completionCandidates = Kinds.class,
      description = "only of this kind: ${COMPLETION-CANDIDATES}")
  private JigKind kind;

  JigsCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit());
    }
    Chair built = ((OpenChair.Ready) opened).chair();
    if (!joint.isEmpty()) {
      List<String> names = built.joints().stream().map(Joint::name).distinct().toList();
      Named.check("joint", joint, names, List.of(), spec.commandLine());
    }
    Path folder = to != null ? to : FileNames.folder(built.design()).resolve("jigs");
    return new MakeJigs(folder, chair.kernel.kernel())
        .make(built, joint, Optional.ofNullable(kind), told -> tell(told, new ProgressBar(screen)))
        .code();
  }

  private void tell(MakeJigs.Told told, ProgressBar bar) {
    if (told instanceof MakeJigs.Told.Done done) {
      bar.show(done.jigs(), done.of());
      return;
    }
    bar.clear();
    if (told instanceof MakeJigs.Told.NotMade none) {
      screen.out().println(none.name() + ": no jig here, because " + none.because());
    } else if (told instanceof MakeJigs.Told.NotProved bad) {
      screen
          .err()
          .println(
              bad.jig().name()
                  + ": not written, for it is not sound: "
                  + String.join("; ", bad.proof().faults()));
    } else if (told instanceof MakeJigs.Told.Proved good) {
      String notes = String.join("; ", good.jig().notes());
      screen.out().println(good.jig().name() + (notes.isEmpty() ? "" : ": " + notes));
    } else if (told instanceof MakeJigs.Told.File file) {
      tell(file.result());
    }
  }

  private void tell(WrittenFiles result) {
    if (result instanceof WrittenFiles.Failed failed) {
      screen.notWritten(failed);
    } else if (result instanceof WrittenFiles.Finished<?> finished) {
      SolidFile file = (SolidFile) finished.file();
      Vec3 s = file.bounds().size();
      screen
          .out()
          .println(
              String.format(
                  Locale.ROOT, "  %s  %.1f x %.1f x %.1f mm", file.path(), s.x(), s.y(), s.z()));
    }
  }

  /** The kinds by their words. */
  static final class Kinds extends Words<JigKind> {
    Kinds() {
      super(
          List.copyOf(JigKind.byWord().keySet()),
          word -> Optional.ofNullable(JigKind.byWord().get(word)));
    }
  }
}
