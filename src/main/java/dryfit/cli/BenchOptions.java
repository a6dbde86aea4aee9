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
  /** Nothing at a bench is longer than this, mm; said as 19 5/8 in, which is a hair less. */
  private static final double MOST = 500;

  private static final int MOST_FITS = 20;

  @Option(
      names = "--drill-point",
      paramLabel = "LENGTH",
      description = "how far the point of the bit stands out before its full width")
  private String drillPoint;

  @Option(
      names = "--fits",
      paramLabel = "NUMBER",
      description = "how often a coped or compound end is tried and trimmed; usually 3")
  private String fits;

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
    return new Bench(
        drillPoint == null
            ? usual.drillPoint()
            : length("--drill-point", drillPoint, unit, command),
        fits == null ? usual.fits() : count(command),
        eachFit == null ? usual.eachFit() : length("--each-fit", eachFit, unit, command),
        followers.isEmpty()
            ? usual.followers()
            : followers.stream().map(text -> follower(text, unit, command)).toList());
  }

  private int count(CommandLine command) {
    String text = fits.strip();
    int count = text.matches("[0-9]{1,2}") ? Integer.parseInt(text) : -1;
    if (count < 0 || count > MOST_FITS) {
      throw new ParameterException(
          command, "--fits is a whole number from 0 to " + MOST_FITS + ", not '" + fits + "'");
    }
    return count;
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
      String least = unit == Length.Unit.IN ? "13/64 in" : "5 mm";
      throw new ParameterException(command, "--follower: a cutter is at least " + least + " long");
    }
    return new Follower(cutter, bearing);
  }

  private static final double LEAST_CUTTER = 5;

  private static double length(String option, String text, Length.Unit unit, CommandLine command) {
    OptionalDouble mm = Length.parse(text.strip(), unit);
    if (mm.isEmpty() || !(mm.getAsDouble() >= 0) || mm.getAsDouble() > MOST) {
      String most = unit == Length.Unit.IN ? "19 5/8 in" : "500 mm";
      String meant =
          mm.isPresent() && text.strip().matches("[0-9./ ]+")
              ? "; without a unit it is in " + unit.symbol() + ", as the document is"
              : "";
      throw new ParameterException(
          command, option + ": '" + text + "' is not a length from 0 to " + most + meant);
    }
    return mm.getAsDouble();
  }
}
