package dryfit.solid.jcsg;

import dryfit.geometry.Vec3;
import java.util.List;

/**
 * A convex polygon that JCSG gave back, anticlockwise from outside.
 *
 * @param sheet the number of the sheet it is a piece of
 */
record Fragment(int sheet, List<Vec3> corners) {
  Fragment {
    corners = List.copyOf(corners);
  }

  /** Twice its area, along its normal. */
  Vec3 normal() {
    Vec3 sum = Vec3.ZERO;
    Vec3 o = corners.get(0);
    for (int i = 1; i + 1 < corners.size(); i++) {
      sum = sum.plus(corners.get(i).minus(o).cross(corners.get(i + 1).minus(o)));
    }
    return sum;
  }

  /** Its share of the volume of the solid it bounds, measured from {@code middle}. */
  double volume(Vec3 middle) {
    return corners.get(0).minus(middle).dot(normal()) / 6;
  }
}
