package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

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
}
