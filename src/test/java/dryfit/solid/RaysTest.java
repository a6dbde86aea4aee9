package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Rays are asked of shapes whose cells give an independent answer, hence not on their own floor.
 */
class RaysTest {
  private static final Csg.Leaf ELL =
      Extrusion.of(
          List.of(
              new Vec2(0, 0),
              new Vec2(40, 0),
              new Vec2(40, 10),
              new Vec2(10, 10),
              new Vec2(10, 60),
              new Vec2(0, 60)),
          0,
          20,
          Frame.CHAIR,
          "");

  @Test
  void aRayThroughABoxEntersAndLeaves() {
    Rays rays = Rays.of(((Csg.Leaf) CellsTest.box(0, 0, 0, 10, 10, 10)).mesh());
    // Straight through the line between the two triangles of a side.
    List<Rays.Hit> hits = rays.hits(new Vec3(-5, 5, 5), Vec3.RIGHT);
    assertThat(hits).hasSize(2);
    assertThat(hits.get(0).distance()).isCloseTo(5, within(1e-12));
    assertThat(hits.get(0).entering()).isTrue();
    assertThat(hits.get(1).distance()).isCloseTo(15, within(1e-12));
    assertThat(hits.get(1).entering()).isFalse();
    assertThat(hits.get(0).face()).isNotEqualTo(hits.get(1).face());
  }

  @Test
  void aRayFromInsideOnlyLeavesAndOneFromTheSurfaceDoesNotCountIt() {
    Rays rays = Rays.of(((Csg.Leaf) CellsTest.box(0, 0, 0, 10, 10, 10)).mesh());
    assertThat(rays.hits(new Vec3(3, 4, 5), Vec3.UP)).hasSize(1);
    assertThat(rays.hits(new Vec3(3, 4, 0), Vec3.UP)).hasSize(1);
    assertThat(rays.hits(new Vec3(3, 4, 10), Vec3.UP)).isEmpty();
    assertThat(rays.hits(new Vec3(30, 4, 5), Vec3.UP)).isEmpty();
  }

  @Test
  void raysThroughEdgesAndCornersCountThemOnce() {
    Rays rays = Rays.of(((Csg.Leaf) CellsTest.box(0, 0, 0, 10, 10, 10)).mesh());
    Vec3 slant = new Vec3(1, 1, 1).unit();
    List<Rays.Hit> hits = rays.hits(new Vec3(-5, -5, -5), slant);
    assertThat(hits).hasSize(2);
    assertThat(hits.get(0).distance()).isCloseTo(5 * Math.sqrt(3), within(1e-5));
    assertThat(hits.get(1).distance()).isCloseTo(15 * Math.sqrt(3), within(1e-5));
    assertThat(rays.hits(new Vec3(-5, -5, 4), new Vec3(1, 1, 0).unit())).hasSize(2);
    // Within a face or along an edge it is in or out, but never half.
    assertThat(rays.hits(new Vec3(-5, 5, 10), Vec3.RIGHT).size()).isIn(0, 2);
    assertThat(rays.hits(new Vec3(-5, 10, 10), Vec3.RIGHT).size()).isIn(0, 2);
    assertThat(rays.hits(new Vec3(-5, 5, 10), Vec3.RIGHT))
        .isEqualTo(rays.hits(new Vec3(-5, 5, 10), Vec3.RIGHT));
  }

  @Test
  void aBeamSeesWhatSingleRaysSee() {
    Frame placed = Frame.of(new Vec3(3, -2, 8), new Vec3(1, 0.2, -0.1), new Vec3(-0.1, 1, 0.3));
    Rays rays = Rays.of(ELL.mesh()).placed(placed);
    Random random = new Random(20261126);
    int met = 0;
    for (int n = 0; n < 300; n++) {
      // Half of the ways are along the shape's own axes, where edges are met.
      Vec3 way =
          n % 2 == 0
              ? placed.turn(n % 4 == 0 ? Vec3.BACK.negated() : Vec3.RIGHT)
              : new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                  .unit();
      List<Vec3> ends = List.of(somewhere(random, placed), somewhere(random, placed));
      Rays.Beam beam = rays.beam(ends, way);
      for (int k = 0; k < 20; k++) {
        Vec3 from = k < 2 ? ends.get(k) : somewhere(random, placed);
        assertThat(beam.first(from)).isEqualTo(rays.first(from, way));
        met += beam.first(from).isPresent() ? 1 : 0;
      }
    }
    assertThat(met).isGreaterThan(1000);
  }

