package dryfit.export.picture;

import dryfit.geometry.Vec3;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The plain views of a chair. Each has the direction from the chair to the eye, what points up in
 * the picture, and how wide the lens is.
 */
public enum View {
  /** From the front, a little to the right and above. */
  THREE_QUARTER("three-quarter", 0.52, -1, 0.42, 24),
  FRONT("front", 0, -1, 0.06, 12),
  /** From the right as you face the chair: the front is on the left of the picture. */
  SIDE("side", 1, 0, 0.06, 12),
  BACK("back", 0, 1, 0.06, 12),
  /** From straight above: the front is at the bottom of the picture. */
  ABOVE("above", 0, 0, 1, 12),
  /** From straight below, as if the chair were tipped over backwards: the front is at the top. */
  UNDERSIDE("underside", 0, 0, -1, 12);

  private final String word;
  private final double x;
  private final double y;
  private final double z;
  private final double degrees;

  View(String word, double x, double y, double z, double degrees) {
    this.word = word;
    this.x = x;
    this.y = y;
    this.z = z;
    this.degrees = degrees;
  }

  /** The word for it on screen. */
  public String word() {
    return word;
  }

  /** Unit direction from the chair to the eye. */
  public Vec3 towardsEye() {
    return new Vec3(x, y, z).unit();
  }

  /** What points up in the picture; never along {@link #towardsEye}. */
  public Vec3 up() {
    return switch (this) {
      case ABOVE -> Vec3.BACK;
      case UNDERSIDE -> Vec3.BACK.negated();
      default -> Vec3.UP;
    };
  }

  /** Angle of view from the bottom to the top of the picture, radians. */
  public double angleOfView() {
    return Math.toRadians(degrees);
  }

  public static Optional<View> named(String word) {
    return Arrays.stream(values()).filter(v -> v.word.equals(word)).findFirst();
  }

  /** All the words, in the order they are offered. */
  public static List<String> words() {
    return Arrays.stream(values()).map(View::word).toList();
  }
}
