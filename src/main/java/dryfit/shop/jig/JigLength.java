package dryfit.shop.jig;

import dryfit.document.Design;
import dryfit.measure.Length;
import java.util.Locale;

/** Lengths as they stand on a jig and in its notes, in the unit of the chair. */
final class JigLength {
  /** Finer than a printer prints, and as fine as a steel rule is divided. */
  private static final int DIVISION = 64;

  private JigLength() {}

  /** Engraved: {@code 37.5} on a chair in millimetres, {@code 1 31/64 IN} on one in inches. */
  static String engraved(double mm, Design design) {
    if (design.unit().printed() == Length.Unit.MM) {
      return String.format(Locale.ROOT, "%.1f", mm);
    }
    // What the fraction leaves out is told in the note; in plastic it would not be read.
    return Length.print(mm, Length.Unit.IN, DIVISION)
        .replaceFirst(" \\(.*", "")
        .toUpperCase(Locale.ROOT);
  }

  /** In a note: {@code 37.52 mm}, or {@code 1 31/64 in, 37.52 mm}, for printers print in mm. */
  static String told(double mm, Design design) {
    String metric = String.format(Locale.ROOT, "%.2f mm", mm);
    return design.unit().printed() == Length.Unit.MM
        ? metric
        : Length.print(mm, Length.Unit.IN, DIVISION) + ", " + metric;
  }

  /** A play or an error, for which there are no fractions: {@code 0.20 mm}, {@code 0.008 in}. */
  static String fine(double mm, Design design) {
    return design.unit().printed() == Length.Unit.MM
        ? String.format(Locale.ROOT, "%.2f mm", mm)
        : Length.decimal(mm, Length.Unit.IN, 3);
  }
}
