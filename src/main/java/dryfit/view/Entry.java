package dryfit.view;

import dryfit.document.Design.Dimension;
import dryfit.document.Quantity;
import dryfit.measure.Fraction;
import dryfit.measure.Length;
import dryfit.measure.Tolerances;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/** A dimension's value as a maker writes it, and what the maker wrote as the document wants it. */
final class Entry {
  private static final int FINEST = 64;

  private Entry() {}

  /** {@code 440}, {@code 17 3/8}, {@code 4°}: in the unit that is shown. */
  static String shown(Quantity value, Length.Unit unit) {
    return switch (value.kind()) {
      case LENGTH -> length(value.value() / unit.mm(), unit);
      case ANGLE -> plain(Math.toDegrees(value.value()), 2) + "°";
      case NUMBER -> plain(value.value(), 4);
    };
  }

  private static String length(double count, Length.Unit unit) {
    if (unit == Length.Unit.MM) {
      return plain(count, 2);
    }
    Fraction nearest = Fraction.nearest(count, FINEST);
    boolean exact = Math.abs(nearest.remainder()) * unit.mm() <= Tolerances.coincident();
    return exact ? nearest.text() : plain(count, 3);
  }

  /** A value a slider came to, to be written into the document. */
  static String written(double value, Quantity.Kind kind, Length.Unit unit) {
    return switch (kind) {
      case LENGTH -> length(value / unit.mm(), unit).replace('−', '-') + " " + unit.symbol();
      case ANGLE -> plain(Math.toDegrees(value), 4) + " deg";
      case NUMBER -> plain(value, 6);
    };
  }

  /**
   * What was typed, with the unit that was meant: a bare number is in the unit that is shown.
   *
   * @param document the unit of a bare number in the document, which is then left bare
   */
  static String meant(String typed, Dimension dimension, Length.Unit shown, Length.Unit document) {
    String plain = typed.strip().replace('−', '-').replace("°", " deg").strip();
    OptionalDouble number = Fraction.parse(plain);
    if (number.isEmpty()) {
      return plain;
    }
    return switch (dimension.value().kind()) {
      case LENGTH ->
          shown == document && !plain.contains("/") ? plain : plain + " " + shown.symbol();
      case ANGLE -> plain + " deg";
      case NUMBER -> plain;
    };
  }

  private static String plain(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
