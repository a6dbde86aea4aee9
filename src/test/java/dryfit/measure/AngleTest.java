package dryfit.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AngleTest {

  @ParameterizedTest
  @CsvSource({
    "12, 12",
    "12 deg, 12",
    "12°, 12",
    "-4 degrees, -4",
    "0.5 rad, 28.64788975654116",
    "1:8, 7.125016348901798",
    "5:1, 78.69006752597979",
    "1 : 1, 45",
    "4.5, 4.5"
  })
  void readsDegreesRadiansAndSlopes(String text, double degrees) {
    assertThat(Math.toDegrees(Angle.parse(text).orElseThrow())).isCloseTo(degrees, within(1e-12));
  }

  @Test
  void isEmptyForWhatIsNoAngle() {
    assertThat(Angle.parse("12 mm")).isEqualTo(OptionalDouble.empty());
    assertThat(Angle.parse("0:0")).isEqualTo(OptionalDouble.empty());
    assertThat(Angle.parse("")).isEqualTo(OptionalDouble.empty());
  }

  @Test
  void printsDegreesAndTheSlope() {
    assertThat(Angle.print(Math.atan(1 / 6.4))).isEqualTo("8.88° (1 in 6.40)");
    assertThat(Angle.print(-Math.atan(1 / 6.4))).isEqualTo("−8.88° (1 in 6.40)");
    assertThat(Angle.print(Math.atan(5))).isEqualTo("78.69° (5.00 in 1)");
    assertThat(Angle.print(Math.PI / 4)).isEqualTo("45.00° (1 in 1.00)");
  }

  @Test
  void printsNoSlopeWhereThereIsNone() {
    assertThat(Angle.print(0)).isEqualTo("0.00°");
    assertThat(Angle.print(Math.PI / 2)).isEqualTo("90.00°");
    assertThat(Angle.print(2)).isEqualTo("114.59°");
  }
}
