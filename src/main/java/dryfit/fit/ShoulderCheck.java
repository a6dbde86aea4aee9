package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.FitLimit;
import dryfit.fit.Finding.Severity;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code shoulder-open}: a shoulder does not sit on its face. Open somewhere is to be looked at;
 * open everywhere, or standing in the wood, stops the build. Exactly at the limit passes.
 */
final class ShoulderCheck implements Check {
  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      if (fit.shoulder().least().isEmpty()) {
        continue;
      }
      Joint joint = fit.joint();
      Limit limit = Limit.of(assembly.chair().design(), FitLimit.SHOULDER_GAP, joint);
      double shows = limit.value() + Tolerances.contact();
      double least = fit.shoulder().least().getAsDouble();
      double greatest = fit.shoulder().greatest().orElseThrow();
      if (greatest <= shows && least >= -shows) {
        continue;
      }
      Part part = assembly.tenoned(joint).part();
      boolean standsIn = least < -shows;
      boolean nowhere = least > shows;
      Found found =
          Found.of("shoulder-open", standsIn || nowhere ? Severity.STOPS : Severity.LOOK)
              .part(part)
              .part(assembly.mortised(joint).part())
              .joint(joint)
              .source(limit.source());
      out.add(
          (standsIn ? found.atLeast(-limit.value(), least) : found.atMost(limit.value(), greatest))
              .says(
                  standsIn
                      ? "The shoulder of \""
                          + joint.label()
                          + "\" would stand "
                          + assembly.gap(-least)
                          + " inside the wood; cut it back."
                      : "The shoulder of \""
                          + joint.label()
                          + "\" is open by up to "
                          + assembly.gap(greatest)
                          + "; scribe it to the face (\"shoulder\": \"scribed\") or give the face"
                          + " a flat where it lands.",
                  joint.plan().pointer() + "/shoulder",
                  joint.at()));
    }
    return out;
  }
}
