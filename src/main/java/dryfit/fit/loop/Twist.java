package dryfit.fit.loop;

import dryfit.geometry.Vec3;

/**
 * A small motion of one rigid part against another.
 *
 * @param at where it moves straight on by {@code move}
 * @param turn the axis, as long as the angle, radians
 */
public record Twist(Vec3 at, Vec3 move, Vec3 turn) {

  static Twist moving(Vec3 at, Vec3 move) {
    return new Twist(at, move, Vec3.ZERO);
  }

  static Twist turning(Vec3 at, Vec3 turn) {
    return new Twist(at, Vec3.ZERO, turn);
  }

  /** How it moves a place that goes along with it. */
  public Vec3 of(Vec3 place) {
    return move.plus(turn.cross(place.minus(at)));
  }
}
