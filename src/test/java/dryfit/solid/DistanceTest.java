package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DistanceTest {
  private static final Convex CUBE = OverlapTest.cells(0, 0, 0, 10, 10, 10).get(0);

  @Test
  void facesEdgesAndCornersApart() {
    assertLength(CUBE, box(13, 0, 0, 20, 10, 10), 3);
    assertLength(CUBE, box(13, 14, 0, 20, 20, 10), 5);
    assertLength(CUBE, box(12, 13, 16, 20, 20, 20), 7);
    assertLength(CUBE, box(10 + 1e-6, 2, 2, 20, 8, 8), 1e-6);
  }

  @Test
  void touchingAndOverlappingAreAtNoDistance() {
    assertLength(CUBE, box(10, 0, 0, 20, 10, 10), 0);
    assertLength(CUBE, box(10, 10, 10, 20, 20, 20), 0);
    assertLength(CUBE, box(5, 5, 5, 20, 20, 20), 0);
    assertLength(CUBE, box(4, 4, 4, 6, 6, 6), 0);
    assertLength(CUBE, box(-4, -4, -4, 16, 16, 16), 0);
    assertLength(CUBE, CUBE, 0);
  }

  @Test
  void nearestPointsAreOnBothAndThatFarApart() {
    Random random = new Random(14);
    for (int round = 0; round < 2000; round++) {
      Convex a = OverlapTest.randomCell(random);
      Convex b =
          OverlapTest.moved(OverlapTest.randomCell(random), new Vec3(random.nextInt(30), 0, 0));
      Distance quick = Distance.between(a, b);
      Distance slow = Features.distance(a, b);
      assertThat(quick.length()).isCloseTo(slow.length(), within(1e-9));
      for (Distance each : List.of(quick, slow)) {
        assertThat(each.onFirst().distance(each.onSecond())).isCloseTo(each.length(), within(1e-9));
        assertThat(farthestOutside(a, each.onFirst())).isLessThan(1e-9);
        assertThat(farthestOutside(b, each.onSecond())).isLessThan(1e-9);
      }
      if (quick.length() > 1e-6) {
        // The plane across the shortest line keeps all of each on its own side: nothing is nearer.
        Vec3 d = quick.onSecond().minus(quick.onFirst()).unit();
        assertThat(a.reach(d)).isLessThanOrEqualTo(d.dot(quick.onFirst()) + 1e-8);
        assertThat(-b.reach(d.negated())).isGreaterThanOrEqualTo(d.dot(quick.onSecond()) - 1e-8);
      }
    }
  }

  @Test
  void parallelFacesInAnyPositionKeepTheirGap() {
    Random random = new Random(15);
    for (int round = 0; round < 500; round++) {
      double gap = Math.pow(10, -6 + 7 * random.nextDouble());
      Frame frame = ConvexTest.frame(random);
      Convex a = box(-22, -22, 0, 22, 22, 640).placed(frame);
      Convex b = box(22 + gap, -6, 300 * random.nextDouble(), 60, 6, 500).placed(frame);
      assertThat(Distance.between(a, b).length()).isCloseTo(gap, within(1e-9));
    }
  }

  @Test
  void twoSolidsAreAsFarApartAsTheirNearestCells() {
    List<Convex> mortised =
        Cells.of(
            CellsTest.box(-22, -22, 0, 22, 22, 440)
                .minus(List.of(CellsTest.box(2, -6, 300, 40, 6, 360))));
    List<Convex> tenon = OverlapTest.cells(2.5, -5.9, 300.2, 60, 5.9, 359.8);
    assertThat(Distance.between(mortised, tenon, 5).orElseThrow().length())
        .isCloseTo(0.1, within(1e-9));
    List<Convex> rail = OverlapTest.cells(30, -5, 0, 60, 5, 40);
    assertThat(Distance.between(mortised, rail, 8).orElseThrow().length())
        .isCloseTo(8, within(1e-9));
    assertThat(Distance.between(mortised, rail, 7.999)).isEmpty();
    assertThat(Distance.between(mortised, List.of(), Double.POSITIVE_INFINITY)).isEmpty();
  }

  @Test
  void theNearestPairOfManyIsFound() {
    Random random = new Random(16);
    for (int round = 0; round < 50; round++) {
      List<Convex> a = cloud(random, 0);
      List<Convex> b = cloud(random, 70);
      double least = Double.POSITIVE_INFINITY;
      for (Convex one : a) {
        for (Convex other : b) {
          least = Math.min(least, Features.distance(one, other).length());
        }
      }
      assertThat(Distance.between(a, b, Double.POSITIVE_INFINITY).orElseThrow().length())
          .isCloseTo(least, within(1e-9));
    }
  }

  @Test
  void aPolygonIsMeasuredFromBothItsSides() {
    List<Vec3> square =
        List.of(new Vec3(0, 0, 14), new Vec3(9, 0, 14), new Vec3(9, 9, 14), new Vec3(0, 9, 14));
    assertThat(Distance.toPolygon(CUBE, square).length()).isCloseTo(4, within(1e-9));
    assertThat(Distance.toPolygon(box(0, 0, 20, 5, 5, 30), square).length())
        .isCloseTo(6, within(1e-9));
    assertThat(Distance.toPolygon(box(12, 13, 0, 20, 20, 30), square).length())
        .isCloseTo(5, within(1e-9));
    assertThat(Distance.toPolygon(box(2, 2, 13, 20, 20, 30), square).length()).isZero();
    assertThat(Distance.toPolygon(box(2, 2, 14, 20, 20, 30), square).length()).isLessThan(1e-9);
    assertThat(Distance.toPolygon(box(-9, -9, 0, 20, 20, 30), square).length()).isZero();
  }

  @Test
  void aPolygonWithoutAreaIsRefused() {
    List<Vec3> line = List.of(new Vec3(0, 0, 10), new Vec3(5, 0, 10), new Vec3(9, 0, 10));
    assertThatThrownBy(() -> Distance.toPolygon(CUBE, line))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static List<Convex> cloud(Random random, double away) {
    return random
        .ints(12, 0, 40)
        .mapToObj(i -> OverlapTest.moved(OverlapTest.randomCell(random), new Vec3(away, i, 40 - i)))
        .toList();
  }

  private static void assertLength(Convex a, Convex b, double expected) {
    assertThat(Distance.between(a, b).length()).isCloseTo(expected, within(1e-9));
    assertThat(Distance.between(b, a).length()).isCloseTo(expected, within(1e-9));
    assertThat(Features.distance(a, b).length()).isCloseTo(expected, within(1e-9));
  }

  private static double farthestOutside(Convex cell, Vec3 p) {
    return cell.planes().stream().mapToDouble(plane -> plane.height(p)).max().orElseThrow();
  }

  private static Convex box(double x0, double y0, double z0, double x1, double y1, double z1) {
    return OverlapTest.cells(x0, y0, z0, x1, y1, z1).get(0);
  }
}
