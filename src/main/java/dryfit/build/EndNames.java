package dryfit.build;

import dryfit.document.JointPlan.End;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;

/** Which end of a part a word means. */
final class EndNames {
  private EndNames() {}

  /** Whether {@code word} names the start (or else the end) of a part that runs so. */
  static boolean names(End word, boolean start, Vec3 from, Vec3 to) {
    return switch (word) {
      case BOTH -> true;
      case START -> start;
      case END -> !start;
      case TOP -> further(to.z() - from.z(), start);
      case BOTTOM -> further(from.z() - to.z(), start);
      case FRONT -> further(from.y() - to.y(), start);
      case BACK -> further(to.y() - from.y(), start);
      case RIGHT -> further(to.x() - from.x(), start);
      case LEFT -> further(from.x() - to.x(), start);
      case OUTER -> further(Math.abs(to.x()) - Math.abs(from.x()), start);
      case INNER -> further(Math.abs(from.x()) - Math.abs(to.x()), start);
      case MIDDLE -> false;
    };
  }

  /** {@code ahead}: by how much the end is further that way than the start. */
  private static boolean further(double ahead, boolean start) {
    return start ? ahead < -Tolerances.contact() : ahead > Tolerances.contact();
  }
}