  @Test
  void aMirroredMeshAnswersWithTheSameFaces() {
    Rays rays = Rays.of(ELL.mesh());
    Rays mirrored = new Solid(ELL.mesh(), ELL.cells()).mirroredZ().rays();
    Rays anew = Rays.of(dryfit.geometry.Meshes.mirroredZ(ELL.mesh()));
    Random random = new Random(4);
    for (int n = 0; n < 500; n++) {
      Vec3 from = somewhere(random, Frame.CHAIR);
      Vec3 way =
          new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
      List<Rays.Hit> there = mirrored.hits(new Vec3(from.x(), from.y(), -from.z()), turned(way));
      assertThat(there).isEqualTo(rays.hits(from, way));
      // From inside a face it is in or out.
      Vec3 off = from.plus(new Vec3(0.31, 0.17, 0.23));
      assertThat(rays.hits(off, way)).hasSameSizeAs(anew.hits(turned(off), turned(way)));
    }
  }

  private static Vec3 turned(Vec3 v) {
    return new Vec3(v.x(), v.y(), -v.z());
  }

  private static Vec3 somewhere(Random random, Frame in) {
    // Whole millimetres come to lie on faces and edges.
    return in.place(
        new Vec3(random.nextInt(50) - 5, random.nextInt(70) - 5, random.nextInt(30) - 5));
  }

  @Test
  void aHollowIsSeenBetweenTwoWalls() {
    Rays rays = Rays.of(ELL.mesh());
    assertThat(rays.hits(new Vec3(-5, 5, 7), Vec3.RIGHT)).hasSize(2);
    List<Rays.Hit> hits = rays.hits(new Vec3(44, 4, 7), new Vec3(-0.8, 0.6, 0));
    assertThat(hits).hasSize(4);
    assertThat(hits).extracting(Rays.Hit::entering).containsExactly(true, false, true, false);
  }

  @Test
  void insideAgreesWithTheCells() {
    Random random = new Random(31);
    Csg.Leaf spindle =
        Turned.of(
            List.of(
                new Turned.Ring(-4, 0),
                new Turned.Ring(10, 9),
                new Turned.Ring(10, 14),
                new Turned.Ring(38, 6)),
            24,
            "");
    for (Csg.Leaf leaf : List.of(ELL, spindle)) {
      Mesh mesh = leaf.mesh();
      Rays rays = Rays.of(mesh);
      int inside = 0;
      for (int i = 0; i < 3000; i++) {
        Vec3 p =
            new Vec3(
                random.nextDouble() * 50 - 5,
                random.nextDouble() * 75 - 15,
                random.nextDouble() * 40 - 15);
        boolean expected = leaf.cells().stream().anyMatch(cell -> cell.contains(p));
        assertThat(rays.inside(p)).isEqualTo(expected);
        inside += expected ? 1 : 0;
      }
      assertThat(inside).isGreaterThan(100);
      // Points on a lattice of the corners' own coordinates line up with edges on purpose.
      for (int x = 2; x < 37; x += 3) {
        for (int y = 1; y < 60; y += 4) {
          Vec3 p = new Vec3(x, y, 10.5);
          boolean expected = leaf.cells().stream().anyMatch(cell -> cell.contains(p));
          assertThat(rays.inside(p)).isEqualTo(expected);
          for (Vec3 d : List.of(Vec3.RIGHT, Vec3.BACK, Vec3.UP)) {
            assertThat(rays.hits(p, d).size() % 2 == 1).isEqualTo(expected);
          }
        }
      }
    }
  }

  @Test
  void nothingIsMetInTheMeshOfNothing() {
    assertThat(Rays.of(Mesh.EMPTY).hits(Vec3.ZERO, Vec3.UP)).isEmpty();
    assertThat(Rays.of(Mesh.EMPTY).inside(Vec3.ZERO)).isFalse();
  }
}
