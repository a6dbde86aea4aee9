package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.document.JointPlan;
import dryfit.document.JointPlan.Kind;
import dryfit.document.JointPlan.Shoulder;
import dryfit.measure.Tolerances;
import java.util.Locale;

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
          String.format(
              Locale.ROOT,
              "%s ends %.2f mm before it reaches %s",
              i.tenoned().name(),
              missing,
              i.mortised().name()),
          "draw it at least that much longer");
    }
    JointPlan plan = i.plan();
    if (plan.kind() != Kind.HOUSING && plan.shoulder() != Shoulder.NONE) {
      double thick = plan.thickness().orElseGet(() -> plan.diameter().orElseThrow());
      double wide = plan.width().orElseGet(() -> plan.diameter().orElseThrow());
      boolean round = plan.kind() == Kind.ROUND_TENON;
      fits(plan, round ? "diameter" : "thickness", thick, meeting.section().thickness());
      fits(plan, round ? "diameter" : "width", wide, meeting.section().width());
    }
  }

  private static void fits(JointPlan plan, String key, double size, double whole) {
    if (size > whole + Tolerances.contact()) {
      throw Refusal.of(
          "tenon-too-large",
          plan.pointer() + "/" + key,
          String.format(
              Locale.ROOT,
              "the tenon of \"%s\" is %.2f mm where its part measures %.2f mm",
              plan.name(),
              size,
              whole),
          "make it smaller");
    }
  }
}
