package dryfit.fit;

import dryfit.build.Joint;

/** What checks call the wood of a joint. */
final class Words {
  private Words() {}

  /** What goes in: a tenon, if it has no other name. */
  static String goesIn(Joint joint) {
    return switch (joint.plan().kind()) {
      case MORTISE_AND_TENON, ROUND_TENON, LOOSE_TENON, BRIDLE -> "tenon";
      case DOWELS -> "dowels";
      case HOUSING -> "end";
      case LAP -> "lap";
      case NOTCH -> "post";
      case SCREWED -> "screws";
      case GLUED -> "face";
      case GROOVE -> "edge";
    };
  }
}
