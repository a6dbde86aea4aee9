package dryfit.cli;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** What a command says on both streams, nobody watching, and what it ends with. */
record Said(int code, String out, String err) {

  /** Runs a command in this process. */
  static Said by(String... args) {
    return by(Optional.empty(), args);
  }

  /** The same with a person at the terminal, who answers. */
  static Said by(Optional<BufferedReader> answers, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Main.run(
            args,
            new Screen(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false,
                answers));
    return new Said(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  String lastLine() {
    return out.strip().lines().reduce("", (a, b) -> b);
  }
}
