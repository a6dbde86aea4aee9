package dryfit.measure;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as it is written down, with its unit if it has one, found at a place in a text.
 *
 * <p>Forms: {@code 440}, {@code 44 cm}, {@code 3/8 in}, {@code 8 3/4 in}, {@code 5-1/2 in}, {@code
 * 8 3/4"}, {@code 12 deg}, {@code 12°}, {@code 1:8}. A bare {@code 3/8} or {@code 5-1/2} is left
 * alone, because that is a division or a subtraction; with a unit behind it, it is one length.
 *
 * @param value millimetres, radians, or the bare number
 * @param kind what it measures
 * @param end index of the first character after it
 */
public record Literal(double value, Kind kind, int end) {

  /** What a literal measures. */
  public enum Kind {
    /** No unit was written; the reader decides what it means. */
    BARE,
    LENGTH,
    ANGLE
  }

  private static final String NUMBER = "(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+-]?\\d+)?";
  private static final Pattern SLOPE =
      Pattern.compile("(" + NUMBER + ")\\s*:\\s*(" + NUMBER + ")(?![\\w.])");
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d+)(\\s+|-))?(\\d+)/(\\d++)(?![.])");
  private static final Pattern PLAIN = Pattern.compile(NUMBER);
  private static final Pattern UNIT =
      Pattern.compile("\\s*(?:(mm|cm|m|inches|inch|in|degrees|deg|rad)(?![\\w])|([\"″°]))");

  /** The literal that starts at {@code from}, or empty if none does. */
  public static Optional<Literal> at(String text, int from) {
    Matcher slope = match(SLOPE, text, from);
    if (slope != null) {
      double rise = Double.parseDouble(slope.group(1));
      double run = Double.parseDouble(slope.group(2));
      return Optional.of(new Literal(Math.atan(rise / run), Kind.ANGLE, slope.end()));
    }
    Matcher fraction = match(FRACTION, text, from);
    if (fraction != null) {
      Optional<Literal> found = fraction(fraction, text);
      if (found.isPresent()) {
        return found;
      }
    }
    Matcher plain = match(PLAIN, text, from);
    if (plain == null) {
      return Optional.empty();
    }
    double value = Double.parseDouble(plain.group());
    return Optional.of(
        withUnit(value, text, plain.end()).orElse(new Literal(value, Kind.BARE, plain.end())));
  }

  /** The literal that is the whole text, spaces and a leading minus aside. */
  static Optional<Literal> whole(String text) {
    String trimmed = text.strip();
    boolean negative = trimmed.startsWith("-") || trimmed.startsWith("−");
    String digits = negative ? trimmed.substring(1).strip() : trimmed;
    return at(digits, 0)
        .filter(found -> found.end == digits.length() && Double.isFinite(found.value))
        .map(found -> negative ? new Literal(0 - found.value, found.kind, text.length()) : found);
  }

  private static Optional<Literal> fraction(Matcher fraction, String text) {
    double value =
        Double.parseDouble(fraction.group(3)) / Double.parseDouble(fraction.group(4))
            + (fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1)));
    Optional<Literal> measured = withUnit(value, text, fraction.end());
    if (measured.isPresent()) {
      return measured;
    }
    boolean mixed = fraction.group(1) != null && fraction.group(2).isBlank();
    return mixed ? Optional.of(new Literal(value, Kind.BARE, fraction.end())) : Optional.empty();
  }

  private static Optional<Literal> withUnit(double value, String text, int from) {
    Matcher unit = match(UNIT, text, from);
    if (unit == null) {
      return Optional.empty();
    }
    String word = unit.group(1) != null ? unit.group(1) : unit.group(2);
    return Optional.of(
        switch (word) {
          case "mm" -> new Literal(value, Kind.LENGTH, unit.end());
          case "cm" -> new Literal(value * 10, Kind.LENGTH, unit.end());
          case "m" -> new Literal(value * 1000, Kind.LENGTH, unit.end());
          case "rad" -> new Literal(value, Kind.ANGLE, unit.end());
          case "deg", "degrees", "°" -> new Literal(Math.toRadians(value), Kind.ANGLE, unit.end());
          default -> new Literal(Length.Unit.IN.mm(value), Kind.LENGTH, unit.end());
        });
  }

  private static Matcher match(Pattern pattern, String text, int from) {
    Matcher matcher = pattern.matcher(text);
    // Lookahead must see what follows, so the bounds stay transparent.
    matcher.region(from, text.length()).useTransparentBounds(true);
    return matcher.lookingAt() ? matcher : null;
  }
}
