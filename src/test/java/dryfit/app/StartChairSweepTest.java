package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.document.Design;
import dryfit.document.Reading;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import dryfit.measure.Length;
import java.util.Locale;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every chair that can be begun fits at once, with nothing to look at. */
class StartChairSweepTest {
  private static final int CHANCE_CHAIRS = 3;

  static Stream<Arguments> patterns() {
    return Stream.of(Family.values())
        .flatMap(family -> Stream.of(Length.Unit.values()).map(unit -> Arguments.of(family, unit)));
  }

  @ParameterizedTest
  @MethodSource("patterns")
  void theUsualChairFits(Family family, Length.Unit unit) {
    assertFits(StartChair.of(family, unit));
  }

  @ParameterizedTest
  @MethodSource("patterns")
  void everyCornerOfTheRangesFits(Family family, Length.Unit unit) {
    StartChair usual = StartChair.of(family, unit);
    int corners = 1 << usual.sizes().size();
    for (int corner = 0; corner < corners; corner++) {
      int ends = corner;
      assertFits(
          sized(
              usual,
              unit,
              size ->
                  (ends >> usual.sizes().indexOf(size) & 1) == 1
                      ? size.dimension().to()
                      : size.dimension().from()));
    }
  }

  @ParameterizedTest
  @MethodSource("patterns")
  void chairsOfAnySizeBetweenFit(Family family, Length.Unit unit) {
    Random chance = new Random(17);
    for (int i = 0; i < CHANCE_CHAIRS; i++) {
      assertFits(
          sized(
              StartChair.of(family, unit),
              unit,
              size -> chance.nextDouble(size.dimension().from(), size.dimension().to())));
    }
  }

  private static StartChair sized(
      StartChair begun, Length.Unit unit, ToDoubleFunction<StartSize> mm) {
    StartChair chair = begun;
    for (StartSize size : begun.sizes()) {
      String written = String.format(Locale.ROOT, "%.4f", mm.applyAsDouble(size) / unit.mm());
      chair =
          assertInstanceOf(StartChair.Taken.class, chair.withSize(size.which(), written)).chair();
    }
    return chair;
  }

  private static void assertFits(StartChair begun) {
    String which =
        String.join(
            ", ",
            begun.sizes().stream()
                .map(s -> s.which().spoken() + " " + begun.printed(s.mm()))
                .toList());
    Design design = value(begun.document().design(Design.AS_DRAWN));
    Chair chair = value(ChairBuilder.build(design, KernelChoice.USUAL.kernel()));
    FitReport report = FitChair.of(chair).report();
    assertThat(report.fits()).as(which).isTrue();
    assertThat(report.findings())
        .as(which)
        .extracting(Finding::severity)
        .containsOnly(Finding.Severity.KNOW);
  }

  private static <T> T value(Reading<T> reading) {
    return ((Reading.Accepted<T>) reading).value();
  }
}
