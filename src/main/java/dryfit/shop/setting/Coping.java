package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan.Shoulder;
import dryfit.fit.EndSection;
import dryfit.fit.JointFit;
import dryfit.geometry.Frame;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;

/** How deep a shoulder is hollowed to the face it meets. */
final class Coping {
  /**
   * What is less deep is not coped: gaps are seen from a sixty-fourth of an inch (common practice,
   * no source), mm.
   */
  private static final double SEEN = 25.4 / 64;

  /** From so far outside the mouth the face is looked at, mm. */
  private static final double OUTSIDE = 100;

  /** Inside the edge of the part by so much, for an edge may be eased, mm. */
  private static final double INSIDE = 0.01;

  private Coping() {}

  /**
   * Of a scribed shoulder how far its outermost places reach beyond its line in the middle; of a
   * flat one how far it stands open, which coping would close; 0 if it would not be seen. Mm.
   */
  static double depth(Chair chair, JointFit fit) {
    double depth =
        fit.joint().plan().shoulder() == Shoulder.SCRIBED
            ? scribed(chair, fit.joint())
            : fit.shoulder().greatest().orElse(0);
    return depth > SEEN ? depth : 0;
  }

  private static double scribed(Chair chair, Joint joint) {
    Part tenoned = chair.parts().get(joint.tenoned());
    Part mortised = chair.parts().get(joint.mortised());
    Rays rays = mortised.solid().rays().placed(mortised.frame());
    Vec3 along = tenoned.lengthNear(joint.at());
    Vec3 out = joint.atStart() ? along.negated() : along;
    Frame near = tenoned.frameNear(joint.at());
    Vec3 size = EndSection.of(tenoned, joint.mouth(), joint.at(), joint.atStart()).size();
    double y = size.y() / 2 - INSIDE;
    double z = size.z() / 2 - INSIDE;
    double deepest = 0;
    for (int i = -1; i <= 1; i++) {
      for (int k = -1; k <= 1; k++) {
        Vec3 aside = near.y().times(i * y).plus(near.z().times(k * z));
        Vec3 from = joint.at().plus(aside).minus(out.times(OUTSIDE));
        double line = joint.mouth().along(from, out);
        double face =
            i == 0 && k == 0 ? line : rays.first(from, out).map(Rays.Hit::distance).orElse(line);
        deepest = Math.max(deepest, face - line);
      }
    }
    return deepest;
  }
}
