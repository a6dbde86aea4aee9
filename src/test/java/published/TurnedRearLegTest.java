package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.Fitted;
import dryfit.fit.JointFit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rear legs turned in plan to face the sitter. A builder (Michael Gorchov, "Chairs, slowly", 22 May
 * 2017, michaelgorchov.wordpress.com) has side rails that turn out 9 degrees and rear legs turned 3
 * degrees. The rear shoulder of the side rail is then 6 degrees off square if the leg is turned
 * towards the rail's direction and 12 if away from it: the difference and the sum, worked out here.
 * The chair is demo data.
 */
class TurnedRearLegTest {
  @ParameterizedTest
  @CsvSource({"0, 9", "3, 6", "-3, 12"})
  void theRearShoulderIsTheSumOrTheDifference(double turn, double shoulder) {
    String chair =
        """
        { "format": "dryfit-chair/1", "name": "Side frame", "unit": "mm", "timber": "ash-white",
          "parts": {
            "rear-leg": { "form": "sawn", "pair": true, "thickness": 44, "stands-at": [200, 400, 0],
              "side": [ [-20, 0], [20, 0], [20, 450], [-20, 450] ], "turn": %s },
            "side-rail": { "form": "straight", "pair": true, "section": [60, 20],
              "from": ["200 + 380 mm * tan(9 deg)", 20, 400], "to": [200, 400, 400] } },
          "joints": { "rail to leg": { "tenon": "side-rail back", "into": "rear-leg",
            "thickness": 8, "width": 40, "length": 20 } } }"""
            .formatted("\"" + turn + " deg\"");
    for (String hand : new String[] {"right", "left"}) {
      JointFit joint = Fitted.joint(Fitted.of(chair), "rail to leg, " + hand);
      assertThat(Math.abs(Math.toDegrees(joint.shoulderNarrow())))
          .isCloseTo(shoulder, within(1e-6));
    }
  }
}
