package dryfit.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.measure.Length.Unit;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '#',
      value = {
        "440        | 440",
        "44 cm      | 440",
        "0.44m      | 440",
        "8 3/4 in   | 222.25",
        "3/8 in     | 9.525",
        "5-1/2 in   | 139.7",
        "8 3/4\"    | 222.25",
        "2 inches   | 50.8",
        "-3/8 in    | -9.525",
        "−10        | -10",
        "8 3/4      | 8.75",
        ".5 mm      | 0.5",
        "½ in       | 12.7",
        "1½ in      | 38.1",
        "1 ½\"      | 38.1",
        "1-⅝ in     | 41.275",
        "⅛″         | 3.175",
        "¼          | 0.25",
        "2⅜         | 2.375",
        "2-⅞        | 2.875",
        "1 1/2''    | 38.1",
        "1 1/2”     | 38.1",
        "1 1⁄2 in   | 38.1",
        "3/4 in.    | 19.05",
        "44 CM      | 440",
        "5'         | 1524",
        "5' 6\"     | 1676.4",
        "5'6½\"     | 1689.1",
        "5'-6\"     | 1676.4",
        "5’ 6 1/2”  | 1689.1",
        "5′ 6″      | 1676.4",
        "5' 6       | 1676.4",
        "5' 1/2     | 1536.7",
        "5 ft 6 in  | 1676.4",
        "1.5 feet   | 457.2"
      })
  void readsWhatAMakerWrites(String text, double mm) {
    assertThat(Length.parse(text, Unit.MM).orElseThrow()).isCloseTo(mm, within(1e-12));
  }

  @Test
  void meansABareNumberInTheUnitItIsTold() {
    assertThat(Length.parse("8 3/4", Unit.IN).orElseThrow()).isCloseTo(222.25, within(1e-12));
    assertThat(Length.parse("2", Unit.IN).orElseThrow()).isCloseTo(50.8, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "mm",
        "8 3/0 in",
        "12 deg",
        "1:8",
        "8 3/4 in x",
        "8,5",
        "5' 20 mm",
        "5' 6 7",
        "6\" 5'",
        "8 3/4 inchs",
        "½½",
        "--3",
        "1e999",
        "NaN"
      })
  void isEmptyForWhatIsNoLength(String text) {
    assertThat(Length.parse(text, Unit.MM)).isEqualTo(OptionalDouble.empty());
  }

  @Test
  void printsMillimetresToATenth() {
    assertThat(Length.print(440, Unit.MM, 64)).isEqualTo("440.0 mm");
    assertThat(Length.print(-0.26, Unit.MM, 64)).isEqualTo("−0.3 mm");
    assertThat(Length.print(-0.01, Unit.MM, 64)).isEqualTo("0.0 mm");
  }

  @Test
  void printsAnExactFractionBare() {
    assertThat(Length.print(222.25, Unit.IN, 64)).isEqualTo("8 3/4 in");
    assertThat(Length.print(9.525, Unit.IN, 64)).isEqualTo("3/8 in");
    assertThat(Length.print(-50.8, Unit.IN, 64)).isEqualTo("−2 in");
    assertThat(Length.print(0, Unit.IN, 64)).isEqualTo("0 in");
  }

  @Test
  void showsWhatAFractionLeavesOut() {
    assertThat(Length.print(440, Unit.IN, 64)).isEqualTo("17 21/64 in (−0.005)");
    assertThat(Length.print(440, Unit.IN, 16)).isEqualTo("17 5/16 in (+0.010)");
    assertThat(Length.print(0.1, Unit.IN, 64)).isEqualTo("0.004 in");
  }

  @Test
  void leavesOutWhatMillimetresLeaveOutToo() {
    assertThat(Length.print(25.39, Unit.IN, 64)).isEqualTo("1 in");
    assertThat(Length.print(25.4 + 0.05, Unit.IN, 64)).isEqualTo("1 in");
    assertThat(Length.print(25.4 + 0.06, Unit.IN, 64)).isEqualTo("1 in (+0.002)");
    assertThat(Length.print(-25.4 - 0.06, Unit.IN, 64)).isEqualTo("−1 in (−0.002)");
  }

  @Test
  void neverShowsASignOfNothing() {
    assertThat(Length.print(-0.001, Unit.IN, 64)).isEqualTo("0 in");
    assertThat(Length.print(-0.1, Unit.IN, 64)).isEqualTo("−0.004 in");
    assertThat(Length.print(2.8, Unit.IN, 4)).isEqualTo("0.110 in");
  }

  @Test
  void printsDecimals() {
    assertThat(Length.decimal(440, Unit.IN, 3)).isEqualTo("17.323 in");
    assertThat(Length.decimal(1234.5678, Unit.MM, 2)).isEqualTo("1234.57 mm");
  }
}
