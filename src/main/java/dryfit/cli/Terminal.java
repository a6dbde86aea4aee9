package dryfit.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.util.Optional;

/** Whether a person is watching. */
final class Terminal {
  private Terminal() {}

  /** Whether output goes to a terminal that may be coloured (NO_COLOR is not set). */
  static boolean takesColour() {
    return System.getenv("NO_COLOR") == null && isWatched();
  }

  /** What the person types; empty if nobody sits there, or what is typed comes from elsewhere. */
  static Optional<BufferedReader> answers() {
    return isWatched()
        ? Optional.of(new BufferedReader(System.console().reader()))
        : Optional.empty();
  }

  // From Java 22 on there is a console even where there is no terminal, and it can be asked; before
  // that there is none. The method is looked up by name because Java 17 does not have it.
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isWatched() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }
}
