package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SpreadCommandTest {
  private static final String STOOL = "models/low-stool.json";

  @Test
  void theReportIsInTheUnitThatIsAskedFor() {
    Said mm = Said.by("spread", STOOL, "--units", "mm");
    assertThat(mm.code()).isZero();
    assertThat(mm.err()).isEmpty();
    assertThat(mm.out()).contains(" mm").doesNotContain(" in;");
    Said inches = Said.by("spread", STOOL, "--units", "in");
    assertThat(inches.out()).contains(" in;").doesNotContain(" mm");
  }

  @Test
  void aMissingFileIsRefusedInOneMessage() {
    Said said = Said.by("spread", "models/none.json");
    assertThat(said.code()).isNotZero();
    assertThat(said.err()).contains("none.json");
  }
}
