package dryfit.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class MeshTest {
  private static Mesh face(double[] xyz, int[][] loops, int[] triangles) {
    return new Mesh(
        xyz,
        new int[][][] {loops},
        triangles,
        new int[triangles.length / 3],
        new int[] {0},
        List.of("/parts/it"));
  }

  /**
   * The first triangle is a sliver whose third corner has slipped to the wrong side of its edge.
   */
  @Test
  void aFaceLooksWhereItsCornersSayWhateverASliverOfItDoes() {
    double[] xyz = {0, 0, 0, 1, 1e-12, 0, 2, 0, 0, 2, 2, 0, 0, 2, 0};
    Mesh mesh = face(xyz, new int[][] {{0, 1, 2, 3, 4}}, new int[] {0, 1, 2, 0, 2, 3, 0, 3, 4});
    Vec3 a = mesh.point(1).minus(mesh.point(0));
    assertThat(a.cross(mesh.point(2).minus(mesh.point(0))).z()).isNegative();
    assertThat(mesh.normal(0).distance(Vec3.UP)).isEqualTo(0, within(1e-12));
  }

  @Test
  void aFaceWithoutAreaLooksNowhere() {
    double[] xyz = {0, 0, 0, 1, 0, 0, 2, 0, 0};
    assertThat(face(xyz, new int[][] {{0, 1, 2}}, new int[] {0, 1, 2}).normal(0))
        .isEqualTo(Vec3.ZERO);
  }

  @Test
  void aHoleDoesNotTurnAFaceRound() {
    double[] xyz = {0, 0, 0, 4, 0, 0, 4, 4, 0, 0, 4, 0, 1, 1, 0, 1, 2, 0, 2, 1, 0};
    Mesh mesh = face(xyz, new int[][] {{0, 1, 2, 3}, {4, 5, 6}}, new int[] {0, 1, 2});
    assertThat(mesh.normal(0).distance(Vec3.UP)).isEqualTo(0, within(1e-12));
  }
}
