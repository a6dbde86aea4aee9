package dryfit.cli;

import dryfit.app.Exit;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IFactory;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program as it is started from a terminal. */
public final class Main {
  static final String VERSION = "0.1.0";

  private Main() {}

  /** Runs a command and ends the process with its code. */
  public static void main(String[] args) {
    // Reports use signs that a terminal's own encoding may not have.
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    Foreseen foreseen = Foreseen.of(args);
    Screen screen = new Screen(out, err, Terminal.takesColour(), Terminal.answers());
    int code = run(args, screen, foreseen);
    out.flush();
    err.flush();
    System.exit(code);
  }

  /**
   * Runs a command that nobody can be asked about.
   *
   * @param terminal whether a person is watching, so that colour is of use
   * @return the code to end with, see {@link Exit}
   */
  public static int run(String[] args, PrintStream out, PrintStream err, boolean terminal) {
    return run(args, new Screen(out, err, terminal, Optional.empty()));
  }

  /** Runs a command; the code to end with, see {@link Exit}. */
  static int run(String[] args, Screen screen) {
    return run(args, screen, Foreseen.nothing());
  }

  /** The same, with what was begun while the command line was still unread. */
  static int run(String[] args, Screen screen, Foreseen foreseen) {
    PrintStream out = screen.out();
    PrintStream err = screen.err();
    CommandLine commands = commands(screen, foreseen, args.length == 0 ? "" : args[0]);
    commands.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
    commands.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
    commands.setParameterExceptionHandler((e, a) -> usage(e, err));
    commands.setExecutionExceptionHandler((e, command, parsed) -> ourFault(e, args, err));
    try {
      return commands.execute(args);
    } catch (StackOverflowError | OutOfMemoryError e) {
      return ourFault(e, args, err);
    }
  }

  /**
   * The command that is wanted, or all of them to choose from or to be told about. A third of a
   * cold start goes into reading what commands say about themselves, so the others are left alone.
   */
  private static CommandLine commands(Screen screen, Foreseen foreseen, String wanted) {
    Map<String, Supplier<Object>> all = new LinkedHashMap<>();
    all.put("start", () -> new StartCommand(screen));
    all.put("fit", () -> new FitCommand(screen));
    all.put("assemble", () -> new AssembleCommand(screen));
    all.put("angles", () -> new AnglesCommand(screen));
    all.put("settings", () -> new SettingsCommand(screen));
    all.put("solids", () -> new SolidsCommand(screen));
    all.put("picture", () -> new PictureCommand(screen));
    all.put("variants", () -> new VariantsCommand(screen));
    all.put("compare", () -> new CompareCommand(screen));
    all.put("sweep", () -> new SweepCommand(screen));
    all.put("spread", () -> new SpreadCommand(screen));
    all.put("measure", () -> new MeasureCommand(screen));
    all.put("steps", () -> new StepsCommand(screen));
    all.put("jigs", () -> new JigsCommand(screen));
    all.put("boards", () -> new BoardsCommand(screen));
    all.put("sheets", () -> new SheetsCommand(screen));
    all.put("templates", () -> new TemplatesCommand(screen));
    all.put("window", () -> new WindowCommand(screen, foreseen));
    CommandLine commands = new CommandLine(new Top(), new Arguments(foreseen));
    if (all.containsKey(wanted)) {
      commands.addSubcommand(wanted, all.get(wanted).get());
    } else {
      all.forEach((name, command) -> commands.addSubcommand(name, command.get()));
    }
    commands.getSubcommands().values().forEach(Main::withHelp);
    commands.setUsageHelpWidth(80);
    return commands;
  }

  /** Makes what commands have in common; all chair arguments know what was foreseen. */
  private record Arguments(Foreseen foreseen) implements IFactory {
    @Override
    public <K> K create(Class<K> kind) throws Exception {
      return kind == ChairArguments.class
          ? kind.cast(new ChairArguments(foreseen))
          : CommandLine.defaultFactory().create(kind);
    }
  }

  private static void withHelp(CommandLine command) {
    command.getCommandSpec().mixinStandardHelpOptions(true);
    command.getCommandSpec().version("dryfit " + VERSION);
  }

  private static int usage(ParameterException e, PrintStream err) {
    CommandSpec spec = e.getCommandLine().getCommandSpec();
    if (e instanceof UnmatchedArgumentException unknown && e.getCommandLine().getParent() == null) {
      err.println(
          "dryfit: there is no command '"
              + unknown.getUnmatched().get(0)
              + "'; there are "
              + String.join(", ", spec.subcommands().keySet()));
      return Exit.USAGE.code();
    }
    String message = e.getMessage().replaceAll("\\s+", " ").strip();
    String meant =
        e instanceof UnmatchedArgumentException unknown && !unknown.getSuggestions().isEmpty()
            ? "; do you mean " + unknown.getSuggestions().get(0) + "?"
            : "";
    err.println("dryfit: " + message + meant + " (see " + spec.qualifiedName() + " --help)");
    return Exit.USAGE.code();
  }

  /** Says that something is our fault, and where the details are. */
  static int ourFault(Throwable fault, String[] args, PrintStream err) {
    String what = Optional.ofNullable(fault.getMessage()).orElse(fault.getClass().getSimpleName());
    String where =
        Details.keep(fault, args)
            .map(file -> "details are in " + file)
            .orElse("the details could not be kept");
    err.println(
        "dryfit: this is our fault, not yours: "
            + what.replaceAll("\\s+", " ").strip()
            + "; "
            + where);
    return Exit.OUR_FAULT.code();
  }

  /** Without a command. */
  @Command(
      name = "dryfit",
      mixinStandardHelpOptions = true,
      version = "dryfit " + VERSION,
      description = "Fits a chair together before any wood is cut.",
      footer = {
        "",
        "Examples:",
        "  start my-chair.json",
        "  fit models/harbour-armchair.json",
        "  fit models/harbour-armchair.json --variant low --units in",
        "  assemble models/harbour-armchair.json",
        "  angles models/kiln-stool.json",
        "  solids models/harbour-armchair.json --to stl",
        "  picture models/harbour-armchair.json --view front",
        "  window models/harbour-armchair.json",
        "",
        "Ends with 0 if the chair fits, 1 if something is our fault, 2 if what was asked",
        "for cannot be done, 3 if the document is refused, 4 if the chair does not fit."
      })
  static final class Top implements Runnable {
    @Spec private CommandSpec spec;

    @Override
    public void run() {
      throw new ParameterException(
          spec.commandLine(),
          "say what to do, one of: " + String.join(", ", spec.subcommands().keySet()));
    }
  }
}
