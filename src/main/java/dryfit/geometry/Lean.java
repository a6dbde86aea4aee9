package dryfit.geometry;

import dryfit.measure.Tolerances;

/**
 * How a line leans out of plumb, as a maker reads it off a drawing: {@code rake} is the angle seen
 * in the side view, {@code splay} the angle seen in the front view. Radians, each above -pi/2 and
 * below pi/2.
 *
 * <p>Rake is positive when the line leans to the back as it rises; a leg whose foot stands forward
 * of its top has positive rake. Splay is positive when the line leans to the right as it rises; a
 * right-hand leg whose foot stands outside its top has negative splay. A line has no sense, so a
 * leg given from the foot up and from the top down leans the same.
 *
 * <p>Both angles are <em>projections</em>, as two views on paper show them, and not two turns one
 * after the other; {@link #afterTwoTurns} converts. At 14 and 8 degrees the difference is a tenth
 * of a degree.
 *
 * <p>Plumb is whatever the caller measures from: the floor, or the seat's own square when the seat
 * slopes, or the inward normal of the face that a mortise goes into.
 */
public record Lean(double rake, double splay) {

  /**
   * @throws IllegalArgumentException if an angle is not between -pi/2 and pi/2: such a line never
   *     rises
   */
  public Lean {
    if (!(Math.abs(rake) < Math.PI / 2 && Math.abs(splay) < Math.PI / 2)) {
      throw new IllegalArgumentException("a line this far out of plumb never rises");
    }
    rake += 0.0;
    splay += 0.0;
  }

  /** The lean of a line in chair space against the plumb line; either sense of {@code line}. */
  public static Lean of(Vec3 line) {
    return of(line, Vec3.UP, Vec3.BACK);
  }

  /**
   * The lean of a line against {@code up}, with rake counted in the direction of {@code back}. None
   * of the three needs unit length. {@code back} is first squared up against {@code up}, so a
   * sloping seat may pass its own normal with the chair's back direction.
   *
   * @throws IllegalArgumentException if the line is square to {@code up}, or {@code back} is
   *     parallel to it
   */
  public static Lean of(Vec3 line, Vec3 up, Vec3 back) {
    Vec3 u = up.unit();
    Vec3 level = back.unit().across(u);
    if (level.length() <= Tolerances.parallel()) {
      throw new IllegalArgumentException("back runs along up: no side view to see rake in");
    }
    Vec3 b = level.unit();
    Vec3 d = line.unit();
    double rise = d.dot(u);
    if (Math.abs(rise) <= Tolerances.parallel()) {
      throw new IllegalArgumentException("a level line has no rake and no splay");
    }
    return new Lean(Math.atan(d.dot(b) / rise), Math.atan(d.dot(b.cross(u)) / rise));
  }

  /**
   * What a line shows in the two views when a plumb stick is first tipped back by {@code tip} about
   * a left-right axis and then swung to the right by {@code swing} about a fore-aft axis, as a
   * tilted drill-press table on a tilted wedge does. The swing shows unchanged as splay; the tip
   * shows as more rake than was set.
   *
   * @throws IllegalArgumentException if the stick ends up level
   */
  public static Lean afterTwoTurns(double tip, double swing) {
    return of(
        new Vec3(Math.cos(tip) * Math.sin(swing), Math.sin(tip), Math.cos(tip) * Math.cos(swing)));
  }

  /**
   * The two turns, one after the other, that bring a plumb stick to this lean.
   *
   * @param tip first, back about a left-right axis, radians, signed like rake
   * @param swing then, to the right about a fore-aft axis, radians, signed like splay
   */
  public record Turns(double tip, double swing) {}

  /**
   * The way back from {@link #afterTwoTurns}: what to set on a table that tips and a wedge that
   * swings. The swing is the splay itself; the tip is less than the rake that the side view shows.
   */
  public Turns turns() {
    return new Turns(Math.atan(Math.tan(rake) * Math.cos(splay)), splay);
  }

  /**
   * The true angle out of plumb, 0 to pi/2: the one angle to set the bevel to, once it stands on
   * the sight line.
   */
  public double resultant() {
    return Math.atan(Math.hypot(Math.tan(rake), Math.tan(splay)));
  }

  /**
   * Where the sight line runs, measured <em>from the fore-aft line</em>: above -pi/2 up to pi/2,
   * positive when the line, followed to the back, runs to the right. Seen along it the leg looks
   * plumb. 0 for a plumb line, on which any sight line will do.
   */
  public double sightLine() {
    if (resultant() <= Tolerances.parallel()) {
      return 0;
    }
    double angle = Math.atan(Math.tan(splay) / Math.tan(rake));
    return angle == -Math.PI / 2 ? Math.PI / 2 : angle + 0.0;
  }

  /**
   * The same sight line measured <em>from the left-right line</em>, the one that joins a pair of
   * legs. The sizes of the two readings add up to a right angle and their signs agree.
   */
  public double sightLineFromSide() {
    double fromForeAft = sightLine();
    return Math.copySign(Math.PI / 2 - Math.abs(fromForeAft), fromForeAft);
  }

  /** The unit direction of the line, pointing up; x right, y back, z up. */
  public Vec3 direction() {
    return new Vec3(Math.tan(splay), Math.tan(rake), 1).unit();
  }

  /**
   * The unit direction of a line with this lean against {@code up}, rake counted in the direction
   * of {@code back}, as in {@link #of(Vec3, Vec3, Vec3)}; it points the way {@code up} does.
   */
  public Vec3 direction(Vec3 up, Vec3 back) {
    Frame level = Frame.of(Vec3.ZERO, up, back);
    return level.turn(new Vec3(1, Math.tan(rake), -Math.tan(splay))).unit();
  }
}
