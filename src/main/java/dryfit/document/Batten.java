package dryfit.document;

import dryfit.document.PartPlan.Spot2;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * The smooth curve through points: the natural cubic spline over their chord lengths, the shape of
 * a thin batten bent round nails (C. de Boor, A Practical Guide to Splines, 1978, from memory).
 */
final class Batten {
  private final List<Spot2> nails;
  private final double[] at;
  private final double[] bendU;
  private final double[] bendV;

  /**
   * @param points two or more, no two in a row the same
   */
  Batten(List<Spot2> points) {
    nails = List.copyOf(points);
    at = new double[points.size()];
    for (int i = 1; i < at.length; i++) {
      Spot2 a = points.get(i - 1);
      Spot2 b = points.get(i);
      at[i] = at[i - 1] + Math.hypot(b.u() - a.u(), b.v() - a.v());
    }
    bendU = bends(points.stream().mapToDouble(Spot2::u).toArray());
    bendV = bends(points.stream().mapToDouble(Spot2::v).toArray());
  }

  /** Second derivatives at the nails, none at the two ends; a tridiagonal system (Thomas). */
  private double[] bends(double[] y) {
    int n = at.length - 1;
    double[] bend = new double[n + 1];
    double[] upper = new double[n + 1];
    double[] right = new double[n + 1];
    for (int i = 1; i < n; i++) {
      double before = at[i] - at[i - 1];
      double after = at[i + 1] - at[i];
      double turn = 6 * ((y[i + 1] - y[i]) / after - (y[i] - y[i - 1]) / before);
      double pivot = 2 * (before + after) - before * upper[i - 1];
      upper[i] = after / pivot;
      right[i] = (turn - before * right[i - 1]) / pivot;
    }
    for (int i = n - 1; i > 0; i--) {
      bend[i] = right[i] - upper[i] * bend[i + 1];
    }
    return bend;
  }

  /** The point at a share from 0 to 1 of the way from nail i to the next. */
  Spot2 point(int i, double share) {
    Spot2 a = nails.get(i);
    Spot2 b = nails.get(i + 1);
    return new Spot2(cubic(i, share, a.u(), b.u(), bendU), cubic(i, share, a.v(), b.v(), bendV));
  }

  private double cubic(int i, double share, double from, double to, double[] bend) {
    double rest = 1 - share;
    double span = at[i + 1] - at[i];
    return rest * from
        + share * to
        + span
            * span
            / 6
            * ((rest * rest * rest - rest) * bend[i]
                + (share * share * share - share) * bend[i + 1]);
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
