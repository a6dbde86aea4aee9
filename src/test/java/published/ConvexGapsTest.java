package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Distance;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Gaps between simple solids as stated in the tests of a public geometry library: github.com
 * elalish/manifold, test/properties_test.cpp, cases MinGap* (Apache-2.0). Positions and expected
 * values are theirs; the spheres are ours, with corners where theirs have them.
 */
class ConvexGapsTest {
  private static final double ROOT = Math.sqrt(2);

  @Test
  void unitCubesTwoAndThreeApartOnTheDiagonal() {
    assertGap(unit(0, 0, 0), unit(2, 2, 0), ROOT);
    assertGap(unit(0, 0, 0), unit(3, 3, 0), 2 * ROOT);
  }

  @Test
  void aCubeInASphereIsAtNoDistance() {
    assertGap(unit(0, 0, 0), sphere(0, 0, 0), 0);
  }

  @Test
  void unitSpheresOnTheDiagonal() {
    assertGap(sphere(0, 0, 0), sphere(2, 2, 0), 2 * ROOT - 2);
  }

  @Test
  void cubesTurnedAboutDifferentAxesAreNearestAtTheirEdges() {
    Convex cube = Convex.box(new Box(new Vec3(-0.5, -0.5, -0.5), new Vec3(0.5, 0.5, 0.5)));
    Convex first = cube.placed(Frame.of(Vec3.ZERO, new Vec3(1, 1, 0), new Vec3(-1, 1, 0)));
    Convex second = cube.placed(Frame.of(new Vec3(2, 0, 0), new Vec3(1, 0, -1), Vec3.BACK));
    assertGap(first, second, 2 - ROOT);
  }

  @Test
  void aCornerBeforeALargeFace() {
    assertGap(unit(0, 0, 0), Convex.box(new Box(new Vec3(2, -5, -1), new Vec3(12, 5, 9))), 1);
  }

  private static void assertGap(Convex a, Convex b, double expected) {
    assertThat(Distance.between(a, b).length()).isCloseTo(expected, within(1e-9));
    assertThat(Distance.between(b, a).length()).isCloseTo(expected, within(1e-9));
  }

  private static Convex unit(double x, double y, double z) {
    return Convex.box(new Box(new Vec3(x, y, z), new Vec3(x + 1, y + 1, z + 1)));
  }

  private static Convex sphere(double x, double y, double z) {
    List<Vec3> points = new ArrayList<>();
    for (int i = -2; i <= 2; i++) {
      for (int j = 0; j < 8; j++) {
        double rise = i * Math.PI / 4;
        double turn = j * Math.PI / 4;
        points.add(
            new Vec3(
                x + Math.cos(rise) * Math.cos(turn),
                y + Math.cos(rise) * Math.sin(turn),
                z + Math.sin(rise)));
      }
    }
    return Convex.hull(points);
  }
}
