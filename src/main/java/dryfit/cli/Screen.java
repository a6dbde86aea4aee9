package dryfit.cli;

import dryfit.app.Exit;
import dryfit.app.WrittenFiles;
import dryfit.document.Problem;
import dryfit.export.ProblemsJson;
import dryfit.export.ProblemsText;
import java.io.BufferedReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Where a command writes, and whom it may ask.
 *
 * @param out results
 * @param err what went wrong
 * @param terminal whether a person is watching, so that colour is of use
 * @param answers what a person types who can be asked; empty if there is none
 */
record Screen(
    PrintStream out, PrintStream err, boolean terminal, Optional<BufferedReader> answers) {

  /** Prints a result that was made as bytes. */
  void print(byte[] utf8) {
    out.print(new String(utf8, StandardCharsets.UTF_8));
  }

  /**
   * Tells why a document is refused.
   *
   * @param json whether another program reads the result
   */
  int refused(List<Problem> problems, Exit exit, boolean json) {
    if (json) {
      print(ProblemsJson.bytes(problems));
    } else {
      err.print(ProblemsText.of(problems));
    }
    return exit.code();
  }

  /** As {@link #refused(List, Exit, boolean)}, for people. */
  int refused(List<Problem> problems, Exit exit) {
    return refused(problems, exit, false);
  }

  void notWritten(WrittenFiles.Failed failed) {
    err.println(failed.path() + ": not written: " + failed.reason());
  }
}
