package dryfit.cli;

import dryfit.document.Design;
import dryfit.measure.Length;
import dryfit.shop.setting.Bench;
import dryfit.shop.setting.Bench.Bearing;
import dryfit.shop.setting.Bench.Follower;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What the maker says about bits and fits. */
final class BenchOptions {
  /** Nothing at a bench is longer than this, mm. */
  private static final double MOST = 500;

  @Option(
      names = "--drill-point",
      paramLabel = "LENGTH",
      description = "how far the point of the bit stands out before its full width")
  private String drillPoint;

  @Option(
      names = "--fits",
      paramLabel = "NUMBER",
      description = "how often a coped or compound end is tried and trimmed; usually 3")
  private Integer fits;

  @Option(
      names = "--each-fit",
      paramLabel = "LENGTH",
      description = "what each of these takes off; usually 1/32 in")
  private String eachFit;

  @Option(
      names = "--follower",
      paramLabel = "CUTTER:BEARING",
      description = {
        "a bit that follows a template: length of its cutter, and where its bearing sits,",
        "shank or tip, as in \"1 in:shank\"; several bits by several options"
      })
  private List<String> followers = new ArrayList<>();

  /** The usual bench with these options over it; lengths in the document's unit. */
  Bench over(Design design, CommandLine command) {
    Length.Unit unit = design.unit().printed();
    Bench usual = Bench.USUAL;
    if (fits != null && (fits < 0 || fits > 20)) {
      throw new ParameterException(command, "--fits is from 0 to 20, not " + fits);
    }
    return new Bench(
        drillPoint == null
            ? usual.drillPoint()
            : length("--drill-point", drillPoint, unit, command),
        fits == null ? usual.fits() : fits,
        eachFit == null ? usual.eachFit() : length("--each-fit", eachFit, unit, command),
        followers.isEmpty()
            ? usual.followers()
            : followers.stream().map(text -> follower(text, unit, command)).toList());
  }

  private static Follower follower(String text, Length.Unit unit, CommandLine command) {
    int colon = text.lastIndexOf(':');
    String word = text.substring(colon + 1).strip();
    Bearing bearing =
        Arrays.stream(Bearing.values())
            .filter(b -> b.word().equals(word))
            .findFirst()
            .filter(b -> colon > 0)
            .orElseThrow(
                () ->
                    new ParameterException(
                        command,
                        "--follower is a length, a colon, and shank or tip, not '" + text + "'"));
    double cutter = length("--follower", text.substring(0, colon), unit, command);
    // Each pass after the first overlaps the one before, so a cutter has to be longer than that.
    if (cutter < LEAST_CUTTER) {
      throw new ParameterException(command, "--follower: a cutter is at least 5 mm long");
    }
    return new Follower(cutter, bearing);
  }

  private static final double LEAST_CUTTER = 5;

  private static double length(String option, String text, Length.Unit unit, CommandLine command) {
    OptionalDouble mm = Length.parse(text.strip(), unit);
    if (mm.isEmpty() || !(mm.getAsDouble() >= 0) || mm.getAsDouble() > MOST) {
      throw new ParameterException(
          command, option + ": '" + text + "' is not a length from 0 to 500 mm");
    }
    return mm.getAsDouble();
  }
}
