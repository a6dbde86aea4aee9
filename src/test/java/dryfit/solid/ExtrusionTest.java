package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Frame;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExtrusionTest {
  private static final List<Vec2> ELL =
      List.of(
          new Vec2(0, 0),
          new Vec2(0, 60),
          new Vec2(10, 60),
          new Vec2(10, 10),
          new Vec2(40, 10),
          new Vec2(40, 0));

  /** Looks along the chair: outline x stays x, outline y goes up, so z runs to the front. */
  private static final Frame SIDE = new Frame(Vec3.ZERO, Vec3.RIGHT, Vec3.UP, Vec3.BACK.negated());

  @Test
  void cellsAndSurfaceHaveTheSameVolume() {
    Frame frame = Frame.of(new Vec3(300, 20, 5), new Vec3(1, 1, 0), new Vec3(0, 1, 2));
    Csg.Leaf leaf = Extrusion.of(ELL, -5, 15, frame, "/parts/3");
    assertThat(Cells.volume(leaf.cells())).isCloseTo(900 * 20, within(1e-8));
    assertThat(Surfaces.volume(leaf.mesh())).isCloseTo(900 * 20, within(1e-8));
    Surfaces.assertClosed(leaf.mesh());
    leaf.cells().forEach(ConvexTest::assertSound);
    assertThat(leaf.mesh().faceCount()).isEqualTo(8);
    assertThat(leaf.mesh().origin(0)).isEqualTo("/parts/3");
  }

  @Test
  void noHeightIsRefused() {
    assertThatThrownBy(() -> Extrusion.of(ELL, 5, 5, Frame.CHAIR, ""))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void twoCrossedCurvedOutlinesKeepTheirClosedFormVolume() {
    List<Vec2> plan = band(-30, 30, 25, Math.PI / 450);
    List<Vec2> side = band(-20, 10, 15, 1.0 / 150);
    Csg leg =
        new Csg.Common(
            List.of(
                Extrusion.of(plan, -100, 100, Frame.CHAIR, "/plan"),
                Extrusion.of(side, -100, 100, SIDE, "/side")));
    List<Convex> cells = Cells.of(leg);
    // Every cross-section is a rectangle 60 x 30, moved sideways and up: 60 x 30 x 450.
    assertThat(Cells.volume(cells)).isCloseTo(810_000, within(810_000 * 1e-9));
    assertThat(cells.size()).isLessThan(2 * 59);
    cells.forEach(ConvexTest::assertSound);
  }

  private static List<Vec2> band(double low, double high, double sway, double rate) {
    List<Vec2> out = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      double x = 450.0 * i / 59;
      out.add(new Vec2(x, low + sway * Math.sin(rate * x)));
    }
    for (int i = 59; i >= 0; i--) {
      double x = 450.0 * i / 59;
      out.add(new Vec2(x, high + sway * Math.sin(rate * x)));
    }
    return out;
  }
}
