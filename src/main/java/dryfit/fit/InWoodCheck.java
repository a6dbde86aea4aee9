package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.Finding.Severity;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code tenon-outside}: part of a tenon is not inside the wood it goes into. Near the mouth of a
 * round part some of a tenon always is outside; so only what is deeper than a third of its length
 * counts. What a through tenon stands out of the far side is meant to.
 */
final class InWoodCheck implements Check {

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (Joint joint : assembly.chair().joints()) {
      if (joint.plan().kind() == Kind.GROOVE || joint.plan().kind() == Kind.NOTCH) {
        continue;
      }
      Placed mortised = assembly.mortised(joint);
      List<Convex> outside = Cells.minus(joint.tenon(), mortised.bodyCells());
      // A tip cut square to a leaning entry comes out on one side before it does in the middle.
      double far = joint.length() - joint.plan().proud() - aslant(joint);
      double volume = 0;
      Vec3 at = joint.at();
      double most = 0;
      for (Convex piece : outside) {
        double depth = piece.middle().minus(joint.at()).dot(joint.entry());
        boolean proud = joint.through() && depth > far;
        if (depth > joint.length() / 3 && !proud && piece.thickness() > 0.01) {
          volume += piece.volume();
          if (piece.volume() > most) {
            most = piece.volume();
            at = piece.middle();
          }
        }
      }
      if (volume > 0) {
        Part part = mortised.part();
        out.add(
            Found.of("tenon-outside", Severity.STOPS)
                .part(assembly.tenoned(joint).part())
                .part(part)
                .joint(joint)
                .atMost(0, volume)
                .unit("mm3")
                .source(Source.geometry("a tenon holds only where wood is round it"))
                .says(
                    "The "
                        + Words.goesIn(joint)
                        + " of \""
                        + joint.label()
                        + "\" is not wholly inside "
                        + part.label()
                        + ": "
                        + assembly.volume(volume)
                        + " of it stand outside; make it shorter, thinner or move it.",
                    joint.plan().pointer(),
                    at));
      }
    }
    return out;
  }

  /** How much sooner than its middle the side of a leaning tenon is through, mm. */
  private static double aslant(Joint joint) {
    double span =
        joint.tenon().stream()
            .flatMap(c -> c.points().stream())
            .mapToDouble(p -> p.minus(joint.at()).across(joint.entry()).length())
            .max()
            .orElse(0);
    return span * Math.tan(joint.lean());
  }
}
