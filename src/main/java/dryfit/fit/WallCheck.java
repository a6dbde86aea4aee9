package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.FitLimit;
import dryfit.fit.Finding.Severity;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Wood left beside a mortise. {@code mortise-breaks-out}: it comes out of a face. {@code
 * thin-wall}: less is left than the maker's least wall. Exactly at the limit passes. Walls between
 * mortises are {@link MortiseCheck}'s.
 */
final class WallCheck implements Check {

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      toOutside(assembly, fit).ifPresent(out::add);
    }
    return out;
  }

  private static Optional<Finding> toOutside(Assembly assembly, JointFit fit) {
    Joint joint = fit.joint();
    Limit least = Limit.of(assembly.chair().design(), FitLimit.LEAST_WALL, joint);
    double limit = least.value();
    double wall = fit.wall().orElse(Double.POSITIVE_INFINITY);
    if (wall >= limit - Tolerances.contact()) {
      return Optional.empty();
    }
    Part part = assembly.mortised(joint).part();
    boolean out = wall <= Tolerances.contact();
    double passes = limit - Tolerances.contact();
    String remedy =
        LessWood.clause(
            assembly,
            joint,
            out ? OptionalDouble.empty() : OptionalDouble.of(limit - wall),
            cut -> WallLeft.of(assembly, joint, cut).least().orElse(limit) >= passes);
    String hole = "The " + Words.hole(joint) + " of \"" + joint.label() + "\" ";
    return Optional.of(
        Found.of(out ? "mortise-breaks-out" : "thin-wall", out ? Severity.STOPS : Severity.LOOK)
            .part(part)
            .joint(joint)
            .atLeast(limit, wall)
            .source(least.source())
            .says(
                out
                    ? hole
                        + "comes out at the "
                        + fit.wallFace()
                        + " of "
                        + part.label()
                        + "; "
                        + remedy
                        + " so that "
                        + assembly.length(limit)
                        + " of wood are left."
                    : hole
                        + "leaves "
                        + assembly.gap(wall)
                        + " of wood at the "
                        + fit.wallFace()
                        + " of "
                        + part.label()
                        + " ("
                        + fit.detail().walls().get(0).left().where()
                        + ")"
                        + ", less than "
                        + assembly.length(limit)
                        + "; "
                        + remedy
                        + ".",
                joint.plan().pointer() + Words.sizeKey(joint),
                fit.detail().walls().get(0).left().at()));
  }
}
