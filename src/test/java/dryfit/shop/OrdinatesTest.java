package dryfit.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.fit.Fitted;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sawn parts with straight lines in their outlines, so that every ordinate is known; demo data. */
class OrdinatesTest {
  private static List<Ordinates> of(String part, double step) {
    Chair chair =
        Fitted.of(
                """
                { "format": "dryfit-chair/1", "name": "Sketch", "unit": "mm", "timber": "ash-white",
                  "parts": { "leg": %s }, "joints": { } }"""
                    .formatted(part))
            .chair();
    return Ordinates.of(Setout.of(chair, 0), step);
  }

  @Test
  void aLegThatBendsBackFrom200OnIsPrickedOffAtEveryStep() {
    List<Ordinates> all =
        of(
            """
            { "form": "sawn", "thickness": 30, "stands-at": [0, 0, 0],
              "side": [ [0, 0], [40, 0], [40, 200], [80, 400], [40, 400], [0, 200] ] }""",
            100);
    // The other way it is 30 thick all along, and needs no list.
    assertThat(all).hasSize(1);
    List<Ordinates.Row> rows = all.get(0).rows();
    double[][] expected = {{0, 0, 40}, {100, 0, 40}, {200, 0, 40}, {300, 20, 60}, {400, 40, 80}};
    assertThat(rows).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      assertThat(rows.get(i).along()).isEqualTo(expected[i][0], within(0.02));
      assertThat(rows.get(i).across().from()).isEqualTo(expected[i][1], within(0.02));
      assertThat(rows.get(i).across().to()).isEqualTo(expected[i][2], within(0.02));
    }
  }

  @Test
  void aPointedEndIsLeftOut() {
    List<Ordinates> all =
        of(
            """
            { "form": "sawn", "thickness": 30, "stands-at": [0, 0, 0],
              "side": [ [0, 0], [40, 0], [60, 300], [20, 400] ] }""",
            100);
    List<Ordinates.Row> rows = all.get(0).rows();
    assertThat(rows.get(rows.size() - 1).along()).isEqualTo(300, within(0.02));
  }

  @Test
  void aStraightPartHasNone() {
    assertThat(
            of(
                "{ \"form\": \"straight\", \"section\": [40, 40], \"from\": [0, 0, 0], \"to\": [0, 0, 400] }",
                100))
        .isEmpty();
  }
}
