package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.fit.Fitted;
import dryfit.geometry.Vec2;
import dryfit.shop.template.TemplateMaker;
import dryfit.shop.template.TemplateMaker.Made;
import dryfit.shop.template.Wanted;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TemplateOnTheFlatTest {

  /**
   * Patterns are projections on the flat faces of the squared block. For an arm 17 in long with 2
   * in of bow a pattern as long as the sawn curve, 17.62 in, would be 0.62 in too long (common
   * practice, no source; separate script).
   */
  @Test
  void theSidePatternOfABowedArmIsAsLongAsItsBlock() {
    Chair chair =
        Fitted.of(
                """
                { "format": "dryfit-chair/1", "name": "Arm", "about": "Demo data, invented.",
                  "unit": "in", "timber": "cherry-black",
                  "parts": { "arm": { "form": "sawn", "stands-at": [0, 0, 25], "thickness": 1,
                    "plan": [[0, 0], { "arc-to": [0, 17], "rise": 2 }, [4, 17], [4, 0]] } } }
                """)
            .chair();
    Wanted plain = new Wanted(0, Optional.empty(), Wanted.Hands.BOTH, 5);
    for (Made made : new TemplateMaker(chair, plain).of("arm")) {
      var loop = ((Made.Ready) made).template().outline().get(0);
      double long1 =
          loop.stream().mapToDouble(Vec2::x).max().orElseThrow()
              - loop.stream().mapToDouble(Vec2::x).min().orElseThrow();
      assertThat(long1 / 25.4).isCloseTo(17, within(0.001));
      assertThat(17.62 - long1 / 25.4).isCloseTo(0.62, within(0.005));
    }
  }
}
