package dryfit.fit;

import dryfit.geometry.Vec3;

/**
 * A diagonal of a frame of four legs, from the middle of one leg to that of another.
 *
 * @param frame {@code seat} (level, seen from above), {@code front} or {@code back}
 * @param what {@code diagonal from the left} or {@code diagonal from the right}
 */
public record Diagonal(String frame, String what, End from, End to) {

  /** A place in a leg; {@code part} is its index in the chair. */
  public record End(int part, Vec3 at) {}

  /** Its length, mm; that of the seat as it is seen from above. */
  public double length() {
    return along().length();
  }

  /** From one end to the other; that of the seat without any rise. */
  public Vec3 along() {
    Vec3 way = to.at().minus(from.at());
    return frame.equals("seat") ? new Vec3(way.x(), way.y(), 0) : way;
  }
}
