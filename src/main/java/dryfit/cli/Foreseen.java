package dryfit.cli;

import dryfit.app.Ahead;
import dryfit.app.KernelChoice;
import dryfit.app.OpenChair;
import dryfit.app.OpenChair.Opened;
import dryfit.document.Design;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The chair that a command line will most likely ask for. Reading what a command says about itself
 * takes a fifth of a cold start, on one core; meanwhile the other builds the chair. A wrong guess
 * costs work and changes nothing, for only what was asked for in the end is taken.
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

  private static final String VARIANT = "--variant";

  private final Optional<Begun> begun;

  private record Begun(Path file, String variant, Supplier<Opened> opened) {}

  private Foreseen(Optional<Begun> begun) {
    this.begun = begun;
  }

  /** Nothing is begun. */
  static Foreseen nothing() {
    return new Foreseen(Optional.empty());
  }

  /** Begins what the command line seems to ask for; nothing where that is not plain. */
  static Foreseen of(String[] args) {
    if (args.length < 2 || !COMMANDS.contains(args[0])) {
      return nothing();
    }
    List<String> rest = List.of(args).subList(1, args.length);
    Optional<String> file =
        rest.stream()
            .filter(arg -> !arg.startsWith("-") && arg.toLowerCase(Locale.ROOT).endsWith(".json"))
            .findFirst();
    if (file.isEmpty() || rest.stream().anyMatch(arg -> arg.startsWith("--kernel"))) {
      return nothing();
    }
    Path path = Path.of(file.get());
    String variant = variant(rest);
    return new Foreseen(
        Optional.of(new Begun(path, variant, Ahead.opening(path, variant))));
  }

  /** What was begun if it is what is wanted, else opened now. */
  Opened open(Path file, String variant, KernelChoice kernel) {
    return begun
        .filter(b -> kernel == KernelChoice.USUAL)
        .filter(b -> b.file().equals(file) && b.variant().equals(variant))
        .map(b -> b.opened().get())
        .orElseGet(() -> OpenChair.open(file, variant, kernel.kernel()));
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
