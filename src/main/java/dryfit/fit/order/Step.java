package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * One step of putting a chair together. Parts are numbers in {@link dryfit.build.Chair#parts}.
 *
 * @param onto what stays where it is
 * @param moves what is moved against it; more than one only when they move at the same time
 * @param closes the joints this step closes, all in the one motion
 * @param held parts without joints of their own that cannot be taken out any more after this step
 */
public record Step(
    Kind kind, List<Integer> onto, List<Move> moves, List<Joint> closes, List<Integer> held) {
  public Step {
    onto = List.copyOf(onto);
    moves = List.copyOf(moves);
    closes = List.copyOf(closes);
    held = List.copyOf(held);
  }

  /**
   * A joint that closes a little off its own way, within its clearance.
   *
   * @param off angle between the push and the entry of its tenon, radians
   * @param aside how far the tenon moves across its mortise on the way in, mm
   */
  public record Aside(Joint joint, double off, double aside) {}

  /** Less than this, mm, no hand feels; common practice, no source. */
  private static final double FELT = 0.02;

  /** The joints of one straight push that do not close along their own entry, and what gives. */
  public List<Aside> aside() {
    if (kind != Kind.STRAIGHT) {
      return List.of();
    }
    Vec3 push = moves.get(0).push();
    return closes.stream()
        .map(
            j -> {
              double off = Math.min(push.angleTo(j.entry()), push.negated().angleTo(j.entry()));
              return new Aside(j, off, j.length() * Math.tan(off));
            })
        .filter(a -> a.aside() > FELT)
        .toList();
  }

  /** How a step goes. */
  public enum Kind {
    /** One group is pushed straight against the other. */
    STRAIGHT,
    /** Several groups close on each other at the same time, each straight. */
    TOGETHER,
    /** A group goes in at a small angle and is then turned home. */
    TIPPED,
    /** A group goes in one way and then the last of the way in another. */
    TWO_WAYS
  }

  /**
   * What one group does.
   *
   * @param push unit direction in which it is pushed home, chair space; if there is a last leg, to
   *     where that begins
   * @param share how far it goes while the fastest of the step goes 1
   * @param tip how it is turned home at the end of the push, if it is
   * @param last the last of the way, if that goes another way
   */
  public record Move(
      List<Integer> parts, Vec3 push, double share, Optional<Tip> tip, Optional<Leg> last) {
    public Move {
      parts = List.copyOf(parts);
    }
  }

  /**
   * The end of a way.
   *
   * @param push unit direction
   * @param far how far, mm
   */
  public record Leg(Vec3 push, double far) {}

  /**
   * The small turn that takes a part home. From where it ends it is lifted by {@code lift}, then
   * turned about {@code axis} through {@code pivot} by {@code angle}: so it stands at the end of
   * the push.
   *
   * @param pivot a point of the axis, chair space, when the part is lifted
   * @param axis unit direction
   * @param angle radians, right-handed about the axis
   * @param lift from home, mm
   */
  public record Tip(Vec3 pivot, Vec3 axis, double angle, Vec3 lift) {}
}
