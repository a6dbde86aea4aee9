package dryfit.build;

import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * Which way the width of a section looks along a curve: carried from the middle to both ends
 * without twist, or kept as upright as it can be everywhere. Without twist means that from one
 * direction to the next it is turned only about the line square to both (W. Wang, B. Jüttler, D.
 * Zheng and Y. Liu, Computation of Rotation Minimizing Frames, ACM Transactions on Graphics 27(1),
 * 2008, from memory).
 *
 * @param width where it looks at the middle, own frame
 * @param up the unit direction that is up, own frame
 * @param upright whether it is kept upright
 * @param turn radians about the line, for an upright one
 */
record Carried(Vec3 width, Vec3 up, boolean upright, double turn) {

  /** Nearer to the vertical than this (cosine) a line has no upright across it: 5 degrees. */
  private static final double STEEP = 0.996;

  /** The widths along directions; unit, each square to its direction. */
  List<Vec3> along(List<Vec3> directions, int middle) {
    List<Vec3> out = new ArrayList<>(directions);
    out.set(middle, at(directions.get(middle)));
    for (int i = middle + 1; i < out.size(); i++) {
      out.set(i, next(out.get(i - 1), directions.get(i - 1), directions.get(i)));
    }
    for (int i = middle - 1; i >= 0; i--) {
      out.set(i, next(out.get(i + 1), directions.get(i + 1), directions.get(i)));
    }
    return out;
  }

  Vec3 next(Vec3 width, Vec3 from, Vec3 to) {
    return upright ? at(to) : turned(width, from, to);
  }

  /** The width where nothing was carried there yet. */
  Vec3 at(Vec3 direction) {
    Vec3 wanted = (upright ? up : width).across(direction);
    if (wanted.length() < 1e-3) {
      wanted = (Math.abs(direction.z()) < 0.9 ? new Vec3(0, 0, 1) : Vec3.RIGHT).across(direction);
    }
    Vec3 y = wanted.unit();
    return upright ? y.times(Math.cos(turn)).plus(direction.cross(y).times(Math.sin(turn))) : y;
  }

  /** Whether an upright width makes sense along all these directions. */
  boolean standsAlong(List<Vec3> directions) {
    return !upright || directions.stream().allMatch(d -> Math.abs(d.dot(up)) <= STEEP);
  }

  /** A direction turned the shortest way with another that turns from one unit to the next. */
  static Vec3 turned(Vec3 width, Vec3 from, Vec3 to) {
    double rest = Math.max(1 + from.dot(to), 1e-9);
    return width.minus(from.plus(to).times(width.dot(to) / rest)).across(to).unit();
  }
}
