package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.FitChair;
import dryfit.app.OpenChair;
import dryfit.app.SecondOpinion;
import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.export.FitJson;
import dryfit.export.FitText;
import dryfit.export.TextStyle;
import dryfit.measure.Length;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
    name = "fit",
    description = {
      "Put the chair together dry: measure every joint, and say what does not fit.",
      "The last line is the answer."
    },
    footer = {
      "",
      "Examples:",
      "  fit models/harbour-armchair.json",
      "  fit models/harbour-armchair.json --variant low --units in --fractions 32",
      "  fit models/harbour-armchair.json --json"
    })
final class FitCommand implements Callable<Integer> {
  /** Divisions found on rules. */
  private static final Set<Integer> DIVISIONS = Set.of(2, 4, 8, 16, 32, 64, 128);

  private final Screen screen;

  @Spec private CommandSpec spec;

  @Mixin private ChairArguments chair;

  @Option(names = "--json", description = "the report for other programs, always in millimetres")
  private boolean json;

  @Option(
      names = "--all",
      description =
          "every side of every joint and where it is least, walls, play, set-backs, grain")
  private boolean all;

  @Mixin private UnitOption units = new UnitOption();

  @Option(
      names = "--fractions",
      paramLabel = "N",
      description = "inches to the nearest 1/N: 2, 4, 8, 16, 32, 64 (normally) or 128")
  private int fractions = 64;

  @Option(names = "--decimals", description = "inches as decimals")
  private boolean decimals;

  @Option(
      names = "--second-opinion",
      description = "have every part made by the other kernel too, and say where they differ")
  private boolean secondOpinion;

  FitCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    refuseWrongOptions();
    OpenChair.Opened opened = chair.open();
    if (opened instanceof OpenChair.Refused refused) {
      return screen.refused(refused.problems(), refused.exit(), json);
    }
    Chair built = ((OpenChair.Ready) opened).chair();
    FitChair fitted = FitChair.of(toldIn(built));
    Exit exit = secondOpinion ? asked(built, fitted.exit()) : fitted.exit();
    if (json) {
      screen.print(FitJson.bytes(fitted.report()));
    } else {
      Design design = fitted.report().chair().design();
      screen.out().print(FitText.of(fitted.report(), style(design), all));
    }
    return exit.code();
  }

  /** Not in the report: that is about the chair, this about the program. */
  private Exit asked(Chair built, Exit otherwise) {
    SecondOpinion opinion =
        SecondOpinion.of(built, chair.kernel.word(), chair.kernel.other().kernel());
    opinion.text().forEach(screen.err()::println);
    return opinion.exit() == Exit.FITS ? otherwise : opinion.exit();
  }

  /**
   * Findings are sentences, so they are made in the unit of the report; JSON has the document's.
   */
  private Chair toldIn(Chair built) {
    return json ? built : units.told(built);
  }

  private void refuseWrongOptions() {
    if (!DIVISIONS.contains(fractions)) {
      throw new ParameterException(
          spec.commandLine(), "--fractions is 2, 4, 8, 16, 32, 64 or 128, not " + fractions);
    }
  }

  private TextStyle style(Design design) {
    TextStyle usual = TextStyle.of(design.unit());
    Length.Unit unit = units.or(usual.unit());
    return new TextStyle(unit, fractions, decimals, screen.terminal());
  }
}
