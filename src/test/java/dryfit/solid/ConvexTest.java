package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ConvexTest {
  private static final Convex BRICK = Convex.box(new Box(new Vec3(1, 2, 3), new Vec3(11, 22, 33)));

  @Test
  void boxHasItsVolumeCentroidAndBounds() {
    assertThat(BRICK.volume()).isCloseTo(10 * 20 * 30, within(1e-9));
    assertThat(BRICK.middle().distance(new Vec3(6, 12, 18))).isLessThan(1e-12);
    assertThat(BRICK.bounds()).isEqualTo(new Box(new Vec3(1, 2, 3), new Vec3(11, 22, 33)));
    assertThat(BRICK.thickness()).isCloseTo(10, within(1e-12));
    assertSound(BRICK);
  }

  @Test
  void prismIsTheSameWhicheverWayItsLoopRuns() {
    List<Vec3> loop = List.of(new Vec3(0, 0, 0), new Vec3(4, 0, 0), new Vec3(0, 3, 0));
    List<Vec3> back = List.of(loop.get(2), loop.get(1), loop.get(0));
    for (double way : new double[] {5, -5}) {
      for (List<Vec3> each : List.of(loop, back)) {
        Convex wedge = Convex.prism(each, new Vec3(1, 1, way));
        assertThat(wedge.volume()).isCloseTo(30, within(1e-12));
        assertSound(wedge);
      }
    }
  }

  @Test
  void loftOfTwoSquaresIsAFrustum() {
    // Volume of a frustum of a pyramid, h/3 (A + B + sqrt(AB)): Euclid XII.7 and any handbook.
    Convex taper = Convex.loft(square(40, 0), square(25, 450));
    assertThat(taper.volume()).isCloseTo(450.0 / 3 * (1600 + 625 + 1000), within(1e-6));
    assertThat(taper.faceCount()).isEqualTo(6);
    assertSound(taper);
  }

  @Test
  void loftToAnApexIsAPyramid() {
    Convex tip = Convex.loft(square(6, 0), square(0, 5));
    assertThat(tip.volume()).isCloseTo(60, within(1e-12));
    assertThat(tip.faceCount()).isEqualTo(5);
    assertThat(tip.pointCount()).isEqualTo(5);
    assertSound(tip);
  }

  @Test
  void loftWithATwistedSideIsSplitWhereItBulges() {
    List<Vec3> low =
        List.of(new Vec3(0, 0, 0), new Vec3(10, 0, 0), new Vec3(10, 10, 0), new Vec3(0, 10, 0));
    List<Vec3> high =
        List.of(new Vec3(0, 0, 10), new Vec3(12, 0, 10), new Vec3(10, 10, 10), new Vec3(0, 10, 10));
    Convex twisted = Convex.loft(low, high);
    // The box, and the pyramid from its side to the corner that moved out by 2.
    assertThat(twisted.volume()).isCloseTo(1000 + 10 * 10 * 2 / 3.0, within(1e-9));
    assertThat(twisted.faceCount()).isEqualTo(7);
    assertSound(twisted);
  }

  @Test
  void whatIsNotConvexIsRefused() {
    List<Vec3> dart =
        List.of(new Vec3(0, 0, 0), new Vec3(10, 0, 0), new Vec3(2, 2, 0), new Vec3(0, 10, 0));
    assertThatThrownBy(() -> Convex.prism(dart, Vec3.UP))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Convex.prism(square(4, 0), Vec3.RIGHT))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Convex.hull(square(4, 0)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void hullMergesPointsInOnePlaneAndDropsThoseInside() {
    List<Vec3> lattice = new ArrayList<>();
    for (int x = 0; x < 4; x++) {
      for (int y = 0; y < 4; y++) {
        for (int z = 0; z < 4; z++) {
          lattice.add(new Vec3(x, y, z));
        }
      }
    }
    Convex cube = Convex.hull(lattice);
    assertThat(cube.volume()).isCloseTo(27, within(1e-12));
    assertThat(cube.faceCount()).isEqualTo(6);
    assertThat(cube.pointCount()).isEqualTo(8);
    assertSound(cube);
  }

  @Test
  void hullOfPointsInLineButForRoundingIsTheBoxTheySpan() {
    List<Vec3> points = new ArrayList<>();
    for (double y : new double[] {-3.175, -6.35, -47.625, -50.8}) {
      for (double x : new double[] {738.98125, 740.56875, 783.43125, 785.01875}) {
        boolean rounded = y < -40 && x > 760;
        points.add(new Vec3(-x, y, rounded ? -14.525000000000002 : -14.524999999999999));
        points.add(new Vec3(-x, y, rounded ? 14.524999999999977 : 14.525000000000006));
      }
    }
    Convex box = Convex.hull(points);
    assertThat(box.pointCount()).isEqualTo(8);
    assertThat(box.volume()).isCloseTo(46.0375 * 47.625 * 29.05, within(1e-6));
  }

  @Test
  void hullOfTheSolidsOfPlatoHasTheirVolumes() {
    double g = (1 + Math.sqrt(5)) / 2;
    List<Vec3> icosahedron = new ArrayList<>();
    List<Vec3> dodecahedron = new ArrayList<>();
    for (int a : new int[] {-1, 1}) {
      for (int b : new int[] {-1, 1}) {
        icosahedron.addAll(
            List.of(new Vec3(0, a, b * g), new Vec3(a, b * g, 0), new Vec3(b * g, 0, a)));
        dodecahedron.addAll(
            List.of(
                new Vec3(0, a / g, b * g),
                new Vec3(a / g, b * g, 0),
                new Vec3(b * g, 0, a / g),
                new Vec3(a, b, 1),
                new Vec3(a, b, -1)));
      }
    }
    Convex twenty = Convex.hull(icosahedron);
    Convex twelve = Convex.hull(dodecahedron);
    // Volumes for edge a: 5 (3 + sqrt 5) a^3 / 12 and (15 + 7 sqrt 5) a^3 / 4, from memory.
    assertThat(twenty.volume()).isCloseTo(5 * (3 + Math.sqrt(5)) / 12 * 8, within(1e-12));
    assertThat(twelve.volume())
        .isCloseTo((15 + 7 * Math.sqrt(5)) / 4 * Math.pow(2 / g, 3), within(1e-12));
    assertThat(twenty.faceCount()).isEqualTo(20);
    assertThat(twelve.faceCount()).isEqualTo(12);
    assertSound(twenty);
    assertSound(twelve);
  }

  @Test
  void hullOfRandomPointsHoldsThemAll() {
    Random random = new Random(20260101);
    for (int round = 0; round < 200; round++) {
      List<Vec3> points = new ArrayList<>();
      int n = 4 + random.nextInt(40);
      for (int i = 0; i < n; i++) {
        points.add(
            new Vec3(
                random.nextDouble() * 100, random.nextDouble() * 100, random.nextDouble() * 9));
      }
      Convex hull = Convex.hull(points);
      assertSound(hull);
      assertThat(points).allMatch(p -> hull.contains(p));
    }
  }

  @Test
  void aCutKeepsTheInsideAndBothSidesMakeTheWhole() {
    Random random = new Random(7);
    for (int round = 0; round < 500; round++) {
      Convex cell = BRICK.placed(frame(random));
      for (int cut = 0; cut < 6; cut++) {
        Plane plane = Plane.through(cell.middle(), direction(random)).moved(random.nextGaussian());
        Convex.Split split = cell.split(plane);
        double in = split.inside().map(Convex::volume).orElse(0.0);
        double out = split.outside().map(Convex::volume).orElse(0.0);
        assertThat(in + out).isCloseTo(cell.volume(), within(1e-9 * BRICK.volume()));
        split.inside().ifPresent(ConvexTest::assertSound);
        split.outside().ifPresent(ConvexTest::assertSound);
        if (split.inside().isEmpty()) {
          break;
        }
        cell = split.inside().get();
      }
    }
  }

  @Test
  void aPlaneThatOnlyTouchesTakesNothingAway() {
    for (Plane face : BRICK.planes()) {
      assertThat(BRICK.clipped(face)).containsSame(BRICK);
      assertThat(BRICK.clipped(face.moved(-5e-10))).containsSame(BRICK);
      assertThat(BRICK.clipped(face.flipped())).isEmpty();
      assertThat(BRICK.clipped(face.flipped().moved(5e-8))).isEmpty();
      assertThat(BRICK.clipped(face.flipped().moved(1e-3))).isPresent();
    }
    Plane corner = Plane.through(new Vec3(11, 22, 33), new Vec3(1, 1, 1));
    assertThat(BRICK.clipped(corner)).containsSame(BRICK);
    assertThat(BRICK.clipped(corner.flipped())).isEmpty();
  }

  @Test
  void aCutThroughCornersHalvesABoxIntoTwoWedges() {
    Plane diagonal = Plane.through(new Vec3(1, 2, 3), new Vec3(20, -10, 0));
    Convex wedge = BRICK.clipped(diagonal).orElseThrow();
    assertThat(wedge.volume()).isCloseTo(3000, within(1e-9));
    assertThat(wedge.faceCount()).isEqualTo(5);
    assertThat(wedge.pointCount()).isEqualTo(6);
    assertSound(wedge);
  }

  @Test
  void cutsAtRoundingDistanceFromCornersStaySound() {
    Random random = new Random(11);
    for (int round = 0; round < 1000; round++) {
      Optional<Convex> cell = Optional.of(BRICK.placed(frame(random)));
      for (int cut = 0; cut < 5 && cell.isPresent(); cut++) {
        List<Vec3> corners = cell.get().points();
        Vec3 a = corners.get(random.nextInt(corners.size()));
        Vec3 b = corners.get(random.nextInt(corners.size()));
        Vec3 c = corners.get(random.nextInt(corners.size()));
        Vec3 normal = b.minus(a).cross(c.minus(a));
        Plane plane =
            Plane.through(a, normal.length() > 1e-3 ? normal : direction(random))
                .moved(Math.pow(10, -7 - 4 * random.nextDouble()) * random.nextGaussian());
        Convex before = cell.get();
        Convex.Split split = before.split(plane);
        double in = split.inside().map(Convex::volume).orElse(0.0);
        double out = split.outside().map(Convex::volume).orElse(0.0);
        assertThat(in + out).isCloseTo(before.volume(), within(1e-9 * BRICK.volume()));
        split.outside().ifPresent(ConvexTest::assertSound);
        split.inside().ifPresent(ConvexTest::assertSound);
        cell = split.inside();
      }
    }
  }

  @Test
  void placingAndTakingBackIsTheSameCell() {
    Frame frame = Frame.of(new Vec3(100, -30, 440), new Vec3(1, 2, 3), new Vec3(0, 1, -1));
    Convex placed = BRICK.placed(frame);
    Convex back = placed.localTo(frame);
    assertSound(placed);
    assertThat(placed.volume()).isEqualTo(BRICK.volume());
    for (int i = 0; i < BRICK.pointCount(); i++) {
      assertThat(back.point(i).distance(BRICK.point(i))).isLessThan(1e-12);
    }
    for (int f = 0; f < BRICK.faceCount(); f++) {
      assertThat(back.plane(f).offset()).isCloseTo(BRICK.plane(f).offset(), within(1e-12));
    }
  }

  @Test
  void mirroringGoesWithTheMirroredFrame() {
    Frame frame = Frame.of(new Vec3(100, -30, 440), new Vec3(1, 2, 3), new Vec3(0, 1, -1));
    Convex left = BRICK.mirroredZ().placed(frame.mirrored());
    Convex right = BRICK.placed(frame);
    assertSound(left);
    for (int i = 0; i < BRICK.pointCount(); i++) {
      assertThat(left.point(i).distance(right.point(i).mirrored())).isLessThan(1e-10);
    }
    assertThat(left.middle().distance(right.middle().mirrored())).isLessThan(1e-10);
  }

  @Test
  void reachAndExtremeAgree() {
    assertThat(BRICK.extreme(new Vec3(1, 1, 1))).isEqualTo(new Vec3(11, 22, 33));
    assertThat(BRICK.reach(new Vec3(0, 0, -1))).isEqualTo(-3);
  }

  @Test
  void aPointOnTheSurfaceIsContained() {
    assertThat(BRICK.contains(new Vec3(1, 12, 18))).isTrue();
    assertThat(BRICK.contains(new Vec3(11, 22, 33))).isTrue();
    assertThat(BRICK.contains(new Vec3(11, 22, 33.001))).isFalse();
  }

  @Test
  void aLeafCarriesItsSurfaceItsCellAndItsOrigin() {
    Csg.Leaf leaf = BRICK.asLeaf("/parts/0");
    assertThat(leaf.cells()).containsExactly(BRICK);
    assertThat(leaf.mesh().faceCount()).isEqualTo(6);
    assertThat(leaf.mesh().triangleCount()).isEqualTo(12);
    assertThat(leaf.mesh().origin(3)).isEqualTo("/parts/0");
  }

  private static List<Vec3> square(double side, double z) {
    double h = side / 2;
    return List.of(new Vec3(-h, -h, z), new Vec3(h, -h, z), new Vec3(h, h, z), new Vec3(-h, h, z));
  }

  static Vec3 direction(Random random) {
    return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
  }

  static Frame frame(Random random) {
    Vec3 origin = new Vec3(random.nextInt(1000), random.nextInt(1000) - 500, random.nextInt(1000));
    return Frame.of(origin, direction(random), direction(random));
  }

  /** Every edge is met once each way, all points lie in all face planes or below them. */
  static void assertSound(Convex cell) {
    int[][] faces = cell.faces();
    Set<Long> edges = new HashSet<>();
    Set<Integer> used = new HashSet<>();
    for (int[] loop : faces) {
      assertThat(loop.length).isGreaterThanOrEqualTo(3);
      for (int i = 0; i < loop.length; i++) {
        int p = loop[i];
        int q = loop[(i + 1) % loop.length];
        assertThat(edges.add((long) p << 32 | q)).isTrue();
        used.add(p);
      }
    }
    for (long edge : edges) {
      assertThat(edges).contains(edge << 32 | edge >>> 32);
    }
    assertThat(used).hasSize(cell.pointCount());
    assertThat(cell.pointCount() - edges.size() / 2 + faces.length).isEqualTo(2);
    for (int f = 0; f < faces.length; f++) {
      Plane plane = cell.plane(f);
      assertThat(plane.normal().length()).isCloseTo(1, within(1e-12));
      for (int p : faces[f]) {
        assertThat(plane.height(cell.point(p))).isCloseTo(0, within(1e-8));
      }
      assertThat(cell.points()).allMatch(p -> plane.height(p) <= Tolerances.sliver());
    }
    assertThat(cell.volume()).isPositive();
    assertThat(cell.contains(cell.middle())).isTrue();
  }

  /** Two of its corners lie on the plane within rounding, a third a hair below it. */
  @Test
  void aCutThatPassesWithinAHairOfSomeCornersLosesNothing() {
    Convex cell =
        Convex.of(
            List.of(
                new Vec3(21.473957061767578, 9.999999821724007, 21.80209332704544),
                new Vec3(21.473957061767578, 12.36300173548273, 21.80209332704544),
                new Vec3(21.473957061782574, 12.363001390620003, 21.802093271877194),
                new Vec3(21.473957061808136, 10.00000095099011, 21.802093177855554),
                new Vec3(42.94224089384079, 9.67398484093437, 23.646782100200653),
                new Vec3(42.94224089384079, 12.363001761310342, 23.646782100200653),
                new Vec3(42.94234191643185, 11.146734031788375, 23.45221792578782),
                new Vec3(21.48837357769798, 11.294095256887573, 21.632333396649752)),
            new int[][] {
              {0, 1, 2, 3}, {4, 5, 1, 0}, {5, 4, 6}, {0, 3, 7, 6, 4}, {3, 2, 7}, {2, 1, 5, 6, 7}
            });
    Plane plane =
        new Plane(
            new Vec3(0.08487835618950056, -0.13052619118148914, -0.987804929156674),
            -21.018802965926938);
    double inside = cell.clipped(plane).orElseThrow().volume();
    double outside = cell.clipped(plane.flipped()).orElseThrow().volume();
    assertThat(inside + outside).isCloseTo(cell.volume(), within(1e-6));
  }
}
