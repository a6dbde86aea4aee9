package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WayTest {
  private static final Csg LEG = CellsTest.box(-22, -22, 0, 22, 22, 440);
  private static final Csg TENON = CellsTest.box(2, -6, 300, 40, 6, 360);

  @Test
  void aTenonComesOutAlongItsAxisAndNoOtherWay() {
    Random random = new Random(8);
    for (int round = 0; round < 50; round++) {
      Frame frame = ConvexTest.frame(random);
      List<Convex> leg = placed(LEG.minus(List.of(TENON)), frame);
      List<Convex> tenon = placed(TENON, frame);
      assertThat(Way.of(tenon, leg, frame.x(), 500).free()).isTrue();
      for (Vec3 d : List.of(frame.x().negated(), frame.y(), frame.y().negated(), frame.z())) {
        assertThat(Way.of(tenon, leg, d, 500).stop().orElseThrow()).isCloseTo(0, within(1e-3));
      }
      // Lifted only a little off square, the cheek is soon in the way.
      Vec3 slant = frame.x().plus(frame.y().times(0.01)).unit();
      assertThat(Way.of(tenon, leg, slant, 500).free()).isFalse();
    }
  }

  @Test
  void aRailIsStoppedWhereItMeetsTheLeg() {
    Way way =
        Way.of(OverlapTest.cells(100, -5, 0, 130, 5, 10), Cells.of(LEG), new Vec3(-1, 0, 0), 300);
    assertThat(way.stop().orElseThrow()).isCloseTo(78, within(1e-3));
    assertThat(way.clearFrom()).isCloseTo(152, within(1e-3));
    assertThat(way.blocked()).hasSize(1);
  }

  @Test
  void twoObstaclesAreTwoStretchesAndLookingLessFarFindsFewer() {
    List<Convex> posts =
        Cells.of(
            CellsTest.box(10, 0, 0, 20, 9, 9).plus(List.of(CellsTest.box(40, 0, 0, 50, 9, 9))));
    List<Convex> block = OverlapTest.cells(0, 0, 0, 5, 9, 9);
    assertThat(Way.of(block, posts, Vec3.RIGHT, 1000).blocked()).hasSize(2);
    assertThat(Way.of(block, posts, Vec3.RIGHT, Double.POSITIVE_INFINITY).blocked()).hasSize(2);
    assertThat(Way.of(block, posts, Vec3.RIGHT, 30).blocked()).hasSize(1);
    assertThat(Way.of(block, posts, Vec3.RIGHT, 5).free()).isTrue();
    assertThat(Way.of(block, posts, Vec3.UP, 1000).free()).isTrue();
  }

  @Test
  void cellsOfOneSolidMakeOneStretch() {
    List<Convex> wall =
        Cells.of(
            CellsTest.box(10, 0, 0, 20, 9, 9).plus(List.of(CellsTest.box(20, 0, 0, 30, 9, 9))));
    Way way = Way.of(OverlapTest.cells(0, 0, 0, 5, 9, 9), wall, Vec3.RIGHT, 100);
    assertThat(way.blocked()).hasSize(1);
    assertThat(way.clearFrom()).isCloseTo(30, within(1e-3));
  }

  @Test
  void theWayAgreesWithOverlapAtEveryPlaceAlongIt() {
    Random random = new Random(21);
    for (int round = 0; round < 200; round++) {
      Convex a = OverlapTest.randomCell(random);
      Convex b = OverlapTest.randomCell(random);
      Vec3 d = ConvexTest.direction(random);
      Way way = Way.of(List.of(a), List.of(b), d, 60);
      for (double s = 0; s <= 60; s += 1.3) {
        boolean inside = false;
        boolean close = false;
        for (Way.Stretch stretch : way.blocked()) {
          inside |= s > stretch.from() && s < stretch.to();
          close |= Math.abs(s - stretch.from()) < 0.05 || Math.abs(s - stretch.to()) < 0.05;
        }
        if (!close) {
          Convex there = OverlapTest.moved(a, d.times(s));
          assertThat(Overlap.exists(List.of(there), List.of(b))).isEqualTo(inside);
        }
      }
    }
  }

  private static List<Convex> placed(Csg what, Frame frame) {
    return Cells.of(what).stream().map(cell -> cell.placed(frame)).toList();
  }
}
