package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.app.KernelChoice;
import dryfit.app.OpenChair;
import dryfit.app.SpreadChair;
import dryfit.document.Design;
import dryfit.fit.Fitted;
import dryfit.fit.loop.Frames;
import dryfit.fit.spread.Spreader;
import dryfit.fit.spread.Spreads;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Spreads as text and JSON. */
class SpreadOutTest {
  private static String text(Spreads spreads, boolean all) {
    return SpreadText.of(spreads, TextStyle.of(spreads.chair().design().unit()), all);
  }

  static List<Path> models() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("models"))) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void everyShippedModelGivesAReportAndJsonByItsSchema(Path model) {
    KernelChoice kernel = KernelChoice.USUAL;
    OpenChair.Opened opened = OpenChair.open(model, Design.AS_DRAWN, kernel.kernel());
    Spreads spreads = SpreadChair.of((OpenChair.Ready) opened, kernel);
    String json = new String(SpreadJson.bytes(spreads), StandardCharsets.UTF_8);
    assertThat(Schemas.problems("spread-1.schema.json", json)).isEmpty();
    assertThat(spreads.all())
        .isNotEmpty()
        .allSatisfy(
            s -> {
              assertThat(s.worstLow()).isLessThanOrEqualTo(s.low());
              assertThat(s.low()).isLessThanOrEqualTo(s.high());
              assertThat(s.high()).isLessThanOrEqualTo(s.worstHigh());
            });
    assertThat(text(spreads, false)).contains("Take most care with");
    assertThat(text(spreads, true).lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void theSameChairTwiceGivesTheSameBytes() {
    Spreads once = Spreader.of(Frames.rectangle(""));
    Spreads twice = Spreader.of(Frames.rectangle(""));
    assertThat(SpreadJson.bytes(once)).isEqualTo(SpreadJson.bytes(twice));
    assertThat(text(once, true)).isEqualTo(text(twice, true));
  }

  @Test
  void theShortReportHasTheLikeliestFirstAndTheAnswerLast() {
    String text = text(Spreader.of(Frames.rectangle("")), false);
    assertThat(text).startsWith("Most likely beyond their limit\n\n  ");
    assertThat(text).contains("gap at the shoulder (2 alike)", "±0.10°", "±0.50°", "20000 chairs");
    assertThat(text.strip().lines().reduce("", (a, b) -> b)).startsWith("LOOK: ");
  }

  @Test
  void whatIsBeyondItsLimitAsDrawnIsLeftToTheFit() {
    // 1/2 in of leg behind a mortise of 1 1/4 in, where 6 mm of wood are wanted.
    String thin = Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "1 5/8", "");
    String wall = thin.replace("\"least-wall\": 0", "\"least-wall\": \"1/4\"");
    assertThat(text(Spreader.of(wall), false)).contains("beyond the limit as drawn");
  }

  @Test
  void aDimensionThatIsLeftOutIsTold() {
    assertThat(text(Spreader.of(Spreader.rail("1")), false)).contains("Left out: rail cannot be");
  }
}
