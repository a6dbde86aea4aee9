package dryfit.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Keeps the details of a fault of ours in a file, so that the screen stays readable. */
final class Details {
  private Details() {}

  /** Where they are; empty if they could not be kept. */
  static Optional<Path> keep(Throwable fault, String[] args) {
    StringWriter text = new StringWriter();
    PrintWriter out = new PrintWriter(text);
    out.println("dryfit " + Main.VERSION + ", Java " + Runtime.version());
    out.println("arguments: " + String.join(" ", args));
    fault.printStackTrace(out);
    try {
      Path file = Files.createTempFile("dryfit-", ".txt");
      Files.writeString(file, text.toString());
      return Optional.of(file);
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
