package dryfit.solid.jcsg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.KernelFailure;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class JcsgKernelTest {
  private final JcsgKernel kernel = new JcsgKernel();

  private static Csg box(String origin, double... c) {
    Box box = new Box(new Vec3(c[0], c[1], c[2]), new Vec3(c[3], c[4], c[5]));
    return new Csg.Leaf(Meshes.box(box, origin), List.of());
  }

  @Test
  void facesRememberTheShapeThatMadeThem() {
    Csg leg = box("/parts/leg", 0, 0, 0, 40, 40, 400);
    Mesh mesh = kernel.evaluate(leg.minus(List.of(box("/joints/0", 30, 10, 300, 50, 30, 340))));
    int walls = 0;
    for (int f = 0; f < mesh.faceCount(); f++) {
      int face = f;
      boolean inside =
          IntStream.of(mesh.loops(f)[0])
              .mapToObj(mesh::point)
              .allMatch(p -> p.y() >= 10 && p.y() <= 30 && p.z() >= 300 && p.z() <= 340);
      walls += inside ? 1 : 0;
      assertThat(mesh.origin(face)).isEqualTo(inside ? "/joints/0" : "/parts/leg");
    }
    assertThat(walls).isEqualTo(5);
  }

  @Test
  void facesThatBecomeOneTakeTheFirstOrigin() {
    Csg a = box("/b", 0, 0, 0, 1, 1, 1);
    Csg b = box("/a", 1, 0, 0, 2, 1, 1);
    for (Csg joined : List.of(a.plus(List.of(b)), b.plus(List.of(a)))) {
      Mesh mesh = kernel.evaluate(joined);
      TreeSet<String> spanning = new TreeSet<>();
      for (int f = 0; f < mesh.faceCount(); f++) {
        boolean spans =
            IntStream.of(mesh.loops(f)[0]).mapToDouble(i -> mesh.point(i).x()).distinct().count()
                > 1;
        if (spans) {
          spanning.add(mesh.origin(f));
        }
      }
      assertThat(spanning).containsExactly("/a");
    }
  }

  @Test
  void theSameExpressionGivesTheSameMesh() {
    Csg csg =
        box("/a", 0, 0, 0, 40, 40, 400)
            .plus(List.of(box("/b", 10, 10, 390, 30, 30, 430)))
            .minus(
                List.of(box("/c", 30, 10, 300, 50, 30, 340), box("/d", 10, 30, 310, 30, 50, 350)));
    Mesh one = kernel.evaluate(csg);
    Mesh two = kernel.evaluate(csg);
    assertThat(two.coordinates()).isEqualTo(one.coordinates());
    assertThat(two.triangles()).isEqualTo(one.triangles());
  }

  @Test
  void emptyAndFarOperandsAreHandled() {
    Csg a = box("/a", 0, 0, 0, 1, 1, 1);
    Csg far = box("/b", 5, 5, 5, 6, 6, 6);
    Csg nothing = new Csg.Union(List.of());
    assertThat(kernel.evaluate(nothing).isEmpty()).isTrue();
    assertThat(kernel.evaluate(new Csg.Cut(nothing, List.of(a))).isEmpty()).isTrue();
    assertThat(kernel.evaluate(new Csg.Common(List.of(a, far))).isEmpty()).isTrue();
    assertThat(kernel.evaluate(new Csg.Common(List.of(a, nothing))).isEmpty()).isTrue();
    assertThat(volume(a.minus(List.of(far)))).isCloseTo(1, within(1e-12));
    assertThat(volume(a.minus(List.of(nothing)))).isCloseTo(1, within(1e-12));
    assertThat(volume(a.plus(List.of(far, nothing)))).isCloseTo(2, within(1e-12));
  }

  @Test
  void aShapeWithThousandsOfFacetsDoesNotOverflow() {
    List<double[]> outline = new ArrayList<>();
    int n = 4000;
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * i / n;
      outline.add(new double[] {100 * Math.cos(angle), 100 * Math.sin(angle)});
    }
    Csg round = new Csg.Leaf(Meshes.prism(outline, 0, 10, "/round"), List.of());
    double area = n / 2.0 * 1e4 * Math.sin(2 * Math.PI / n);
    assertThat(volume(round.minus(List.of(box("/hole", -10, -10, -1, 10, 10, 11)))))
        .isCloseTo(10 * (area - 400), within(1e-5));
  }

  @Test
  void anOpenShapeIsRefusedInOneSentenceWithTheOperands() {
    Mesh open =
        Meshes.ofFaces(
            List.of(Vec3.ZERO, Vec3.RIGHT, Vec3.BACK, Vec3.UP),
            new int[][][] {{{0, 2, 1}}, {{0, 1, 3}}, {{0, 3, 2}}},
            "/open");
    Csg csg = new Csg.Leaf(open, List.of());
    assertThatThrownBy(() -> kernel.evaluate(csg))
        .isInstanceOfSatisfying(
            KernelFailure.class,
            e -> {
              assertThat(e.getMessage()).contains("not a closed solid").doesNotContain("\n");
              assertThat(e.operands()).isSameAs(csg);
            });
  }

  private double volume(Csg csg) {
    return MassProperties.of(kernel.evaluate(csg)).volume();
  }
}
