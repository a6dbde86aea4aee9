package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {

  @Test
  void countsChangesInsertionsDropsAndSwaps() {
    assertThat(Nearest.distance("rail", "rail")).isZero();
    assertThat(Nearest.distance("rail", "rial")).isEqualTo(1);
    assertThat(Nearest.distance("rail", "rails")).isEqualTo(1);
    assertThat(Nearest.distance("rail", "nail")).isEqualTo(1);
    assertThat(Nearest.distance("", "rail")).isEqualTo(4);
  }

  /** "kitten" to "sitting" takes three: the example of Wagner and Fischer's method (memory). */
  @Test
  void agreesWithTheExampleOfTheTextbooks() {
    assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
  }

  @Test
  void namesTheFirstOfEquallyNearNames() {
    assertThat(Nearest.to("xail", List.of("nail", "rail"))).contains("nail");
  }

  @Test
  void namesNothingThatIsFarOff() {
    assertThat(Nearest.to("seat", List.of("stretcher", "arm"))).isEmpty();
    assertThat(Nearest.to("ab", List.of("cd"))).isEmpty();
  }
}
