package dryfit.cli;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.measure.Length;
import picocli.CommandLine.Option;

/** The unit that a maker reads lengths in, whatever the document is written in. */
final class UnitOption {
  @Option(
      names = "--units",
      paramLabel = "UNIT",
      converter = Units.class,
      completionCandidates = Units.class,
      description = "lengths in ${COMPLETION-CANDIDATES}; without it, as the document is written")
  private Length.Unit units;

  private boolean said() {
    return units != null;
  }

  Length.Unit or(Length.Unit usual) {
    return said() ? units : usual;
  }

  /** The chair whose messages speak in that unit. */
  Chair told(Chair chair) {
    return said() ? chair.toldIn(Design.LengthUnit.of(units)) : chair;
  }
}
