package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.JointSizes.Wedges;
import dryfit.fit.Finding.Severity;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code wedges-slack}: the mortise is flared further than the wedges spread the tenon, so they
 * cannot lock it. Exactly as far passes; a flare that is too small is a tenon that is too fat.
 */
final class WedgeCheck implements Check {

  private static final Source SOURCE =
      Source.geometry("a wedge locks only what it presses against the flare");

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      Joint joint = fit.joint();
      if (joint.plan().wedges().isEmpty()) {
        continue;
      }
      Wedges w = joint.plan().wedges().get();
      double flare = w.flare().orElse(w.spread());
      if (flare > w.spread() + Tolerances.contact()) {
        double swell = 2 * flare / w.count();
        out.add(
            Found.of("wedges-slack", Severity.LOOK)
                .part(assembly.tenoned(joint).part())
                .part(assembly.mortised(joint).part())
                .joint(joint)
                .atMost(w.spread(), flare)
                .source(SOURCE)
                .says(
                    "The wedges of \""
                        + joint.label()
                        + "\" spread the tenon by "
                        + assembly.gap(w.spread())
                        + " a side and its mortise is flared by "
                        + assembly.gap(flare)
                        + "; flare it less, or make each wedge "
                        + assembly.gap(w.kerf() + swell)
                        + " thick at the far face.",
                    joint.plan().pointer() + "/wedges/flare",
                    joint.at()));
      }
    }
    return out;
  }
}
