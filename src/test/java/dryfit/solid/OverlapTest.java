package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OverlapTest {
  private static final List<Convex> CUBE = cells(0, 0, 0, 10, 10, 10);

  @Test
  void aCornerInACornerIsMeasured() {
    Overlap overlap = Overlap.between(CUBE, cells(8, 7, 6, 20, 20, 20)).orElseThrow();
    assertThat(overlap.volume()).isCloseTo(2 * 3 * 4, within(1e-12));
    assertThat(overlap.middle().distance(new Vec3(9, 8.5, 8))).isLessThan(1e-12);
    assertThat(overlap.bounds()).isEqualTo(new Box(new Vec3(8, 7, 6), new Vec3(10, 10, 10)));
    assertThat(overlap.depth()).isCloseTo(2, within(1e-12));
    assertThat(overlap.out().distance(new Vec3(-1, 0, 0))).isLessThan(1e-12);
    assertThat(along(overlap, Vec3.UP)).isCloseTo(4, within(1e-12));
  }

  @Test
  void touchingOnFaceEdgeOrCornerIsNotOverlap() {
    assertApart(cells(10, 0, 0, 20, 10, 10));
    assertApart(cells(10, 10, 0, 20, 20, 10));
    assertApart(cells(10, 10, 10, 20, 20, 20));
    assertApart(cells(30, 0, 0, 40, 10, 10));
  }

  @Test
  void contactIsCountedUpToItsLimitAndOverlapFromThere() {
    assertApart(cells(10 - 6.1e-5, 0, 0, 20, 10, 10));
    assertApart(cells(10 - 2.9e-4, 0, 0, 20, 10, 10));
    assertThat(Overlap.between(CUBE, cells(10 - 3.1e-4, 0, 0, 20, 10, 10))).isPresent();
    assertThat(Overlap.exists(CUBE, cells(10 - 3.1e-4, 0, 0, 20, 10, 10))).isTrue();
  }

  @Test
  void aTenonInItsOwnMortiseOnlyTouchesWhereverTheChairStands() {
    Random random = new Random(5);
    Csg leg = CellsTest.box(-22, -22, 0, 22, 22, 440);
    Csg tenon = CellsTest.box(2, -6, 300, 40, 6, 360);
    List<Convex> mortised = Cells.of(leg.minus(List.of(tenon)));
    for (int round = 0; round < 100; round++) {
      Frame frame = ConvexTest.frame(random);
      List<Convex> a = mortised.stream().map(cell -> cell.placed(frame)).toList();
      List<Convex> b = Cells.of(tenon).stream().map(cell -> cell.placed(frame)).toList();
      assertThat(Overlap.between(a, b)).isEmpty();
      Frame deeper =
          new Frame(frame.origin().plus(frame.x().times(-0.5)), frame.x(), frame.y(), frame.z());
      List<Convex> pushed = Cells.of(tenon).stream().map(cell -> cell.placed(deeper)).toList();
      Overlap overlap = Overlap.between(pushed, a).orElseThrow();
      assertThat(overlap.depth()).isCloseTo(0.5, within(1e-9));
      assertThat(overlap.out().dot(frame.x())).isCloseTo(1, within(1e-9));
      assertThat(overlap.volume()).isCloseTo(0.5 * 12 * 60, within(1e-8));
      assertThat(along(overlap, frame.x())).isCloseTo(0.5, within(1e-9));
    }
  }

  @Test
  void crossedEdgesAreFreedAlongTheirCommonNormal() {
    // Two cubes stand edge on edge, the edges at right angles, 0.2 into each other.
    Convex low = cubeOnEdge(Vec3.RIGHT, 0);
    Convex high = cubeOnEdge(Vec3.BACK, 2 * Math.sqrt(2) - 0.2);
    Overlap overlap = Overlap.between(List.of(low), List.of(high)).orElseThrow();
    assertThat(overlap.depth()).isCloseTo(0.2, within(1e-12));
    assertThat(overlap.out().distance(new Vec3(0, 0, -1))).isLessThan(1e-12);
  }

  @Test
  void movingOutByTheDepthFreesAndByLessDoesNot() {
    Random random = new Random(99);
    int overlapping = 0;
    for (int round = 0; round < 400; round++) {
      Convex a = randomCell(random);
      Convex b = randomCell(random);
      List<Convex> still = List.of(b);
      var overlap = Overlap.between(List.of(a), still);
      assertThat(Overlap.exists(List.of(a), still)).isEqualTo(overlap.isPresent());
      if (overlap.isPresent()) {
        overlapping++;
        double depth = overlap.get().depth();
        Vec3 out = overlap.get().out();
        assertThat(Overlap.between(List.of(moved(a, out.times(depth))), still)).isEmpty();
        for (int i = 0; i < 20; i++) {
          Vec3 other = i == 0 ? out : ConvexTest.direction(random);
          Convex less = moved(a, other.times(depth * 0.99 - 1e-3));
          if (depth > 0.1) {
            assertThat(Overlap.between(List.of(less), still)).isPresent();
          }
        }
        assertThat(overlap.get().volume())
            .isCloseTo(a.common(b).orElseThrow().volume(), within(1e-9));
        assertThat(a.contains(overlap.get().deepest())).isTrue();
        assertThat(b.contains(overlap.get().deepest())).isTrue();
      }
    }
    assertThat(overlapping).isGreaterThan(100);
  }

  static Convex cubeOnEdge(Vec3 edge, double z) {
    Vec3 slant = Vec3.UP.plus(edge.cross(Vec3.UP)).unit();
    return Convex.box(new Box(new Vec3(-1, -1, -1), new Vec3(1, 1, 1)))
        .placed(Frame.of(new Vec3(0, 0, z), edge, slant));
  }

  /** A box in any position, with up to three corners taken off. */
  static Convex randomCell(Random random) {
    Vec3 half = new Vec3(1 + random.nextInt(9), 1 + random.nextInt(9), 1 + random.nextInt(9));
    Frame frame =
        Frame.of(
            new Vec3(random.nextInt(20), random.nextInt(20), random.nextInt(20)),
            random.nextBoolean() ? Vec3.UP : ConvexTest.direction(random),
            random.nextBoolean() ? new Vec3(1, 0.5, 0) : ConvexTest.direction(random));
    Convex cell = Convex.box(new Box(half.negated(), half));
    for (int i = random.nextInt(4); i > 0; i--) {
      Plane corner = Plane.through(Vec3.ZERO, ConvexTest.direction(random));
      cell = cell.clipped(corner.moved(half.length() * 0.4)).orElse(cell);
    }
    return cell.placed(frame);
  }

  static Convex moved(Convex cell, Vec3 by) {
    return cell.placed(new Frame(by, Vec3.RIGHT, Vec3.BACK, Vec3.UP));
  }

  private static void assertApart(List<Convex> other) {
    assertThat(Overlap.between(CUBE, other)).isEmpty();
    assertThat(Overlap.exists(CUBE, other)).isFalse();
  }

  static List<Convex> cells(double x0, double y0, double z0, double x1, double y1, double z1) {
    return Cells.of(CellsTest.box(x0, y0, z0, x1, y1, z1));
  }

  /** From where it begins one way to where it begins the other. */
  private static double along(Overlap overlap, Vec3 way) {
    return -overlap.from(way.negated()) - overlap.from(way);
  }
}
