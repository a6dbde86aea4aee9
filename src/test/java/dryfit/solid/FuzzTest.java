package dryfit.solid;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.export.SolidJson;
import dryfit.solid.exact.ExactKernel;
import dryfit.solid.fuzz.Laws;
import dryfit.solid.fuzz.RandomPair;
import dryfit.solid.fuzz.Shrinking;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Seeded random trials. {@code -Dfuzz.operations} says how many booleans to run, {@code
 * -Dfuzz.first} at which seed to begin. Whatever breaks a law is made small and left in {@code
 * target/fuzz}, ready for the kernel corpus.
 */
class FuzzTest {
  private static final int OPERATIONS = Integer.getInteger("fuzz.operations", 400);
  private static final long FIRST = Long.getLong("fuzz.first", 0);
  private static final Path FOUND = Path.of("target", "fuzz");

  /** Beyond this many there is something to mend before more is learnt. */
  private static final int ENOUGH = 20;

  @Test
  void noLawIsBroken() throws IOException {
    Kernel kernel = new ExactKernel();
    List<String> broken = new ArrayList<>();
    int operations = 0;
    for (long seed = FIRST; operations < OPERATIONS && broken.size() < ENOUGH; seed++) {
      RandomPair pair = RandomPair.of(seed);
      Laws.Outcome outcome = Laws.tried(kernel, pair);
      operations += outcome.operations();
      for (Map.Entry<String, String> law : outcome.broken().entrySet()) {
        broken.add("seed " + seed + ": " + law.getKey() + ": " + law.getValue());
      }
      if (!outcome.broken().isEmpty()) {
        keep(kernel, pair, outcome.broken().keySet().iterator().next());
      }
    }
    assertThat(broken).isEmpty();
    assertThat(operations).isGreaterThanOrEqualTo(OPERATIONS);
  }

  private static void keep(Kernel kernel, RandomPair pair, String law) throws IOException {
    RandomPair small = Shrinking.of(kernel, pair, law);
    Csg rest = small.part().minus(small.tools());
    Files.createDirectories(FOUND);
    OptionalDouble volume = OptionalDouble.of(Cells.volume(Cells.of(rest)));
    Files.write(
        FOUND.resolve("seed-" + pair.seed() + ".json"),
        SolidJson.bytes(law, "none: found by random trial", rest, volume));
  }
}
