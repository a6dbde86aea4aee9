package dryfit.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class DensityTest {

  @Test
  void ovendryWoodWeighsItsSpecificGravity() {
    assertThat(Density.at(0, 0.5)).isEqualTo(500);
  }

  @Test
  void woodThatHasNotShrunkKeepsItsBasicGravity() {
    assertThat(Density.specificGravityAt(30, 0.5)).isEqualTo(0.5);
    assertThat(Density.specificGravityAt(12, 0.5)).isGreaterThan(0.5);
  }

  @Test
  void figuresThatNoWoodHasAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Density.at(12, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Density.at(-1, 0.5));
    assertThatIllegalArgumentException().isThrownBy(() -> Density.specificGravityAt(31, 0.5));
  }
}
