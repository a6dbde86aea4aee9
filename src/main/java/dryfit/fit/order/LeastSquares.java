package dryfit.fit.order;

import java.util.Arrays;

/**
 * The numbers, none below zero, that solve linear equations best in the sense of least squares: C.
 * L. Lawson and R. J. Hanson, "Solving Least Squares Problems", 1974, chapter 23 (from memory).
 */
final class LeastSquares {
  /** A slope smaller than this is level: rounding of sums of a few dozen unit products. */
  private static final double LEVEL = 1e-12;

  private final double[][] square;
  private final double[] right;
  private final int n;

  private LeastSquares(double[][] rows, double[] wanted, int n) {
    this.n = n;
    this.square = new double[n][n];
    this.right = new double[n];
    for (int r = 0; r < rows.length; r++) {
      for (int i = 0; i < n; i++) {
        right[i] += rows[r][i] * wanted[r];
        for (int k = 0; k < n; k++) {
          square[i][k] += rows[r][i] * rows[r][k];
        }
      }
    }
  }

  /**
   * @param rows the equations, {@code n} factors each
   * @param wanted what each should come to
   */
  static double[] notNegative(double[][] rows, double[] wanted, int n) {
    return new LeastSquares(rows, wanted, n).solve();
  }

  private double[] solve() {
    double[] x = new double[n];
    boolean[] in = new boolean[n];
    for (int round = 0; round < 3 * n; round++) {
      int best = steepest(x, in);
      if (best < 0) {
        break;
      }
      in[best] = true;
      double[] s = restricted(in);
      while (lowest(s, in) <= 0) {
        double step = Double.POSITIVE_INFINITY;
        int first = -1;
        for (int i = 0; i < n; i++) {
          double reached = x[i] > s[i] ? x[i] / (x[i] - s[i]) : 0;
          if (in[i] && s[i] <= 0 && reached < step) {
            step = reached;
            first = i;
          }
        }
        for (int i = 0; i < n; i++) {
          x[i] += step * (s[i] - x[i]);
          if (in[i] && x[i] <= LEVEL) {
            in[i] = false;
            x[i] = 0;
          }
        }
        // Out it goes, whatever rounding leaves of it: else large numbers would turn here for ever.
        x[first] = 0;
        in[first] = false;
        s = restricted(in);
      }
      x = s;
    }
    return x;
  }

  private int steepest(double[] x, boolean[] in) {
    int best = -1;
    double most = LEVEL;
    for (int i = 0; i < n; i++) {
      double slope = right[i];
      for (int k = 0; k < n; k++) {
        slope -= square[i][k] * x[k];
      }
      if (!in[i] && slope > most) {
        most = slope;
        best = i;
      }
    }
    return best;
  }

  private double lowest(double[] s, boolean[] in) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      least = in[i] ? Math.min(least, s[i]) : least;
    }
    return least;
  }

  /** The solution with only the chosen numbers, the others zero: Gauss with pivots. */
  private double[] restricted(boolean[] in) {
    double[][] a = new double[n][];
    for (int i = 0; i < n; i++) {
      a[i] = Arrays.copyOf(square[i], n + 1);
      a[i][n] = right[i];
    }
    boolean[] used = new boolean[n];
    int[] rowOf = new int[n];
    Arrays.fill(rowOf, -1);
    for (int c = 0; c < n; c++) {
      int pivot = -1;
      for (int r = 0; r < n && in[c]; r++) {
        if (in[r] && !used[r] && (pivot < 0 || Math.abs(a[r][c]) > Math.abs(a[pivot][c]))) {
          pivot = r;
        }
      }
      if (pivot < 0 || Math.abs(a[pivot][c]) <= LEVEL) {
        continue;
      }
      used[pivot] = true;
      rowOf[c] = pivot;
      for (int r = 0; r < n; r++) {
        if (r != pivot) {
          double factor = a[r][c] / a[pivot][c];
          for (int k = 0; k <= n; k++) {
            a[r][k] -= factor * a[pivot][k];
          }
        }
      }
    }
    double[] s = new double[n];
    for (int c = 0; c < n; c++) {
      s[c] = rowOf[c] < 0 ? 0 : a[rowOf[c]][n] / a[rowOf[c]][c];
    }
    return s;
  }
}
