package dryfit.build;

import dryfit.document.PartPlan.Detail;
import dryfit.document.PartPlan.Path;
import dryfit.document.PartPlan.Spot2;
import dryfit.document.PartPlan.Step;
import dryfit.document.PartPlan.Turned;
import dryfit.geometry.Vec2;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/** Puts beads, coves and fillets on the profile of a turning, each on the radius it finds there. */
final class TurnedDetails {
  private TurnedDetails() {}

  /**
   * @param profile (along, radius), along rising
   * @return the profile with the details in their places
   */
  static List<Vec2> on(List<Vec2> profile, Turned plan, double length) {
    List<Vec2> out = new ArrayList<>();
    int next = 0;
    for (Detail detail : plan.details()) {
      double from = detail.at() - detail.wide() / 2;
      double to = detail.at() + detail.wide() / 2;
      if (from < 0 || to > length) {
        throw Refusal.of(
            "out-of-range",
            detail.pointer() + "/at",
            "this runs out of the end of " + plan.name(),
            "move it further in");
      }
      while (next < profile.size() && profile.get(next).x() < from - Tolerances.coincident()) {
        out.add(profile.get(next++));
      }
      out.addAll(
          points(
              detail,
              new Vec2(from, TurnedForm.radiusAt(profile, from)),
              new Vec2(to, TurnedForm.radiusAt(profile, to)),
              plan));
      while (next < profile.size() && profile.get(next).x() <= to + Tolerances.coincident()) {
        next++;
      }
    }
    out.addAll(profile.subList(next, profile.size()));
    return out;
  }

  private static List<Vec2> points(Detail detail, Vec2 a, Vec2 b, Turned plan) {
    double rise = detail.kind() == Detail.Kind.COVE ? -detail.high() : detail.high();
    if (Math.min(a.y(), b.y()) + rise <= Tolerances.coincident()) {
      throw Refusal.of(
          "out-of-range",
          detail.pointer() + "/deep",
          "the cove cuts " + plan.name() + " in two",
          "make it less deep");
    }
    if (detail.kind() == Detail.Kind.FILLET) {
      return List.of(a, new Vec2(a.x(), a.y() + rise), new Vec2(b.x(), b.y() + rise), b);
    }
    return OutlineCurves.points(
        new Path(
            new Spot2(a.x(), a.y()),
            List.of(new Step.Arc(new Spot2(b.x(), b.y()), rise)),
            detail.pointer()));
  }
}
