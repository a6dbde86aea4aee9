package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Quantity.Kind;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExpressionTest {
  private static final Map<String, Quantity> DIMENSIONS =
      Map.of(
          "a", new Quantity(300, Kind.LENGTH),
          "b", new Quantity(400, Kind.LENGTH),
          "lean", new Quantity(Math.toRadians(30), Kind.ANGLE),
          "share", new Quantity(0.5, Kind.NUMBER));

  private static Value value(String text, double unit) {
    Numbers numbers =
        new Numbers(new Problems("chair.json"), unit, DIMENSIONS, DIMENSIONS.keySet(), new Blame());
    return ExpressionParser.parse(text).value(numbers);
  }

  private static double length(String text) {
    return value(text, 1).as(Kind.LENGTH, 1).value();
  }

  private static double degrees(String text) {
    return Math.toDegrees(value(text, 1).as(Kind.ANGLE, 1).value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a + b                  | 700",
        "a - b - 1              | -101",
        "a - (b - 1)            | -99",
        "2 + 3 * 4              | 14",
        "12 / 2 / 3             | 2",
        "-a + b                 | 100",
        "--3                    | 3",
        "a * share              | 150",
        "a + 1 in               | 325.4",
        "8 3/4 in + 2 cm        | 242.25",
        "5-1/2 in               | 139.7",
        "5 - 1/2 in             | -7.7",
        "5-1/2                  | 5.5",
        "5-½                    | 5.5",
        "5 - ½                  | 4.5",
        "10 / ½                 | 20",
        "a + 1½ in              | 338.1",
        "a + 1 ft 1 in          | 630.2",
        " 1-3/4                 | 1.75",
        "5 - 1/2                | 4.5",
        "a * (1-1/3)            | 200",
        "a / b * 100 mm         | 75",
        "sqrt(a*a + b*b)        | 500",
        "sqrt(a*a + 160000)     | 500",
        "hypot(a, b)            | 500",
        "hypot(a, 400)          | 500",
        "min(a, b, 120)         | 120",
        "max(a, 301)            | 301",
        "abs(a - b)             | 100",
        "round(10.5)            | 11",
        "round(a / 7)           | 43",
        "round(a / 7, 1/16 in)  | 42.8625",
        "a * sin(lean)          | 150",
        "a * cos(60)            | 150",
        "a * tan(45 deg)        | 300",
        "a * tan(1:8)           | 37.5",
        "a × 2 − 1              | 599"
      })
  void worksOutLengths(String text, double mm) {
    assertThat(length(text)).isCloseTo(mm, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "atan(a / b)        | 36.86989764584402",
        "atan2(a, b)        | 36.86989764584402",
        "atan2(a, -b)       | 143.13010235415598",
        "asin(share)        | 30",
        "acos(1/2)          | 60",
        "lean * 2 + 5       | 65",
        "lean + 1:1         | 75",
        "10                 | 10"
      })
  void worksOutAngles(String text, double degrees) {
    assertThat(degrees(text)).isCloseTo(degrees, within(1e-9));
  }

  @Test
  void meansABareNumberInTheUnitOfTheDocument() {
    assertThat(value("a + 2", 25.4).as(Kind.LENGTH, 25.4).value()).isCloseTo(350.8, within(1e-9));
    assertThat(value("2 * 3", 25.4).as(Kind.LENGTH, 25.4).value()).isCloseTo(152.4, within(1e-9));
    assertThat(value("sqrt(a*a + 16*25)", 25.4).as(Kind.LENGTH, 25.4).value())
        .isCloseTo(Math.hypot(300, 20 * 25.4), within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a + lean",
        "a + a * b",
        "a * lean",
        "lean / a",
        "a + share",
        "a + a / b",
        "sin(a)",
        "tan(a / b)",
        "atan(a)",
        "sqrt(a)",
        "sqrt(lean)",
        "min(a, lean)",
        "lean * lean",
        "round(a, lean)",
        "1 / lean"
      })
  void refusesUnitsThatDoNotGoTogether(String text) {
    assertThatThrownBy(() -> value(text, 1))
        .isInstanceOfSatisfying(
            ExpressionFault.class, fault -> assertThat(fault.code()).isEqualTo("wrong-unit"));
  }

  @Test
  void saysWhatItFoundInsteadOfWhatIsNeeded() {
    assertThatThrownBy(() -> length("a * b"))
        .hasMessage("a length is needed here, and this is an area");
    assertThatThrownBy(() -> degrees("a"))
        .hasMessage("an angle is needed here, and this is a length");
    assertThatThrownBy(() -> length("a / b"))
        .hasMessage("a length is needed here, and this is a ratio");
  }

  @Property
  void givesBackAnyNumberItIsGiven(@ForAll @DoubleRange(min = -50_000, max = 50_000) double mm) {
    assertThat(length(Double.toString(mm))).isEqualTo(mm + 0.0);
  }

  @Property
  void keepsTheLawsOfArithmetic(
      @ForAll @DoubleRange(min = -1000, max = 1000) double x,
      @ForAll @DoubleRange(min = -1000, max = 1000) double y,
      @ForAll @DoubleRange(min = 0.01, max = 1000) double z) {
    String p = number(x);
    String q = number(y);
    String r = number(z);
    assertThat(length(p + " + " + q)).isEqualTo(length(q + " + " + p));
    assertThat(length(p + " - " + q)).isEqualTo(length("-(" + q + " - " + p + ")"));
    assertThat(length("(%s + %s) * %s".formatted(p, q, r)))
        .isCloseTo(length("%s * %s + %s * %s".formatted(p, r, q, r)), within(1e-6));
    assertThat(length("%s / %s * %s".formatted(p, r, r))).isCloseTo(length(p), within(1e-9));
    assertThat(length("max(%s, %s) + min(%s, %s)".formatted(p, q, p, q)))
        .isCloseTo(length(p + " + " + q), within(1e-9));
  }

  @Property
  void neverAnswersOtherThanWithANumberOrAFault(@ForAll("scraps") String text) {
    try {
      assertThat(value(text, 1).number()).isFinite();
    } catch (ExpressionFault fault) {
      assertThat(fault.code()).isNotEmpty();
    }
  }

  @Provide
  Arbitrary<String> scraps() {
    return Arbitraries.of(
            "a", "lean", "share", "x", "(", ")", "+", "-", "*", "/", ",", " ", "1", "0", ".", ":",
            "3/8 in", "deg", "sin", "sqrt", "max", "°", "\"", "1e308", "−", "½")
        .list()
        .ofMaxSize(12)
        .map(scraps -> String.join("", scraps));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.4f", value);
  }
}
