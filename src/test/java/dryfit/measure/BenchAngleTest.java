package dryfit.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.measure.Length.Unit;
import org.junit.jupiter.api.Test;

class BenchAngleTest {

  /** Common practice, no source: 8.9 off square is also called 81.1 and 98.9. */
  @Test
  void oneAngleHasThreeReadings() {
    BenchAngle angle = BenchAngle.of(Math.toRadians(-8.9));
    assertThat(Math.toDegrees(angle.offSquare())).isCloseTo(8.9, within(1e-12));
    assertThat(Math.toDegrees(angle.fromLongEdge())).isCloseTo(81.1, within(1e-12));
    assertThat(Math.toDegrees(angle.fromShortEdge())).isCloseTo(98.9, within(1e-12));
  }

  @Test
  void slopeIsRiseInARoundRun() {
    BenchAngle oneInEight = BenchAngle.of(Math.atan(1 / 8.0));
    assertThat(oneInEight.slope(Unit.MM, 64)).isEqualTo("12.5 mm over 100 mm");
    assertThat(oneInEight.slope(Unit.IN, 64)).isEqualTo("1 1/2 in over 12 in");
    assertThat(oneInEight.over(40)).isCloseTo(5, within(1e-12));
  }

  @Test
  void steeperThanHalfARightAngleTheRiseIsRound() {
    BenchAngle fiveInOne = BenchAngle.of(Math.atan(5));
    assertThat(fiveInOne.slope(Unit.MM, 64)).isEqualTo("100 mm over 20.0 mm");
    assertThat(fiveInOne.slope(Unit.IN, 16)).isEqualTo("12 in over 2 3/8 in");
    assertThat(BenchAngle.of(Math.PI / 4).slope(Unit.MM, 64)).isEqualTo("100.0 mm over 100 mm");
  }

  @Test
  void squareIsWhatPrintsAsNoAngle() {
    assertThat(BenchAngle.of(Math.toRadians(0.005)).isSquare()).isTrue();
    assertThat(BenchAngle.of(Math.toRadians(0.0051)).isSquare()).isFalse();
    assertThat(BenchAngle.of(0).slope(Unit.MM, 64)).isEqualTo("0.0 mm over 100 mm");
  }

  @Test
  void aLineAlongTheEdgeIsNoCut() {
    assertThatThrownBy(() -> BenchAngle.of(Math.PI / 2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> BenchAngle.of(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
