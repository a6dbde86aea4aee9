package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.document.JointPlan;
import dryfit.document.JointPlan.Shoulder;
import dryfit.measure.Tolerances;

/**
 * Whether there is wood at the end of a part to make its tenon from: the end reaches the mouth, and
 * the tenon is no larger than the section there.
 */
final class TenonRoom {
  private TenonRoom() {}

  static void check(Instance i, Meeting meeting) {
    double missing = i.tenoned().shortOf(i.atStart(), meeting.at());
    if (missing > Tolerances.contact()) {
      throw Refusal.of(
          "mortise-misses",
          i.plan().pointer(),
          i.tenoned().name()
              + " ends "
              + Refusal.length(missing)
              + " before it reaches "
              + i.mortised().name(),
          "draw it at least that much longer");
    }
    JointPlan plan = i.plan();
    boolean sized = plan.diameter().isPresent() || plan.thickness().isPresent();
    if (sized && plan.shoulder() != Shoulder.NONE) {
      boolean round = plan.diameter().isPresent();
      boolean above = plan.row().above();
      double thick = plan.diameter().orElseGet(() -> plan.thickness().orElseThrow());
      double wide = plan.diameter().orElseGet(() -> plan.width().orElse(0));
      fits(
          plan,
          round ? "diameter" : "thickness",
          above ? thick : plan.row().span(thick),
          meeting.section().thickness());
      fits(
          plan,
          round ? "diameter" : "width",
          above ? plan.row().span(wide) : wide,
          meeting.section().width());
    }
  }

  private static void fits(JointPlan plan, String key, double size, double whole) {
    if (size > whole + Tolerances.contact()) {
      throw Refusal.of(
          "tenon-too-large",
          plan.pointer() + "/" + key,
          "the tenon of \""
              + plan.name()
              + "\" is "
              + Refusal.length(size)
              + " where its part measures "
              + Refusal.length(whole),
          "make it smaller");
    }
  }
}
