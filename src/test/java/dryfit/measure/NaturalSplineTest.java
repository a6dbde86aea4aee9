package dryfit.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NaturalSplineTest {
  @Test
  void goesThroughItsNails() {
    double[] at = {0, 1, 2.5, 4};
    double[] values = {3, -1, 0.5, 2};
    NaturalSpline spline = new NaturalSpline(at, values);
    for (int i = 0; i < 3; i++) {
      assertThat(spline.value(i, 0)).isEqualTo(values[i]);
      assertThat(spline.value(i, 1)).isEqualTo(values[i + 1]);
    }
  }

  @Test
  void bendsAsWorkedOutByHand() {
    // Nails (0, 0), (1, 1), (2, 0). The one inner equation, 2 (1 + 1) m = 6 ((0-1)/1 - (1-0)/1),
    // gives m = -3; half way along the first span: 1/2 + (1/8 - 1/2)(-3)/6 = 0.6875.
    NaturalSpline spline = new NaturalSpline(new double[] {0, 1, 2}, new double[] {0, 1, 0});
    assertThat(spline.bend(0)).isZero();
    assertThat(spline.bend(1)).isCloseTo(-3, within(1e-14));
    assertThat(spline.bend(2)).isZero();
    assertThat(spline.value(0, 0.5)).isCloseTo(0.6875, within(1e-14));
    assertThat(spline.value(1, 0.5)).isCloseTo(0.6875, within(1e-14));
  }

  @Test
  void staysStraightOnAStraightLine() {
    NaturalSpline spline = new NaturalSpline(new double[] {0, 2, 3, 7}, new double[] {1, 5, 7, 15});
    for (int i = 0; i < 4; i++) {
      assertThat(spline.bend(i)).isCloseTo(0, within(1e-13));
    }
    assertThat(spline.value(2, 0.25)).isCloseTo(9, within(1e-13));
  }
}
