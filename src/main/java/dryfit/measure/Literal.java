package dryfit.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as it is written down, with its unit if it has one, found at a place in a text.
 *
 * <p>Forms: {@code 440}, {@code 44 cm}, {@code 3/8 in}, {@code 8 3/4 in}, {@code 5-1/2 in}, {@code
 * 8 3/4"}, {@code 8¾ in}, {@code 5' 6 1/2"}, {@code 12 deg}, {@code 12°}, {@code 1:8}. A bare
 * {@code 3/8} or {@code 5-1/2} is left alone, because that is a division or a subtraction; with a
 * unit behind it, it is one length. Two strokes of any kind behind a number are inches, one is
 * feet.
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

  /** Halves, quarters and eighths have signs of their own. */
  private static final String SIGNS = "½¼¾⅛⅜⅝⅞";

  private static final int[] SIGNS_IN_EIGHTHS = {4, 2, 6, 1, 3, 5, 7};
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d+)(\\s+|-))?(\\d+)[/⁄](\\d++)(?![.])");
  private static final Pattern SIGN_FRACTION =
      Pattern.compile("(?:(\\d+)(\\s*|-))?([" + SIGNS + "])");
  private static final Pattern PLAIN = Pattern.compile(NUMBER);
  private static final Pattern UNIT =
      Pattern.compile(
          "\\s*(?:(mm|cm|m|inches|inch|in\\.|in|degrees|deg|rad)(?!\\w)|(\"|″|“|”|''|’’|′′|°))",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern FEET =
      Pattern.compile(
          "("
              + NUMBER
              + ")\\s*(?:(?:feet|foot|ft\\.|ft)(?!\\w)|'(?!')|’(?!’)|′(?!′))(?:-(?=[\\d"
              + SIGNS
              + "])|\\s*)",
          Pattern.CASE_INSENSITIVE);
  private static final int INCHES_IN_A_FOOT = 12;

  /** The literal that starts at {@code from}, or empty if none does. */
  public static Optional<Literal> at(String text, int from) {
    Matcher slope = match(SLOPE, text, from);
    if (slope != null) {
      double rise = Double.parseDouble(slope.group(1));
      double run = Double.parseDouble(slope.group(2));
      return Optional.of(new Literal(Math.atan(rise / run), Kind.ANGLE, slope.end()));
    }
    Matcher feet = match(FEET, text, from);
    return feet != null ? Optional.of(feet(feet, text)) : inOneUnit(text, from);
  }

  /** Feet, and the inches behind them if there are any, with or without a mark of their own. */
  private static Literal feet(Matcher feet, String text) {
    double ofFeet = Length.Unit.IN.mm(INCHES_IN_A_FOOT * Double.parseDouble(feet.group(1)));
    Optional<Literal> inches =
        bareInches(text, feet.end())
            .or(() -> inOneUnit(text, feet.end()))
            .filter(rest -> rest.kind == Kind.BARE || isInInches(text, rest));
    if (inches.isEmpty()) {
      return new Literal(ofFeet, Kind.LENGTH, feet.start() + feet.group().stripTrailing().length());
    }
    Literal rest = inches.get();
    double ofInches = rest.kind == Kind.BARE ? Length.Unit.IN.mm(rest.value) : rest.value;
    return new Literal(ofFeet + ofInches, Kind.LENGTH, rest.end);
  }

  /** Behind feet, {@code 1/2} can only be half an inch. */
  private static Optional<Literal> bareInches(String text, int from) {
    Matcher fraction = match(FRACTION, text, from);
    return fraction == null || match(UNIT, text, fraction.end()) != null
        ? Optional.empty()
        : Optional.of(new Literal(sum(fraction), Kind.BARE, fraction.end()));
  }

  private static boolean isInInches(String text, Literal length) {
    char last = Character.toLowerCase(text.charAt(length.end - 1));
    return length.kind == Kind.LENGTH && last != 'm';
  }

  private static Optional<Literal> inOneUnit(String text, int from) {
    Matcher fraction = match(FRACTION, text, from);
    if (fraction != null) {
      Optional<Literal> found = fraction(fraction, sum(fraction), false, text);
      if (found.isPresent()) {
        return found;
      }
    }
    Matcher sign = match(SIGN_FRACTION, text, from);
    if (sign != null) {
      int eighths = SIGNS_IN_EIGHTHS[SIGNS.indexOf(sign.group(3))];
      Optional<Literal> found = fraction(sign, whole(sign) + eighths / 8.0, true, text);
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

  /** Whether a number may end with it: a digit, or the sign of a fraction. */
  static boolean endsNumber(char last) {
    return Character.isDigit(last) || SIGNS.indexOf(last) >= 0;
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

  private static double whole(Matcher fraction) {
    return fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
  }

  private static double sum(Matcher fraction) {
    return whole(fraction)
        + Double.parseDouble(fraction.group(3)) / Double.parseDouble(fraction.group(4));
  }

  /**
   * Without a unit, only what cannot be a sum to work out: {@code 5 1/2}, or a sign by itself.
   *
   * @param sign whether the fraction is one sign, which is a number and no division
   */
  private static Optional<Literal> fraction(
      Matcher fraction, double value, boolean sign, String text) {
    Optional<Literal> measured = withUnit(value, text, fraction.end());
    if (measured.isPresent()) {
      return measured;
    }
    boolean mixed = fraction.group(1) != null && fraction.group(2).isBlank();
    boolean alone = sign && fraction.group(1) == null;
    return mixed || alone
        ? Optional.of(new Literal(value, Kind.BARE, fraction.end()))
        : Optional.empty();
  }

  private static Optional<Literal> withUnit(double value, String text, int from) {
    Matcher unit = match(UNIT, text, from);
    if (unit == null) {
      return Optional.empty();
    }
    String word = unit.group(1) != null ? unit.group(1).toLowerCase(Locale.ROOT) : unit.group(2);
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
