package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.KernelFailure;
import dryfit.solid.exact.ExactKernel;
import dryfit.solid.jcsg.JcsgKernel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SecondOpinionTest {
  private static final Path STOOL = Path.of("models/low-stool.json");

  /** The exact kernel with something done to what it makes. */
  private record Altered(UnaryOperator<Mesh> change) implements Kernel {
    @Override
    public String name() {
      return "altered";
    }

    @Override
    public Mesh evaluate(Csg what) {
      return change.apply(new ExactKernel().evaluate(what));
    }
  }

  private static Chair chair(Path model) {
    return ((OpenChair.Ready) OpenChair.open(model, Design.AS_DRAWN, new ExactKernel())).chair();
  }

  static List<Path> models() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("models"))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void bothKernelsAgreeOnEveryShippedChair(Path model) {
    SecondOpinion opinion = SecondOpinion.of(chair(model), "exact", new JcsgKernel());
    assertThat(opinion.text()).singleElement().asString().contains("jcsg agrees with exact");
    assertThat(opinion.exit()).isEqualTo(Exit.FITS);
  }

  @Test
  void everyPartWhoseVolumeDiffersIsNamed() {
    // A box as large as the part and a tenth of a millimetre more; the seat is just such a box.
    Kernel other =
        new Altered(
            mesh -> {
              Vec3 low = mesh.bounds().low();
              Vec3 high = mesh.bounds().high();
              return Meshes.box(new Box(low, high.plus(new Vec3(0.1, 0, 0))), "/box");
            });
    Chair chair = chair(STOOL);
    SecondOpinion opinion = SecondOpinion.of(chair, "exact", other);
    assertThat(opinion.text()).hasSameSizeAs(chair.parts());
    assertThat(opinion.text().get(0))
        .startsWith("second opinion: " + chair.parts().get(0).label() + ": exact makes ")
        .contains("; altered makes ");
    assertThat(opinion.exit()).isEqualTo(Exit.OUR_FAULT);
  }

  @Test
  void aShellMoreIsADifference() {
    Kernel other =
        new Altered(
            mesh -> {
              Box speck = new Box(new Vec3(-9, 900, 0), new Vec3(-8.999, 900.001, 0.001));
              return new ExactKernel()
                  .evaluate(
                      new Csg.Union(
                          List.of(
                              new Csg.Leaf(mesh, List.of()),
                              new Csg.Leaf(Meshes.box(speck, "/speck"), List.of()))));
            });
    SecondOpinion opinion = SecondOpinion.of(chair(STOOL), "exact", other);
    assertThat(opinion.text())
        .allSatisfy(t -> assertThat(t).contains("shells: 1").contains("shells: 2"));
    assertThat(opinion.exit()).isEqualTo(Exit.OUR_FAULT);
  }

  @Test
  void aKernelThatFailsIsToldOfAsADifference() {
    Kernel other =
        new Altered(
            mesh -> {
              throw new KernelFailure("no end in sight", new Csg.Union(List.of()), null);
            });
    SecondOpinion opinion = SecondOpinion.of(chair(STOOL), "exact", other);
    assertThat(opinion.text()).singleElement().asString().contains("altered cannot make ");
    assertThat(opinion.exit()).isEqualTo(Exit.OUR_FAULT);
  }
}
