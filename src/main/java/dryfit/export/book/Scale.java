package dryfit.export.book;

import java.util.List;
import java.util.Locale;

/**
 * The scales of drawings: those of ISO 5455 for who works in millimetres, halves and quarters for
 * who works in inches (common practice, no source).
 *
 * @param paper so many on paper
 * @param wood for so many of wood
 */
record Scale(int paper, int wood) {
  private static final List<Scale> METRIC =
      List.of(
          new Scale(2, 1),
          new Scale(1, 1),
          new Scale(1, 2),
          new Scale(1, 5),
          new Scale(1, 10),
          new Scale(1, 20),
          new Scale(1, 50));

  private static final List<Scale> INCH =
      List.of(
          new Scale(2, 1),
          new Scale(1, 1),
          new Scale(1, 2),
          new Scale(1, 4),
          new Scale(1, 8),
          new Scale(1, 16),
          new Scale(1, 32));

  /** All of them, the largest drawing first. */
  static List<Scale> all(boolean inches) {
    return inches ? INCH : METRIC;
  }

  double factor() {
    return (double) paper / wood;
  }

  /** How it is written, e.g. {@code 1 : 5}. */
  String word() {
    return String.format(Locale.ROOT, "%d : %d", paper, wood);
  }
}
