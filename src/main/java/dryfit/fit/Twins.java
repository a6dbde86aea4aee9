package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which parts and joints are the mirror image of another in the chair's middle plane, so that what
 * was measured there holds here too. The solid of such a part was made by mirroring, it stands in a
 * mirrored place, and so does the joint: all of it is looked at, so that one side that differs is
 * measured by itself. A part across the middle may be its own mirror image, so that its joints on
 * both sides are each other's.
 */
final class Twins {
  private final List<Joint> all;

  /** For each part the one it mirrors, or -1. */
  private final int[] parts;

  /** For each joint the one it mirrors, or -1. */
  private final int[] joints;

  private Twins(List<Joint> all, int[] parts, int[] joints) {
    this.all = all;
    this.parts = parts;
    this.joints = joints;
  }

  static Twins of(Assembly assembly) {
    int[] parts = mirrored(assembly);
    List<Joint> all = assembly.chair().joints();
    SelfMirrored self = new SelfMirrored(assembly);
    int[] joints = new int[all.size()];
    for (int i = 0; i < joints.length; i++) {
      joints[i] = -1;
      for (int k = 0; k < joints.length && joints[i] < 0; k++) {
        if (mirrors(all.get(i), all.get(k), parts, self)) {
          joints[i] = k;
        }
      }
    }
    return new Twins(all, parts, joints);
  }

  private static int[] mirrored(Assembly assembly) {
    int[] parts = new int[assembly.parts().size()];
    Map<String, Integer> right = new HashMap<>();
    for (int i = 0; i < parts.length; i++) {
      Part part = assembly.part(i).part();
      if (part.hand() == Hand.RIGHT) {
        right.put(part.pointer(), i);
      }
    }
    for (int i = 0; i < parts.length; i++) {
      Part part = assembly.part(i).part();
      int other = part.hand() == Hand.LEFT ? right.getOrDefault(part.pointer(), -1) : -1;
      parts[i] = other >= 0 && mirrors(part, assembly.part(other).part()) ? other : -1;
    }
    return parts;
  }

  /** The number of the joint that a joint mirrors, or -1. */
  int ofJoint(int joint) {
    return joints[joint];
  }

  /** The number of the part that a part mirrors, as do all joints at its ends; or -1. */
  int ofPartWithItsEnds(int part) {
    for (int i = 0; i < joints.length; i++) {
      if (all.get(i).tenoned() == part && joints[i] < 0) {
        return -1;
      }
    }
    return parts[part];
  }

  private static boolean mirrors(Part left, Part right) {
    Frame mirrored = right.frame().mirrored();
    Frame frame = left.frame();
    return left.solid().isMirrorOf(right.solid())
        && left.bend().isEmpty()
        && same(frame.origin(), mirrored.origin())
        && same(frame.x(), mirrored.x())
        && same(frame.y(), mirrored.y())
        && same(left.grain(), new Vec3(right.grain().x(), right.grain().y(), -right.grain().z()));
  }

  private static boolean mirrors(Joint left, Joint right, int[] parts, SelfMirrored self) {
    return left.hand() == Hand.LEFT
        && right.hand() == Hand.RIGHT
        && left.plan().pointer().equals(right.plan().pointer())
        && left.tenons().size() == right.tenons().size()
        // In the middle plane itself both sides have other names.
        && Math.abs(left.at().x()) > Tolerances.contact()
        && left.tenons().stream().allMatch(t -> t.part() == left.tenoned())
        && right.tenons().stream().allMatch(t -> t.part() == right.tenoned())
        && same(left.at(), right.at().mirrored())
        && same(left.entry(), right.entry().mirrored())
        && same(left.mouth().normal(), right.mouth().normal().mirrored())
        && parallel(left.thick(), right.thick().mirrored())
        && Math.abs(left.length() - right.length()) <= Tolerances.sameShape()
        && (parts[left.tenoned()] == right.tenoned()
            ? left.atStart() == right.atStart()
            // What was one end of it is the other in the mirror.
            : left.tenoned() == right.tenoned() && self.holds(left.tenoned()))
        && (parts[left.mortised()] == right.mortised()
            || left.mortised() == right.mortised() && self.holds(left.mortised()));
  }

  private static boolean parallel(Vec3 a, Vec3 b) {
    return same(a, b) || same(a, b.negated());
  }

  private static boolean same(Vec3 a, Vec3 b) {
    return Math.abs(a.x() - b.x()) <= Tolerances.sameShape()
        && Math.abs(a.y() - b.y()) <= Tolerances.sameShape()
        && Math.abs(a.z() - b.z()) <= Tolerances.sameShape();
  }
}
