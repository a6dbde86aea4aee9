package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * A rail goes into a leg 40 square at 22.62 degrees (sine 5/13, cosine 12/13), its tenon 20 long
 * and 8 thick, its mortise 1 longer and 0.1 wider at each cheek. From the leg's middle plane the
 * corner at the tip is 21 x 5/13 + 4.1 x 12/13 = 11.862 away, so that 8.138 of wood are left.
 */
class LessWoodTest {
  private static FitReport report(double length, double thickness, double least, String place) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Lean", "about": "Demo data, invented.", "unit": "mm",
          "timber": "ash-white",
          "fit": { "cheek": 0.1, "edge": 0.1, "bottom": 1, "least-wall": LEAST },
          "parts": {
            "leg": { "form": "straight", "section": [40, 40], "from": [0, 0, 0], "to": [0, 0, 400] },
            "rail": { "form": "straight", "section": [40, 24], "from": [-100, -260, 200],
              "to": [0, -20, 200] } },
          "joints": { "rail": { "tenon": "rail end", "into": "leg", "length": LENGTH,
            "thickness": THICK, "width": 24 PLACE } } }
        """
            .replace("LEAST", "" + least)
            .replace("LENGTH", "" + length)
            .replace("THICK", "" + thickness)
            .replace("PLACE", place));
  }

  private static Finding thinWall(FitReport report) {
    return report.findings().stream()
        .filter(f -> f.check().equals("thin-wall"))
        .findFirst()
        .orElseThrow();
  }

  private static boolean passes(double length, double thickness, double least) {
    return !Fitted.checks(report(length, thickness, least, "")).contains("thin-wall");
  }

  /**
   * 0.862 are missing of 9: the tip's corner moves 5/13 of what the tenon is shorter, so by 2.24;
   * and half of 12/13 of what it is thinner, so by 1.87.
   */
  @Test
  void eachWayIsToldWithItsOwnNumber() {
    Finding finding = thinWall(report(20, 8, 9, ""));
    assertThat(finding.measured()).isCloseTo(20 - 21 * 5 / 13.0 - 4.1 * 12 / 13.0, within(1e-3));
    assertThat(finding.message())
        .endsWith("make the tenon shorter by 2.3 mm or thinner by 1.9 mm.");
  }

  @Test
  void whatIsAdvisedIsEnoughAndATenthLessIsNot() {
    assertThat(passes(17.7, 8, 9)).isTrue();
    assertThat(passes(17.8, 8, 9)).isFalse();
    assertThat(passes(20, 6.1, 9)).isTrue();
    assertThat(passes(20, 6.2, 9)).isFalse();
  }

  /** 1.862 are missing of 10: thinner by 4.04 would leave less than half; shorter by 4.84. */
  @Test
  void aTenonIsNotThinnedToAVeneer() {
    assertThat(thinWall(report(20, 8, 10, "")).message())
        .endsWith("make the tenon shorter by 4.9 mm.");
    assertThat(passes(15.1, 8, 10)).isTrue();
  }

  /** At the mouth 4.1 / (12/13) = 4.44 are taken: 15.56 are left at the most, whatever is done. */
  @Test
  void whereNoSmallerTenonWouldDoThatIsSaid() {
    assertThat(thinWall(report(20, 8, 15, "")).message())
        .contains(
            "none that stays as long as it is thick, and half as thick as now, would mend that",
            "6.9 mm more wood");
  }

  /**
   * Written from a face, one cheek stays where it is: thinning does nothing at that one, and all it
   * does at the other. 1 aside of the middle is 13/12 along the face, so 0.862 + 1.083 = 1.945 are
   * missing; half of what it is thinner counts 12/13 at the cheek and 13/12 along the face: 1.94.
   */
  @Test
  void aTenonMeasuredFromAFaceKeepsThatCheek() {
    int offered = 0;
    for (String place :
        new String[] {"outside\": 7", "inside\": 7", "outside\": 9", "inside\": 9"}) {
      String from = ", \"from-" + place;
      FitReport report = report(20, 8, 9, from);
      if (Fitted.checks(report).contains("thin-wall")) {
        boolean thinner = thinWall(report).message().contains("thinner by 2.0 mm");
        offered += thinner ? 1 : 0;
        assertThat(thinWall(report).message().contains("thinner")).isEqualTo(thinner);
        assertThat(Fitted.checks(report(20, 6, 9, from)).contains("thin-wall"))
            .isNotEqualTo(thinner);
        assertThat(Fitted.checks(report(20, 6.1, 9, from))).contains("thin-wall");
      }
    }
    assertThat(offered).isEqualTo(1);
  }
}
