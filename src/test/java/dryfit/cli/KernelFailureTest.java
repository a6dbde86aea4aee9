package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dryfit.app.KeepFailure;
import dryfit.app.OpenChair;
import dryfit.document.Design;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.solid.Corpus;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.KernelFailure;
import dryfit.solid.exact.ExactKernel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a maker sees, and what is kept, when a kernel fails on a part. */
class KernelFailureTest {
  private static final Path STOOL = Path.of("models/low-stool.json");

  /** Stands in for a kernel with a fault. */
  private record Faulty(Predicate<Csg> fails) implements Kernel {
    @Override
    public String name() {
      return "faulty";
    }

    @Override
    public Mesh evaluate(Csg what) {
      if (fails.test(what)) {
        throw new KernelFailure("an edge stays open", what, null);
      }
      return new ExactKernel().evaluate(what);
    }
  }

  private static KernelFailure failure(Predicate<Csg> fails) {
    return catchThrowableOfType(
        KernelFailure.class, () -> OpenChair.open(STOOL, Design.AS_DRAWN, new Faulty(fails)));
  }

  private static Stream<Csg.Leaf> leaves(Csg what) {
    if (what instanceof Csg.Leaf leaf) {
      return Stream.of(leaf);
    } else if (what instanceof Csg.Union union) {
      return union.of().stream().flatMap(KernelFailureTest::leaves);
    } else if (what instanceof Csg.Common common) {
      return common.of().stream().flatMap(KernelFailureTest::leaves);
    }
    Csg.Cut cut = (Csg.Cut) what;
    return Stream.concat(
        leaves(cut.from()), cut.tools().stream().flatMap(KernelFailureTest::leaves));
  }

  private static boolean isLegWith(Csg what, String joint) {
    return what instanceof Csg.Cut cut
        && cut.tools().stream()
            .flatMap(KernelFailureTest::leaves)
            .anyMatch(leaf -> leaf.mesh().origin(0).equals(joint));
  }

  @Test
  void theMessageNamesThePartAndTheJointAtWhichItFails() {
    assertThat(failure(what -> isLegWith(what, "/joints/front rail to leg")))
        .hasMessageMatching("front-leg (right|left), joint \"front rail to leg\": an edge .*");
  }

  @Test
  void whereEveryJointMayBeToBlameAllAreNamed() {
    assertThat(
            failure(what -> leaves(what).anyMatch(l -> l.mesh().origin(0).contains("front-leg"))))
        .hasMessageMatching("front-leg (right|left), joints \".*\", \".*\": an edge stays open");
  }

  @Test
  void theSolidIsKeptAndCanBeDoneAgain() throws IOException {
    KernelFailure failure = failure(what -> isLegWith(what, "/joints/front rail to leg"));
    ByteArrayOutputStream screen = new ByteArrayOutputStream();
    int code =
        Main.ourFault(
            failure,
            new String[] {"fit", STOOL.toString()},
            new PrintStream(screen, true, StandardCharsets.UTF_8));
    String said = screen.toString(StandardCharsets.UTF_8);
    assertThat(code).isEqualTo(1);
    assertThat(said.lines()).singleElement().asString().contains("\"front rail to leg\"");
    Matcher place = Pattern.compile("details are in (.*)").matcher(said.strip());
    assertThat(place.find()).isTrue();
    Path folder = Path.of(place.group(1));
    assertThat(folder.getFileName().toString()).startsWith("dryfit-failure-");
    assertThat(Files.readString(folder.resolve(KeepFailure.DETAILS)))
        .contains("fit " + STOOL)
        .contains("an edge stays open");

    Corpus.Case again = Corpus.read(folder.resolve(KeepFailure.SOLID));
    assertThat(leaves(again.solid()).map(l -> l.mesh().origin(0)).toList())
        .isEqualTo(leaves(failure.operands()).map(l -> l.mesh().origin(0)).toList());
    Mesh made = new ExactKernel().evaluate(again.solid());
    double volume = MassProperties.of(new ExactKernel().evaluate(failure.operands())).volume();
    assertThat(MassProperties.of(made).volume()).isCloseTo(volume, within(1e-9 * volume));
    for (String file : List.of(KeepFailure.DETAILS, KeepFailure.SOLID)) {
      Files.delete(folder.resolve(file));
    }
    // Nothing else was left beside them.
    Files.delete(folder);
  }
}
