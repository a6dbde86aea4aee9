package dryfit.shop.setting;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PassesTest {
  @Test
  void aCutterAsLongAsTheWoodIsThickGoesThroughInOnePass() {
    assertThat(Passes.of(25, 25).all()).containsExactly(new Passes.Pass(0, 25));
  }

  @Test
  void eachPassAfterTheFirstHasTwoMillimetresInWoodThatIsCutAlready() {
    assertThat(Passes.of(60, 25).all())
        .containsExactly(new Passes.Pass(0, 25), new Passes.Pass(23, 48), new Passes.Pass(35, 60));
  }
}
