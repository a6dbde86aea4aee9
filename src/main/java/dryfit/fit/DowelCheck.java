package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.Finding.Severity;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code dowel-thick}: a dowel of more than half the thickness of the part it is let into. Half
 * exactly passes.
 */
final class DowelCheck implements Check {

  private static final Source SOURCE =
      Source.commonPractice("a dowel is a third to a half of the thickness it goes into");

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      Joint joint = fit.joint();
      Part part = assembly.mortised(joint).part();
      double limit = Math.min(part.blank().width(), part.blank().thickness()) / 2;
      double diameter = joint.plan().diameter().orElse(0);
      if (joint.plan().kind() == Kind.DOWELS && diameter > limit + Tolerances.contact()) {
        out.add(
            Found.of("dowel-thick", Severity.LOOK)
                .part(part)
                .joint(joint)
                .atMost(limit, diameter)
                .source(SOURCE)
                .says(
                    "The dowels of \""
                        + joint.label()
                        + "\" are "
                        + assembly.length(diameter)
                        + " thick, more than half of "
                        + part.label()
                        + "; use "
                        + assembly.length(limit)
                        + " or less.",
                    joint.plan().pointer() + "/diameter",
                    joint.at()));
      }
    }
    return out;
  }
}
