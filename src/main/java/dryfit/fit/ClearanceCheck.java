package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.Design;
import dryfit.document.FitLimit;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.Finding.Severity;
import dryfit.fit.JointFit.Gap;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Gaps in the joint itself. {@code tenon-too-fat}: wood where wood must go in. {@code
 * no-glue-room}: a gap at a cheek below the limit, which seizes when glue swells it. {@code
 * tenon-loose}: one above the limit. Exactly at a limit passes.
 */
final class ClearanceCheck implements Check {
  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      tooFat(assembly, fit, fit.cheek(), "cheeks", "/fit/cheek", out);
      tooFat(assembly, fit, fit.edge(), "edges", "/fit/edge", out);
      tooFat(assembly, fit, fit.bottom(), "bottom", "/fit/bottom", out);
      cheek(assembly, fit, out);
    }
    return out;
  }

  private static void tooFat(
      Assembly assembly, JointFit fit, Gap gap, String where, String key, List<Finding> out) {
    double least = gap.least().orElse(0);
    if (least >= -Tolerances.contact()) {
      return;
    }
    Joint joint = fit.joint();
    out.add(
        Found.of("tenon-too-fat", Severity.STOPS)
            .part(assembly.tenoned(joint).part())
            .part(assembly.mortised(joint).part())
            .joint(joint)
            .atLeast(0, least)
            .says(
                "The "
                    + Words.goesIn(joint)
                    + " of \""
                    + joint.label()
                    + "\" does not go in: at the "
                    + where
                    + " it is too big by "
                    + assembly.gap(-least)
                    + "; make it smaller or the mortise larger.",
                joint.plan().pointer() + key,
                joint.at()));
  }

  private static void cheek(Assembly assembly, JointFit fit, List<Finding> out) {
    Kind kind = fit.joint().plan().kind();
    OptionalDouble least = fit.cheek().least();
    if (kind == Kind.GROOVE
        || kind == Kind.NOTCH
        || least.isEmpty()
        || least.getAsDouble() < -Tolerances.contact()) {
      return;
    }
    Joint joint = fit.joint();
    double greatest = fit.cheek().greatest().orElseThrow();
    // Round tenons and holes are made of facets, which may stand against each other by so much.
    double facets = joint.plan().diameter().isPresent() ? Tolerances.facet() : 0;
    double spare = facets + Tolerances.contact();
    Design design = assembly.chair().design();
    Limit room = Limit.of(design, FitLimit.CHEEK_GAP_LEAST, joint);
    Limit loose = Limit.of(design, FitLimit.CHEEK_GAP_MOST, joint);
    if (least.getAsDouble() < room.value() - spare) {
      out.add(
          Found.of("no-glue-room", Severity.LOOK)
              .part(assembly.tenoned(joint).part())
              .joint(joint)
              .atLeast(room.value(), least.getAsDouble())
              .source(room.source())
              .says(
                  "\""
                      + joint.label()
                      + "\" has a gap of "
                      + assembly.gap(least.getAsDouble())
                      + " at a cheek: glue swells the wood and the joint can seize half way;"
                      + " give each cheek "
                      + assembly.gap(room.value() - least.getAsDouble())
                      + " more.",
                  joint.plan().pointer() + "/fit/cheek",
                  joint.at()));
    }
    if (greatest > loose.value() + spare) {
      out.add(
          Found.of("tenon-loose", Severity.LOOK)
              .part(assembly.tenoned(joint).part())
              .joint(joint)
              .atMost(loose.value(), greatest)
              .source(loose.source())
              .says(
                  "\""
                      + joint.label()
                      + "\" is loose: "
                      + assembly.gap(greatest)
                      + " at a cheek; take the clearance down by "
                      + assembly.gap(greatest - loose.value())
                      + " a side.",
                  joint.plan().pointer() + "/fit/cheek",
                  joint.at()));
    }
  }
}
