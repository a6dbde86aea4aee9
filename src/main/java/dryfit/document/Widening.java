package dryfit.document;

import dryfit.document.PartPlan.Path;
import dryfit.document.PartPlan.Spot2;
import dryfit.document.PartPlan.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the second edge of a band from the first and a table of widths.
 *
 * <p>Positions in the table count along whichever axis of the view the edge runs further; the width
 * is laid off along the other axis. The second edge keeps the steps of the first, moved across,
 * with further points where the table has an entry between two of them. Between entries the width
 * runs straight; beyond the first and last it stays. So the band is as wide as the table says at
 * every entry and at every point of the first edge; between those each edge is its own smooth
 * curve.
 *
 * @param widths (position, width), positions rising
 * @param sense +1 to move towards the positive side of the other axis, -1 to the negative
 */
record Widening(List<Spot2> widths, int sense) {

  Path across(Path edge, String pointer) {
    boolean alongU = runsFurtherAlongU(edge);
    List<Step> steps = new ArrayList<>();
    Spot2 from = edge.start();
    for (Step step : edge.steps()) {
      if (step instanceof Step.Line line) {
        List<Spot2> ends = Batten.withoutRepeats(List.of(from, line.to()));
        for (Spot2 point : withStations(ends, alongU)) {
          steps.add(new Step.Line(moved(point, alongU)));
        }
        from = line.to();
      } else if (step instanceof Step.Curve curve) {
        List<Spot2> through = new ArrayList<>(List.of(from));
        through.addAll(curve.through());
        List<Spot2> points = withStations(Batten.withoutRepeats(through), alongU);
        steps.add(new Step.Curve(points.stream().map(p -> moved(p, alongU)).toList()));
        from = through.get(through.size() - 1);
      } else if (step instanceof Step.Arc arc) {
        // Under a width that varies an arc is no longer an arc; the three points keep its bow.
        Spot2 middle = crown(from, arc);
        steps.add(new Step.Curve(List.of(moved(middle, alongU), moved(arc.to(), alongU))));
        from = arc.to();
      }
    }
    return new Path(moved(edge.start(), alongU), steps, pointer);
  }

  private static boolean runsFurtherAlongU(Path edge) {
    List<Spot2> points = new ArrayList<>(List.of(edge.start()));
    for (Step step : edge.steps()) {
      if (step instanceof Step.Line line) {
        points.add(line.to());
      } else if (step instanceof Step.Curve curve) {
        points.addAll(curve.through());
      } else if (step instanceof Step.Arc arc) {
        points.add(arc.to());
      }
    }
    var u = points.stream().mapToDouble(Spot2::u).summaryStatistics();
    var v = points.stream().mapToDouble(Spot2::v).summaryStatistics();
    return u.getMax() - u.getMin() > v.getMax() - v.getMin();
  }

  private Spot2 moved(Spot2 point, boolean alongU) {
    double by = sense * width(Batten.coordinate(point, alongU));
    return alongU ? new Spot2(point.u(), point.v() + by) : new Spot2(point.u() + by, point.v());
  }

  private double width(double position) {
    if (position <= widths.get(0).u()) {
      return widths.get(0).v();
    }
    for (int i = 1; i < widths.size(); i++) {
      Spot2 before = widths.get(i - 1);
      Spot2 after = widths.get(i);
      if (position <= after.u()) {
        double share = (position - before.u()) / (after.u() - before.u());
        return before.v() + share * (after.v() - before.v());
      }
    }
    return widths.get(widths.size() - 1).v();
  }

  /** The points after the first, and between them those where the table has an entry. */
  private List<Spot2> withStations(List<Spot2> points, boolean alongU) {
    List<Spot2> all = new ArrayList<>();
    Batten batten = new Batten(points);
    for (int i = 0; i + 1 < points.size(); i++) {
      double a = Batten.coordinate(points.get(i), alongU);
      double b = Batten.coordinate(points.get(i + 1), alongU);
      List<Double> between = new ArrayList<>();
      for (Spot2 station : widths) {
        if ((station.u() - a) * (station.u() - b) < 0) {
          between.add(a < b ? between.size() : 0, station.u());
        }
      }
      for (double at : between) {
        all.add(batten.pointWhere(i, at, alongU));
      }
      all.add(points.get(i + 1));
    }
    return all;
  }

  /** The highest point of an arc over its chord, to the left of the way it runs. */
  private static Spot2 crown(Spot2 from, Step.Arc arc) {
    double du = arc.to().u() - from.u();
    double dv = arc.to().v() - from.v();
    double length = Math.hypot(du, dv);
    return new Spot2(
        (from.u() + arc.to().u()) / 2 - dv / length * arc.rise(),
        (from.v() + arc.to().v()) / 2 + du / length * arc.rise());
  }
}
