package dryfit.build;

import dryfit.document.PartPlan;
import dryfit.document.PartPlan.Path;
import dryfit.document.PartPlan.Spot2;
import dryfit.document.PartPlan.Station;
import dryfit.document.PartPlan.Step;
import dryfit.geometry.Vec2;
import dryfit.measure.Tolerances;
import dryfit.solid.Csg;
import dryfit.solid.Turned;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Parts turned about their length. */
final class TurnedForm {
  private TurnedForm() {}

  /** The shape in its own frame, from x = 0 to {@code length}, ends left longer as told. */
  static Csg shape(PartPlan.Turned plan, double length, double longAtStart, double longAtEnd) {
    List<Vec2> profile = profile(plan, length);
    Vec2 first = profile.get(0);
    Vec2 last = profile.get(profile.size() - 1);
    List<Vec2> all = new ArrayList<>();
    addOnce(all, new Vec2(first.x() - longAtStart, first.y()));
    profile.forEach(p -> addOnce(all, p));
    addOnce(all, new Vec2(last.x() + longAtEnd, last.y()));
    double widest = all.stream().mapToDouble(Vec2::y).max().orElse(0);
    return revolved(all, widest, plan.common().pointer());
  }

  static Csg cylinder(double radius, double x0, double x1, String origin) {
    return revolved(List.of(new Vec2(x0, radius), new Vec2(x1, radius)), radius, origin);
  }

  /** How many facets a round part is drawn with; nothing for a part that is not round. */
  static OptionalInt facets(PartPlan plan, double length) {
    if (plan instanceof PartPlan.Straight straight
        && straight.section() instanceof PartPlan.Section.Round round) {
      return OptionalInt.of(OutlineCurves.facets(round.diameter() / 2));
    } else if (plan instanceof PartPlan.Turned turned) {
      double widest = profile(turned, length).stream().mapToDouble(Vec2::y).max().orElse(0);
      return OptionalInt.of(OutlineCurves.facets(widest));
    }
    return OptionalInt.empty();
  }

  private static Csg revolved(List<Vec2> profile, double widest, String origin) {
    return Turned.of(
        profile.stream().map(p -> new Turned.Ring(p.x(), p.y())).toList(),
        OutlineCurves.facets(widest),
        origin);
  }

  /** (along, radius) from 0 to the length; what is not said is as at the nearest station. */
  private static List<Vec2> profile(PartPlan.Turned plan, double length) {
    List<Station> stations = plan.stations();
    List<Vec2> drawn = new ArrayList<>();
    if (plan.smooth() && stations.size() > 2) {
      Station s = stations.get(0);
      List<Spot2> rest =
          stations.subList(1, stations.size()).stream()
              .map(p -> new Spot2(p.along(), p.diameter() / 2))
              .toList();
      drawn.addAll(
          OutlineCurves.points(
              new Path(
                  new Spot2(s.along(), s.diameter() / 2),
                  List.of(new Step.Curve(rest)),
                  plan.common().pointer())));
    } else {
      stations.forEach(s -> drawn.add(new Vec2(s.along(), s.diameter() / 2)));
    }
    List<Vec2> out = new ArrayList<>();
    addOnce(out, new Vec2(0, radiusAt(drawn, 0)));
    drawn.stream().filter(p -> p.x() > 0 && p.x() < length).forEach(p -> addOnce(out, p));
    addOnce(out, new Vec2(length, radiusAt(drawn, length)));
    return plan.details().isEmpty() ? out : TurnedDetails.on(out, plan, length);
  }

  static double radiusAt(List<Vec2> drawn, double x) {
    Vec2 before = drawn.get(0);
    if (x <= before.x()) {
      return before.y();
    }
    for (Vec2 p : drawn) {
      if (p.x() >= x) {
        double span = p.x() - before.x();
        return span <= 0 ? p.y() : before.y() + (p.y() - before.y()) * (x - before.x()) / span;
      }
      before = p;
    }
    return before.y();
  }

  private static void addOnce(List<Vec2> points, Vec2 p) {
    if (points.isEmpty() || points.get(points.size() - 1).distance(p) > Tolerances.coincident()) {
      points.add(p);
    }
  }
}
