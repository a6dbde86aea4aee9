package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.Finding.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code could-not-measure}: a joint in which nothing faces the tenon's cheeks, so that the checks
 * of its fit had nothing to look at. Silence would read as a good fit. No waiver hides it.
 */
final class MeasuredCheck implements Check {
  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      Joint joint = fit.joint();
      boolean tenon =
          joint.plan().kind() == Kind.MORTISE_AND_TENON || joint.plan().kind() == Kind.ROUND_TENON;
      if (tenon && fit.cheek().least().isEmpty()) {
        out.add(
            Found.of(Waivers.COULD_NOT_MEASURE, Severity.LOOK)
                .part(assembly.tenoned(joint).part())
                .part(assembly.mortised(joint).part())
                .joint(joint)
                .atMost(0, Double.NaN)
                .source(Source.geometry("a gap needs wood on both of its sides"))
                .says(
                    "The fit of \""
                        + joint.label()
                        + "\" could not be measured: nothing faces the cheeks of its tenon; see"
                        + " what else is cut there.",
                    joint.plan().pointer(),
                    joint.at()));
      }
    }
    return out;
  }
}
