package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class LimitsReaderTest {
  private static String chair(String top, String joint) {
    return """
        { "format": "dryfit-chair/1", "name": "Post", "about": "Demo data, invented.", "unit": "in",
          "timber": "ash-white", TOP
          "dimensions": { "wall": "1/4 in" },
          "parts": {
            "post": { "form": "straight", "section": [2, 2], "from": [-9, 0, 0], "to": [-9, 0, 20] },
            "rail": { "form": "straight", "section": [2, 1], "from": [8, 0, 11], "to": [-8, 0, 11] }
          },
          "joints": { "rail to post": { "tenon": "rail left", "into": "post", "thickness": "3/8 in",
            "width": 1, "length": 1 JOINT } } }
        """
        .replace("TOP", top)
        .replace("JOINT", joint);
  }

  private static MakerLimits limits(String top, String joint) {
    Document document =
        ((Reading.Accepted<Document>) DocumentReader.read("post.json", chair(top, joint))).value();
    return ((Reading.Accepted<Design>) document.design(Design.AS_DRAWN)).value().limits();
  }

  private static List<Problem> problems(String top, String joint) {
    return DocumentReader.read("post.json", chair(top, joint))
            instanceof Reading.Refused<Document> refused
        ? refused.problems()
        : List.of();
  }

  @Test
  void aLimitMeasuresWhatItShouldInTheDocumentsUnit() {
    MakerLimits limits =
        limits(
            "\"limits\": { \"least-wall\": \"wall\", \"grain-slope\": \"1:4\","
                + " \"tenon-width-most\": 5 },",
            ", \"limits\": { \"shoulder-gap\": 0.02 }");
    assertThat(limits.of(FitLimit.LEAST_WALL).orElseThrow().value()).isEqualTo(6.35);
    assertThat(limits.of(FitLimit.GRAIN_SLOPE).orElseThrow().value())
        .isEqualTo(Math.atan(0.25), within(1e-12));
    assertThat(limits.of(FitLimit.TENON_WIDTH_MOST).orElseThrow().value()).isEqualTo(5);
    assertThat(limits.of(FitLimit.ROCK)).isEmpty();
    MakerLimits.Written own = limits.of(FitLimit.SHOULDER_GAP, "rail to post").orElseThrow();
    assertThat(own.value()).isEqualTo(0.508, within(1e-12));
    assertThat(own.pointer()).isEqualTo("/joints/rail to post/limits/shoulder-gap");
  }

  @Test
  void anUnknownLimitIsRefusedAndTheNearestNamed() {
    assertThat(problems("\"limits\": { \"least-wal\": 3 },", ""))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.code()).isEqualTo("unknown-key");
              assertThat(p.nearest()).contains("least-wall");
            });
  }

  @Test
  void whatConcernsTheWholeChairIsNoLimitOfAJoint() {
    assertThat(problems("", ", \"limits\": { \"rock\": 1 }"))
        .extracting(Problem::code)
        .containsExactly("unknown-key");
  }

  @Test
  void aLimitBelowZeroOrOfTheWrongKindIsRefused() {
    assertThat(problems("\"limits\": { \"rock\": -1 },", ""))
        .extracting(Problem::code)
        .containsExactly("out-of-range");
    assertThat(problems("\"limits\": { \"rock\": \"3 deg\" },", ""))
        .extracting(Problem::code)
        .containsExactly("wrong-unit");
  }

  @Test
  void theLeastWallIsNotWrittenTwice() {
    assertThat(problems("\"fit\": { \"least-wall\": 5 }, \"limits\": { \"least-wall\": 5 },", ""))
        .extracting(Problem::code)
        .containsExactly("conflict");
  }
}
