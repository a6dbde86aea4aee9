package dryfit.measure;

/**
 * The natural cubic spline through values: the curve a thin batten takes when it is bent round
 * nails, one coordinate of it (C. de Boor, A Practical Guide to Splines, 1978, from memory). It is
 * straight beyond its two ends, so its second derivative there is 0.
 */
public final class NaturalSpline {
  private final double[] at;
  private final double[] values;
  private final double[] bends;

  /**
   * @param at where the values stand, rising, two or more
   * @param values as many
   */
  public NaturalSpline(double[] at, double[] values) {
    this.at = at.clone();
    this.values = values.clone();
    this.bends = bends(at, values);
  }

  /** Second derivatives at the nails; a tridiagonal system, solved by Thomas's elimination. */
  private static double[] bends(double[] at, double[] y) {
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

  /** The second derivative at nail {@code i}. */
  public double bend(int i) {
    return bends[i];
  }

  /** The value at a share from 0 to 1 of the way from nail {@code i} to the next. */
  public double value(int i, double share) {
    double rest = 1 - share;
    double span = at[i + 1] - at[i];
    return rest * values[i]
        + share * values[i + 1]
        + span
            * span
            / 6
            * ((rest * rest * rest - rest) * bends[i]
                + (share * share * share - share) * bends[i + 1]);
  }

  /** The first derivative at a share from 0 to 1 of the way from nail {@code i} to the next. */
  public double slope(int i, double share) {
    double rest = 1 - share;
    double span = at[i + 1] - at[i];
    return (values[i + 1] - values[i]) / span
        + span / 6 * ((1 - 3 * rest * rest) * bends[i] + (3 * share * share - 1) * bends[i + 1]);
  }
}
