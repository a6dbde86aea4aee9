package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.measure.Angle;
import dryfit.measure.Length;
import dryfit.measure.Length.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthsAndAnglesTest {

  /**
   * The international inch is exactly 25.4 mm, the foot of twelve exactly 304.8 mm: NIST Special
   * Publication 811, Guide for the Use of the International System of Units (2008), appendix B.8.
   */
  @Test
  void theInchIsThatOfTheInternationalAgreement() {
    assertThat(Length.parse("1 in", Unit.MM).orElseThrow()).isEqualTo(25.4);
    assertThat(Length.parse("12 in", Unit.MM).orElseThrow()).isCloseTo(304.8, within(1e-12));
  }

  /**
   * Fractions of an inch in decimals and millimetres, as tables of drill sizes list them; the rows
   * follow from the definition above and are the same in every such table. Values from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "1/64, 0.015625, 0.396875",
    "1/32, 0.03125, 0.79375",
    "1/16, 0.0625, 1.5875",
    "3/16, 0.1875, 4.7625",
    "1/4, 0.25, 6.35",
    "5/16, 0.3125, 7.9375",
    "21/64, 0.328125, 8.334375",
    "3/8, 0.375, 9.525",
    "1/2, 0.5, 12.7",
    "63/64, 0.984375, 25.003125"
  })
  void fractionsOfAnInchAreThoseOfTheTables(String fraction, double inch, double mm) {
    assertThat(Length.parse(fraction + " in", Unit.MM).orElseThrow()).isCloseTo(mm, within(1e-12));
    assertThat(Length.parse(fraction, Unit.IN).orElseThrow()).isCloseTo(mm, within(1e-12));
    assertThat(Length.print(mm, Unit.IN, 64)).isEqualTo(fraction + " in");
    assertThat(Length.parse(inch + " in", Unit.MM).orElseThrow()).isCloseTo(mm, within(1e-12));
  }

  /**
   * Two slopes square to each other, 1 in 12 and 1 in 18, make one of 1 in 10: Wood Handbook,
   * Forest Products Laboratory, FPL-GTR-190 (2010), chapter 5, "Slope of grain"; exactly it is 1 in
   * 9.985. (The 18 is from memory.)
   */
  @Test
  void slopesCombineAsInTheWoodHandbook() {
    double one = Math.tan(Angle.parse("1:12").orElseThrow());
    double other = Math.tan(Angle.parse("1:18").orElseThrow());
    double combined = Math.hypot(one, other);
    assertThat(Math.round(1 / combined)).isEqualTo(10);
    assertThat(Angle.print(Math.atan(combined))).endsWith("(1 in 9.98)");
  }

  /** Dovetail slopes: 1 in 6 is about 9.5°, 1 in 8 about 7.1°. Common practice, no source. */
  @Test
  void dovetailSlopesAreAsTheTradeQuotesThem() {
    assertThat(Math.toDegrees(Angle.parse("1:6").orElseThrow())).isCloseTo(9.5, within(0.05));
    assertThat(Math.toDegrees(Angle.parse("1:8").orElseThrow())).isCloseTo(7.1, within(0.05));
  }
}
