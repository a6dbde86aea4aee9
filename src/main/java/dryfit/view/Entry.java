package dryfit.view;

import dryfit.document.Design.Dimension;
import dryfit.document.Quantity;
import dryfit.measure.Fraction;
import dryfit.measure.Length;
import dryfit.measure.Tolerances;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A dimension's value as a maker writes it, and what the maker wrote as the document wants it. */
final class Entry {
  private static final int FINEST = 64;

  /** Below this, inches that are no fraction are gaps and clearances, told in thousandths. */
  private static final double SMALL = 0.125;

  /** Steps of a slider that names none, about. */
  private static final double STEPS = 100;

  /** A fraction as a rule in inches has it. */
  private static final Pattern INCHES =
      Pattern.compile("(?:\\d+(?:\\s+|-))?(\\d{1,2})/(2|4|8|16|32|64)");

  /** A number that stands by itself between signs, commas or brackets. */
  private static final Pattern BARE_TERM =
      Pattern.compile("(?:^|[-+−(,])\\s*\\d[\\d.]*(?:(?:\\s+|-)?\\d*/\\d+)?\\s*(?:$|[-+−),])");

  private static final double FINE_MM = 0.5;
  private static final double FINE_DEGREES = 0.05;

  private Entry() {}

  /**
   * {@code 440}, {@code 17 3/8}, {@code 4°}: in the unit that is shown, inches in the fraction of a
   * rule that is nearest.
   */
  static String shown(Quantity value, Length.Unit unit) {
    return switch (value.kind()) {
      case LENGTH -> {
        double count = value.value() / unit.mm();
        yield unit == Length.Unit.MM || isFraction(count, unit) || Math.abs(count) < SMALL
            ? exactly(count, unit)
            : Fraction.nearest(count, FINEST).text();
      }
      case ANGLE -> plain(Math.toDegrees(value.value()), 2) + "°";
      case NUMBER -> plain(value.value(), 4);
    };
  }

  /** Whether {@link #shown} says all of a length. */
  static boolean isAll(Quantity value, Length.Unit unit) {
    if (value.kind() != Quantity.Kind.LENGTH) {
      return true;
    }
    double count = value.value() / unit.mm();
    boolean decimal = unit == Length.Unit.MM || Math.abs(count) < SMALL;
    double told = Double.parseDouble(plain(count, unit == Length.Unit.MM ? 2 : 3));
    return isFraction(count, unit)
        || decimal && Math.abs(told - count) * unit.mm() <= Tolerances.coincident();
  }

  private static boolean isFraction(double count, Length.Unit unit) {
    return unit == Length.Unit.IN
        && Math.abs(Fraction.nearest(count, FINEST).remainder()) * unit.mm()
            <= Tolerances.coincident();
  }

  private static String exactly(double count, Length.Unit unit) {
    if (isFraction(count, unit)) {
      return Fraction.nearest(count, FINEST).text();
    }
    return plain(count, unit == Length.Unit.MM ? 2 : 3);
  }

  /**
   * A value a slider came to, to be written into the document: a bare number where that is enough.
   */
  static String written(double value, Quantity.Kind kind, Length.Unit unit) {
    return switch (kind) {
      case LENGTH -> {
        String told = exactly(value / unit.mm(), unit).replace('−', '-');
        yield told.contains("/") ? told + " " + unit.symbol() : told;
      }
      case ANGLE -> plain(Math.toDegrees(value), 4) + " deg";
      case NUMBER -> plain(value, 6);
    };
  }

  /**
   * Whether this can only be a fraction of an inch, without its unit where a bare number is in
   * millimetres: {@code 17 3/8} or {@code 3/8}, but not {@code 450/2}, which is a sum.
   */
  static boolean isInchFraction(String typed, Dimension dimension, Length.Unit shown) {
    Matcher fraction = INCHES.matcher(typed.strip());
    return dimension.value().kind() == Quantity.Kind.LENGTH
        && shown == Length.Unit.MM
        && fraction.matches()
        && Integer.parseInt(fraction.group(1)) < Integer.parseInt(fraction.group(2));
  }

  /**
   * Whether a formula adds a bare number while another unit is shown than the document's, so that
   * nobody can tell which is meant: {@code seat top - 2}. What multiplies has no unit.
   */
  static boolean lacksUnit(
      String typed, Dimension dimension, Length.Unit shown, Length.Unit document) {
    return dimension.value().kind() == Quantity.Kind.LENGTH
        && shown != document
        && Fraction.parse(typed.strip()).isEmpty()
        && BARE_TERM.matcher(typed).find();
  }

  /**
   * What was typed, with the unit that was meant: a bare number is in the unit that is shown. A
   * dimension may be called what it is called on screen.
   *
   * @param document the unit of a bare number in the document, which is then left bare
   * @param names of all dimensions, as the document has them
   */
  static String meant(
      String typed,
      Dimension dimension,
      Length.Unit shown,
      Length.Unit document,
      Collection<String> names) {
    String plain = typed.strip().replace('−', '-').replace("°", " deg").strip();
    OptionalDouble number = Fraction.parse(plain);
    if (number.isEmpty()) {
      return named(plain, names);
    }
    return switch (dimension.value().kind()) {
      case LENGTH ->
          shown == document && !plain.contains("/") ? plain : plain + " " + shown.symbol();
      case ANGLE -> plain + " deg";
      case NUMBER -> plain;
    };
  }

  /** {@code seat top + 20} becomes {@code seatTop + 20}; of two that would do, the longer one. */
  private static String named(String formula, Collection<String> names) {
    List<String> longest =
        names.stream()
            .sorted(Comparator.comparing((String n) -> Words.dimension(n).length()).reversed())
            .toList();
    String meant = formula;
    for (String name : longest) {
      String called = Pattern.quote(Words.dimension(name)).replace(" ", "\\E\\s+\\Q");
      meant =
          meant.replaceAll("(?<![\\w])" + called + "(?![\\w(])", Matcher.quoteReplacement(name));
    }
    return meant;
  }

  /** A step for a slider that names none: one that a rule shows, a hundredth of the way or so. */
  static double step(double from, double to, Quantity.Kind kind, Length.Unit unit) {
    double least = (to - from) / STEPS;
    double step =
        switch (kind) {
          case LENGTH -> unit == Length.Unit.IN ? unit.mm() / FINEST : FINE_MM;
          case ANGLE -> Math.toRadians(FINE_DEGREES);
          case NUMBER -> least;
        };
    while (step < least) {
      step *= 2;
    }
    return step;
  }

  private static String plain(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
