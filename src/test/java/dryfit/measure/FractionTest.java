package dryfit.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class FractionTest {

  @Test
  void isInLowestTerms() {
    assertThat(Fraction.nearest(0.5, 64).text()).isEqualTo("1/2");
    assertThat(Fraction.nearest(1.25, 64).text()).isEqualTo("1 1/4");
    assertThat(Fraction.nearest(2, 64).text()).isEqualTo("2");
  }

  @Test
  void goesAwayFromZeroExactlyHalfWay() {
    assertThat(Fraction.nearest(1.0 / 128, 64).text()).isEqualTo("1/64");
    assertThat(Fraction.nearest(-1.0 / 128, 64).text()).isEqualTo("−1/64");
  }

  @Test
  void refusesWhatIsNoFraction() {
    assertThatThrownBy(() -> Fraction.nearest(Double.NaN, 64))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Fraction.nearest(1, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThat(Fraction.parse("3/0")).isEmpty();
    assertThat(Fraction.parse("3//4")).isEmpty();
    assertThat(Fraction.parse("mm")).isEmpty();
  }

  @Property
  void isNeverFurtherThanHalfADivision(
      @ForAll @DoubleRange(min = -10_000, max = 10_000) double value,
      @ForAll @IntRange(min = 1, max = 128) int denominator) {
    Fraction nearest = Fraction.nearest(value, denominator);
    assertThat(Math.abs(nearest.remainder())).isLessThanOrEqualTo(0.5 / denominator + 1e-9);
    assertThat(nearest.value() + nearest.remainder()).isCloseTo(value, within(1e-9));
  }

  @Property
  void readsBackWhatItPrints(@ForAll @IntRange(min = -64_000, max = 64_000) int sixtyFourths) {
    double value = sixtyFourths / 64.0;
    Fraction printed = Fraction.nearest(value, 64);
    assertThat(printed.remainder()).isZero();
    assertThat(Fraction.parse(printed.text()).orElseThrow()).isEqualTo(value);
    double mm = Length.Unit.IN.mm(value);
    String length = Length.print(mm, Length.Unit.IN, 64);
    assertThat(Length.parse(length, Length.Unit.MM).orElseThrow()).isEqualTo(mm);
  }
}
