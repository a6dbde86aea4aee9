package dryfit.shop.setting;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PassesTest {
  @Test
  void aCutterAsLongAsTheWoodIsThickGoesThroughInOnePass() {
    assertThat(Passes.of(25, 25).all()).containsExactly(new Passes.Pass(0, 25));
  }

  /** An inch of wood and of cutter; the wood is the difference of two heights. */
  @Test
  void woodThatIsThickerByLastDigitsOnlyTakesNoPassMore() {
    double wood = 25.4 + 1e-9;
    assertThat(Passes.of(wood, 25.4).all()).hasSize(1);
    // 25.4 and twice 23.4 more.
    assertThat(Passes.of(25.4 + 2 * 23.4 + 1e-9, 25.4).all()).hasSize(3);
    assertThat(Passes.of(25.5, 25.4).all()).hasSize(2);
  }

  @Test
  void eachPassAfterTheFirstHasTwoMillimetresInWoodThatIsCutAlready() {
    assertThat(Passes.of(60, 25).all())
        .containsExactly(new Passes.Pass(0, 25), new Passes.Pass(23, 48), new Passes.Pass(35, 60));
  }
}
