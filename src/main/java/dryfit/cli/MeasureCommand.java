package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.KernelChoice;
import dryfit.app.MeasureParts;
import dryfit.app.MeasureParts.Noted;
import dryfit.app.OpenChair;
import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.document.Design.Measurement;
import dryfit.document.Problem;
import dryfit.export.MeasuredJson;
import dryfit.export.MeasuredText;
import dryfit.export.TextStyle;
import dryfit.fit.PlannedSizes;
import dryfit.fit.loop.Afterwards;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "measure",
    description = {
      "Hold what was measured on real parts against the plan, and tell what to do about it:",
      "what later parts to make otherwise, which made parts are at odds and what can be trimmed,",
      "and who may hold a shoulder open.",
      "With --value, add a measurement to the document first."
    },
    footer = {
      "",
      "Examples:",
      "  measure my-chair.json",
      "  measure my-chair.json --joint 'side rail to front leg' --what 'tenon thickness' \\",
      "    --value '7.6 mm' --on 2026-03-02",
      "  measure my-chair.json --joint 'side rail to front leg' --hand left \\",
      "    --what 'shoulder gap' --at top --value '0.8 mm' --on 2026-03-09"
    })
final class MeasureCommand implements Callable<Integer> {
  private static final List<String> HANDS = List.of("left", "right");

  private static final String EDGED = "shoulder gap";

  private final Screen screen;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "the chair document")
  private Path file;

  @Option(names = "--part", paramLabel = "NAME", description = "the part that was measured")
  private String part;

  @Option(names = "--joint", paramLabel = "NAME", description = "or the joint")
  private String joint;

  @Option(names = "--frame", paramLabel = "NAME", description = "or the frame: seat, front, back")
  private String frame;

  @Option(
      names = "--what",
      paramLabel = "SIZE",
      description =
          "of a part: length, width, thickness, shoulder to shoulder; of a joint: tenon thickness,"
              + " mortise thickness, tenon width, mortise length, tenon length, mortise depth, lean along, lean across, proud,"
              + " shoulder gap; of a frame: diagonal from the left, diagonal from the right")
  private String what;

  @Option(
      names = "--hand",
      paramLabel = "HAND",
      description = "which of a pair of joints: left, right; both, if you do not say")
  private String hand;

  @Option(
      names = "--at",
      paramLabel = "EDGE",
      description =
          "where a shoulder gap is: top, bottom, front, back, outside, inside; else middle")
  private String at;

  @Option(
      names = "--value",
      paramLabel = "VALUE",
      description = "with its unit: '17.6 mm', '0.5 deg'")
  private String value;

  @Option(names = "--on", paramLabel = "DATE", description = "the day: 2026-03-02")
  private String on;

  @Option(names = "--json", description = "as JSON, always in millimetres and degrees")
  private boolean json;

  MeasureCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    boolean adds =
        Stream.of(value, part, joint, frame, what, hand, at, on).anyMatch(Objects::nonNull);
    if (adds) {
      List<Problem> problems = added();
      if (!problems.isEmpty()) {
        return screen.refused(problems, Exit.REFUSED, json);
      }
    }
    OpenChair.Opened opened = OpenChair.open(file, Design.AS_DRAWN, KernelChoice.USUAL.kernel());
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit(), json);
    }
    Chair chair = ((OpenChair.Ready) opened).chair();
    Afterwards after = MeasureParts.afterwards(chair);
    if (json) {
      screen.print(MeasuredJson.of(after));
    } else {
      TextStyle usual = TextStyle.of(chair.design().unit());
      TextStyle style = new TextStyle(usual.unit(), usual.denominator(), false, screen.terminal());
      screen.out().print(MeasuredText.of(after, style));
    }
    return Exit.FITS.code();
  }

  private List<Problem> added() {
    checkSubject();
    List<String> known =
        joint != null
            ? PlannedSizes.OF_A_JOINT
            : part != null ? PlannedSizes.OF_A_PART : PlannedSizes.OF_A_FRAME;
    String sizes = String.join(", ", known);
    if (what == null) {
      throw wrong("--what is missing: which size was measured, one of " + sizes);
    }
    if (!known.contains(what)) {
      throw wrong("--what is one of " + sizes + ", not '" + what + "'");
    }
    if (value == null) {
      throw wrong("--value is missing: what was found, with its unit, such as '17.6 mm'");
    }
    checkHandAndEdge();
    checkDay();
    try {
      String subject = joint != null ? "joint" : part != null ? "part" : "frame";
      String of = joint != null ? joint : part != null ? part : frame;
      return MeasureParts.add(file, new Noted(subject, of, what, hand, at, value, on));
    } catch (IOException e) {
      throw new ParameterException(
          spec.commandLine(), file + " cannot be written: " + e.getMessage(), e);
    }
  }

  private void checkSubject() {
    long named = Stream.of(part, joint, frame).filter(Objects::nonNull).count();
    if (named == 0) {
      throw wrong("say what was measured: --part, --joint or --frame, with its name");
    }
    if (named > 1) {
      throw wrong("a measurement is of one thing: --part, --joint or --frame, not two of them");
    }
  }

  private void checkHandAndEdge() {
    if (hand != null && joint == null) {
      throw wrong(
          "--hand says which of a pair of joints; a part's hand is in its name: --part '"
              + Objects.requireNonNullElse(part, "side-rail")
              + " left'");
    }
    if (hand != null && !HANDS.contains(hand)) {
      throw wrong("--hand is " + String.join(" or ", HANDS) + ", not '" + hand + "'");
    }
    if (at != null && !what.equals(EDGED)) {
      throw wrong("--at says where a shoulder gap is; " + what + " has no such place");
    }
    if (at != null && !Measurement.SIDES.contains(at)) {
      throw wrong(
          "--at is one of "
              + String.join(", ", Measurement.SIDES)
              + ", not '"
              + at
              + "'; without it the gap is in the middle of the shoulder");
    }
  }

  private void checkDay() {
    if (on == null) {
      throw wrong("--on is missing: the day it was measured, such as 2026-03-02");
    }
    try {
      LocalDate.parse(on);
    } catch (DateTimeParseException e) {
      throw new ParameterException(
          spec.commandLine(), "--on is a day such as 2026-03-02, not '" + on + "'", e);
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
