package dryfit.solid.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Faces with several holes whose corners share lines: no triangle may lie over another. */
class FacesWithHolesTest {
  private static Csg box(double x0, double y0, double z0, double x1, double y1, double z1) {
    return Convex.box(new Box(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1))).asLeaf("/box");
  }

  @Test
  void threeMortisesInALine() {
    // The corners of the outer two are level; the middle one stands higher and overlaps their span.
    Mesh mesh =
        new ExactKernel()
            .evaluate(
                box(0, 0, 0, 320, 30, 22)
                    .minus(
                        List.of(
                            box(65, 5, 10, 88, 10, 30),
                            box(147, 9, 10, 170, 14, 30),
                            box(230, 5, 10, 253, 10, 30))));
    areAllFilledOnce(mesh);
  }

  @Test
  void mortisesOnAGrid() {
    Random random = new Random(20260101);
    for (int trial = 0; trial < 150; trial++) {
      List<Csg> holes = new ArrayList<>();
      for (int i = 0; i < 5; i++) {
        for (int k = 0; k < 5; k++) {
          if (random.nextInt(3) == 0) {
            int up = random.nextInt(3);
            holes.add(box(i * 10 + 2, k * 10 + 2 + up, 5, i * 10 + 8, k * 10 + 6 + up, 30));
          }
        }
      }
      areAllFilledOnce(new ExactKernel().evaluate(box(0, 0, 0, 50, 50, 20).minus(holes)));
    }
  }

  /** Where all triangles of a face look the same way, their areas add up to that of the face. */
  private static void areAllFilledOnce(Mesh mesh) {
    Vec3[] sum = new Vec3[mesh.faceCount()];
    double[] area = new double[mesh.faceCount()];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec3 a = mesh.point(mesh.corner(t, 0));
      Vec3 twice =
          mesh.point(mesh.corner(t, 1)).minus(a).cross(mesh.point(mesh.corner(t, 2)).minus(a));
      int f = mesh.faceOf(t);
      sum[f] = sum[f] == null ? twice : sum[f].plus(twice);
      area[f] += twice.length();
    }
    for (int f = 0; f < area.length; f++) {
      assertThat(area[f]).as("face " + f).isCloseTo(sum[f].length(), within(1e-6));
    }
  }
}
