package published;

import static java.lang.Math.abs;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.EndCut;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A sloping member with plumb sides that meets an upright plane at an angle in plan, as an arm or a
 * raked rail meets a leg, against the printed figures of a valley rafter between roofs of 12 and 8
 * in 12 (geocities.ws/web_sketches/framing_math/irregular_valley_roof): valley 29.01714 degrees,
 * plan angles 33.69007 and 56.30993, side cuts across its back 30.24146 and 52.67946, blade bevels
 * "complementary to the plan angles".
 */
class CheekCutTest {

  @ParameterizedTest
  @CsvSource({"33.69007,30.24146", "56.30993,52.67946"})
  void cheekCutHasThePrintedAngles(double plan, double sideCut) {
    double slope = toRadians(29.01714);
    double p = toRadians(plan);
    Vec3 along = new Vec3(Math.cos(slope), 0, Math.sin(slope));
    Frame rafter = Frame.of(Vec3.ZERO, along, Vec3.UP);
    // The upright plane holds the plumb line and a line at the plan angle to the rafter's run.
    EndCut cut = EndCut.of(Plane.through(Vec3.ZERO, new Vec3(Math.sin(p), Math.cos(p), 0)), rafter);

    // On the plumb side the cut is a plumb line: as far off square as the rafter slopes.
    assertThat(abs(toDegrees(cut.onWideFace()))).isCloseTo(29.01714, within(1e-9));
    // The page reads the side cut from the rafter's length.
    assertThat(90 - abs(toDegrees(cut.onNarrowFace()))).isCloseTo(sideCut, within(1e-5));
    assertThat(abs(toDegrees(cut.flat().tilt()))).isCloseTo(90 - plan, within(1e-9));
  }
}
