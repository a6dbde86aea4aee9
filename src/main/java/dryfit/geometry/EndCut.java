package dryfit.geometry;

import dryfit.measure.Tolerances;

/**
 * A flat cut across the end of a rectangular member, or the plane of a shoulder, as the bench needs
 * it: the lines to knife on two faces, and the two settings of the saw. All angles in radians.
 *
 * <p>{@code normal} is the cut's unit normal in the member's own frame (x length, y width, z
 * thickness), pointing out of the wood that is kept. The wide faces are those square to z, the
 * narrow faces those square to y, whichever is larger in fact.
 *
 * <p>Every angle is measured <em>off square</em>, so 0 is a square cut, and its sign says which
 * side is long: positive across the width when the +width edge is the long one, positive through
 * the thickness when the +thickness face is the long one. The two ends of a rail sawn to a
 * parallelogram therefore have opposite signs, and those of a trapezoid have the same.
 */
public record EndCut(Vec3 normal) {

  /**
   * What to set on a saw, with the stock lying flat on the face named by the method that made this.
   *
   * @param mitre how far the gauge is turned off square, radians, signed like the cut
   * @param tilt how far the blade is tilted out of square to the table, radians, signed like the
   *     cut; not the angle seen on the end of the stock
   */
  public record SawSetting(double mitre, double tilt) {

    /**
     * The mitre as read on a gauge that shows 90 degrees for a square cut: pi/2 less the size of
     * the mitre. Which way to turn it is still the sign of {@link #mitre}.
     */
    public double mitreFromFence() {
      return Math.PI / 2 - Math.abs(mitre);
    }
  }

  /**
   * Takes any length of normal.
   *
   * @throws IllegalArgumentException if the plane runs along the member and so cuts no end
   */
  public EndCut {
    normal = normal.unit();
    if (Math.abs(normal.x()) <= Tolerances.parallel()) {
      throw new IllegalArgumentException("the cut runs along the member and makes no end");
    }
  }

  /** The cut that {@code plane}, its normal pointing out of the kept wood, makes on a member. */
  public static EndCut of(Plane plane, Frame member) {
    return new EndCut(member.localDirection(plane.normal()));
  }

  /** The line of cut on a wide face, off square; positive when the +width edge is long. */
  public double onWideFace() {
    return Math.atan(longerPerWidth());
  }

  /** The line of cut on a narrow face, off square; positive when the +thickness face is long. */
  public double onNarrowFace() {
    return Math.atan(longerPerThickness());
  }

  /**
   * Rise and run instead of degrees: how much longer the member is at its +width edge than at its
   * -width edge, per unit of width.
   */
  public double longerPerWidth() {
    return -normal.y() / Math.abs(normal.x()) + 0.0;
  }

  /** How much longer the +thickness face is than the -thickness face, per unit of thickness. */
  public double longerPerThickness() {
    return -normal.z() / Math.abs(normal.x()) + 0.0;
  }

  /** The whole angle between this cut and a square one, 0 to pi/2. */
  public double offSquare() {
    return Math.atan2(Math.hypot(normal.y(), normal.z()), Math.abs(normal.x()));
  }

  /**
   * The saw's settings with the stock flat on a wide face. The blade meets the table along the line
   * on that face, so the mitre is that line's angle; the tilt is the angle between the cut and the
   * square of the face, and is smaller than {@link #onNarrowFace} in a compound cut.
   */
  public SawSetting flat() {
    return new SawSetting(onWideFace(), Math.asin(-normal.z() + 0.0));
  }

  /** The saw's settings with the stock standing on a narrow face. */
  public SawSetting onEdge() {
    return new SawSetting(onNarrowFace(), Math.asin(-normal.y() + 0.0));
  }
}
