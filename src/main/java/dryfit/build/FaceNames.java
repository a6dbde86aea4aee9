package dryfit.build;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.util.List;

/** Which of a member's four long faces a word means. */
final class FaceNames {
  private FaceNames() {}

  /**
   * The unit direction out of that face in the part's own frame: plus or minus y or z.
   *
   * @param word front, back, left, right, top, bottom, inside, outside
   */
  static Vec3 direction(String word, Frame frame, StockMaker.Line line, String pointer) {
    Vec3 wanted = inChair(word, line.outside(), pointer);
    Vec3 best = null;
    double most = 0.5;
    for (Vec3 face :
        List.of(new Vec3(0, 1, 0), new Vec3(0, -1, 0), new Vec3(0, 0, 1), new Vec3(0, 0, -1))) {
      double facing = frame.turn(face).dot(wanted);
      if (facing > most) {
        most = facing;
        best = face;
      }
    }
    if (best == null) {
      throw Refusal.of(
          "absent-face",
          pointer,
          "this part has no long face that looks to the " + word,
          "name one of its four long faces");
    }
    return best;
  }

  /** The direction in the chair that a word means for a part whose outside is there. */
  static Vec3 inChair(String word, Vec3 outside, String pointer) {
    return switch (word) {
      case "front" -> Vec3.BACK.negated();
      case "back" -> Vec3.BACK;
      case "left" -> Vec3.RIGHT.negated();
      case "right" -> Vec3.RIGHT;
      case "top" -> Vec3.UP;
      case "bottom" -> Vec3.UP.negated();
      case "outside" -> outside;
      case "inside" -> outside.negated();
      default ->
          throw Refusal.of(
              "unknown-word",
              pointer,
              "\"" + word + "\" is not a face",
              "use front, back, left, right, top, bottom, inside or outside");
    };
  }
}
