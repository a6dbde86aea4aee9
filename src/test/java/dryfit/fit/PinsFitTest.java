package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Pegs in the joints of one corner; demo data. */
class PinsFitTest {
  private static FitReport pegged(String peg) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Corner", "unit": "mm", "timber": "ash-white",
          "parts": {
            "leg": { "form": "straight", "section": [40, 40], "from": [0, 0, 0], "to": [0, 0, 400] },
            "front": { "form": "straight", "section": [60, 20], "from": [300, 0, 350], "to": [20, 0, 350] },
            "side": { "form": "straight", "section": [60, 20], "from": [0, 300, 300], "to": [0, 20, 300] },
            "peg": { "form": "peg", "in-joint": "side", "diameter": 6, %s } },
          "joints": {
            "front": { "tenon": "front end", "into": "leg", "thickness": 8, "width": 40, "length": 25 },
            "side": { "tenon": "side end", "into": "leg", "thickness": 8, "width": 40, "length": 24 } } }"""
            .formatted(peg));
  }

  @Test
  void aPegThatDrawsItsJointUpIsNotACollision() {
    FitReport report = pegged("\"from-shoulder\": 8, \"offset\": 1.5");
    assertThat(Fitted.checks(report)).doesNotContain("parts-collide", "tenons-meet");
    assertThat(report.fits()).isTrue();
  }

  @Test
  void aPegThatMeetsTheTenonOfAnotherJointIsACollision() {
    // 30 up from the middle of the side tenon its middle is at the height of the front tenon's
    // lower
    // edge, 330, and 18 in from the face at y = 20 it is between the cheeks at y = -4 and 4.
    FitReport report = pegged("\"from-shoulder\": 18, \"off-centre\": 30");
    assertThat(report.findings().stream().filter(f -> f.check().equals("parts-collide")))
        .anyMatch(f -> f.parts().contains("peg") && f.parts().contains("front"));
  }
}
