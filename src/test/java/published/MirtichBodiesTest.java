package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The three test bodies of B. Mirtich, "Fast and Accurate Computation of Polyhedral Mass
 * Properties", journal of graphics tools 1(2), 1996, pp. 31-50, as listed in the README of its
 * program volInt (https://people.eecs.berkeley.edu/~jfc/mirtich/massProps.html). The answers are
 * the closed forms for a cube (m s^2 / 6), a right-angled tetrahedron (3 m (b^2 + c^2) / 80 about
 * its centre) and a regular icosahedron (m phi^2 a^2 / 10).
 */
class MirtichBodiesTest {

  @Test
  void cubeOfSideTwenty() {
    Mesh cube = Meshes.box(new Box(new Vec3(-10, -10, -10), new Vec3(10, 10, 10)), "");
    MassProperties m = MassProperties.of(cube);
    assertThat(MeshCheck.problems(cube)).isEmpty();
    assertThat(m.volume()).isCloseTo(8000, within(1e-9));
    assertThat(m.area()).isCloseTo(2400, within(1e-9));
    assertThat(m.centre().length()).isLessThan(1e-12);
    assertThat(List.of(m.xx(), m.yy(), m.zz()))
        .allSatisfy(i -> assertThat(i).isCloseTo(8000 * 400 / 6.0, within(1e-6)));
    assertThat(List.of(m.xy(), m.yz(), m.zx()))
        .allSatisfy(i -> assertThat(i).isCloseTo(0, within(1e-6)));
  }

  @Test
  void tetrahedronOfOriginAndThreeAxisPoints() {
    Mesh tetrahedron =
        Meshes.ofFaces(
            List.of(Vec3.ZERO, new Vec3(5, 0, 0), new Vec3(0, 4, 0), new Vec3(0, 0, 3)),
            new int[][][] {{{0, 2, 1}}, {{0, 1, 3}}, {{0, 3, 2}}, {{1, 2, 3}}},
            "");
    MassProperties m = MassProperties.of(tetrahedron);
    assertThat(MeshCheck.problems(tetrahedron)).isEmpty();
    assertThat(m.volume()).isCloseTo(10, within(1e-12));
    assertThat(m.centre().distance(new Vec3(1.25, 1, 0.75))).isLessThan(1e-12);
    assertThat(m.xx()).isCloseTo(9.375, within(1e-12));
    assertThat(m.yy()).isCloseTo(12.75, within(1e-12));
    assertThat(m.zz()).isCloseTo(15.375, within(1e-12));
    assertThat(m.xy()).isCloseTo(2.5, within(1e-12));
    assertThat(m.yz()).isCloseTo(1.5, within(1e-12));
    assertThat(m.zx()).isCloseTo(1.875, within(1e-12));
  }

  @Test
  void icosahedronOnTheUnitSphere() {
    Mesh icosahedron = icosahedron();
    MassProperties m = MassProperties.of(icosahedron);
    assertThat(MeshCheck.problems(icosahedron)).isEmpty();
    assertThat(m.volume()).isCloseTo(2.5361507, within(1e-7));
    assertThat(m.centre().length()).isLessThan(1e-12);
    assertThat(List.of(m.xx(), m.yy(), m.zz()))
        .allSatisfy(i -> assertThat(i).isCloseTo(0.7340704, within(1e-7)));
  }

  /** Every three corners that are an edge apart from each other make a face. */
  private static Mesh icosahedron() {
    double phi = (1 + Math.sqrt(5)) / 2;
    double scale = 1 / Math.sqrt(1 + phi * phi);
    List<Vec3> p = new ArrayList<>();
    for (double u : new double[] {-1, 1}) {
      for (double v : new double[] {-phi, phi}) {
        p.add(new Vec3(0, u, v).times(scale));
        p.add(new Vec3(u, v, 0).times(scale));
        p.add(new Vec3(v, 0, u).times(scale));
      }
    }
    List<int[][]> faces = new ArrayList<>();
    double edge = 2 * scale;
    for (int i = 0; i < 12; i++) {
      for (int j = i + 1; j < 12; j++) {
        for (int k = j + 1; k < 12; k++) {
          double longest =
              Math.max(
                  p.get(i).distance(p.get(j)),
                  Math.max(p.get(j).distance(p.get(k)), p.get(k).distance(p.get(i))));
          if (longest < edge * 1.01) {
            boolean outward = p.get(i).dot(p.get(j).cross(p.get(k))) > 0;
            faces.add(new int[][] {outward ? new int[] {i, j, k} : new int[] {i, k, j}});
          }
        }
      }
    }
    return Meshes.ofFaces(p, faces.toArray(int[][][]::new), "");
  }
}
