package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.FitLimit;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.Finding.Severity;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * {@code side-rail-joint}: a side rail in a leg by a small tenon, with no stretcher below and no
 * corner block to help. These joints take most of what a sitter does who leans back. A side rail
 * runs from front to back between two legs; a stretcher does so lower down; a corner block is a
 * short part that touches the rail and another one at the same leg. A panel in grooves ties
 * nothing. Exactly at the limit passes.
 */
final class SideRailCheck implements Check {
  /** A corner block is shorter than this share of its rail. */
  private static final double SHORT = 0.5;

  /** A corner block is this near to the corner, mm. */
  private static final double NEAR = 120;

  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    Legs legs = Legs.of(assembly);
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      Joint joint = fit.joint();
      if (joint.plan().kind() == Kind.MORTISE_AND_TENON
          && legs.parts().contains(joint.mortised())
          && isSideRail(assembly, legs, joint)
          && !hasStretcher(assembly, legs, joint)
          && !hasBlock(assembly, joint)) {
        finding(assembly, joint, out);
      }
    }
    return out;
  }

  private static Stream<Joint> ties(Assembly assembly) {
    return assembly.chair().joints().stream().filter(j -> j.plan().kind() != Kind.GROOVE);
  }

  private static boolean foreAft(Placed placed) {
    Vec3 x = placed.part().frame().x();
    return Math.abs(x.y()) > Math.abs(x.x()) && !Legs.stands(placed);
  }

  /** Whether the tenoned part goes into legs at both ends, and nothing like it does so below. */
  private static boolean isSideRail(Assembly assembly, Legs legs, Joint joint) {
    return foreAft(assembly.tenoned(joint)) && tied(assembly, legs, joint.tenoned()).size() == 2;
  }

  private static List<Integer> tied(Assembly assembly, Legs legs, int part) {
    return ties(assembly)
        .filter(j -> j.tenoned() == part && legs.parts().contains(j.mortised()))
        .map(Joint::mortised)
        .distinct()
        .sorted()
        .toList();
  }

  /** Another part between the same legs, or the rail itself is the lower of two. */
  private static boolean hasStretcher(Assembly assembly, Legs legs, Joint joint) {
    List<Integer> own = tied(assembly, legs, joint.tenoned());
    return ties(assembly)
        .filter(j -> j.tenoned() != joint.tenoned() && own.contains(j.mortised()))
        .filter(j -> foreAft(assembly.tenoned(j)))
        .anyMatch(j -> tied(assembly, legs, j.tenoned()).equals(own));
  }

  private static boolean hasBlock(Assembly assembly, Joint joint) {
    double rail = assembly.tenoned(joint).part().blank().length();
    List<Placed> others =
        ties(assembly)
            .filter(j -> j.mortised() == joint.mortised() && j.tenoned() != joint.tenoned())
            .filter(j -> !Legs.stands(assembly.tenoned(j)))
            .map(assembly::tenoned)
            .toList();
    return assembly.parts().stream()
        .filter(p -> p.part().blank().length() < SHORT * rail)
        .filter(p -> near(p.bounds(), joint.at()))
        .filter(p -> touches(p, assembly.tenoned(joint)))
        .anyMatch(p -> others.stream().anyMatch(o -> !label(o).equals(label(p)) && touches(p, o)));
  }

  private static String label(Placed placed) {
    return placed.part().label();
  }

  private static boolean near(Box box, Vec3 at) {
    return box.grown(NEAR).meets(new Box(at, at));
  }

  private static boolean touches(Placed a, Placed b) {
    return dryfit.solid.Distance.between(a.cells(), b.cells(), Tolerances.facet()).isPresent();
  }

  private static void finding(Assembly assembly, Joint joint, List<Finding> out) {
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.SIDE_RAIL_TENON, joint);
    double wide = joint.plan().width().orElse(0);
    double least = Math.min(joint.length(), wide);
    if (least >= limit.value() - Tolerances.contact()) {
      return;
    }
    String which = joint.length() <= wide ? "length" : "width";
    out.add(
        Found.of("side-rail-joint", Severity.LOOK)
            .part(assembly.tenoned(joint).part())
            .part(assembly.mortised(joint).part())
            .joint(joint)
            .atLeast(limit.value(), least)
            .source(limit.source())
            .says(
                "\""
                    + joint.label()
                    + "\" has a tenon of "
                    + assembly.length(wide)
                    + " × "
                    + assembly.length(joint.length())
                    + " and neither a stretcher below nor a corner block; this is where chairs"
                    + " break when their sitter leans back: make its "
                    + which
                    + " "
                    + assembly.lengthUp(limit.value() - least)
                    + " more, or add a side stretcher or corner blocks. How much it carries is for"
                    + " a test or a licensed professional to say.",
                joint.plan().pointer() + "/" + which,
                joint.at()));
  }
}
