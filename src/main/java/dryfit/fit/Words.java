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

  /** What is cut for it. */
  static String hole(Joint joint) {
    return switch (joint.plan().kind()) {
      case MORTISE_AND_TENON, ROUND_TENON, LOOSE_TENON, BRIDLE -> "mortise";
      case DOWELS -> "hole";
      case HOUSING -> "housing";
      case LAP, NOTCH -> "notch";
      case SCREWED -> "pilot hole";
      case GLUED -> "face";
      case GROOVE -> "groove";
    };
  }

  /** What to do where it takes too much wood, and no size of it is at fault. */
  static String takeLess(Joint joint) {
    return switch (joint.plan().kind()) {
      case LAP -> "let the other part keep more of the shared depth";
      case NOTCH -> "move the post or leave less room";
      default -> "move one of them";
    };
  }

  /** What it is when it goes in less far. */
  static String shorter(Joint joint) {
    return switch (joint.plan().kind()) {
      case HOUSING, GROOVE -> "shallower";
      default -> "shorter";
    };
  }

  /** The key of the joint that says how much wood it takes. */
  static String sizeKey(Joint joint) {
    return switch (joint.plan().kind()) {
      case MORTISE_AND_TENON, ROUND_TENON, LOOSE_TENON, DOWELS, SCREWED -> "/length";
      case BRIDLE -> "/thickness";
      case HOUSING -> "/depth";
      case LAP -> "/share";
      case NOTCH -> "/across";
      case GLUED -> "";
      case GROOVE -> "/deep";
    };
  }
}
