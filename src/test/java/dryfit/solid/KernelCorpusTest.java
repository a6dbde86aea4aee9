package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.FloatGrid;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.solid.exact.ExactKernel;
import dryfit.solid.jcsg.JcsgKernel;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kernel on every case of the {@link Corpus}. */
class KernelCorpusTest {
  private static final List<Kernel> KERNELS = List.of(new JcsgKernel(), new ExactKernel());

  /** The share by which the exact kernel's volume of shapes on its grid may be off. */
  private static final double SHARE = 1e-9;

  /** Only against recursion without end; no case comes near it. */
  private static final Duration RUNAWAY = Duration.ofSeconds(60);

  static Stream<Arguments> kernelsAndCases() {
    return KERNELS.stream()
        .flatMap(kernel -> Corpus.all().stream().map(c -> Arguments.of(kernel.name(), kernel, c)));
  }

  @Test
  void theCorpusIsThere() {
    assertThat(Corpus.all()).hasSizeGreaterThan(50);
  }

  @ParameterizedTest(name = "{0}: {2}")
  @MethodSource("kernelsAndCases")
  void theAnswerIsRight(String name, Kernel kernel, Corpus.Case c) {
    if (c.knownWrong().containsKey(name)) {
      assertThat(catchThrowable(() -> check(kernel, c)))
          .as(name + " now passes: take it out of knownWrong")
          .isNotNull();
    } else {
      check(kernel, c);
    }
  }

  static Stream<Corpus.Case> solids() {
    return Corpus.all().stream().filter(c -> c.refused().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("solids")
  void theExactAnswerIsRightForTheShapesOnTheGrid(Corpus.Case c) {
    double exact = volume(evaluate(new ExactKernel(), c.solid()));
    double other =
        c.onGrid().orElseGet(() -> volume(evaluate(new JcsgKernel(), Gridded.of(c.solid()))));
    assertThat(exact).isCloseTo(other, within(SHARE * Math.max(exact, other)));
  }

  private static double volume(Mesh mesh) {
    return mesh.isEmpty() ? 0 : MassProperties.of(mesh).volume();
  }

  private static void check(Kernel kernel, Corpus.Case c) {
    if (c.refused().isPresent()) {
      assertThatThrownBy(() -> evaluate(kernel, c.solid()))
          .isInstanceOf(KernelFailure.class)
          .hasMessageContaining(c.refused().get());
      return;
    }
    Mesh mesh = evaluate(kernel, c.solid());
    double volume = c.volume().orElseThrow();
    if (volume == 0) {
      assertThat(mesh.isEmpty()).isTrue();
      return;
    }
    MassProperties mass = MassProperties.of(mesh);
    // Moving corners to a grid moves each face by less than a step, and so changes volumes by less
    // than that times the area.
    double snap = kernel instanceof ExactKernel ? Gridded.step(c.solid()) : 0;
    assertThat(mass.volume())
        .as("volume")
        .isCloseTo(volume, within(volume * c.relative() + snap * mass.area()));
    assertThat(MeshCheck.problems(mesh)).isEmpty();
    assertThat(MeshCheck.problems(FloatGrid.snapped(mesh))).isEmpty();
    c.area()
        .ifPresent(
            area ->
                assertThat(mass.area())
                    .as("area")
                    .isCloseTo(area, within(area * c.relative() + snap * rims(mesh))));
    c.shells().ifPresent(n -> assertThat(MeshCheck.shells(mesh)).as("shells").isEqualTo(n));
    c.genus().ifPresent(n -> assertThat(MeshCheck.genus(mesh)).as("genus").isEqualTo(n));
    c.faces().ifPresent(n -> assertThat(mesh.faceCount()).as("faces").isEqualTo(n));
    c.points().ifPresent(n -> assertThat(mesh.pointCount()).as("points").isEqualTo(n));
  }

  /** How long the rims of all faces are together. */
  private static double rims(Mesh mesh) {
    double sum = 0;
    for (int f = 0; f < mesh.faceCount(); f++) {
      for (int[] loop : mesh.loops(f)) {
        for (int i = 0; i < loop.length; i++) {
          sum += mesh.point(loop[i]).distance(mesh.point(loop[(i + 1) % loop.length]));
        }
      }
    }
    return sum;
  }

  private static Mesh evaluate(Kernel kernel, Csg solid) {
    return Assertions.assertTimeoutPreemptively(RUNAWAY, () -> kernel.evaluate(solid));
  }
}
