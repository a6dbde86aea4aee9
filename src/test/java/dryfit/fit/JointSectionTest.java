package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.awt.geom.Path2D;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A joint sawn through: what is drawn is what was measured. */
class JointSectionTest {
  private static List<JointSection> sections(FitReport report, JointFit fit) {
    return JointSection.of(report.chair(), fit);
  }

  /**
   * Leg 1 3/4 in, rail 7/8 in set back 1/4 in, tenon 3/8 in with 0.004 in of room at each cheek:
   * outside of the mortise 1/4 + (7/8 - 3/8)/2 - 0.004 = 0.496 in of wood are left, inside more.
   */
  @Test
  void theWoodLeftOutsideAMortiseIsThatOfTheArithmetic() {
    FitReport report = Fitted.of(Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "3/4", ""));
    JointFit side = Fitted.joint(report, "side, right");
    JointSection across = sections(report, side).get(0);
    JointSection.Wall wall = across.wall().orElseThrow();
    assertThat(wall.value()).isCloseTo(0.496 * 25.4, within(1e-3));
    assertThat(wall.from().distance(wall.to())).isCloseTo(wall.value(), within(1e-6));
    assertThat(wall.value()).isCloseTo(side.wall().orElseThrow(), within(1e-9));
  }

  @Test
  void aWallIsDrawnBetweenTheMortiseAndAFaceAndIsNeverLessThanTheLeast() {
    int drawn = 0;
    for (String model : List.of("harbour-armchair", "kiln-stool", "weir-settee")) {
      FitReport report = DryFit.of(Fitted.chair(Path.of("models/" + model + ".json")));
      for (JointFit fit : report.joints()) {
        for (JointSection section : sections(report, fit)) {
          if (section.wall().isPresent()) {
            JointSection.Wall wall = section.wall().get();
            String what = model + ", " + fit.joint().label() + ", " + section.title();
            drawn++;
            assertThat(wall.from().distance(wall.to()))
                .as(what)
                .isCloseTo(wall.value(), within(0.5));
            assertThat(wall.value())
                .as(what)
                .isGreaterThanOrEqualTo(fit.wall().orElseThrow() - 1e-9);
            Vec2 middle = wall.from().plus(wall.to()).times(0.5);
            assertThat(isInWood(section, middle)).as("wood between, " + what).isTrue();
          }
        }
      }
    }
    assertThat(drawn).as("walls that were drawn").isGreaterThan(30);
  }

  /** By the areas of the Java library. */
  private static boolean isInWood(JointSection section, Vec2 at) {
    Path2D wood = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    section.cuts().stream()
        .filter(c -> c.role() == JointSection.Role.MORTISED)
        .flatMap(c -> c.outlines().stream())
        .forEach(
            outline -> {
              wood.moveTo(outline.get(0).x(), outline.get(0).y());
              outline.forEach(p -> wood.lineTo(p.x(), p.y()));
              wood.closePath();
            });
    return wood.contains(at.x(), at.y());
  }

  @Test
  void aPlaceIsSeenOnlyWhereTheSawCameBy() {
    Chair chair = Fitted.chair(Path.of("models/harbour-armchair.json"));
    JointFit fit = DryFit.of(chair).joints().get(0);
    JointSection section = JointSection.of(chair, fit).get(0);
    Vec3 at = section.sheet().origin();
    assertThat(section.seen(at)).contains(new Vec2(0, 0));
    assertThat(section.seen(at.plus(section.sheet().z().times(3)))).isEmpty();
    assertThat(
            Stream.of(section.sheet().x(), section.sheet().y())
                .map(way -> section.seen(at.plus(way.times(1000)))))
        .allMatch(java.util.Optional::isEmpty);
  }
}
