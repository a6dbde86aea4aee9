package dryfit.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LeaningHoleTest {

  @Property
  void stopCollarPutsTheDeepEdgeWhereItWasWanted(
      @ForAll @DoubleRange(min = 15, max = 60) double depth,
      @ForAll @DoubleRange(min = 0, max = 0.7) double lean,
      @ForAll @DoubleRange(min = 3, max = 30) double across) {
    LeaningHole hole = LeaningHole.noDeeperThan(depth, lean, across);
    assertThat(hole.depthAtDeepEdge()).isCloseTo(depth, within(1e-9));
    assertThat(hole.depthAtMiddle()).isLessThanOrEqualTo(depth + 1e-9);
  }

  @Test
  void squareHoleIsAsDeepAsTheTapeSays() {
    LeaningHole hole = new LeaningHole(0, 30, 16);
    assertThat(hole.depthAtMiddle()).isEqualTo(30);
    assertThat(hole.depthAtDeepEdge()).isEqualTo(30);
    assertThat(hole.opening()).isEqualTo(16);
    assertThat(hole.lead()).isZero();
  }

  @Test
  void toolTooWideForTheDepthIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> LeaningHole.noDeeperThan(2, 0.5, 30));
  }

  @Test
  void holeAlongTheFaceIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new LeaningHole(Math.PI / 2, 30, 16));
  }
}
