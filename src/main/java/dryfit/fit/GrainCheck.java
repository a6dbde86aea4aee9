package dryfit.fit;

import dryfit.document.FitLimit;
import dryfit.fit.ChairMeasure.GrainRun;
import dryfit.fit.Finding.Severity;
import dryfit.measure.Angle;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Short grain. {@code grain-runs-out}: the grain leaves the middle line of a curved part by more
 * than the limit. {@code short-fibre}: the fibres across some place are shorter than the limit.
 * Exactly at a limit passes.
 */
final class GrainCheck {
  private GrainCheck() {}

  private static final String CARE =
      "; a part breaks first where its grain is short, so try a sample before you sit on it";

  static List<Finding> findings(Assembly assembly, ChairMeasure whole) {
    Limit slope = Limit.of(assembly.chair().design(), FitLimit.GRAIN_SLOPE);
    Limit fibre = Limit.of(assembly.chair().design(), FitLimit.FIBRE_LEAST);
    List<Finding> out = new ArrayList<>();
    for (GrainRun run : whole.grain()) {
      if (run.slope() > slope.value() + Tolerances.parallel()) {
        out.add(
            Found.of("grain-runs-out", Severity.LOOK)
                .part(run.part())
                .atMost(Math.toDegrees(slope.value()), Math.toDegrees(run.slope()))
                .unit("deg")
                .source(slope.source())
                .says(
                    "The grain leaves the line of "
                        + run.part()
                        + " by "
                        + Angle.degrees(run.slope())
                        + String.format(Locale.ROOT, ", 1 in %.1f, ", 1 / Math.tan(run.slope()))
                        + assembly.length(run.steepest().z())
                        + " above the floor; flatten the curve there by "
                        + Angle.degrees(run.slope() - slope.value())
                        + ", or lay it out on wood whose grain follows it"
                        + CARE
                        + ".",
                    run.pointer(),
                    run.steepest()));
      }
      if (run.fibre() < fibre.value() - Tolerances.contact()) {
        out.add(
            Found.of("short-fibre", Severity.LOOK)
                .part(run.part())
                .atLeast(fibre.value(), run.fibre())
                .source(fibre.source())
                .says(
                    "The fibres across "
                        + run.part()
                        + " are only "
                        + assembly.length(run.fibre())
                        + " long, "
                        + assembly.length(run.shortest().z())
                        + " above the floor; make it wider there, or turn the grain until they are "
                        + assembly.length(fibre.value() - run.fibre())
                        + " longer"
                        + CARE
                        + ".",
                    run.pointer(),
                    run.shortest()));
      }
    }
    return out;
  }
}
