package dryfit.solid.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Blocks that nearly coincide, turned and placed by less than a tenth of a millimetre. */
class NearlyEqualTest {
  private static Csg block(double length, double y, Frame... frames) {
    Mesh mesh =
        Meshes.box(new Box(new Vec3(0, y, -10), new Vec3(length, y + 60, 10)), "/block" + y);
    for (Frame f : frames) {
      mesh = mesh.placed(f);
    }
    return new Csg.Leaf(mesh, List.of());
  }

  @ParameterizedTest(name = "off by about {0} mm")
  @ValueSource(doubles = {1e-7, 1e-6, 1e-5, 3e-5, 1e-4, 1e-3, 1e-2, 0.1})
  void whateverFilmIsLeftTheSurfaceIsClosedAlsoInFloats(double off) {
    for (int seed = 0; seed < 40; seed++) {
      Random r = new Random(seed);
      Frame far =
          Frame.of(
              new Vec3(300, -200, 700),
              new Vec3(r.nextGaussian(), r.nextGaussian(), r.nextGaussian()),
              new Vec3(.1, .9, .3));
      Frame near =
          Frame.of(
              new Vec3(off * r.nextGaussian(), off * r.nextGaussian(), off * r.nextGaussian()),
              new Vec3(1, off * r.nextGaussian() / 50, off * r.nextGaussian() / 50),
              Vec3.BACK);
      Csg a = block(100, 0, far);
      Csg b = block(r.nextBoolean() ? 100 : 50, r.nextBoolean() ? 0 : 30, near, far);
      for (Csg c :
          List.of(
              new Csg.Union(List.of(a, b)), new Csg.Common(List.of(a, b)), a.minus(List.of(b)))) {
        Mesh mesh = new ExactKernel().evaluate(c);
        assertThat(MeshCheck.problems(mesh)).as("seed " + seed).isEmpty();
        assertThat(MeshCheck.problemsAsFloats(mesh)).as("seed " + seed).isEmpty();
      }
    }
  }

  @ParameterizedTest(name = "{0} mm thick")
  @ValueSource(doubles = {3e-6, 1e-5, 1.6e-5, 3e-5, 1e-4})
  void aShapeThinnerThanAGridStepTakesNothingAndBreaksNothing(double thick) {
    Csg block = block(40, 0);
    for (int seed = 0; seed < 40; seed++) {
      Random r = new Random(seed);
      Vec3 out = new Vec3(r.nextGaussian(), r.nextGaussian(), r.nextGaussian()).unit();
      Vec3 side = new Vec3(r.nextGaussian(), r.nextGaussian(), r.nextGaussian()).across(out).unit();
      Vec3 at = seed % 3 == 0 ? new Vec3(40, 20, 0) : new Vec3(20, 30, 0);
      List<Vec3> loop =
          List.of(
              at,
              at.plus(out.times(thick)),
              at.plus(out.times(thick)).plus(side.times(10)),
              at.plus(side.times(10)));
      Csg film = Convex.prism(loop, out.cross(side).times(15)).asLeaf("/film");
      Mesh mesh = new ExactKernel().evaluate(block.minus(List.of(film)));
      assertThat(MeshCheck.problems(mesh)).as("seed " + seed).isEmpty();
      assertThat(MassProperties.of(mesh).volume()).isCloseTo(40 * 60 * 20, within(0.5));
    }
  }
}
