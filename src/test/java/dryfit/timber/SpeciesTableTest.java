package dryfit.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpeciesTableTest {
  private static final String LINE = "demo,Demo wood,0.5,0.001,0.002,invented, with a comma";

  @Test
  void sourceMayHoldCommasAndRemarksAreSkipped() {
    assertThat(SpeciesTable.read(List.of("# remark", "", LINE)))
        .containsExactly(
            new Species("demo", "Demo wood", 0.5, 0.001, 0.002, "invented, with a comma"));
  }

  @Test
  void faultyLineIsNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SpeciesTable.read(List.of("demo,Demo wood,0.5")))
        .withMessageContaining("demo,Demo wood,0.5");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SpeciesTable.read(List.of("demo,Demo wood,half,0.001,0.002,s")))
        .withMessageContaining("half");
  }

  @Test
  void keyUsedTwiceIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SpeciesTable.read(List.of(LINE, LINE)))
        .withMessageContaining("demo");
  }
}
