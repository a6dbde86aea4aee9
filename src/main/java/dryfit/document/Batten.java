package dryfit.document;

import dryfit.document.PartPlan.Spot2;
import dryfit.measure.NaturalSpline;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/** The smooth curve through points: the {@link NaturalSpline} over their chord lengths. */
final class Batten {
  private final List<Spot2> nails;
  private final NaturalSpline u;
  private final NaturalSpline v;

  /**
   * @param points two or more, no two in a row the same
   */
  Batten(List<Spot2> points) {
    nails = List.copyOf(points);
    double[] at = new double[points.size()];
    for (int i = 1; i < at.length; i++) {
      Spot2 a = points.get(i - 1);
      Spot2 b = points.get(i);
      at[i] = at[i - 1] + Math.hypot(b.u() - a.u(), b.v() - a.v());
    }
    u = new NaturalSpline(at, points.stream().mapToDouble(Spot2::u).toArray());
    v = new NaturalSpline(at, points.stream().mapToDouble(Spot2::v).toArray());
  }

  /** The point at a share from 0 to 1 of the way from nail i to the next. */
  Spot2 point(int i, double share) {
    return new Spot2(u.value(i, share), v.value(i, share));
  }

  /**
   * The point between nail i and the next whose coordinate is a value that lies between theirs.
   *
   * @param alongU which coordinate
   */
  Spot2 pointWhere(int i, double value, boolean alongU) {
    boolean rising = coordinate(nails.get(i + 1), alongU) > coordinate(nails.get(i), alongU);
    double low = 0;
    double high = 1;
    Spot2 middle = point(i, 0.5);
    // Sixty halvings bring any span down to the last bit of a double.
    for (int k = 0; k < 60; k++) {
      double share = (low + high) / 2;
      middle = point(i, share);
      if ((coordinate(middle, alongU) < value) == rising) {
        low = share;
      } else {
        high = share;
      }
    }
    // Halving leaves the last bit open; the value itself is known.
    return alongU ? new Spot2(value, middle.v()) : new Spot2(middle.u(), value);
  }

  static double coordinate(Spot2 point, boolean alongU) {
    return alongU ? point.u() : point.v();
  }

  /** The points without those that repeat the one before. */
  static List<Spot2> withoutRepeats(List<Spot2> points) {
    List<Spot2> kept = new ArrayList<>();
    for (Spot2 point : points) {
      Spot2 last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
      if (last == null
          || Math.hypot(point.u() - last.u(), point.v() - last.v()) > Tolerances.coincident()) {
        kept.add(point);
      }
    }
    return kept;
  }
}
