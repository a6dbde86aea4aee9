package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ProgressBarTest {
  private static String shown(boolean terminal, int... steps) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream to = new PrintStream(err, true, StandardCharsets.UTF_8);
    ProgressBar bar = new ProgressBar(new Screen(to, to, terminal, Optional.empty()));
    for (int step : steps) {
      bar.show(step, 4);
    }
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void itFillsFromTheLeftAndCounts() {
    assertThat(shown(true, 2))
        .isEqualTo("\r\u001b[K[" + "=".repeat(15) + " ".repeat(15) + "] 2 of 4");
  }

  @Test
  void nothingIsLeftOfItWhenAllIsDone() {
    assertThat(shown(true, 3, 4)).endsWith("3 of 4\r\u001b[K");
  }

  @Test
  void whereNobodyIsWatchingThereIsNone() {
    assertThat(shown(false, 0, 2, 4)).isEmpty();
  }

  static List<List<String>> longWork() {
    return List.of(
        List.of("assemble", "models/low-stool.json"),
        List.of("compare", "models/low-stool.json"),
        List.of("sheets", "models/low-stool.json", "--to"),
        List.of("templates", "models/kiln-stool.json", "--to"));
  }

  @ParameterizedTest
  @MethodSource("longWork")
  void longWorkShowsHowFarItIsToWhoWatches(List<String> command, @TempDir Path folder) {
    List<String> words = new ArrayList<>(command);
    if (words.contains("--to")) {
      words.add(folder.resolve("made").toString());
    }
    String watched = said(true, words);
    assertThat(watched).containsPattern("\\[=* *\\] \\d+ of \\d+");
    assertThat(watched).as("nothing of it is left").endsWith("\r\u001b[K");
    assertThat(said(false, words)).doesNotContain("\r").doesNotContain(" of ");
  }

  private static String said(boolean terminal, List<String> command) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Main.run(
            command.toArray(String[]::new),
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            terminal);
    assertThat(code).isZero();
    return err.toString(StandardCharsets.UTF_8);
  }
}
