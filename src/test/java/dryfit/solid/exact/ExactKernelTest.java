package dryfit.solid.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.KernelFailure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ExactKernelTest {
  private final Kernel kernel = new ExactKernel();

  private static Csg box(double x0, double y0, double z0, double x1, double y1, double z1) {
    return box(x0, y0, z0, x1, y1, z1, "/box");
  }

  private static Csg box(
      double x0, double y0, double z0, double x1, double y1, double z1, String origin) {
    return leaf(Meshes.box(new Box(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1)), origin));
  }

  private static Csg leaf(Mesh mesh) {
    return new Csg.Leaf(mesh, List.of());
  }

  private Mesh closed(Csg what) {
    Mesh mesh = kernel.evaluate(what);
    assertThat(MeshCheck.problems(mesh)).isEmpty();
    assertThat(MeshCheck.problemsAsFloats(mesh)).isEmpty();
    return mesh;
  }

  private static double volume(Mesh mesh) {
    return MassProperties.of(mesh).volume();
  }

  private static Csg leg() {
    double lean = Math.toRadians(9);
    Frame tilted =
        new Frame(
            new Vec3(0, 22, 600),
            Vec3.RIGHT,
            new Vec3(0, Math.cos(lean), Math.sin(lean)),
            new Vec3(0, -Math.sin(lean), Math.cos(lean)));
    Mesh mortise =
        Meshes.box(new Box(new Vec3(-6, -15, -12.5), new Vec3(6, 15, 12.5)), "/joints/2");
    return box(-22, -22, 0, 22, 22, 640, "/parts/0")
        .minus(
            List.of(
                box(-6, 5, 350, 6, 35, 410, "/joints/0"),
                box(5, -6, 350, 35, 6, 410, "/joints/1"),
                leaf(mortise.placed(tilted))));
  }

  private static Csg arm() {
    List<double[]> plan = new ArrayList<>();
    List<double[]> side = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      double x = 450 * i / 59.0;
      plan.add(new double[] {x, -30 + 25 * Math.sin(Math.PI * x / 450)});
      side.add(new double[] {x, -20 + 15 * Math.sin(x / 150)});
    }
    for (int i = 59; i >= 0; i--) {
      plan.add(new double[] {plan.get(i)[0], plan.get(i)[1] + 60});
      side.add(new double[] {side.get(i)[0], side.get(i)[1] + 30});
    }
    Frame upright = new Frame(Vec3.ZERO, Vec3.RIGHT, Vec3.UP, Vec3.BACK.negated());
    return new Csg.Common(
        List.of(
            leaf(Meshes.prism(plan, -60, 60, "/plan")),
            leaf(Meshes.prism(side, -80, 80, "/side").placed(upright))));
  }

  @Test
  void aLegWithThreeMortisesHasTheVolumeOfPlainArithmetic() {
    Mesh mesh = closed(leg());
    // Two mortises 12 x 17 x 60, which share 1 x 1 x 60; the tilted one of 12 x 30 x 25 is halved
    // by
    // the face it is centred on. The corners on the grid are off by up to 3e-5 mm.
    double expected = 44 * 44 * 640 - (2 * 12 * 17 * 60 - 60) - 12 * 30 * 25 / 2.0;
    assertThat(volume(mesh)).isCloseTo(expected, within(0.01));
    // Six sides; four walls each of the two mortises that run into each other, five of the third.
    assertThat(mesh.faceCount()).isEqualTo(19);
  }

  @Test
  void twoCrossedOutlinesLeaveWidthTimesHeightTimesLength() {
    Mesh mesh = closed(arm());
    assertThat(volume(mesh)).isCloseTo(60 * 30 * 450, within(60 * 30 * 450 * 1e-9));
  }

  @Test
  void facesOfOnePlaneBecomeOne() {
    Mesh mesh = closed(new Csg.Union(List.of(box(0, 0, 0, 1, 1, 1), box(1, 0, 0, 3, 1, 1))));
    assertThat(mesh.faceCount()).isEqualTo(6);
    assertThat(mesh.pointCount()).isEqualTo(8);
    assertThat(mesh.triangleCount()).isEqualTo(12);
  }

  @Test
  void holesOfAFaceAreItsLaterLoops() {
    Mesh mesh =
        closed(
            box(0, 0, 0, 10, 10, 1).minus(List.of(box(1, 1, -1, 2, 2, 2), box(4, 4, -1, 5, 5, 2))));
    long withHoles =
        IntStream.range(0, mesh.faceCount()).filter(f -> mesh.loops(f).length == 3).count();
    assertThat(withHoles).isEqualTo(2);
    assertThat(MeshCheck.genus(mesh)).isEqualTo(2);
  }

  @Test
  void aToolThatOnlyLiesAgainstAFaceChangesNothing() {
    Mesh mesh = closed(box(0, 0, 0, 2, 2, 2).minus(List.of(box(0.5, 0.5, 2, 1, 1, 3))));
    assertThat(mesh.faceCount()).isEqualTo(6);
    assertThat(mesh.pointCount()).isEqualTo(8);
  }

  @Test
  void cubesThatShareAnEdgeAreTwoShells() {
    Mesh mesh = closed(new Csg.Union(List.of(box(0, 0, 0, 1, 1, 1), box(1, 1, 0, 2, 2, 1))));
    assertThat(MeshCheck.shells(mesh)).isEqualTo(2);
    assertThat(mesh.pointCount()).isEqualTo(16);
  }

  @Test
  void cubesThatShareACornerAreTwoShells() {
    Mesh mesh = closed(new Csg.Union(List.of(box(0, 0, 0, 1, 1, 1), box(1, 1, 1, 2, 2, 2))));
    assertThat(MeshCheck.shells(mesh)).isEqualTo(2);
    assertThat(mesh.pointCount()).isEqualTo(16);
  }

  @Test
  void aHoleThatTouchesTheSideAlongAnEdgeLeavesAClosedSurface() {
    List<double[]> diamond =
        List.of(
            new double[] {-5, 0}, new double[] {0, -5}, new double[] {5, 0}, new double[] {0, 5});
    Mesh mesh =
        closed(
            box(-5, -5, 0, 5, 5, 10).minus(List.of(leaf(Meshes.prism(diamond, -1, 11, "/hole")))));
    assertThat(volume(mesh)).isCloseTo(500, within(1e-9));
    assertThat(MeshCheck.shells(mesh)).isEqualTo(4);
  }

  @Test
  void aSlitThatEndsInsideWoodAtBothEndsStaysClosed() {
    // Two tools that touch along an edge; the walls on either side hang together beyond its ends.
    Mesh mesh =
        closed(box(0, 0, 0, 4, 4, 4).minus(List.of(box(1, 1, 1, 2, 2, 3), box(2, 2, 1, 3, 3, 3))));
    assertThat(volume(mesh)).isCloseTo(60, within(1e-12));
  }

  @Test
  void whatIsCutFromItselfIsGone() {
    Csg leg = leg();
    assertThat(kernel.evaluate(leg.minus(List.of(leg))).isEmpty()).isTrue();
    assertThat(kernel.evaluate(new Csg.Union(List.of())).isEmpty()).isTrue();
  }

  @Test
  void aHollowIsAShellOfItsOwn() {
    Mesh mesh = closed(box(0, 0, 0, 3, 3, 3).minus(List.of(box(1, 1, 1, 2, 2, 2))));
    assertThat(volume(mesh)).isEqualTo(26);
    assertThat(MeshCheck.shells(mesh)).isEqualTo(2);
  }

  @Test
  void theSmallestOriginNamesAMergedFaceAndToolsNameTheirWalls() {
    Mesh mesh =
        closed(
            new Csg.Union(List.of(box(0, 0, 0, 1, 1, 1, "/b"), box(1, 0, 0, 2, 1, 1, "/a")))
                .minus(List.of(box(0.25, 0.25, 0.5, 0.5, 0.5, 1, "/c"))));
    List<String> origins =
        IntStream.range(0, mesh.faceCount()).mapToObj(mesh::origin).sorted().toList();
    assertThat(origins)
        .containsExactly("/a", "/a", "/a", "/a", "/a", "/b", "/c", "/c", "/c", "/c", "/c");
  }

  @Test
  void aMirroredPartHasTheSameVolume() {
    Csg.Cut leg = (Csg.Cut) leg();
    Mesh one = closed(leg);
    Mesh other =
        closed(
            mirrored(leg.from())
                .minus(leg.tools().stream().map(ExactKernelTest::mirrored).toList()));
    assertThat(volume(other)).isCloseTo(volume(one), within(1e-12 * volume(one)));
    assertThat(other.faceCount()).isEqualTo(one.faceCount());
  }

  private static Csg mirrored(Csg leaf) {
    return leaf(Meshes.mirroredZ(((Csg.Leaf) leaf).mesh()));
  }

  @Test
  void aResultCanBeTurnedAndCutAgain() {
    Frame frame = Frame.of(new Vec3(3, -4, 5), new Vec3(1, 2, 3), new Vec3(-1, 0, 1));
    Csg again = leaf(closed(leg()).placed(frame));
    Csg tool = box(-30, -30, -30, 60, 400, 200);
    double whole = volume(closed(again));
    double kept = volume(closed(again.minus(List.of(tool))));
    double common = volume(closed(new Csg.Common(List.of(again, tool))));
    assertThat(kept + common).isCloseTo(whole, within(1e-9 * whole));
    assertThat(kept).isBetween(0.1 * whole, 0.99 * whole);
  }

  @Test
  void theSameInputGivesTheSameNumbers() {
    Mesh one = kernel.evaluate(arm());
    Mesh two = new ExactKernel().evaluate(arm());
    assertThat(two.coordinates()).isEqualTo(one.coordinates());
    assertThat(two.triangles()).isEqualTo(one.triangles());
    for (int f = 0; f < one.faceCount(); f++) {
      assertThat(two.loops(f)).isDeepEqualTo(one.loops(f));
      assertThat(two.origin(f)).isEqualTo(one.origin(f));
    }
  }

  @Test
  void oneKernelServesManyThreads() {
    double[] expected = kernel.evaluate(leg()).coordinates();
    List<double[]> all =
        Collections.nCopies(16, leg()).parallelStream()
            .map(c -> kernel.evaluate(c).coordinates())
            .toList();
    assertThat(all).allSatisfy(c -> assertThat(c).isEqualTo(expected));
  }

  @Test
  void whatReachesFarIsComputedOnACoarserGrid() {
    // A bar of 100 m, the longest a document may have, with a slot: 10 x 10 x 100000 - 10 x 4 x 10.
    Csg bar = box(0, 0, 0, 10, 10, 100_000).minus(List.of(box(-1, 3, 99_980, 11, 7, 99_990)));
    assertThat(volume(closed(bar))).isEqualTo(9_999_600);
    // Up to the last step within 2048 mm the grid stays fine.
    double step = 0x1p-14;
    Mesh fine = closed(box(0, 0, 0, 10 + step, 10, 2048 - step));
    assertThat(fine.bounds().high()).isEqualTo(new Vec3(10 + step, 10, 2048 - step));
    Mesh coarse = closed(box(0, 0, 0, 10 + step, 10, 2048));
    assertThat(coarse.bounds().high()).isEqualTo(new Vec3(10, 10, 2048));
  }

  @Test
  void aPointBeyondEveryGridIsNamedInTheMessage() {
    Csg far = box(0, 0, 0, 10, 10, 131_073);
    assertThatThrownBy(() -> kernel.evaluate(far))
        .isInstanceOf(KernelFailure.class)
        .hasMessageContaining("131073 mm")
        .hasMessageContaining("within 131072 mm")
        .satisfies(e -> assertThat(((KernelFailure) e).operands()).isSameAs(far));
  }

  @Test
  void anOpenShapeIsRefused() {
    Mesh box = Meshes.box(new Box(Vec3.ZERO, new Vec3(1, 1, 1)), "/box");
    int[][][] five = IntStream.range(0, 5).mapToObj(box::loops).toArray(int[][][]::new);
    List<Vec3> points = IntStream.range(0, 8).mapToObj(box::point).toList();
    Csg open = leaf(Meshes.ofFaces(points, five, "/open"));
    assertThatThrownBy(() -> kernel.evaluate(open))
        .isInstanceOf(KernelFailure.class)
        .hasMessageContaining("not a closed solid");
  }

  @Test
  void aStepThinnerThanAFloatCanHoldIsStillClosedInFloats() {
    // At 1500 mm a float steps by 1.2e-4 mm, two grid steps.
    double step = 0x1p-14;
    Mesh mesh =
        kernel.evaluate(
            new Csg.Union(
                List.of(box(1400, 0, 0, 1500, 10, 10), box(1420, 2, 2, 1500 + step, 8, 8))));
    assertThat(MeshCheck.problems(mesh)).isEmpty();
    assertThat(MeshCheck.problemsAsFloats(mesh)).isEmpty();
    assertThat(volume(mesh)).isCloseTo(10000, within(0.01));
  }
}
