package dryfit.shop.jig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GuidePlayTest {
  // Worked by hand: atan(0.4 / 30) = 0.764 degrees; tipping about the middle of the guide, 32 + 15
  // mm away, 47 x 0.4 / 30 = 0.627 mm. With 50 mm: 0.458 degrees and 57 x 0.4 / 50 = 0.456 mm.
  @Test
  void aLongerGuideTipsLess() {
    GuidePlay shortGuide = new GuidePlay(0.4, 30);
    assertThat(Math.toDegrees(shortGuide.tilt())).isCloseTo(0.764, within(5e-4));
    assertThat(shortGuide.offAt(32)).isCloseTo(0.627, within(5e-4));
    GuidePlay longGuide = new GuidePlay(0.4, 50);
    assertThat(Math.toDegrees(longGuide.tilt())).isCloseTo(0.458, within(5e-4));
    assertThat(longGuide.offAt(32)).isCloseTo(0.456, within(5e-4));
  }

  @Test
  void theLengthForATiltGivesThatTilt() {
    double length = GuidePlay.lengthFor(0.2, Math.toRadians(0.4));
    assertThat(new GuidePlay(0.2, length).tilt()).isCloseTo(Math.toRadians(0.4), within(1e-12));
  }
}
