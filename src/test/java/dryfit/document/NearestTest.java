package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {

  @Test
  void countsChangesInsertionsDropsAndSwaps() {
    assertThat(Nearest.distance("rail", "rail", 9)).isZero();
    assertThat(Nearest.distance("rail", "rial", 9)).isEqualTo(1);
    assertThat(Nearest.distance("rail", "rails", 9)).isEqualTo(1);
    assertThat(Nearest.distance("rail", "nail", 9)).isEqualTo(1);
    assertThat(Nearest.distance("", "rail", 9)).isEqualTo(4);
  }

  /** "kitten" to "sitting" takes three: the example of Wagner and Fischer's method (memory). */
  @Test
  void agreesWithTheExampleOfTheTextbooks() {
    assertThat(Nearest.distance("kitten", "sitting", 9)).isEqualTo(3);
  }

  @Test
  void givesUpOnceItIsTooFar() {
    assertThat(Nearest.distance("kitten", "sitting", 3)).isEqualTo(3);
    assertThat(Nearest.distance("kitten", "sitting", 2)).isEqualTo(3);
    assertThat(Nearest.distance("ab", "ba", 1)).isEqualTo(1);
    assertThat(Nearest.distance("rail", "stretcher", 2)).isEqualTo(3);
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
