package dryfit.shop.jig;

import dryfit.geometry.Vec3;

/**
 * A rectangle on a flat face of a jig, to engrave: its lower left corner as it is read, which way
 * the lines run, which way is up on it, and its size.
 *
 * @param corner lower left
 * @param along unit direction of the lines
 * @param up unit direction, square to them; {@code along x up} points out of the jig
 */
record Panel(Vec3 corner, Vec3 along, Vec3 up, double width, double height) {

  Vec3 out() {
    return along.cross(up);
  }

  Vec3 at(double x, double y) {
    return corner.plus(along.times(x)).plus(up.times(y));
  }
}
