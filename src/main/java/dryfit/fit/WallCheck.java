package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.Finding.Severity;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.Distance;
import dryfit.solid.Overlap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Wood left beside a mortise. {@code mortise-breaks-out}: it comes out of a face. {@code
 * thin-wall}: less is left than the maker's least wall, to a face or to another mortise. {@code
 * mortises-meet}: two mortises run into each other; expected where two tips are mitred together.
 */
final class WallCheck implements Check {

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      toOutside(assembly, fit).ifPresent(out::add);
    }
    List<Joint> joints = assembly.chair().joints();
    for (int i = 0; i < joints.size(); i++) {
      for (int k = i + 1; k < joints.size(); k++) {
        if (joints.get(i).mortised() == joints.get(k).mortised()
            && areMortises(joints.get(i), joints.get(k))) {
          between(assembly, joints.get(i), joints.get(k)).ifPresent(out::add);
        }
      }
    }
    return out;
  }

  private static Optional<Finding> toOutside(Assembly assembly, JointFit fit) {
    Joint joint = fit.joint();
    double limit = joint.plan().fit().leastWall();
    double wall = fit.wall().orElse(Double.POSITIVE_INFINITY);
    if (wall >= limit - Tolerances.contact()) {
      return Optional.empty();
    }
    Part part = assembly.mortised(joint).part();
    boolean out = wall <= Tolerances.contact();
    String hole = "The " + Words.hole(joint) + " of \"" + joint.label() + "\" ";
    return Optional.of(
        Found.of(out ? "mortise-breaks-out" : "thin-wall", out ? Severity.STOPS : Severity.LOOK)
            .part(part)
            .joint(joint)
            .atLeast(limit, wall)
            .source(leastWall(joint))
            .says(
                out
                    ? hole
                        + "comes out at the "
                        + fit.wallFace()
                        + " of "
                        + part.label()
                        + "; "
                        + Words.takeLess(joint)
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
                        + ", less than "
                        + assembly.length(limit)
                        + "; "
                        + Words.takeLess(joint)
                        + " by "
                        + assembly.length(Assembly.roundUp(limit - wall))
                        + ".",
                joint.plan().pointer() + Words.sizeKey(joint),
                WallLeft.of(assembly, joint).at()));
  }

  private static Source leastWall(Joint joint) {
    if (joint.plan().kind() == Kind.GROOVE) {
      return Source.commonPractice("about an eighth of an inch of wood beside a groove");
    }
    return joint.plan().fit().leastWall() == 6
        ? Source.commonPractice("about a quarter inch of wood beside a mortise")
        : Source.maker("fit/least-wall");
  }

  private static Optional<Finding> between(Assembly assembly, Joint a, Joint b) {
    Part part = assembly.mortised(a).part();
    double limit = Math.min(a.plan().fit().leastWall(), b.plan().fit().leastWall());
    List<Convex> first = inWood(a);
    List<Convex> second = inWood(b);
    Optional<Overlap> overlap = Overlap.between(first, second);
    if (overlap.isPresent()) {
      boolean mitred = isMitred(a, b);
      Overlap o = overlap.get();
      return Optional.of(
          Found.of("mortises-meet", mitred ? Severity.KNOW : Severity.LOOK)
              .part(part)
              .joint(a)
              .joint(b)
              .atLeast(mitred ? -o.depth() : 0, -o.depth())
              .source(
                  Source.commonPractice(
                      "the second mortise breaks the walls of the first unless that is plugged"))
              .says(
                  "The mortises of \""
                      + a.label()
                      + "\" and \""
                      + b.label()
                      + "\" run into each"
                      + " other inside "
                      + part.label()
                      + ", "
                      + assembly.length(o.depth())
                      + " deep"
                      + (mitred ? " at their mitred tips" : "")
                      + "; plug the first with a fitting block while you chop the second.",
                  a.plan().pointer(),
                  o.deepest()));
    }
    return Distance.between(first, second, limit)
        .filter(d -> d.length() < limit - Tolerances.contact())
        .map(
            d ->
                Found.of("thin-wall", Severity.LOOK)
                    .part(part)
                    .joint(a)
                    .joint(b)
                    .atLeast(limit, d.length())
                    .source(leastWall(a))
                    .says(
                        "Between the mortises of \""
                            + a.label()
                            + "\" and \""
                            + b.label()
                            + "\" "
                            + part.label()
                            + " keeps "
                            + assembly.gap(d.length())
                            + " of wood, less than "
                            + assembly.length(limit)
                            + "; shorten one of the tenons or move them apart.",
                        a.plan().pointer(),
                        d.onFirst().midway(d.onSecond())));
  }

  /** A panel's groove runs out into the mortises beside it; a notch is a hole for a post. */
  private static boolean areMortises(Joint a, Joint b) {
    return Stream.of(a, b)
        .map(j -> j.plan().kind())
        .noneMatch(k -> k == Kind.GROOVE || k == Kind.NOTCH);
  }

  private static boolean isMitred(Joint a, Joint b) {
    return a.plan().mitre().filter(m -> m.with().equals(b.name())).isPresent()
        || b.plan().mitre().filter(m -> m.with().equals(a.name())).isPresent();
  }

  private static List<Convex> inWood(Joint joint) {
    return joint.mortise().stream().flatMap(c -> c.clipped(joint.mouth()).stream()).toList();
  }
}
