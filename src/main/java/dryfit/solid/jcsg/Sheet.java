package dryfit.solid.jcsg;

import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import java.util.List;

/**
 * A flat piece of a leaf's surface. All fragments that a boolean operation makes of it still lie in
 * its plane.
 *
 * @param plane taken from the whole piece, so far more exact than from a fragment
 * @param corners of the piece
 * @param origin JSON pointer of what made it
 */
record Sheet(Plane plane, List<Vec3> corners, String origin) {
  Sheet {
    corners = List.copyOf(corners);
  }
}
