package dryfit.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MovementTest {

  @Test
  void dryingIsTheSwellingTurnedRound() {
    double swells = Movement.change(400, 0.00274, 7, 11);
    assertThat(swells).isCloseTo(4.384, within(1e-9));
    assertThat(Movement.change(400, 0.00274, 11, 7)).isEqualTo(-swells);
  }

  @Test
  void endsOfTheRangeAreInside() {
    assertThat(Movement.covers(6, 14)).isTrue();
    assertThat(Movement.covers(5.99, 10)).isFalse();
    assertThat(Movement.covers(10, 14.01)).isFalse();
    assertThat(Movement.covers(Double.NaN, 10)).isFalse();
  }

  @Test
  void moistureOutsideTheRangeIsRefusedNotGuessed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Movement.change(400, 0.00274, 15, 9))
        .withMessageContaining("6 to 14 %");
  }
}
