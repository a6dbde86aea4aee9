package dryfit.shop.setting;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.shop.setting.GrainRun.Grain;
import java.util.List;
import org.junit.jupiter.api.Test;

class GrainRunTest {
  private static GrainRun run(double from, double to, Grain grain) {
    return new GrainRun(from, to, grain);
  }

  @Test
  void atTheTopOfAHumpTheWaysPartInTheMiddle() {
    assertThat(
            GrainRun.joined(
                List.of(
                    run(0, 100, Grain.WITH),
                    run(100, 110, Grain.EITHER),
                    run(110, 200, Grain.AGAINST))))
        .containsExactly(run(0, 105, Grain.WITH), run(105, 200, Grain.AGAINST));
  }

  /** A router that goes uphill because an edge beside it may be cut either way tears out. */
  @Test
  void aShortRunKeepsItsWayBesideOneThatMayBeCutEitherWay() {
    assertThat(GrainRun.joined(List.of(run(0, 100, Grain.EITHER), run(100, 110, Grain.AGAINST))))
        .containsExactly(run(0, 110, Grain.AGAINST));
    assertThat(GrainRun.joined(List.of(run(0, 10, Grain.WITH), run(10, 100, Grain.EITHER))))
        .containsExactly(run(0, 100, Grain.WITH));
  }

  @Test
  void nothingIsLostAtEitherEnd() {
    assertThat(
            GrainRun.joined(
                List.of(
                    run(0, 10, Grain.AGAINST),
                    run(10, 90, Grain.WITH),
                    run(90, 100, Grain.EITHER))))
        .containsExactly(run(0, 100, Grain.WITH));
    assertThat(GrainRun.joined(List.of(run(0, 10, Grain.WITH))))
        .containsExactly(run(0, 10, Grain.WITH));
  }
}
