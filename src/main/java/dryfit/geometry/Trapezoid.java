package dryfit.geometry;

/**
 * A seat in plan: front and back edges parallel, the sides equal. {@code front}, {@code back} and
 * {@code depth} (square from front to back) are positive lengths in millimetres, all three measured
 * between the same lines: inside the legs, outside them, or along the centrelines of the rails. The
 * answers belong to those lines and change with the choice.
 */
public record Trapezoid(double front, double back, double depth) {

  /**
   * @throws IllegalArgumentException if a length is not positive and finite
   */
  public Trapezoid {
    for (double length : new double[] {front, back, depth}) {
      if (!(length > 0 && Double.isFinite(length))) {
        throw new IllegalArgumentException("not a length: " + length);
      }
    }
  }

  /**
   * The angle of each side off square to the front, radians; positive when the front is wider. Both
   * shoulders of a side rail are cut this much off square, parallel to each other.
   */
  public double angle() {
    return Math.atan((front - back) / 2 / depth);
  }

  /** The length of a side, which is a side rail from shoulder to shoulder, in millimetres. */
  public double side() {
    return Math.hypot(depth, (front - back) / 2);
  }

  /** Each of the two equal diagonals, in millimetres. */
  public double diagonal() {
    return Math.hypot(depth, (front + back) / 2);
  }

  /** The inside angle at a front corner, radians. */
  public double frontCorner() {
    return Math.PI / 2 - angle();
  }

  /** The inside angle at a back corner, radians. */
  public double backCorner() {
    return Math.PI / 2 + angle();
  }

  /**
   * How far the front stands to one side of the back, in millimetres, when the diagonals of a frame
   * meant to be this one differ by {@code difference}; the depth is taken as unchanged. It has the
   * sign of the difference.
   *
   * <p>The corners at the back are the foci of a hyperbola through the point that a front corner
   * moves along, which gives the shift in closed form.
   *
   * @throws IllegalArgumentException if no frame this wide has diagonals so different
   */
  public double shift(double difference) {
    double half = difference / 2;
    double middle = (front + back) / 2;
    if (!(Math.abs(half) < middle)) {
      throw new IllegalArgumentException("diagonals of this seat cannot differ by " + difference);
    }
    return half * Math.sqrt(1 + depth * depth / (middle * middle - half * half));
  }
}
