package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * A crest 20 thick between posts 400 apart, bowed by 40: it runs out of the posts at twice the
 * angle whose tangent is 40 / 200, that is 22.62 degrees, and its straight tenons go in that way.
 */
class BentTenonFitTest {
  private static final String BOWED =
      """
      { "format": "dryfit-chair/1", "name": "Bow", "about": "Demo data, invented.", "unit": "mm",
        "timber": "ash-white",
        "parts": {
          "post": { "form": "straight", "pair": true, "section": [60, 60],
            "from": [230, 0, 0], "to": [230, 0, 800] },
          "crest": { "form": "bent", "section": [60, 20], "between": ["post right", "post left"],
            "middle": 700, "rise": 40, "toward": "back" } },
        "joints": {
          "crest to post": { "tenon": "crest both", "into": "post", "thickness": 10, "width": 40,
            "length": 25 } } }
      """;

  private final FitReport report = Fitted.of(BOWED);
  private final JointFit fit = Fitted.joint(report, "crest to post, right");

  @Test
  void theMortiseLeansAsTheCrestRunsAndTheTenonIsStraight() {
    Slant slant = Slant.of(report.chair(), fit.joint()).orElseThrow();
    assertThat(slant.leaningMortise()).isTrue();
    assertThat(slant.wholeFibres()).isEqualTo(1);
    assertThat(Math.toDegrees(slant.angle())).isEqualTo(22.62, within(1.0));
    assertThat(fit.lean()).isEqualTo(slant.angle(), within(1e-6));
  }

  /** 10 of 20 is half: neither too thick nor too thin, however much the shoulder leans. */
  @Test
  void theTenonIsHeldAgainstTheWholeThicknessOfItsPart() {
    assertThat(Fitted.checks(report))
        .doesNotContain("tenon-thick", "tenon-thin", "tenon-short-grain", "tenon-outgrows-stock");
  }
}
