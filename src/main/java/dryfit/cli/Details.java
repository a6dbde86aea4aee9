package dryfit.cli;

import dryfit.app.KeepFailure;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Optional;

/** Keeps the details of a fault of ours in a folder, so that the screen stays readable. */
final class Details {
  private Details() {}

  /** Where they are; empty if they could not be kept. */
  static Optional<Path> keep(Throwable fault, String[] args) {
    StringWriter text = new StringWriter();
    PrintWriter out = new PrintWriter(text);
    out.println("dryfit " + Main.VERSION + ", Java " + Runtime.version());
    out.println("arguments: " + String.join(" ", args));
    fault.printStackTrace(out);
    return KeepFailure.keep(fault, text.toString());
  }
}
