package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.fit.Finding.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code shoulder-open}: a shoulder does not sit on its face. Open somewhere is to be looked at;
 * open everywhere, or standing in the wood, stops the build.
 */
final class ShoulderCheck implements Check {
  /** 1/64 in, mm: a gap that shows. */
  private static final double SHOWS = 25.4 / 64;

  private static final Source SOURCE =
      Source.commonPractice("a shoulder gap shows from about 1/64 in");

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      if (fit.shoulder().least().isEmpty()) {
        continue;
      }
      double least = fit.shoulder().least().getAsDouble();
      double greatest = fit.shoulder().greatest().orElseThrow();
      if (greatest <= SHOWS && least >= -SHOWS) {
        continue;
      }
      Joint joint = fit.joint();
      Part part = assembly.tenoned(joint).part();
      boolean standsIn = least < -SHOWS;
      boolean nowhere = least > SHOWS;
      Found found =
          Found.of("shoulder-open", standsIn || nowhere ? Severity.STOPS : Severity.LOOK)
              .part(part)
              .part(assembly.mortised(joint).part())
              .joint(joint)
              .source(SOURCE);
      out.add(
          (standsIn ? found.atLeast(-SHOWS, least) : found.atMost(SHOWS, greatest))
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
