package dryfit.fit.spread;

import dryfit.fit.Diagonal;
import dryfit.geometry.Vec3;

/** Where a figure is measured, as far as cuts can tell. Joints by their index in the chair. */
sealed interface Site {

  /** Gap on one side of a joint, in its words. */
  record Gap(int joint, String side) implements Site {}

  /** Wood from a mortise to a face. */
  record Wall(int joint, Vec3 way) implements Site {}

  /** A face of what goes in, behind that of what it goes into. */
  record Setback(int joint, Vec3 way) implements Site {}

  /** A diagonal of a frame. */
  record Length(Diagonal diagonal) implements Site {}

  /** One figure less another. */
  record Difference(Site one, Site other) implements Site {}

  /**
   * A corner of the seat above the floor.
   *
   * @param leg whether the joint is a leg's that goes into the seat, otherwise a rail's in a leg
   */
  record Corner(int joint, boolean leg) implements Site {}

  /** What only dimensions change. */
  record Elsewhere() implements Site {}
}
