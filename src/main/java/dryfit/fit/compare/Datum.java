package dryfit.fit.compare;

import dryfit.measure.Tolerances;

/**
 * One figure of a fitted chair.
 *
 * @param group what sort of figure
 * @param subject what it is about: a dimension, a part, a joint, or the chair
 * @param what which figure of it
 * @param value millimetres, radians, kilograms, cubic millimetres or a plain number, as {@code
 *     kind} says
 */
public record Datum(Group group, String subject, String what, Kind kind, double value) {

  /** Sorts of figures, in the order in which they are told. */
  public enum Group {
    DIMENSION("dimensions"),
    WHOLE("the chair together"),
    PART("parts and blanks"),
    ANGLE("angles at the bench"),
    CLEARANCE("gaps, walls and reveals");

    private final String word;

    Group(String word) {
      this.word = word;
    }

    /** A heading. */
    public String word() {
      return word;
    }
  }

  /** What a figure measures. */
  public enum Kind {
    LENGTH,
    /** A length so small that hundredths of a millimetre count. */
    GAP,
    ANGLE,
    MASS,
    VOLUME,
    NUMBER
  }

  /** What two figures share that are the same thing in two chairs. */
  public record Key(Group group, String subject, String what, Kind kind) {}

  public Key key() {
    return new Key(group, subject, what, kind);
  }

  /**
   * Whether two values of a kind differ by more than the arithmetic of solids does: lengths by what
   * counts as contact, angles by a hundredth of a millimetre in a metre, weights by what scales do
   * not show, others by a millionth of themselves.
   */
  public static boolean differ(Kind kind, double a, double b) {
    double by = Math.abs(a - b);
    return switch (kind) {
      case LENGTH, GAP -> by > Tolerances.contact();
      case ANGLE -> by > Tolerances.nearlyParallel();
      case MASS -> by > Tolerances.weighed();
      case VOLUME, NUMBER -> by > Tolerances.coincident() * Math.max(Math.abs(a), Math.abs(b));
    };
  }
}
