package dryfit.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TriangulationTest {

  @Test
  void cornersInTheMiddleOfStraightSidesAreKept() {
    double[] xy = {0, 0, 1, 0, 2, 0, 3, 0, 3, 3, 2, 3, 1.5, 3, 0, 3, 0, 1};
    int[] t = Triangulation.of(xy, new int[][] {IntStream.range(0, 9).toArray()});
    assertFills(xy, t, 9, 7, 9);
  }

  @Test
  void triangleWithCornersOnEverySideIsFilledWithoutFlatTriangles() {
    double[] xy = {0, 0, 1, 0, 2, 0, 3, 0, 2, 1, 1, 2, 0, 3, 0, 2, 0, 1};
    int[] t = Triangulation.of(xy, new int[][] {IntStream.range(0, 9).toArray()});
    assertFills(xy, t, 9, 7, 4.5);
  }

  @Test
  void holesStayOpen() {
    double[] xy = {0, 0, 10, 0, 10, 10, 0, 10, 1, 1, 1, 3, 3, 3, 3, 1, 6, 6, 6, 8, 8, 8, 8, 6};
    int[] t = Triangulation.of(xy, new int[][] {{0, 1, 2, 3}, {4, 5, 6, 7}, {8, 9, 10, 11}});
    assertFills(xy, t, 12, 14, 92);
  }

  @Test
  void holeMayTouchTheOutlineInACorner() {
    double[] xy = {0, 0, 4, 0, 4, 4, 0, 4, 2, 2, 1, 3};
    int[] t = Triangulation.of(xy, new int[][] {{0, 1, 2, 3}, {0, 5, 4}});
    assertThat(t.length / 3).isEqualTo(5);
    assertThat(area(xy, t)).isCloseTo(16 - 2, within(1e-12));
  }

  @Test
  void twoHolesMayTouchInACorner() {
    double[] xy = {0, 0, 9, 0, 9, 9, 0, 9, 2, 4, 4, 5, 4, 3, 6, 5, 6, 3};
    int[] t = Triangulation.of(xy, new int[][] {{0, 1, 2, 3}, {4, 5, 6}, {6, 7, 8}});
    assertThat(area(xy, t)).isCloseTo(81 - 2 - 2, within(1e-12));
  }

  @Test
  void manyHolesInManyCornersAreFilledExactly() {
    Random random = new Random(20260101);
    int side = 6;
    int sides = 17;
    double[] xy = new double[8 + 2 * side * side * sides];
    System.arraycopy(new double[] {0, 0, 60, 0, 60, 60, 0, 60}, 0, xy, 0, 8);
    int[][] loops = new int[1 + side * side][];
    loops[0] = new int[] {0, 1, 2, 3};
    double open = 0;
    int next = 4;
    for (int h = 0; h < side * side; h++) {
      double r = 2 + 2 * random.nextDouble();
      double turn = random.nextDouble();
      loops[h + 1] = new int[sides];
      for (int k = 0; k < sides; k++) {
        double a = turn - 2 * Math.PI * k / sides;
        xy[2 * next] = 5 + 10 * (h % side) + r * Math.cos(a);
        xy[2 * next + 1] = 5 + 10 * (h / side) + r * Math.sin(a);
        loops[h + 1][k] = next++;
      }
      open += sides / 2.0 * r * r * Math.sin(2 * Math.PI / sides);
    }
    int[] t = Triangulation.of(xy, loops);
    assertFills(xy, t, next, next - 2 + 2 * side * side, 3600 - open);
  }

  @Test
  void facesAreFilledAsSeenFromOutsideWhicheverWayTheyFace() {
    double[] xyz = {0, 0, 0, 0, 2, 1, 0, 2, 3, 0, 0, 3};
    int[] t = Triangulation.ofFace(xyz, new int[][] {{0, 1, 2, 3}});
    assertThat(Triangulation.normal(xyz, new int[][] {Arrays.copyOf(t, 3)}).x()).isPositive();
    int[] back = Triangulation.ofFace(xyz, new int[][] {{3, 2, 1, 0}});
    assertThat(Triangulation.normal(xyz, new int[][] {Arrays.copyOf(back, 3)}).x()).isNegative();
  }

  @Test
  void anOutlineThatCrossesItselfIsRefused() {
    double[] xy = {0, 0, 4, 4, 4, 0, 1, 5};
    assertThatThrownBy(() -> Triangulation.of(xy, new int[][] {{0, 1, 2, 3}}))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Triangulation.of(xy, new int[][] {{3, 2, 1, 0}}))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void anOutlineWithoutAreaIsRefused() {
    double[] xy = {0, 0, 1, 1, 2, 2};
    assertThatThrownBy(() -> Triangulation.of(xy, new int[][] {{0, 1, 2}}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no area");
  }

  private static void assertFills(double[] xy, int[] t, int points, int triangles, double area) {
    assertThat(t.length / 3).isEqualTo(triangles);
    assertThat(Arrays.stream(t).distinct().count()).isEqualTo(points);
    for (int i = 0; i < t.length; i += 3) {
      assertThat(area(xy, Arrays.copyOfRange(t, i, i + 3))).isGreaterThan(1e-6);
    }
    assertThat(area(xy, t)).isCloseTo(area, within(1e-9));
  }

  private static double area(double[] xy, int[] t) {
    double sum = 0;
    for (int i = 0; i < t.length; i += 3) {
      sum +=
          Orientation.of(
                  xy[2 * t[i]],
                  xy[2 * t[i] + 1],
                  xy[2 * t[i + 1]],
                  xy[2 * t[i + 1] + 1],
                  xy[2 * t[i + 2]],
                  xy[2 * t[i + 2] + 1])
              / 2;
    }
    return sum;
  }
}
