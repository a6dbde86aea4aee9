package dryfit.measure;

import java.util.OptionalDouble;

/**
 * Angles as text. Inside the program an angle is a {@code double} in radians.
 *
 * <p>A slope {@code a:b} is rise to run, the angle whose tangent is a/b: {@code 1:8} is 7.13°,
 * {@code 5:1} is 78.69°.
 */
public final class Angle {
  private Angle() {}

  /** Reads {@code 12}, {@code 12 deg}, {@code 12°}, {@code 0.2 rad} or {@code 1:8}, as radians. */
  public static OptionalDouble parse(String text) {
    OptionalDouble number = Fraction.parse(text);
    if (number.isPresent()) {
      return OptionalDouble.of(Math.toRadians(number.getAsDouble()));
    }
    return Literal.whole(text)
        .filter(found -> found.kind() == Literal.Kind.ANGLE)
        .map(found -> OptionalDouble.of(found.value()))
        .orElse(OptionalDouble.empty());
  }

  /**
   * An angle for people, in degrees and as a slope: {@code 8.88° (1 in 6.40)} rises one in a run of
   * 6.40; steeper than 45° the rise comes first: {@code 78.69° (5.00 in 1)}. Zero and angles of 90°
   * or more have no slope behind them.
   */
  public static String print(double radians) {
    String text = degrees(radians);
    double size = Math.abs(radians);
    if (size <= Tolerances.parallel() || size >= Math.PI / 2 - Tolerances.parallel()) {
      return text;
    }
    double rise = Math.tan(size);
    String slope =
        rise <= 1 ? "1 in " + Length.number(1 / rise, 2) : Length.number(rise, 2) + " in 1";
    return text + " (" + slope + ")";
  }

  /** The degrees alone: {@code 8.88°}. */
  public static String degrees(double radians) {
    return Length.number(Math.toDegrees(radians), 2) + "°";
  }
}
