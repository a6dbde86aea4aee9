package dryfit.export;

import dryfit.fit.compare.Comparison;
import dryfit.fit.compare.Datum;
import dryfit.measure.Angle;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/** A figure of a chair in few characters. */
public final class DatumText {
  private static final double BOARD_FOOT = 144 * 25.4 * 25.4 * 25.4; // mm^3: 144 cubic inches
  private static final double LITRE = 1e6; // mm^3
  private static final double CUBIC_CM = 1e3; // mm^3

  private DatumText() {}

  static String of(Datum.Kind kind, double value, TextStyle style) {
    if (!Double.isFinite(value)) {
      return "not known";
    }
    return switch (kind) {
      case LENGTH -> style.length(value);
      case GAP -> style.gap(value);
      case ANGLE -> Angle.degrees(value);
      case MASS -> number("%.2f", value) + " kg";
      case VOLUME -> number("%.2f", volume(value, style)) + " " + volumeUnit(style);
      case NUMBER -> number("%.3f", value);
    };
  }

  /** Cubic millimetres in what wood is bought by. */
  static double volume(double value, TextStyle style) {
    return value / (style.inches() ? BOARD_FOOT : LITRE);
  }

  static String volumeUnit(TextStyle style) {
    return style.inches() ? "bd ft" : "dm³";
  }

  /** A dash where there is none. */
  public static String of(Datum.Kind kind, OptionalDouble value, TextStyle style) {
    return value.isPresent() ? of(kind, value.getAsDouble(), style) : "–";
  }

  /** What is told of each, a dash where there is none. */
  public static List<String> of(Comparison.Row row, TextStyle style) {
    return row.values().stream().map(v -> of(row.key().kind(), v, style)).toList();
  }

  /** Whether what is told of each is not the same: figures may differ by less than is told. */
  public static boolean differs(Comparison.Row row, TextStyle style) {
    return Set.copyOf(of(row, style)).size() > 1;
  }

  /**
   * With a sign before it, also where it is more. Lengths as decimals, and weights and volumes in
   * smaller units, for changes are small.
   */
  static String change(Datum.Kind kind, double by, TextStyle style) {
    String text =
        switch (kind) {
          case LENGTH, GAP -> style.gap(by);
          case MASS -> Math.abs(by) < 0.1 ? number("%.0f", by * 1000) + " g" : of(kind, by, style);
          case VOLUME -> Math.abs(volume(by, style)) < 0.1 ? small(by, style) : of(kind, by, style);
          case ANGLE, NUMBER -> of(kind, by, style);
        };
    return by > 0 ? "+" + text : text;
  }

  private static String small(double volume, TextStyle style) {
    return style.inches()
        ? number("%.3f", volume(volume, style)) + " " + volumeUnit(style)
        : number("%.0f", volume / CUBIC_CM) + " cm³";
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value).replace('-', '−');
  }
}
