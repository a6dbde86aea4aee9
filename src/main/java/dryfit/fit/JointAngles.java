package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.Optional;

/**
 * Every angle of one joint, ready to be set out. Follows from the planes that the joint was built
 * with.
 *
 * @param shoulder on the part that goes in; none where the face it meets runs along the part, or
 *     the joint is at no end of it
 * @param mortise in the part that takes it; none where the way in runs along the face
 */
public record JointAngles(Optional<ShoulderAngles> shoulder, Optional<MortiseAngles> mortise) {

  /** The angles of a joint of the chair. */
  public static JointAngles of(Chair chair, Joint joint) {
    Part tenoned = chair.parts().get(joint.tenoned());
    Vec3 length = tenoned.lengthNear(joint.at());
    boolean atEnd = joint.plan().tenon().end() != JointPlan.End.MIDDLE && !tenoned.isPiece();
    boolean endsInFace =
        atEnd && Math.abs(joint.mouth().normal().dot(length)) > Tolerances.nearlyParallel();
    boolean goesIn = joint.lean() < Math.PI / 2 - Tolerances.nearlyParallel();
    return new JointAngles(
        endsInFace ? Optional.of(ShoulderAngles.of(chair, joint)) : Optional.empty(),
        goesIn ? Optional.of(MortiseAngles.of(chair, joint)) : Optional.empty());
  }
}
