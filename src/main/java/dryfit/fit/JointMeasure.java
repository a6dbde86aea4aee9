package dryfit.fit;

import dryfit.build.Joint;
import dryfit.fit.Assembly.Placed;
import dryfit.geometry.EndCut;
import dryfit.geometry.Lean;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import java.util.List;

/** Measures one joint on the finished solids, and its angles. */
final class JointMeasure {
  private JointMeasure() {}

  static JointFit of(Assembly assembly, Joint joint) {
    Placed tenoned = assembly.tenoned(joint);
    Placed mortised = assembly.mortised(joint);
    Gaps gaps = new Gaps(joint, tenoned, mortised);
    WallLeft wall = WallLeft.of(assembly, joint);
    List<ShoulderGap.Sample> shoulderGaps = ShoulderGap.samples(joint, tenoned, mortised);
    GlueArea glue = GlueArea.of(assembly, joint);
    double deep = depthAlong(joint, mortised);

    Vec3 reference = MortiseAngles.reference(joint, mortised.part());
    Lean lean = Lean.of(joint.entry(), joint.mouth().normal().negated(), reference);
    EndCut shoulder = EndCut.of(joint.mouth().flipped(), tenoned.part().frameNear(joint.at()));
    return new JointFit(
        joint,
        gaps.cheek(),
        gaps.edge(),
        gaps.bottom(),
        Gaps.gap(shoulderGaps.stream().map(ShoulderGap.Sample::gap).toList()),
        wall.least(),
        wall.face(),
        joint.lean(),
        lean.rake(),
        lean.splay(),
        deep * Math.cos(joint.lean()),
        deep,
        shoulder.onWideFace(),
        shoulder.onNarrowFace(),
        glue.longGrain(),
        glue.other(),
        JointDetails.of(joint, tenoned, mortised, wall, shoulderGaps));
  }

  /**
   * From the mouth along the middle of the tenon to the bottom of its mortise. Where that is cut
   * away by another mortise or goes right through there is no bottom: then it is what was planned.
   */
  private static double depthAlong(Joint joint, Placed mortised) {
    List<Rays.Hit> hits = mortised.rays().hits(joint.at(), joint.entry());
    boolean own =
        !hits.isEmpty()
            && hits.get(0).entering()
            && mortised.mesh().origin(hits.get(0).face()).equals(joint.plan().pointer());
    if (own) {
      return hits.get(0).distance();
    }
    double beyond = joint.plan().through() ? -joint.plan().proud() : joint.plan().fit().bottom();
    return joint.length() + beyond;
  }
}
