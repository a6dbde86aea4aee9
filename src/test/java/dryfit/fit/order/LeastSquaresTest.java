package dryfit.fit.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Least squares without a number below zero. */
class LeastSquaresTest {
  /** Rows of factors that are nearly the same: rounding once turned round here without an end. */
  private static final double[][] ALIKE = {
    {-1.0, -1.0, 1.0, 1.0000460574437853, -1.0, -1.0000460574437853},
    {
      -1.0,
      -1.0000230287218927,
      -1.0000921148875708,
      -1.000069086165678,
      -1.000138172331356,
      -1.000138172331356
    },
    {1.0, 1.0, 1.0, 1.0, 1.0, 1.0}
  };

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void equationsThatAreNearlyAlikeComeToAnEnd() {
    double[] x = LeastSquares.notNegative(ALIKE, new double[] {0, 0, 1}, 6);
    assertThat(Arrays.stream(x).allMatch(v -> v >= 0)).isTrue();
  }

  @Test
  void whatHasNoAnswerAboveZeroStaysAtZero() {
    double[] x = LeastSquares.notNegative(new double[][] {{1, 0}, {0, 1}}, new double[] {-1, 2}, 2);
    assertThat(x).containsExactly(0, 2);
  }
}
