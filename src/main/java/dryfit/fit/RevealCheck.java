package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.FitLimit;
import dryfit.document.Hand;
import dryfit.document.PartPlan;
import dryfit.document.PartPlan.Placement.Between;
import dryfit.document.PartPlan.Reveal;
import dryfit.fit.Finding.Severity;
import dryfit.fit.JointDetail.Setback;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * {@code reveal-uneven}: the outside face of a part stands back from its neighbours by different
 * amounts at its two ends, or on the right and on the left. What the document wants different is
 * not told, nor is a part between two others that it places by anything but an outside reveal.
 * Exactly at the limit passes.
 */
final class RevealCheck implements Check {
  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    double middle = middleY(assembly);
    List<Finding> out = new ArrayList<>();
    for (int i = 0; i < measured.size(); i++) {
      for (int k = i + 1; k < measured.size(); k++) {
        Joint a = measured.get(i).joint();
        Joint b = measured.get(k).joint();
        boolean ends = a.tenoned() == b.tenoned() && a.atStart() != b.atStart();
        boolean hands =
            a.name().equals(b.name())
                && a.tenoned() != b.tenoned()
                && a.hand() == Hand.RIGHT
                && b.hand() == Hand.LEFT;
        Optional<Setback> one = outer(assembly, measured.get(i), middle);
        Optional<Setback> other = outer(assembly, measured.get(k), middle);
        if ((ends || hands) && one.isPresent() && other.isPresent()) {
          double wanted = ends ? wanted(assembly, a, b) : 0;
          compare(assembly, a, b, one.get(), other.get(), wanted, out);
        }
      }
    }
    return out;
  }

  private static double middleY(Assembly assembly) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Assembly.Placed p : assembly.parts()) {
      if (Legs.stands(p)) {
        Vec3 foot = Legs.foot(p);
        low = Math.min(low, foot.y());
        high = Math.max(high, foot.y());
      }
    }
    return low <= high ? (low + high) / 2 : 0;
  }

  /** The face away from the middle of the chair. */
  private static Optional<Setback> outer(Assembly assembly, JointFit fit, double middle) {
    boolean front = fit.joint().at().y() < middle;
    String sideways = assembly.tenoned(fit.joint()).part().hand() == Hand.NONE ? "" : "outside";
    return fit.detail().reveal().stream()
        .flatMap(r -> r.sides().stream())
        .filter(s -> s.face().equals(front ? "front" : "back") || s.face().equals(sideways))
        .findFirst();
  }

  /** By how much the document itself wants the first end farther back than the second. */
  private static double wanted(Assembly assembly, Joint a, Joint b) {
    PartPlan plan = assembly.tenoned(a).part().plan();
    if (plan instanceof PartPlan.Straight s && s.placement() instanceof PartPlan.Placement.Run) {
      return 0;
    }
    Optional<Reveal> reveal = reveal(plan);
    if (reveal.isEmpty() || reveal.get().from() != Reveal.From.OUTSIDE) {
      return Double.NaN;
    }
    double difference = reveal.get().by().first() - reveal.get().by().second();
    return a.atStart() && !b.atStart() ? difference : -difference;
  }

  private static Optional<Reveal> reveal(PartPlan plan) {
    if (plan instanceof PartPlan.Straight s && s.placement() instanceof Between between) {
      return between.reveal();
    } else if (plan instanceof PartPlan.Sawn s && s.placement() instanceof Between between) {
      return between.reveal();
    }
    return Optional.empty();
  }

  private static void compare(
      Assembly assembly,
      Joint a,
      Joint b,
      Setback one,
      Setback other,
      double wanted,
      List<Finding> out) {
    Limit limit = Limit.of(assembly.chair().design(), FitLimit.REVEAL_DIFFERENCE);
    double off = Math.abs(one.by() - other.by() - wanted);
    // Not a number: the document says nothing of a reveal, so none is to be kept.
    if (!(off > limit.value() + Tolerances.contact())) {
      return;
    }
    Part part = assembly.tenoned(a).part();
    out.add(
        Found.of("reveal-uneven", Severity.LOOK)
            .part(part)
            .joint(a)
            .joint(b)
            .atMost(limit.value(), off)
            .source(limit.source())
            .says(
                part.label()
                    + " stands "
                    + stands(assembly, one)
                    + " at \""
                    + a.label()
                    + "\" and "
                    + stands(assembly, other)
                    + " at \""
                    + b.label()
                    + "\"; move each mortise "
                    + assembly.gap(off / 2)
                    + " towards the other, or one by "
                    + assembly.gap(off)
                    + ".",
                part.pointer(),
                a.at()));
  }

  private static String stands(Assembly assembly, Setback s) {
    return assembly.gap(Math.abs(s.by())) + (s.by() < 0 ? " proud" : " back");
  }
}
