package dryfit.cli;

import dryfit.document.Nearest;
import java.util.Collection;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Names of parts and joints that a command is asked for. */
final class Named {
  private Named() {}

  /**
   * Looks whether a name is among those known.
   *
   * @param what a part or a joint, in a word
   * @param also names that will do as well, but are not listed
   * @throws ParameterException with the nearest name and all that are listed
   */
  static void check(
      String what,
      String name,
      Collection<String> known,
      Collection<String> also,
      CommandLine command) {
    if (known.contains(name) || also.contains(name)) {
      return;
    }
    String nearest =
        Nearest.to(name, known).map(n -> "; the nearest name is '" + n + "'").orElse("");
    String all = known.isEmpty() ? "there is none" : "there are " + String.join(", ", known);
    throw new ParameterException(
        command, "no " + what + " is called '" + name + "'" + nearest + "; " + all);
  }
}
