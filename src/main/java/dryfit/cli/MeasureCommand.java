package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.KernelChoice;
import dryfit.app.MeasureParts;
import dryfit.app.MeasureParts.Noted;
import dryfit.app.OpenChair;
import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.document.Problem;
import dryfit.export.MeasuredText;
import dryfit.export.TextStyle;
import dryfit.fit.AsMeasured;
import dryfit.fit.PlannedSizes;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "measure",
    description = {
      "Hold what was measured on real parts against the plan, and tell what to do about it.",
      "With --value, add a measurement to the document first."
    },
    footer = {
      "",
      "Examples:",
      "  measure my-chair.json",
      "  measure my-chair.json --joint 'side rail to front leg' --what 'tenon thickness' \\",
      "    --value '7.6 mm' --on 2026-03-02"
    })
final class MeasureCommand implements Callable<Integer> {
  private final Screen screen;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "the chair document")
  private Path file;

  @Option(names = "--part", paramLabel = "NAME", description = "the part that was measured")
  private String part;

  @Option(names = "--joint", paramLabel = "NAME", description = "or the joint")
  private String joint;

  @Option(
      names = "--what",
      paramLabel = "SIZE",
      description =
          "of a part: length, width, thickness, shoulder to shoulder; of a joint: tenon thickness,"
              + " mortise thickness, tenon length, mortise depth")
  private String what;

  @Option(names = "--value", paramLabel = "LENGTH", description = "with its unit: '17.6 mm'")
  private String value;

  @Option(names = "--on", paramLabel = "DATE", description = "the day: 2026-03-02")
  private String on;

  MeasureCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    if (value != null || part != null || joint != null || what != null || on != null) {
      List<Problem> problems = added();
      if (!problems.isEmpty()) {
        return screen.refused(problems, Exit.REFUSED);
      }
    }
    OpenChair.Opened opened = OpenChair.open(file, Design.AS_DRAWN, KernelChoice.USUAL.kernel());
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit());
    }
    Chair chair = ((OpenChair.Ready) opened).chair();
    TextStyle usual = TextStyle.of(chair.design().unit());
    TextStyle style = new TextStyle(usual.unit(), usual.denominator(), true, screen.terminal());
    screen.out().print(MeasuredText.of(AsMeasured.of(chair), style));
    return Exit.FITS.code();
  }

  private List<Problem> added() {
    if (value == null || what == null || on == null || (part == null) == (joint == null)) {
      throw new ParameterException(
          spec.commandLine(),
          "a measurement needs --part or --joint, --what, --value and --on, the day");
    }
    try {
      LocalDate.parse(on);
    } catch (DateTimeParseException e) {
      throw new ParameterException(
          spec.commandLine(), "--on is a day such as 2026-03-02, not '" + on + "'", e);
    }
    boolean ofJoint = joint != null;
    List<String> known = ofJoint ? PlannedSizes.OF_A_JOINT : PlannedSizes.OF_A_PART;
    if (!known.contains(what)) {
      throw new ParameterException(
          spec.commandLine(),
          "--what is one of " + String.join(", ", known) + ", not '" + what + "'");
    }
    try {
      return MeasureParts.add(file, new Noted(ofJoint, ofJoint ? joint : part, what, value, on));
    } catch (IOException e) {
      throw new ParameterException(
          spec.commandLine(), file + " cannot be written: " + e.getMessage(), e);
    }
  }
}
