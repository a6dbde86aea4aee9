package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.Family;
import dryfit.app.StartChair;
import dryfit.app.StartSize;
import dryfit.app.WrittenFiles;
import dryfit.measure.Length;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "start",
    description = {
      "Begin a new chair from a few answers.",
      "At a terminal it asks for what is not said; elsewhere that is as usual."
    },
    footer = {
      "",
      "Examples:",
      "  start my-chair.json",
      "  start my-chair.json --family side-chair --unit in --seat-height \"17 1/2\"",
      "  start settle.json --family bench --seat-width 1200 --timber oak-white --usual"
    })
final class StartCommand implements Callable<Integer> {
  private final Screen screen;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "where the chair is to stand")
  private Path file;

  @Option(
      names = "--family",
      paramLabel = "FAMILY",
      converter = Families.class,
      completionCandidates = Families.class,
      description = "what to build: ${COMPLETION-CANDIDATES}")
  private Family family;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      converter = Units.class,
      completionCandidates = Units.class,
      description = "unit of the chair: ${COMPLETION-CANDIDATES}; normally the first")
  private Length.Unit unit;

  @Option(names = "--name", paramLabel = "NAME", description = "what the chair is called")
  private String name;

  @Option(
      names = "--seat-height",
      paramLabel = "LENGTH",
      description = "top of the seat above the floor: 440, 17.5, 17 1/2 in, 44 cm")
  private String seatHeight;

  @Option(
      names = "--seat-width",
      paramLabel = "LENGTH",
      description = "the seat across, where it is widest")
  private String seatWidth;

  @Option(
      names = "--seat-depth",
      paramLabel = "LENGTH",
      description = "the seat from front to back")
  private String seatDepth;

  @Option(
      names = "--arm-height",
      paramLabel = "LENGTH",
      description = "top of the arm above the seat, where there are arms")
  private String armHeight;

  @Option(
      names = "--timber",
      paramLabel = "TIMBER",
      description = "the usual wood of the parts, such as ash-white or cherry-black")
  private String timber;

  @Option(names = "--usual", description = "ask nothing; what is not said is as usual")
  private boolean usual;

  @Option(names = "--replace", description = "write over the file if it stands there already")
  private boolean replace;

  StartCommand(Screen screen) {
    this.screen = screen;
  }

  @Override
  public Integer call() {
    if (!replace && StartChair.stands(file)) {
      // Before any question, so that nobody answers them in vain.
      screen.err().println(file + ": it stands there already; take another name, or --replace");
      return Exit.USAGE.code();
    }
    if (family == null && !asks()) {
      throw wrong("say what to build: --family " + String.join(", ", Family.words()));
    }
    Optional<StartChair> begun = answered();
    if (begun.isEmpty()) {
      screen.err().println("dryfit: stopped before the last answer; nothing was written");
      return Exit.USAGE.code();
    }
    WrittenFiles result = begun.get().write(file, replace);
    if (result instanceof WrittenFiles.Failed failed) {
      screen.notWritten(failed);
    } else {
      tell(begun.get());
    }
    return result.exit().code();
  }

  private boolean asks() {
    return !usual && screen.answers().isPresent();
  }

  /** The chair with what was said and answered in it; empty if the answers end too early. */
  private Optional<StartChair> answered() {
    Optional<Questions> questions =
        usual ? Optional.empty() : screen.answers().map(in -> new Questions(in, screen.out()));
    Optional<Family> kind = family != null ? Optional.of(family) : questions.get().family();
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    Optional<Length.Unit> written =
        unit != null
            ? Optional.of(unit)
            : questions.map(Questions::unit).orElse(Optional.of(Length.Unit.MM));
    Optional<StartChair> chair = written.map(u -> StartChair.of(kind.get(), u));
    // What was said comes first: where it is wrong, there is no need to ask for the rest.
    chair = chair.map(this::said);
    return questions.isPresent() ? chair.flatMap(c -> asked(c, questions.get())) : chair;
  }

  private StartChair said(StartChair chair) {
    StartChair now = chair;
    now = name == null ? now : taken("--name", now.withName(name));
    for (StartSize.Which which : StartSize.Which.values()) {
      String length = said(which);
      now = length == null ? now : taken(option(which), now.withSize(which, length));
    }
    return timber == null ? now : taken("--timber", now.withTimber(timber));
  }

  private Optional<StartChair> asked(StartChair chair, Questions questions) {
    Optional<StartChair> now = Optional.of(chair);
    now = name == null ? now.flatMap(questions::name) : now;
    for (StartSize size : chair.sizes()) {
      now = said(size.which()) == null ? now.flatMap(c -> questions.size(c, size)) : now;
    }
    return timber == null ? now.flatMap(questions::timber) : now;
  }

  private String said(StartSize.Which which) {
    return switch (which) {
      case SEAT_HEIGHT -> seatHeight;
      case SEAT_WIDTH -> seatWidth;
      case SEAT_DEPTH -> seatDepth;
      case ARM_HEIGHT -> armHeight;
    };
  }

  private static String option(StartSize.Which which) {
    return "--" + which.spoken().replace(' ', '-');
  }

  private StartChair taken(String option, StartChair.Answer answer) {
    if (answer instanceof StartChair.NotTaken no) {
      throw wrong(option + ": " + no.why());
    }
    return ((StartChair.Taken) answer).chair();
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  private void tell(StartChair chair) {
    screen.out().println(file + "  " + chair.name() + ", " + chair.timber());
    for (StartSize size : chair.sizes()) {
      screen.out().printf("  %-12s %s%n", size.which().spoken(), chair.printed(size.mm()));
    }
    String typed = file.toString().matches("\\S+") ? file.toString() : "\"" + file + "\"";
    screen
        .out()
        .println("Every size is a dimension of the document; where it comes from is in its note.");
    screen.out().println("What to do next:");
    screen.out().println("  dryfit fit " + typed);
    screen.out().println("  dryfit picture " + typed);
  }

  /** The families by their words. */
  static final class Families extends Words<Family> {
    Families() {
      super(Family.words(), Family::named);
    }
  }
}
