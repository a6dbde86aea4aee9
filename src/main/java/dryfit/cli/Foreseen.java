package dryfit.cli;

import dryfit.app.Ahead;
import dryfit.app.KernelChoice;
import dryfit.app.OpenChair;
import dryfit.app.OpenChair.Opened;
import dryfit.app.WindowStart;
import dryfit.document.Design;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The chair and the window that a command line will most likely ask for. Reading what a command
 * says about itself takes a fifth of a cold start, on one core; meanwhile the other builds the
 * chair. A wrong guess costs work and changes nothing, for only what was asked for in the end is
 * taken.
 */
final class Foreseen {
  /** The commands that open a chair by {@link ChairArguments}. */
  static final Set<String> COMMANDS =
      Set.of(
          "angles",
          "assemble",
          "boards",
          "fit",
          "jigs",
          "picture",
          "settings",
          "sheets",
          "solids",
          "spread",
          "steps",
          "templates");

  /** Where only words are wanted. */
  private static final Set<String> WORDS = Set.of("-h", "--help", "-V", "--version");

  private static final String VARIANT = "--variant";

  private final Optional<Begun> begun;
  private final Optional<WindowStart> window;

  private record Begun(Path file, String variant, Supplier<Opened> opened) {}

  private Foreseen(Optional<Begun> begun, Optional<WindowStart> window) {
    this.begun = begun;
    this.window = window;
  }

  /** Nothing is begun. */
  static Foreseen nothing() {
    return new Foreseen(Optional.empty(), Optional.empty());
  }

  /** Begins what the command line seems to ask for; nothing where that is not plain. */
  static Foreseen of(String[] args) {
    List<String> rest = List.of(args).subList(Math.min(1, args.length), args.length);
    // Another kernel is rare, and made for comparing.
    if (rest.stream().anyMatch(arg -> WORDS.contains(arg) || arg.startsWith("--kernel"))) {
      return nothing();
    }
    if (args.length > 0 && args[0].equals("window")) {
      Optional<WindowStart> window = WindowStart.find();
      window.ifPresent(w -> w.begin(file(rest)));
      return new Foreseen(Optional.empty(), window);
    }
    if (args.length == 0 || !COMMANDS.contains(args[0])) {
      return nothing();
    }
    String variant = variant(rest);
    return new Foreseen(
        file(rest).map(f -> new Begun(f, variant, Ahead.opening(f, variant))), Optional.empty());
  }

  /** The window this program was packed with, begun or not. */
  Optional<WindowStart> window() {
    return window.or(WindowStart::find);
  }

  /** What was begun if it is what is wanted, else opened now. */
  Opened open(Path file, String variant, KernelChoice kernel) {
    return begun
        .filter(b -> kernel == KernelChoice.USUAL)
        .filter(b -> b.file().equals(file) && b.variant().equals(variant))
        .map(b -> b.opened().get())
        .orElseGet(() -> OpenChair.open(file, variant, kernel.kernel()));
  }

  private static Optional<Path> file(List<String> args) {
    return args.stream()
        .filter(arg -> !arg.startsWith("-") && arg.toLowerCase(Locale.ROOT).endsWith(".json"))
        .map(File::new)
        .filter(File::isFile)
        .map(File::toPath)
        .findFirst();
  }

  private static String variant(List<String> args) {
    for (int i = 0; i < args.size(); i++) {
      if (args.get(i).startsWith(VARIANT + "=")) {
        return args.get(i).substring(VARIANT.length() + 1);
      }
      if (args.get(i).equals(VARIANT) && i + 1 < args.size()) {
        return args.get(i + 1);
      }
    }
    return Design.AS_DRAWN;
  }
}
