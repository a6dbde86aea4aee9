package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.fit.Finding.Severity;
import org.junit.jupiter.api.Test;

class NotchCheckTest {
  private static FitReport fit(int back) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Sketch", "about": "Demo data.", "unit": "mm",
          "timber": "ash-white",
          "parts": {
            "post": { "form": "straight", "section": [30, 30], "from": [0, 100, 0], "to": [0, 100, 500] },
            "rear": { "form": "straight", "section": [30, 30], "from": [0, %d, 0], "to": [0, %d, 500] },
            "board": { "form": "seat", "thickness": 20, "at": [0, 0, 300],
              "outline": [ [-90, 0], [90, 0], [90, 200], [-90, 200] ], "notch-round": ["post", "rear"] } } }"""
            .formatted(back, back));
  }

  /** The board ends at y = 200 and the post is 30 thick: it just stands clear, or just does not. */
  @Test
  void aPostThatStandsClearIsOnlyMentioned() {
    assertThat(Fitted.checks(fit(200))).doesNotContain("notch-idle");
    assertThat(fit(230).findings())
        .filteredOn(f -> f.check().equals("notch-idle"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.KNOW);
              assertThat(f.pointer()).isEqualTo("/parts/board/notch-round/1");
              assertThat(f.message()).startsWith("rear does not stand in the way of board");
            });
    assertThat(fit(230).fits()).isTrue();
  }
}
