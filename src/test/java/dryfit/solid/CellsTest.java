package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CellsTest {

  @Test
  void aLegWithThreeMortisesKeepsItsVolume() {
    Csg leg = box(-22, -22, 0, 22, 22, 640);
    Frame tilt =
        Frame.of(
            new Vec3(0, 22, 600),
            Vec3.RIGHT,
            new Vec3(0, Math.cos(Math.toRadians(9)), Math.sin(Math.toRadians(9))));
    Csg tilted =
        Convex.box(new Box(new Vec3(-6, -15, -12.5), new Vec3(6, 15, 12.5)))
            .placed(tilt)
            .asLeaf("/joints/2");
    List<Convex> cells =
        Cells.of(
            leg.minus(List.of(box(-6, 5, 350, 6, 35, 410), box(5, -6, 350, 35, 6, 410), tilted)));
    // 44 x 44 x 640 = 1 239 040. The first two mortises reach from 22 in to 5: 12 x 60 x 17 each,
    // and share 1 x 1 x 60 where they meet. The third is halved by the face, whatever its tilt: 12
    // x 15 x 25.
    double expected = 44 * 44 * 640 - 2 * 12 * 60 * 17 + 60 - 12 * 15 * 25;
    assertThat(Cells.volume(cells)).isCloseTo(expected, within(1e-9 * expected));
    assertDisjoint(cells);
    assertThat(cells.size()).isLessThanOrEqualTo(15);
    cells.forEach(ConvexTest::assertSound);
  }

  @Test
  void sumsOfOverlappingBoxesCountTheSharedPartOnce() {
    Csg a = box(0, 0, 0, 10, 10, 10);
    Csg b = box(5, 5, 5, 15, 15, 15);
    Csg c = box(0, 0, 0, 15, 15, 6);
    assertThat(volume(a.plus(List.of(b)))).isCloseTo(2000 - 125, within(1e-9));
    assertThat(volume(new Csg.Common(List.of(a, b)))).isCloseTo(125, within(1e-9));
    assertThat(volume(new Csg.Common(List.of(a, b, c)))).isCloseTo(25, within(1e-9));
    assertThat(volume(a.minus(List.of(b, c)))).isCloseTo(400 - 100, within(1e-9));
    assertThat(volume(a.minus(List.of(a)))).isZero();
    assertThat(volume(new Csg.Union(List.of()))).isZero();
    assertThat(volume(new Csg.Common(List.of()))).isZero();
  }

  @Test
  void facesThatOnlyTouchAreNotCut() {
    Csg a = box(0, 0, 0, 10, 10, 10);
    List<Convex> cells =
        Cells.of(a.minus(List.of(box(10, 2, 2, 20, 8, 8), box(2, 2, 10, 8, 8, 12))));
    assertThat(cells).hasSize(1);
    assertThat(Cells.of(a.plus(List.of(box(10, 2, 2, 20, 8, 8))))).hasSize(2);
  }

  @Test
  void aToolThatPassesAnEdgeLeavesTheCellWhole() {
    Convex cube = Convex.box(new Box(new Vec3(-1, -1, -1), new Vec3(1, 1, 1)));
    // Two edges pass each other at right angles, 0.05 apart: only their common normal parts them.
    Frame turned = Frame.of(new Vec3(0, 0, 0), new Vec3(1, 0, 1).unit(), new Vec3(-1, 0, 1).unit());
    Frame other =
        Frame.of(new Vec3(0, 0, 2 * Math.sqrt(2) + 0.05), new Vec3(0, 1, 1).unit(), Vec3.RIGHT);
    List<Convex> left = Cells.minus(List.of(cube.placed(turned)), List.of(cube.placed(other)));
    assertThat(left).hasSize(1);
  }

  @Test
  void theLawsOfSetsHoldForRandomSolids() {
    Random random = new Random(42);
    for (int round = 0; round < 300; round++) {
      Csg a = randomBlock(random);
      Csg b = randomBlock(random);
      Csg c = randomBlock(random);
      Csg ab = new Csg.Common(List.of(a, b));
      double whole = volume(a);
      assertThat(volume(a.minus(List.of(b))) + volume(ab)).isCloseTo(whole, relative(whole));
      assertThat(volume(a.plus(List.of(b))))
          .isCloseTo(whole + volume(b) - volume(ab), relative(whole));
      // De Morgan: a - (b + c) = (a - b) & (a - c).
      double left = volume(a.minus(List.of(b.plus(List.of(c)))));
      double right = volume(new Csg.Common(List.of(a.minus(List.of(b)), a.minus(List.of(c)))));
      assertThat(left).isCloseTo(right, relative(whole));
      List<Convex> cells = Cells.of(new Csg.Union(List.of(a, b, c)));
      cells.forEach(ConvexTest::assertSound);
      assertDisjoint(cells);
    }
  }

  private static org.assertj.core.data.Offset<Double> relative(double whole) {
    return within(1e-9 * whole);
  }

  private static Csg randomBlock(Random random) {
    Vec3 half = new Vec3(1 + random.nextInt(20), 1 + random.nextInt(20), 1 + random.nextInt(20));
    Frame frame =
        Frame.of(
            new Vec3(random.nextInt(20), random.nextInt(20), random.nextInt(20)),
            random.nextBoolean() ? Vec3.UP : ConvexTest.direction(random),
            ConvexTest.direction(random));
    return Convex.box(new Box(half.negated(), half)).placed(frame).asLeaf("");
  }

  static Csg box(double x0, double y0, double z0, double x1, double y1, double z1) {
    return Convex.box(new Box(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1))).asLeaf("");
  }

  private static double volume(Csg what) {
    return Cells.volume(Cells.of(what));
  }

  private static void assertDisjoint(List<Convex> cells) {
    List<Convex> shared = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      for (int j = 0; j < i; j++) {
        cells.get(i).common(cells.get(j)).ifPresent(shared::add);
      }
    }
    assertThat(Cells.volume(shared)).isLessThan(1e-6);
  }
}
