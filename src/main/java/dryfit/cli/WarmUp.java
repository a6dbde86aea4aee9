package dryfit.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Runs what makers start most once each, so that packing can keep the classes as they lie in memory
 * then: a fit, and the window where there is a screen, which shows for a moment.
 */
public final class WarmUp {
  private WarmUp() {}

  /**
   * @param args the chair document
   */
  public static void main(String[] args) {
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    Main.run(new String[] {"fit", args[0]}, nowhere, nowhere, false);
    Main.run(new String[] {"window", "--until-shown", args[0]}, nowhere, nowhere, false);
  }
}
