package dryfit.shop.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.BentTenonFitTest;
import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import dryfit.fit.JointFit;
import dryfit.shop.Step;
import dryfit.shop.Steps;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A crest bowed by 40 over 400 ends at twice the angle of tangent 40 / 200 to its posts. */
class BentShoulderTest {
  private final FitReport report = Fitted.of(BentTenonFitTest.BOWED);
  private final JointFit fit = Fitted.joint(report, "crest to post, right");

  @Test
  void whateverTellsTheShoulderTellsTheSame() {
    double angle = 2 * Math.atan(40.0 / 200);
    assertThat(Math.abs(fit.shoulderNarrow())).isCloseTo(angle, within(1e-4));
    assertThat(fit.shoulderWide()).isCloseTo(0, within(1e-6));
    Steps crest =
        Steps.of(report.chair()).stream()
            .filter(s -> s.part() == fit.joint().tenoned())
            .findFirst()
            .orElseThrow();
    assertThat(crest.steps())
        .filteredOn(s -> s.kind() == Step.Kind.TENON_ON_BENT)
        .hasSize(2)
        .allSatisfy(s -> assertThat(s.angle()).isCloseTo(angle, within(1e-4)));
    List<Setting> bevels =
        Settings.of(report).all().stream().filter(s -> s.tool() == Tool.BEVEL_GAUGE).toList();
    assertThat(bevels).hasSize(2);
    for (Setting bevel : bevels) {
      Reading.Bevel read = (Reading.Bevel) bevel.readings().get(1);
      assertThat(read.what()).isEqualTo("on the top and bottom");
      assertThat(read.angle().offSquare()).isCloseTo(angle, within(1e-4));
      assertThat(bevel.notes()).anyMatch(n -> n.contains("close to the shoulder"));
    }
  }
}
