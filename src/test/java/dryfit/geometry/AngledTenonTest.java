package dryfit.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class AngledTenonTest {

  @Property
  void leastRailIsAsWideAsTheTenonsCorners(
      @ForAll @DoubleRange(min = 4, max = 20) double thickness,
      @ForAll @DoubleRange(min = 5, max = 60) double length,
      @ForAll @DoubleRange(min = 0, max = 1.2) double angle) {
    // Corners in the tenon's own axes, seen across the rail's grain.
    double[] across =
        DoubleStream.of(-thickness / 2, thickness / 2)
            .flatMap(
                t -> DoubleStream.of(0, length).map(l -> t * Math.cos(angle) + l * Math.sin(angle)))
            .toArray();
    double extent =
        DoubleStream.of(across).max().orElseThrow() - DoubleStream.of(across).min().orElseThrow();
    assertThat(new AngledTenon(thickness, length, angle).leastRail())
        .isCloseTo(extent, within(1e-9));
  }

  @Test
  void straightTenonKeepsAllItsFibres() {
    AngledTenon straight = new AngledTenon(9, 30, 0);
    assertThat(straight.wholeFibres()).isEqualTo(1);
    assertThat(straight.drift()).isZero();
    assertThat(straight.leastRail()).isEqualTo(9);
  }

  @Test
  void longSteepTenonHasNoWholeFibreLeft() {
    assertThat(new AngledTenon(9, 60, 0.3).wholeFibres()).isZero();
  }

  @Test
  void shapelessTenonIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new AngledTenon(0, 30, 0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new AngledTenon(9, 30, -0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new AngledTenon(9, 30, Math.PI / 2));
  }
}
