package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.Finding.Severity;
import dryfit.fit.JointFit.Gap;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Gaps in the joint itself. {@code tenon-too-fat}: wood where wood must go in. {@code
 * no-glue-room}: a fit without any gap at the cheeks, which seizes when glue swells it. {@code
 * tenon-loose}: a gap at a cheek above the limit. Exactly at the limit passes.
 */
final class ClearanceCheck implements Check {
  /** Gap at a cheek from which a joint counts as loose, mm. */
  private static final double LOOSE = 0.13;

  private static final Source LOOSE_SOURCE =
      Source.published(
          "breaking tests of over 150 joints at Purdue University, Fine Woodworking, Jan/Feb 2017:"
              + " a gap of up to 0.13 mm (0.005 in) a side; at 0.25 mm (0.010 in) strength fell by"
              + " 21 %");

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
    if (least.getAsDouble() <= Tolerances.contact()) {
      out.add(
          Found.of("no-glue-room", Severity.LOOK)
              .part(assembly.tenoned(joint).part())
              .joint(joint)
              .atLeast(0.05, least.getAsDouble())
              .source(
                  Source.commonPractice(
                      "a sheet of paper at each cheek; water glue swells a fit without a gap"))
              .says(
                  "\""
                      + joint.label()
                      + "\" has no gap at a cheek: glue swells the wood and the"
                      + " joint can seize half way; give it "
                      + assembly.gap(0.1)
                      + " a side.",
                  joint.plan().pointer() + "/fit/cheek",
                  joint.at()));
    }
    // Round tenons and holes are made of facets, which may stand against each other by so much.
    double facets = joint.plan().diameter().isPresent() ? Tolerances.facet() : 0;
    if (greatest > LOOSE + facets + Tolerances.contact()) {
      out.add(
          Found.of("tenon-loose", Severity.LOOK)
              .part(assembly.tenoned(joint).part())
              .joint(joint)
              .atMost(LOOSE, greatest)
              .source(LOOSE_SOURCE)
              .says(
                  "\""
                      + joint.label()
                      + "\" is loose: "
                      + assembly.gap(greatest)
                      + " at a cheek; take the clearance down to "
                      + assembly.gap(0.1)
                      + " a side.",
                  joint.plan().pointer() + "/fit/cheek",
                  joint.at()));
    }
  }
}
