package dryfit.fit.loop;

/**
 * Linear equations, more than there are unknowns, each with a weight, solved in the sense of least
 * squares for several right-hand sides at once. The matrix of sums of products is taken apart by A.
 * L. Cholesky's method (from memory); the weights used here span six powers of ten, so that it
 * keeps some four of sixteen digits: of a part that moves by 10 mm, a thousandth of a millimetre.
 */
final class Least {
  private final int n;
  private final int sides;
  private final double[][] square;
  private final double[][] right;

  /**
   * @param n unknowns
   * @param sides right-hand sides
   */
  Least(int n, int sides) {
    this.n = n;
    this.sides = sides;
    this.square = new double[n][n];
    this.right = new double[sides][n];
  }

  /**
   * Adds an equation.
   *
   * @param factors of the unknowns
   * @param wanted what they should come to, for each right-hand side
   */
  void add(double weight, double[] factors, double[] wanted) {
    double w = weight * weight;
    for (int i = 0; i < n; i++) {
      if (factors[i] != 0) {
        for (int s = 0; s < sides; s++) {
          right[s][i] += w * factors[i] * wanted[s];
        }
        for (int k = 0; k <= i; k++) {
          square[i][k] += w * factors[i] * factors[k];
        }
      }
    }
  }

  /**
   * The unknowns, for each right-hand side.
   *
   * @throws IllegalStateException if the equations leave an unknown open
   */
  double[][] solve() {
    double[][] low = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k <= i; k++) {
        double sum = square[i][k];
        for (int m = 0; m < k; m++) {
          sum -= low[i][m] * low[k][m];
        }
        if (i == k && !(sum > 0)) {
          throw new IllegalStateException("an unknown is left open");
        }
        low[i][k] = i == k ? Math.sqrt(sum) : sum / low[k][k];
      }
    }
    double[][] x = new double[sides][];
    for (int s = 0; s < sides; s++) {
      x[s] = back(low, right[s]);
    }
    return x;
  }

  private double[] back(double[][] low, double[] wanted) {
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = wanted[i];
      for (int k = 0; k < i; k++) {
        sum -= low[i][k] * y[k];
      }
      y[i] = sum / low[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = y[i];
      for (int k = i + 1; k < n; k++) {
        sum -= low[k][i] * y[k];
      }
      y[i] = sum / low[i][i];
    }
    return y;
  }
}
