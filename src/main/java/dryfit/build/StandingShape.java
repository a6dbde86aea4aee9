package dryfit.build;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;

/**
 * A shape drawn in place.
 *
 * @param start x of its start in the own frame
 * @param end x of its end
 * @param middle of its bounding box, chair space
 */
record StandingShape(Frame frame, Csg shape, double start, double end, Vec3 middle) {
  /** The same, turned about its own length through the place it stands at. */
  StandingShape turned(double turn) {
    Frame to = StockMaker.turned(frame, turn);
    return new StandingShape(to, shape, start, end, to.place(frame.local(middle)));
  }
}
