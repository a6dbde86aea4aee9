package dryfit.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TrapezoidTest {

  @Property
  void shiftedFrontGivesBackTheDifferenceOfItsDiagonals(
      @ForAll @DoubleRange(min = 200, max = 700) double front,
      @ForAll @DoubleRange(min = 200, max = 700) double back,
      @ForAll @DoubleRange(min = 200, max = 600) double depth,
      @ForAll @DoubleRange(min = -40, max = 40) double difference) {
    double shift = new Trapezoid(front, back, depth).shift(difference);
    Vec3 backLeft = new Vec3(-back / 2, depth, 0);
    Vec3 backRight = new Vec3(back / 2, depth, 0);
    double toRightFront = backLeft.distance(new Vec3(front / 2 + shift, 0, 0));
    double toLeftFront = backRight.distance(new Vec3(-front / 2 + shift, 0, 0));
    assertThat(toRightFront - toLeftFront).isCloseTo(difference, within(1e-9));
  }

  @Test
  void anglesAndLengthsAreThoseOfTheCorners() {
    Trapezoid seat = new Trapezoid(560, 470, 450);
    Vec3 front = new Vec3(280, 0, 0);
    Vec3 rear = new Vec3(235, 450, 0);
    assertThat(seat.side()).isCloseTo(front.distance(rear), within(1e-9));
    assertThat(seat.angle()).isCloseTo(rear.minus(front).angleTo(Vec3.BACK), within(1e-12));
    assertThat(seat.diagonal()).isCloseTo(rear.distance(new Vec3(-280, 0, 0)), within(1e-9));
    assertThat(seat.frontCorner())
        .isCloseTo(rear.minus(front).angleTo(Vec3.RIGHT.negated()), within(1e-12));
    assertThat(seat.backCorner())
        .isCloseTo(front.minus(rear).angleTo(Vec3.RIGHT.negated()), within(1e-12));
  }

  @Test
  void seatWiderBehindHasANegativeAngle() {
    assertThat(new Trapezoid(400, 440, 420).angle()).isNegative();
  }

  @Test
  void seatWithoutSizeIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Trapezoid(0, 400, 400));
    assertThatIllegalArgumentException().isThrownBy(() -> new Trapezoid(400, 400, Double.NaN));
  }

  @Test
  void impossibleDiagonalsAreRefused() {
    Trapezoid seat = new Trapezoid(400, 400, 400);
    assertThatIllegalArgumentException().isThrownBy(() -> seat.shift(800));
  }
}
