package dryfit.document;

/** A number and what it is: a length in millimetres, an angle in radians, or a plain number. */
public record Quantity(double value, Kind kind) {
  /** What a number measures. */
  public enum Kind {
    LENGTH,
    ANGLE,
    NUMBER
  }
}
