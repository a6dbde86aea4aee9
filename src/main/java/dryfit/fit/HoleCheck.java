package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.FitLimit;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.Role;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.Finding.Severity;
import dryfit.fit.JointDetail.Wall;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Wood where it splits. {@code mortise-near-end}: too little between a mortise and the end of its
 * part. {@code post-may-split}: too little beside a hole in a small post. {@code
 * arm-hole-near-edge} and {@code arm-tenon-short}: an arm on its leg, which is what people lift a
 * chair by. An arm here is what lies, runs more from front to back than sideways, and is entered
 * from below; a panel in its groove holds nothing. Exactly at a limit passes.
 */
final class HoleCheck implements Check {
  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (JointFit fit : measured) {
      Kind kind = fit.joint().plan().kind();
      if (kind == Kind.HOUSING || kind == Kind.GROOVE) {
        continue;
      }
      boolean arm = intoAnArm(assembly, fit.joint());
      if (arm) {
        armHole(assembly, fit).ifPresent(out::add);
        armTenon(assembly, fit.joint()).ifPresent(out::add);
      } else {
        nearEnd(assembly, fit).ifPresent(out::add);
      }
      smallPost(assembly, fit).ifPresent(out::add);
    }
    return out;
  }

  private static boolean intoAnArm(Assembly assembly, Joint joint) {
    Vec3 x = assembly.mortised(joint).part().lengthNear(joint.at());
    boolean foreAft = Math.abs(x.y()) > Math.abs(x.x()) && !Legs.stands(assembly.mortised(joint));
    return foreAft && joint.entry().z() > Math.sqrt(0.5);
  }

  /** The thinnest wall that is not already told as a mortise that comes out. */
  private static Optional<Wall> thinnest(JointFit fit, boolean end) {
    return fit.detail().walls().stream()
        .filter(w -> w.end() == end && w.left().value() > Tolerances.contact())
        .findFirst();
  }

  private static Optional<Finding> nearEnd(Assembly assembly, JointFit fit) {
    Joint joint = fit.joint();
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.MORTISE_END_WOOD, joint);
    if (joint.plan().role() != Role.STRUCTURAL) {
      return Optional.empty();
    }
    return thinnest(fit, true)
        .filter(w -> w.left().value() < limit.value() - Tolerances.contact())
        .map(
            w ->
                found("mortise-near-end", assembly, joint, limit, w)
                    .says(
                        "The mortise of \""
                            + joint.label()
                            + "\" is "
                            + assembly.length(w.left().value())
                            + " from the "
                            + w.face()
                            + " end of "
                            + assembly.mortised(joint).part().label()
                            + ", where the grain splits out; move it by "
                            + more(assembly, limit, w)
                            + shorter(assembly, joint, limit.value())
                            + ", or leave the part longer until the mortise is cut.",
                        joint.plan().pointer(),
                        w.left().at()));
  }

  /** A mortise that leans towards the end is farther from it if it is less deep. */
  private static String shorter(Assembly assembly, Joint joint, double limit) {
    OptionalDouble by =
        new LessWood(
                assembly,
                joint,
                cut ->
                    WallLeft.of(assembly, joint, cut).thinnest().stream()
                        .filter(WallLeft.Thinnest::end)
                        .allMatch(t -> t.left() >= limit - Tolerances.contact()))
            .shorter();
    return by.isEmpty()
        ? ""
        : ", make the " + Words.goesIn(joint) + " shorter by " + assembly.length(by.getAsDouble());
  }

  private static Optional<Finding> smallPost(Assembly assembly, JointFit fit) {
    Joint joint = fit.joint();
    Design design = assembly.chair().design();
    Limit limit = Limit.of(design, FitLimit.POST_WALL, joint);
    double leastWall = Limit.of(design, FitLimit.LEAST_WALL, joint).value();
    Placed post = assembly.mortised(joint);
    Part.Blank blank = post.part().blank();
    boolean small =
        Math.max(blank.width(), blank.thickness())
            <= Limit.of(design, FitLimit.SMALL_POST, joint).value() + Tolerances.contact();
    if (joint.plan().kind() != Kind.ROUND_TENON || !small) {
      return Optional.empty();
    }
    // What is below the least wall is told as a thin wall.
    return thinnest(fit, false)
        .filter(w -> w.left().value() < limit.value() - Tolerances.contact())
        .filter(w -> w.left().value() >= leastWall - Tolerances.contact())
        .map(
            w ->
                found("post-may-split", assembly, joint, limit, w)
                    .says(
                        post.part().label()
                            + " keeps "
                            + assembly.gap(w.left().value())
                            + " beside the hole of \""
                            + joint.label()
                            + "\"; a tight round tenon can split a small post: make the post "
                            + more(assembly, limit, w)
                            + " thicker there or the hole smaller, and never drive the tenon.",
                        joint.plan().pointer() + "/diameter",
                        w.left().at()));
  }

  private static Optional<Finding> armHole(Assembly assembly, JointFit fit) {
    Joint joint = fit.joint();
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.ARM_HOLE_WALL, joint);
    return fit.detail().walls().stream()
        .filter(w -> !w.face().equals("top") && w.left().value() > Tolerances.contact())
        .filter(w -> w.left().value() < limit.value() - Tolerances.contact())
        .findFirst()
        .map(
            w ->
                found("arm-hole-near-edge", assembly, joint, limit, w)
                    .says(
                        assembly.mortised(joint).part().label()
                            + " keeps "
                            + assembly.length(w.left().value())
                            + " at the "
                            + w.face()
                            + " of the hole of \""
                            + joint.label()
                            + "\"; make it "
                            + more(assembly, limit, w)
                            + " wider there, or move the hole.",
                        joint.plan().pointer(),
                        w.left().at()));
  }

  private static Optional<Finding> armTenon(Assembly assembly, Joint joint) {
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.ARM_TENON_LEAST, joint);
    double length = joint.length();
    if (joint.plan().through() || length > limit.value() + Tolerances.contact()) {
      return Optional.empty();
    }
    Part arm = assembly.mortised(joint).part();
    return Optional.of(
        Found.of("arm-tenon-short", Severity.LOOK)
            .part(assembly.tenoned(joint).part())
            .part(arm)
            .joint(joint)
            .atLeast(limit.value(), length)
            .source(limit.source())
            .says(
                "The tenon of \""
                    + joint.label()
                    + "\" is "
                    + assembly.length(length)
                    + " long, and people lift a chair by its arms; peg it from the inside edge of "
                    + arm.label()
                    + ", or let it through and wedge it, the wedges across the leg's end so that"
                    + " they press along the arm's grain.",
                joint.plan().pointer() + "/length",
                joint.at()));
  }

  private static Found found(String check, Assembly assembly, Joint joint, Limit limit, Wall w) {
    return Found.of(check, Severity.LOOK)
        .part(assembly.mortised(joint).part())
        .joint(joint)
        .atLeast(limit.value(), w.left().value())
        .source(limit.source());
  }

  private static String more(Assembly assembly, Limit limit, Wall w) {
    return assembly.lengthUp(limit.value() - w.left().value());
  }
}
