package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.fit.Finding.Severity;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * {@code tenon-outgrows-stock}: a tenon that slants in its part, for a mortise square to the face,
 * needs thicker stock than the part has. Exactly as thick is enough.
 */
final class SlantCheck implements Check {

  private static final Source SOURCE =
      Source.geometry(
          "a tenon of thickness t and length l, slanted by a, is t cos a + l sin a wide across its"
              + " part");

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      Joint joint = fit.joint();
      Optional<Slant> slant = Slant.of(assembly.chair(), joint);
      if (slant.isEmpty() || slant.get().leaningMortise()) {
        continue;
      }
      double needed = slant.get().stockNeeded();
      double there = slant.get().stockThere();
      if (needed > there + Tolerances.contact()) {
        Part part = assembly.tenoned(joint).part();
        out.add(
            Found.of("tenon-outgrows-stock", Severity.LOOK)
                .part(part)
                .joint(joint)
                .atMost(there, needed)
                .source(SOURCE)
                .says(
                    "The slanted tenon of \""
                        + joint.label()
                        + "\" needs "
                        + part.label()
                        + " to be "
                        + assembly.lengthUp(needed)
                        + " thick and it is "
                        + assembly.length(there)
                        + "; shorten the tenon, make it thinner, or let the mortise lean instead"
                        + " (\"angled\": \"mortise\").",
                    joint.plan().pointer() + "/angled",
                    joint.at()));
      }
    }
    return out;
  }
}
