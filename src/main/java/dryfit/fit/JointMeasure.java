package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.JointPlan;
import dryfit.fit.Assembly.Placed;
import dryfit.geometry.EndCut;
import dryfit.geometry.Lean;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.solid.AllCores;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Measures one joint on the finished solids, and its angles. */
final class JointMeasure {
  private JointMeasure() {}

  /** All joints of the chair, in their order; what mirrors another is not measured again. */
  static List<JointFit> all(Assembly assembly, Twins twins) {
    List<Joint> joints = assembly.chair().joints();
    List<Optional<JointFit>> measured =
        AllCores.map(
            IntStream.range(0, joints.size()).boxed().toList(),
            i ->
                twins.ofJoint(i) < 0
                    ? Optional.of(of(assembly, joints.get(i)))
                    : Optional.<JointFit>empty());
    return IntStream.range(0, joints.size())
        .mapToObj(
            i ->
                measured
                    .get(i)
                    .orElseGet(
                        () ->
                            mirrored(
                                assembly,
                                joints.get(i),
                                measured.get(twins.ofJoint(i)).orElseThrow())))
        .toList();
  }

  /** What was measured at a joint, told of its mirror image; the angles are this one's own. */
  private static JointFit mirrored(Assembly assembly, Joint joint, JointFit twin) {
    Vec3 reference = MortiseAngles.reference(joint, assembly.mortised(joint).part());
    Lean lean = Lean.of(joint.entry(), joint.mouth().normal().negated(), reference);
    Optional<EndCut> shoulder = endCut(joint, assembly.tenoned(joint));
    return new JointFit(
        joint,
        twin.cheek(),
        twin.edge(),
        twin.bottom(),
        twin.shoulder(),
        twin.wall(),
        twin.wallFace(),
        joint.lean(),
        lean.rake(),
        lean.splay(),
        twin.depthAlong() * Math.cos(joint.lean()),
        twin.depthAlong(),
        shoulder.map(EndCut::onWideFace).orElse(0.0),
        shoulder.map(EndCut::onNarrowFace).orElse(0.0),
        twin.glueLong(),
        twin.glueOther(),
        twin.detail().mirrored());
  }

  static JointFit of(Assembly assembly, Joint joint) {
    Placed tenoned = assembly.tenoned(joint);
    Placed mortised = assembly.mortised(joint);
    List<Facing> facing =
        joint.tenons().stream()
            .map(t -> new Facing(joint, t, assembly.part(t.part()), mortised))
            .toList();
    List<Gaps> gaps =
        IntStream.range(0, facing.size())
            .mapToObj(i -> new Gaps(joint, joint.tenons().get(i), facing.get(i)))
            .toList();
    WallLeft wall = WallLeft.of(assembly, joint);
    List<ShoulderGap.Sample> shoulderGaps = ShoulderGap.samples(joint, tenoned, mortised);
    GlueArea glue = GlueArea.of(assembly, joint);
    double deep = depthAlong(joint, mortised);

    Vec3 reference = MortiseAngles.reference(joint, mortised.part());
    Lean lean = Lean.of(joint.entry(), joint.mouth().normal().negated(), reference);
    Optional<EndCut> shoulder = endCut(joint, tenoned);
    return new JointFit(
        joint,
        Gaps.all(gaps.stream().map(Gaps::cheek).toList()),
        Gaps.all(gaps.stream().map(Gaps::edge).toList()),
        Gaps.all(gaps.stream().map(Gaps::bottom).toList()),
        Gaps.gap(shoulderGaps.stream().map(ShoulderGap.Sample::gap).toList()),
        wall.least(),
        wall.face(),
        joint.lean(),
        lean.rake(),
        lean.splay(),
        deep * Math.cos(joint.lean()),
        deep,
        shoulder.map(EndCut::onWideFace).orElse(0.0),
        shoulder.map(EndCut::onNarrowFace).orElse(0.0),
        glue.longGrain(),
        glue.other(),
        JointDetails.of(assembly, joint, facing, wall, shoulderGaps));
  }

  /** How the end is cut, if the joint is at an end. */
  private static Optional<EndCut> endCut(Joint joint, Placed tenoned) {
    return joint.plan().tenon().end() == JointPlan.End.MIDDLE
        ? Optional.empty()
        : Optional.of(EndCut.of(joint.mouth().flipped(), tenoned.part().frameNear(joint.at())));
  }

  /**
   * From the mouth along the middle of the tenon to the bottom of its mortise. Where that is cut
   * away by another mortise or goes right through there is no bottom: then it is what was planned.
   */
  private static double depthAlong(Joint joint, Placed mortised) {
    if (joint.tenons().isEmpty()) {
      return 0;
    }
    Rays.Hit hit = mortised.rays().first(joint.tenons().get(0).at(), joint.entry()).orElse(null);
    boolean own =
        hit != null
            && hit.entering()
            && mortised.mesh().origin(hit.face()).equals(joint.plan().pointer());
    if (own) {
      return hit.distance();
    }
    double beyond = joint.through() ? -joint.plan().proud() : joint.plan().fit().bottom();
    return joint.length() + beyond;
  }
}
