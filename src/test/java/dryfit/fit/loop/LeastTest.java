package dryfit.fit.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Least squares, against examples that others have published with their answers. */
class LeastTest {
  private static final double[] ONE_SIDE = {0};

  private static double slopeThroughOrigin(double[] x, double[] y) {
    Least least = new Least(1, 1);
    for (int i = 0; i < x.length; i++) {
      least.add(1, new double[] {x[i]}, new double[] {y[i]});
    }
    return least.solve()[0][0];
  }

  @Test
  void linesThroughTheOriginHaveTheirCertifiedSlopes() {
    // NIST Statistical Reference Datasets, linear regression, NoInt1 and NoInt2; data and certified
    // values from memory.
    double[] x = new double[11];
    double[] y = new double[11];
    for (int i = 0; i < x.length; i++) {
      x[i] = 60 + i;
      y[i] = 130 + i;
    }
    assertThat(slopeThroughOrigin(x, y)).isCloseTo(2.07438016528926, within(1e-13));
    assertThat(slopeThroughOrigin(new double[] {4, 5, 6}, new double[] {3, 4, 4}))
        .isCloseTo(0.727272727272727, within(1e-14));
  }

  @Test
  void theLineNearestThreePointsIsTheOneOfTheTextbook() {
    // G. Strang, Introduction to Linear Algebra, section 4.3, example 1 (from memory): the line
    // nearest (0, 6), (1, 0), (2, 0) is 5 - 3 t.
    Least least = new Least(2, 1);
    least.add(1, new double[] {1, 0}, new double[] {6});
    least.add(1, new double[] {1, 1}, ONE_SIDE);
    least.add(1, new double[] {1, 2}, ONE_SIDE);
    assertThat(least.solve()[0]).containsExactly(new double[] {5, -3}, within(1e-13));
  }

  @Test
  void anEquationOfWeightTwoCountsAsFourOfWeightOne() {
    // The middle of 0 and, four times, 10.
    Least least = new Least(1, 1);
    least.add(1, new double[] {1}, ONE_SIDE);
    least.add(2, new double[] {1}, new double[] {10});
    assertThat(least.solve()[0][0]).isCloseTo(8, within(1e-13));
  }
}
