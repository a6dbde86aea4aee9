package dryfit.build;

import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import org.junit.jupiter.api.Test;

class CornerBlockTest {
  private static final String FRAME =
      SQUARE_LEGS + "," + Sketch.FRONT_RAIL + "," + Sketch.SIDE_RAIL;

  private static String block(String more) {
    return FRAME
        + """
        , "block": { "form": "corner-block", "pair": true, "in-corner": ["front-rail", "side-rail"],
          "high": 40, "top": 375, %s }"""
            .formatted(more);
  }

  @Test
  void aBlockFillsTheCornerBetweenTheInsideFaces() {
    Part block = part(Sound.chair(block("\"along\": [60, 80]"), ""), "block", Hand.RIGHT);
    // Rails 20 thick, 5 back from the legs: their inside faces are at y = 25 and x = 175.
    assertThat(volume(block)).isCloseTo(60 * 80 / 2.0 * 40, within(1.0));
    assertThat(bounds(block).low().x()).isCloseTo(175 - 60, within(1e-3));
    assertThat(bounds(block).high().x()).isCloseTo(175, within(1e-3));
    assertThat(bounds(block).low().y()).isCloseTo(25, within(1e-3));
    assertThat(bounds(block).high().y()).isCloseTo(25 + 80, within(1e-3));
    assertThat(bounds(block).low().z()).isCloseTo(335, within(1e-3));
    assertThat(bounds(block).high().z()).isCloseTo(375, within(1e-3));
  }

  @Test
  void aBoardAcrossTheCornerIsATrapezoid() {
    Part block =
        part(Sound.chair(block("\"along\": 60, \"thickness\": 20"), ""), "block", Hand.LEFT);
    // A right triangle of legs 60 less one whose height is 20 less than 60 / sqrt 2.
    double small = 60 / Math.sqrt(2) - 20;
    assertThat(volume(block)).isCloseTo((60 * 60 / 2.0 - small * small) * 40, within(1.0));
  }

  @Test
  void aBlockIsCutRoundTheLeg() {
    String parts =
        block(
            "\"along\": 80, \"notch-round\": { \"parts\": [\"front-leg\"], \"gap\": 1, \"across\": 1 }");
    Part block = part(Sound.chair(parts, ""), "block", Hand.RIGHT);
    // The leg reaches to x = 160 and y = 40, 15 into the corner both ways; across the grain, which
    // runs at 45 degrees, the notch is its hull grown by 1 both along and across.
    assertThat(volume(block)).isLessThan((80 * 80 / 2.0 - 15 * 15) * 40);
    assertThat(volume(block)).isGreaterThan((80 * 80 / 2.0 - 17.5 * 17.5) * 40);
  }

  @Test
  void anAngleSaysHowTheFirstEndIsCut() {
    Part block =
        part(Sound.chair(block("\"along\": 60, \"angle\": \"30 deg\""), ""), "block", Hand.RIGHT);
    // A right angled corner: 60 along the first rail and 60 tan 30 along the second.
    assertThat(bounds(block).size().y()).isCloseTo(60 * Math.tan(Math.toRadians(30)), within(1e-3));
  }
}
