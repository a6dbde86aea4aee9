package dryfit.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FlatHullTest {
  @Test
  void keepsTheCornersOfASquareWhoseSidesAreNotQuiteStraight() {
    // Points on the sides stand in or out by a few units in the last place, as computed ones do.
    List<double[]> points = new ArrayList<>();
    double x = 13.1;
    for (int i = 0; i <= 6; i++) {
      double y = -15 + 5 * i;
      points.add(new double[] {x + (i % 3 - 1) * Math.ulp(x), y});
      points.add(new double[] {-x - (i % 2) * Math.ulp(x), y});
    }
    assertThat(corners(points)).containsExactlyInAnyOrder("13 15", "-13 15", "13 -15", "-13 -15");
  }

  @Test
  void leavesOutWhatIsInside() {
    assertThat(
            corners(
                List.of(
                    new double[] {0, 0},
                    new double[] {10, 0},
                    new double[] {4, 2},
                    new double[] {5, 0},
                    new double[] {0, 10})))
        .containsExactly("0 0", "10 0", "0 10");
  }

  private static List<String> corners(List<double[]> points) {
    return FlatHull.of(points).stream()
        .map(p -> Math.round(p[0]) + " " + Math.round(p[1]))
        .toList();
  }
}
