package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec3;
import dryfit.solid.exact.ExactKernel;
import dryfit.solid.jcsg.JcsgKernel;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for any two solids, on seeded random ones; the seed is in the test's name. */
class LawsTest {
  private static final List<Kernel> KERNELS = List.of(new JcsgKernel(), new ExactKernel());

  static Stream<Arguments> kernelsAndSeeds() {
    return KERNELS.stream()
        .flatMap(
            kernel ->
                LongStream.range(0, 24).mapToObj(s -> Arguments.of(kernel.name(), kernel, s)));
  }

  @ParameterizedTest(name = "{0}, seed {2}")
  @MethodSource("kernelsAndSeeds")
  void whatIsInBothIsCountedTwiceWhenTwoSolidsAreAdded(String name, Kernel kernel, long seed) {
    Random random = new Random(seed);
    Csg a = solid(random, seed);
    Csg b = solid(random, seed);
    double sum = volume(kernel, a) + volume(kernel, b);
    double joined = volume(kernel, new Csg.Union(List.of(a, b)));
    double common = volume(kernel, new Csg.Common(List.of(a, b)));
    assertThat(joined + common).as(name).isCloseTo(sum, within(1e-7 * sum));
  }

  @ParameterizedTest(name = "{0}, seed {2}")
  @MethodSource("kernelsAndSeeds")
  void aCutAndWhatIsCutAwayMakeTheWhole(String name, Kernel kernel, long seed) {
    Random random = new Random(seed);
    Csg a = solid(random, seed);
    Csg b = solid(random, seed);
    Csg rest = a.minus(List.of(b));
    Csg off = new Csg.Common(List.of(a, b));
    double whole = volume(kernel, a);
    assertThat(volume(kernel, rest) + volume(kernel, off))
        .as(name)
        .isCloseTo(whole, within(1e-7 * whole));
    assertThat(volume(kernel, rest.plus(List.of(off))))
        .as("put together again")
        .isCloseTo(whole, within(1e-7 * whole));
    assertThat(volume(kernel, off.minus(List.of(b)))).isZero();
  }

  @ParameterizedTest(name = "{0}, seed {2}")
  @MethodSource("kernelsAndSeeds")
  void aLegLosesJustWhatItsMortisesHaveInCommonWithIt(String name, Kernel kernel, long seed) {
    Random random = new Random(seed);
    Frame frame =
        Frame.of(
            new Vec3(random.nextInt(30), random.nextInt(30), 0),
            new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()),
            new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()));
    Csg leg = box(frame, new Vec3(0, 0, 0), new Vec3(440, 40, 40));
    List<Csg> mortises = new ArrayList<>();
    double lean = Math.toRadians(random.nextInt(15));
    for (int i = 0; i < 4; i++) {
      Vec3 entry = new Vec3(Math.cos(lean), Math.sin(lean) * random.nextInt(2), Math.sin(lean));
      Vec3 mouth = new Vec3(40 + 90 * i + random.nextInt(20), 20, 40.0 * random.nextInt(2));
      Frame at = Frame.of(frame.place(mouth), frame.turn(entry), frame.turn(Vec3.BACK));
      double flush = random.nextBoolean() ? -20 : -6;
      mortises.add(box(at, new Vec3(-30, flush, -10), new Vec3(30, 6, 10)));
    }
    double whole = volume(kernel, leg);
    double left = volume(kernel, leg.minus(mortises));
    double lost = volume(kernel, new Csg.Common(List.of(leg, new Csg.Union(mortises))));
    assertThat(left + lost).as(name).isCloseTo(whole, within(1e-7 * whole));
  }

  private static Csg box(Frame frame, Vec3 low, Vec3 high) {
    return new Csg.Leaf(Meshes.box(new Box(low, high), "/box").placed(frame), List.of());
  }

  private static double volume(Kernel kernel, Csg csg) {
    Mesh mesh = kernel.evaluate(csg);
    assertThat(MeshCheck.problems(mesh)).isEmpty();
    return MassProperties.of(mesh).volume();
  }

  /** A prism on a star of sides; for even seeds along the axes on a coarse grid, so faces meet. */
  private static Csg solid(Random random, long seed) {
    boolean even = seed % 2 == 0;
    if (even) {
      Vec3 low = new Vec3(random.nextInt(4), random.nextInt(4), random.nextInt(4));
      Vec3 size = new Vec3(1 + random.nextInt(4), 1 + random.nextInt(4), 1 + random.nextInt(4));
      return box(Frame.CHAIR, low, low.plus(size));
    }
    int sides = 5 + random.nextInt(8);
    List<double[]> outline = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double angle = 2 * Math.PI * (i + 0.4 * random.nextDouble()) / sides;
      double r = 20 + 25 * random.nextDouble();
      outline.add(new double[] {r * Math.cos(angle), r * Math.sin(angle)});
    }
    Vec3 length = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
    Vec3 origin = new Vec3(random.nextInt(20), random.nextInt(20), random.nextInt(20));
    Mesh mesh = Meshes.prism(outline, -60 * random.nextDouble() - 10, 70, "/prism");
    return new Csg.Leaf(mesh.placed(Frame.of(origin, length, length.cross(Vec3.UP))), List.of());
  }
}
