package dryfit.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SpeciesTest {

  @Test
  void namesComeInTheOrderOfTheTable() {
    assertThat(Species.names())
        .containsExactly(
            "ash-white",
            "basswood-american",
            "beech-american",
            "birch-yellow",
            "butternut",
            "cherry-black",
            "elm-american",
            "hickory-shagbark",
            "hickory-mockernut",
            "locust-black",
            "maple-sugar",
            "oak-northern-red",
            "oak-white",
            "walnut-black",
            "yellow-poplar",
            "douglas-fir-coast",
            "mahogany-true",
            "teak");
  }

  @Test
  void everySpeciesIsFoundByItsKey() {
    for (Species species : Species.all()) {
      assertThat(Species.named(species.key())).contains(species);
    }
  }

  @Test
  void unknownSpeciesIsNone() {
    assertThat(Species.named("Ash-White")).isEmpty();
    assertThat(Species.named("")).isEmpty();
  }

  @Test
  void figuresNotSeenInPrintSaySo() {
    assertThat(Species.named("teak").orElseThrow().source()).contains("from memory", "converted");
    assertThat(Species.named("yellow-poplar").orElseThrow().source())
        .contains("from memory", "derived");
    assertThat(Species.named("ash-white").orElseThrow().source()).doesNotContain("from memory");
  }

  @Test
  void densityTakesTheWaterIntoAccount() {
    Species ash = new Species("k", "n", 0.6, 0.00169, 0.00274, "s");
    assertThat(ash.density12()).isCloseTo(672, within(1e-9));
  }

  @Test
  void sawingChoosesTheCoefficient() {
    Species ash = new Species("k", "n", 0.6, 0.00169, 0.00274, "s");
    assertThat(ash.coefficient(Sawn.FLAT)).isEqualTo(0.00274);
    assertThat(ash.coefficient(Sawn.QUARTERED)).isEqualTo(0.00169);
  }

  @Test
  void impossibleWoodIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Species("k", "n", 1.6, 0.001, 0.002, "s"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Species("k", "n", 0.6, 0.003, 0.002, "s"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Species("k", "n", 0.6, 0.001, 0.002, " "));
  }
}
