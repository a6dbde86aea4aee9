package dryfit.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MeshCheckTest {
  private static final Mesh CUBE = cube(0, 0, 0);

  private static Mesh cube(double x, double y, double z) {
    return Meshes.box(new Box(new Vec3(x, y, z), new Vec3(x + 1, y + 1, z + 1)), "/a");
  }

  @Test
  void aBoxIsCleanAndOneShellWithoutHandles() {
    assertThat(MeshCheck.problems(CUBE)).isEmpty();
    assertThat(MeshCheck.problemsAsFloats(CUBE)).isEmpty();
    assertThat(MeshCheck.shells(CUBE)).isEqualTo(1);
    assertThat(MeshCheck.genus(CUBE)).isZero();
    assertThat(CUBE.faceCount()).isEqualTo(6);
    assertThat(CUBE.pointCount()).isEqualTo(8);
  }

  @Test
  void aPrismWithALetterShapeIsClean() {
    Mesh l =
        Meshes.prism(
            List.of(
                new double[] {0, 0},
                new double[] {3, 0},
                new double[] {3, 1},
                new double[] {1, 1},
                new double[] {1, 2},
                new double[] {0, 2}),
            -1,
            4,
            "/l");
    assertThat(MeshCheck.problems(l)).isEmpty();
    assertThat(MassProperties.of(l).volume()).isCloseTo(20, within(1e-12));
  }

  @Test
  void aFrameHasOneHandle() {
    Mesh frame = frame();
    assertThat(MeshCheck.problems(frame)).isEmpty();
    assertThat(MeshCheck.genus(frame)).isEqualTo(1);
    assertThat(MassProperties.of(frame).volume()).isCloseTo(8, within(1e-12));
  }

  @Test
  void theMirrorImageIsCleanAndFacesOutward() {
    Mesh mirrored = Meshes.mirroredZ(frame());
    assertThat(MeshCheck.problems(mirrored)).isEmpty();
    assertThat(MassProperties.of(mirrored).centre().z()).isCloseTo(-0.5, within(1e-12));
  }

  @Test
  void aMissingFaceIsFound() {
    int[][][] five = {
      {{3, 2, 1, 0}}, {{4, 5, 6, 7}}, {{0, 1, 5, 4}}, {{1, 2, 6, 5}}, {{2, 3, 7, 6}}
    };
    Mesh open = Meshes.ofFaces(corners(), five, "");
    assertThat(MeshCheck.problems(open)).anyMatch(p -> p.startsWith("4 directed edges"));
    assertThatThrownBy(() -> FloatGrid.snapped(open)).isInstanceOf(MeshFailure.class);
  }

  @Test
  void anInsideOutSurfaceIsFound() {
    int[][][] inward = {
      {{0, 1, 2, 3}}, {{7, 6, 5, 4}}, {{4, 5, 1, 0}}, {{5, 6, 2, 1}}, {{6, 7, 3, 2}}, {{7, 4, 0, 3}}
    };
    assertThat(MeshCheck.problems(Meshes.ofFaces(corners(), inward, "")))
        .containsExactly("the surface is inside out");
  }

  @Test
  void pointsNobodyUsesAndTrianglesWithoutAreaAreFound() {
    double[] xyz = {0, 0, 0, 1, 0, 0, 2, 0, 0, 9, 9, 9};
    Mesh flat =
        new Mesh(
            xyz,
            new int[][][] {{{0, 1, 2}}, {{2, 1, 0}}},
            new int[] {0, 1, 2, 2, 1, 0},
            new int[] {0, 1},
            new int[] {0, 0},
            List.of(""));
    assertThat(MeshCheck.problems(flat))
        .anyMatch(p -> p.startsWith("2 triangles have no area"))
        .anyMatch(p -> p.startsWith("1 points belong to no triangle"))
        .contains("the surface is inside out");
  }

  @Test
  void cubesThatShareOnlyAnEdgeOrACornerBecomeTwoShellsOfEightPoints() {
    for (Vec3 step : List.of(new Vec3(1, 1, 0), new Vec3(1, 1, 1))) {
      Mesh both = welded(CUBE, cube(step.x(), step.y(), step.z()));
      assertThat(MeshCheck.problems(both)).isEmpty();
      assertThat(MeshCheck.problemsAsFloats(both)).isEmpty();
      assertThat(MeshCheck.shells(both)).isEqualTo(2);
      assertThat(both.pointCount()).isEqualTo(16);
      assertThat(FloatGrid.snapped(both).pointCount()).isEqualTo(16);
    }
  }

  @Test
  void slabThinnerThanTheFloatStepVanishesWithoutLeavingAHole() {
    Mesh step =
        Meshes.prism(
            List.of(
                new double[] {1000, 0},
                new double[] {1010, 0},
                new double[] {1010, 5},
                new double[] {1005, 5},
                new double[] {1005, 5.0000001},
                new double[] {1000, 5.0000001}),
            0,
            3,
            "/s");
    assertThat(MeshCheck.problems(step)).isEmpty();
    assertThat(MeshCheck.problemsAsFloats(step)).isNotEmpty();
    Mesh snapped = FloatGrid.snapped(step);
    assertThat(MeshCheck.problems(snapped)).isEmpty();
    assertThat(MassProperties.of(snapped).volume()).isCloseTo(150, within(1e-3));
    for (double c : snapped.coordinates()) {
      assertThat(c).isEqualTo((float) c);
    }
  }

  @Test
  void pointsThatRoundingPutsInLineLoseTheirFlatTriangle() {
    // Seen from above the corner at 500 stands a hair proud; as a float it is in line.
    Mesh proud =
        Meshes.prism(
            List.of(
                new double[] {0, 100},
                new double[] {500, 100 - 1e-6},
                new double[] {1000, 100},
                new double[] {1000, 200},
                new double[] {0, 200}),
            0,
            10,
            "/p");
    assertThat(MeshCheck.problems(proud)).isEmpty();
    Mesh snapped = FloatGrid.snapped(proud);
    assertThat(MeshCheck.problems(snapped)).isEmpty();
    assertThat(MassProperties.of(snapped).volume()).isCloseTo(1e6, within(1.0));
  }

  private static Mesh frame() {
    List<Vec3> points = new ArrayList<>();
    for (double z : new double[] {0, 1}) {
      for (double[] p :
          new double[][] {{0, 0}, {3, 0}, {3, 3}, {0, 3}, {1, 1}, {2, 1}, {2, 2}, {1, 2}}) {
        points.add(new Vec3(p[0], p[1], z));
      }
    }
    int[][][] faces = {
      {{3, 2, 1, 0}, {4, 5, 6, 7}},
      {{8, 9, 10, 11}, {15, 14, 13, 12}},
      {{0, 1, 9, 8}},
      {{1, 2, 10, 9}},
      {{2, 3, 11, 10}},
      {{3, 0, 8, 11}},
      {{5, 4, 12, 13}},
      {{6, 5, 13, 14}},
      {{7, 6, 14, 15}},
      {{4, 7, 15, 12}}
    };
    return Meshes.ofFaces(points, faces, "/f");
  }

  private static List<Vec3> corners() {
    List<Vec3> points = new ArrayList<>();
    for (double z : new double[] {0, 1}) {
      points.add(new Vec3(0, 0, z));
      points.add(new Vec3(1, 0, z));
      points.add(new Vec3(1, 1, z));
      points.add(new Vec3(0, 1, z));
    }
    return points;
  }

  /** Both meshes in one, equal points made one, then taken apart where they only touch. */
  private static Mesh welded(Mesh a, Mesh b) {
    List<Vec3> points = new ArrayList<>();
    List<Integer> corners = new ArrayList<>();
    List<Integer> faceOf = new ArrayList<>();
    for (Mesh m : List.of(a, b)) {
      int faces = faceOf.isEmpty() ? 0 : a.faceCount();
      for (int t = 0; t < m.triangleCount(); t++) {
        faceOf.add(faces + m.faceOf(t));
        for (int k = 0; k < 3; k++) {
          Vec3 p = m.point(m.corner(t, k));
          if (!points.contains(p)) {
            points.add(p);
          }
          corners.add(points.indexOf(p));
        }
      }
    }
    return Meshes.ofTriangles(
        points.stream()
            .flatMapToDouble(p -> java.util.stream.DoubleStream.of(p.x(), p.y(), p.z()))
            .toArray(),
        corners.stream().mapToInt(i -> i).toArray(),
        faceOf.stream().mapToInt(i -> i).toArray(),
        new int[a.faceCount() + b.faceCount()],
        List.of("/a"));
  }
}
