package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.solid.Turned.Ring;
import java.util.List;
import org.junit.jupiter.api.Test;

class TurnedTest {

  @Test
  void aSpindleOfFrustaHasItsVolume() {
    List<Ring> rings =
        List.of(
            new Ring(0, 0),
            new Ring(10, 8),
            new Ring(30, 8),
            new Ring(30, 12),
            new Ring(200, 14),
            new Ring(200, 9),
            new Ring(230, 7));
    Csg.Leaf leaf = Turned.of(rings, 32, "/parts/1");
    double expected =
        frustum(10, 0, 8) + frustum(20, 8, 8) + frustum(170, 12, 14) + frustum(30, 9, 7);
    assertThat(Cells.volume(leaf.cells())).isCloseTo(expected, within(1e-9 * expected));
    assertThat(Surfaces.volume(leaf.mesh())).isCloseTo(expected, within(1e-9 * expected));
    Surfaces.assertClosed(leaf.mesh());
    leaf.cells().forEach(ConvexTest::assertSound);
    assertThat(leaf.cells()).hasSize(4);
  }

  @Test
  void bothEndsMayBePoints() {
    Csg.Leaf leaf = Turned.of(List.of(new Ring(-5, 0), new Ring(0, 6), new Ring(5, 0)), 12, "");
    assertThat(Surfaces.volume(leaf.mesh())).isCloseTo(2 * 12 * 3 * 5, within(1e-9 * 360));
    Surfaces.assertClosed(leaf.mesh());
  }

  @Test
  void aRingIsExactlyAsWideAndThickAsItsDiameter() {
    Csg.Leaf leaf = Turned.of(List.of(new Ring(0, 12.7), new Ring(100, 12.7)), 36, "");
    assertThat(leaf.mesh().bounds())
        .isEqualTo(new Box(new Vec3(0, -12.7, -12.7), new Vec3(100, 12.7, 12.7)));
  }

  @Test
  void facetsKeepTheChordErrorAndNoMore() {
    for (double radius : new double[] {3, 8, 15.9, 40, 250}) {
      int n = Turned.facetsFor(radius, 0.05);
      assertThat(n % 4).isZero();
      assertThat(radius * (1 - Math.cos(Math.PI / n))).isLessThanOrEqualTo(0.05);
      if (n > 12) {
        assertThat(radius * (1 - Math.cos(Math.PI / (n - 4)))).isGreaterThan(0.05);
      }
    }
    assertThat(Turned.facetsFor(0.01, 0.05)).isEqualTo(12);
  }

  @Test
  void ringsOutOfOrderAreRefused() {
    assertRefused(List.of(new Ring(0, 5), new Ring(20, 5), new Ring(10, 5)));
    assertRefused(List.of(new Ring(0, 5), new Ring(10, 0), new Ring(20, 5)));
    assertRefused(List.of(new Ring(0, 5), new Ring(0, 6)));
    assertRefused(List.of(new Ring(0, 5), new Ring(10, -5)));
    assertRefused(List.of(new Ring(0, 0), new Ring(0, 5), new Ring(10, 5)));
  }

  private static void assertRefused(List<Ring> rings) {
    assertThatThrownBy(() -> Turned.of(rings, 16, "")).isInstanceOf(IllegalArgumentException.class);
  }

  /** A frustum over regular 32-gons, whose area is n/2 r^2 sin(2 pi / n). */
  private static double frustum(double h, double r, double s) {
    return h / 3 * (r * r + r * s + s * s) * 16 * Math.sin(Math.PI / 16);
  }
}
