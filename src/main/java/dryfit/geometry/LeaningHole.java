package dryfit.geometry;

/**
 * A flat-bottomed hole, bored or chopped, that goes in at an angle: what a stop collar set along
 * the tool means for the wood. Seen square to the plane of the lean.
 *
 * @param lean between the tool and the square of the face, radians, 0 up to pi/2
 * @param along depth along the tool's middle, from the face, millimetres
 * @param across the bit's diameter, or the mortise's size in the plane of the lean, millimetres
 */
public record LeaningHole(double lean, double along, double across) {

  /**
   * @throws IllegalArgumentException if a length is not positive or the lean is out of range
   */
  public LeaningHole {
    if (!(along > 0 && across > 0)) {
      throw new IllegalArgumentException("a hole needs depth and size");
    }
    if (!(lean >= 0 && lean < Math.PI / 2)) {
      throw new IllegalArgumentException("not the lean of a hole: " + lean);
    }
  }

  /**
   * The hole whose deepest edge lies {@code depth} under the face, measured square to it; its
   * {@link #along} is where to put the stop collar.
   *
   * @throws IllegalArgumentException if the tool is too wide to go in so little
   */
  public static LeaningHole noDeeperThan(double depth, double lean, double across) {
    return new LeaningHole(lean, (depth - across / 2 * Math.sin(lean)) / Math.cos(lean), across);
  }

  /** Depth of the middle of the bottom, square to the face, millimetres. */
  public double depthAtMiddle() {
    return along * Math.cos(lean);
  }

  /**
   * Depth of the deepest edge of the bottom, square to the face, millimetres. The lead point of a
   * bit goes further and is not counted.
   */
  public double depthAtDeepEdge() {
    return depthAtMiddle() + across / 2 * Math.sin(lean);
  }

  /** Size of the opening on the face, in the plane of the lean, millimetres. */
  public double opening() {
    return across / Math.cos(lean);
  }

  /** How much sooner one side of the tool, or one cheek of a tenon, enters than the other. */
  public double lead() {
    return across * Math.tan(lean);
  }
}
