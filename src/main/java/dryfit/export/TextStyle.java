package dryfit.export;

import dryfit.document.Design;
import dryfit.measure.Fraction;
import dryfit.measure.Length;
import java.util.Locale;

/**
 * How a report is written.
 *
 * @param unit of every length
 * @param denominator the finest division of an inch, e.g. 64
 * @param decimals inches as decimals, not as fractions
 * @param colour whether severities are coloured for a terminal
 */
public record TextStyle(Length.Unit unit, int denominator, boolean decimals, boolean colour) {
  private static final double CUBIC_INCH = 25.4 * 25.4 * 25.4; // mm^3
  private static final double SQUARE_INCH = 645.16; // mm^2, from the inch of 25.4 mm exactly
  private static final double SQUARE_CM = 100; // mm^2

  /** Share of a division that no rule shows. */
  private static final double ALIKE = 0.03;

  /** The document's unit, sixty-fourths, no colour. */
  public static TextStyle of(Design.LengthUnit unit) {
    return new TextStyle(
        unit == Design.LengthUnit.IN ? Length.Unit.IN : Length.Unit.MM, 64, false, false);
  }

  /** Whether lengths are told in inches. */
  public boolean inches() {
    return unit == Length.Unit.IN;
  }

  /** A dimension: {@code 28.0 mm}, {@code 1 7/64 in (−0.007)} or {@code 1.102 in}. */
  public String length(double mm) {
    return unit == Length.Unit.IN && decimals
        ? Length.decimal(mm, unit, 3)
        : Length.print(mm, unit, denominator);
  }

  /** The number of a dimension for a table, without its unit: {@code 28.0} or {@code 1 7/64}. */
  public String bare(double mm) {
    if (unit == Length.Unit.IN && !decimals) {
      return Fraction.nearest(mm / unit.mm(), denominator).text();
    }
    String text = Length.decimal(mm, unit, unit == Length.Unit.IN ? 3 : 1);
    return text.substring(0, text.length() - unit.symbol().length() - 1);
  }

  /** The same, never less than it is: what is cut to it is large enough. */
  public String bareUp(double mm) {
    if (unit == Length.Unit.IN && !decimals) {
      double parts = mm / unit.mm() * denominator;
      double whole = Math.rint(parts);
      // What differs by less than shows is that division.
      double up = Math.abs(parts - whole) < ALIKE ? whole : Math.ceil(parts);
      return Fraction.nearest(up / denominator, denominator).text();
    }
    double step = unit == Length.Unit.IN ? 0.001 * unit.mm() : 0.1;
    double whole = Math.rint(mm / step);
    return bare(step * (Math.abs(mm / step - whole) < ALIKE ? whole : Math.ceil(mm / step)));
  }

  /** A gap, too small for fractions: {@code 0.10 mm} or {@code 0.004 in}. */
  public String gap(double mm) {
    return Length.decimal(mm, unit, unit == Length.Unit.IN ? 3 : 2);
  }

  /** {@code 25.0 cm²} or {@code 3.88 in²}. */
  public String area(double squareMm) {
    return inches()
        ? String.format(Locale.ROOT, "%.2f in²", squareMm / SQUARE_INCH)
        : String.format(Locale.ROOT, "%.1f cm²", squareMm / SQUARE_CM);
  }

  /** A finding's number in its unit; lengths in the unit of the report. */
  public String quantity(double value, String valueUnit) {
    if (!Double.isFinite(value)) {
      return "not known";
    }
    return switch (valueUnit) {
      case "mm" -> gap(value);
      case "deg" -> number("%.2f", value) + "°";
      case "mm2" -> area(value);
      case "mm3" ->
          inches() ? number("%.3f", value / CUBIC_INCH) + " in³" : number("%.0f", value) + " mm³";
      default -> number("%.3f", value) + " " + valueUnit;
    };
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value).replace('-', '−');
  }

  String bold(String text) {
    return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
  }

  String red(String text) {
    return colour ? "\u001b[1;31m" + text + "\u001b[0m" : text;
  }

  String amber(String text) {
    return colour ? "\u001b[1;33m" + text + "\u001b[0m" : text;
  }

  String green(String text) {
    return colour ? "\u001b[1;32m" + text + "\u001b[0m" : text;
  }
}
