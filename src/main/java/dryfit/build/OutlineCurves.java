package dryfit.build;

import dryfit.document.PartPlan.Outline;
import dryfit.document.PartPlan.Path;
import dryfit.document.PartPlan.Spot2;
import dryfit.document.PartPlan.Step;
import dryfit.geometry.Vec2;
import dryfit.measure.NaturalSpline;
import dryfit.measure.Tolerances;
import dryfit.solid.Turned;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Turns drawn edges into points, so close to the curve that no chord stands off it by more than
 * {@link Tolerances#facet}.
 *
 * <p>A smooth curve is the natural cubic spline through its points over their chord lengths: the
 * shape a thin batten takes when it is bent round nails.
 */
final class OutlineCurves {
  private OutlineCurves() {}

  /** The closed loop of an outline, no point twice in a row. */
  static List<Vec2> loop(Outline outline) {
    if (outline instanceof Outline.Closed closed) {
      return cleaned(points(closed.path()));
    } else if (outline instanceof Outline.Band band) {
      return loop(points(band.first()), points(band.second()));
    } else if (outline instanceof Outline.Circle circle) {
      Vec2 middle = vec(circle.middle());
      return circle(circle.diameter() / 2).stream()
          .map(p -> new Vec2(p.x() + middle.x(), p.y() + middle.y()))
          .toList();
    }
    throw new IllegalStateException("unknown outline " + outline);
  }

  /** The loop out along one edge and back along the other. */
  static List<Vec2> loop(List<Vec2> first, List<Vec2> second) {
    List<Vec2> all = new ArrayList<>(first);
    List<Vec2> back = new ArrayList<>(second);
    Collections.reverse(back);
    all.addAll(back);
    return cleaned(all);
  }

  /** Points of a circle about the origin, inscribed. */
  static List<Vec2> circle(double radius) {
    int n = facets(radius);
    List<Vec2> points = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * i / n;
      points.add(new Vec2(radius * Math.cos(a), radius * Math.sin(a)));
    }
    return points;
  }

  /** How many flat facets stand for a circle: chord error within the facet tolerance. */
  static int facets(double radius) {
    return Turned.facetsFor(radius, Tolerances.facet());
  }

  /** The points of an edge, its start and end among them. */
  static List<Vec2> points(Path path) {
    List<Vec2> points = new ArrayList<>();
    points.add(vec(path.start()));
    for (Step step : path.steps()) {
      Vec2 at = points.get(points.size() - 1);
      if (step instanceof Step.Line line) {
        points.add(vec(line.to()));
      } else if (step instanceof Step.Arc arc) {
        addArc(points, at, vec(arc.to()), arc.rise());
      } else if (step instanceof Step.Curve curve) {
        List<Vec2> knots = new ArrayList<>();
        knots.add(at);
        curve.through().stream()
            .map(OutlineCurves::vec)
            .filter(p -> p.distance(knots.get(knots.size() - 1)) > Tolerances.coincident())
            .forEach(knots::add);
        addSpline(points, knots);
      }
    }
    return points;
  }

  private static Vec2 vec(Spot2 p) {
    return new Vec2(p.u(), p.v());
  }

  private static void addArc(List<Vec2> points, Vec2 from, Vec2 to, double rise) {
    double chord = from.distance(to);
    if (Math.abs(rise) <= Tolerances.coincident() || chord <= Tolerances.coincident()) {
      points.add(to);
      return;
    }
    double radius = (chord * chord / 4 + rise * rise) / (2 * Math.abs(rise));
    double sweep = 4 * Math.atan2(2 * Math.abs(rise), chord);
    int n =
        Math.max(
            2,
            (int) Math.ceil(sweep / (2 * Math.acos(Math.max(0, 1 - Tolerances.facet() / radius)))));
    // Unit vectors along the chord and to its left; the arc is drawn in them.
    double ux = (to.x() - from.x()) / chord;
    double uy = (to.y() - from.y()) / chord;
    double bow = Math.signum(rise);
    double centre = bow * (Math.abs(rise) - radius);
    for (int i = 1; i < n; i++) {
      double a = -sweep / 2 + sweep * i / n;
      double along = chord / 2 + radius * Math.sin(a);
      double left = centre + bow * radius * Math.cos(a);
      points.add(new Vec2(from.x() + along * ux - left * uy, from.y() + along * uy + left * ux));
    }
    points.add(to);
  }

  private static void addSpline(List<Vec2> points, List<Vec2> knots) {
    int n = knots.size() - 1;
    if (n < 1) {
      return;
    }
    double[] t = new double[n + 1];
    for (int i = 1; i <= n; i++) {
      t[i] = t[i - 1] + knots.get(i).distance(knots.get(i - 1));
    }
    NaturalSpline x = new NaturalSpline(t, knots.stream().mapToDouble(Vec2::x).toArray());
    NaturalSpline y = new NaturalSpline(t, knots.stream().mapToDouble(Vec2::y).toArray());
    for (int i = 0; i < n; i++) {
      int pieces = pieces(t[i + 1] - t[i], x, y, i);
      for (int k = 1; k < pieces; k++) {
        double share = (double) k / pieces;
        points.add(new Vec2(x.value(i, share), y.value(i, share)));
      }
      points.add(knots.get(i + 1));
    }
  }

  /** Pieces a span needs: a chord over h of a curve with second derivative m is off by m h²/8. */
  private static int pieces(double h, NaturalSpline x, NaturalSpline y, int i) {
    double m = Math.max(Math.hypot(x.bend(i), y.bend(i)), Math.hypot(x.bend(i + 1), y.bend(i + 1)));
    return Math.max(1, (int) Math.ceil(h * Math.sqrt(m / (8 * Tolerances.facet()))));
  }

  /** Without points that repeat the one before, or that lie straight between their neighbours. */
  static List<Vec2> cleaned(List<Vec2> loop) {
    List<Vec2> out = new ArrayList<>();
    for (Vec2 p : loop) {
      if (out.isEmpty() || out.get(out.size() - 1).distance(p) > Tolerances.coincident()) {
        out.add(p);
      }
    }
    while (out.size() > 1
        && out.get(0).distance(out.get(out.size() - 1)) <= Tolerances.coincident()) {
      out.remove(out.size() - 1);
    }
    return withoutStraightCorners(out);
  }

  private static List<Vec2> withoutStraightCorners(List<Vec2> loop) {
    List<Vec2> out = new ArrayList<>();
    int n = loop.size();
    for (int i = 0; i < n; i++) {
      Vec2 a = loop.get((i + n - 1) % n);
      Vec2 b = loop.get(i);
      Vec2 c = loop.get((i + 1) % n);
      double off = (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
      if (Math.abs(off)
          > Tolerances.coincident() * Math.max(a.distance(c), Tolerances.coincident())) {
        out.add(b);
      }
    }
    return out;
  }
}
