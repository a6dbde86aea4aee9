package dryfit.build;

import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.chair;
import static dryfit.build.Sketch.joint;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.problems;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import dryfit.document.Problem;
import dryfit.geometry.Box;
import dryfit.geometry.MassProperties;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.Vec3;
import dryfit.solid.exact.ExactKernel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Bent parts against what can be worked out by hand: a circular bow of chord c and rise r has the
 * radius (c²/4 + r²) / 2r and the length 4 R atan(2r / c), and its solid holds section times length
 * (the second theorem of Pappus and Guldinus, for the section's middle runs along the arc).
 */
class BentFormTest {
  /** Chord 320 between the legs' inside faces, rise 40: radius (160² + 40²) / 80 = 340. */
  private static final double RADIUS = 340;

  private static final double ARC = 4 * RADIUS * Math.atan(80.0 / 320);

  private static final String SLAT =
      """
      "slat": { "form": "bent", "section": [50, 12],
        "between": ["back-leg right", "back-leg left"], "top": 350, "centred": 0,
        "rise": 40, "toward": "back" }""";

  @Test
  void aBowedSlatHoldsItsSectionTimesItsArc() {
    Part slat = part(chair(SQUARE_LEGS + "," + SLAT, ""), "slat");
    // The ends are cut to the upright faces of the legs: the arc leaves them at a slant, so that
    // over the thickness as much is lost inside as is won outside.
    double whole = 50 * 12 * ARC;
    // Chords stand off by 0.05 mm at most, which shortens an arc of radius 340 by 0.05 / 340 / 3.
    assertThat(volume(slat)).isBetween(whole * (1 - 2e-4), whole * (1 + 1e-6));
    assertThat(volume(slat.solid().cells())).isCloseTo(volume(slat), within(whole * 1e-6));
    assertThat(MeshCheck.problems(slat.solid().mesh())).isEmpty();
  }

  @Test
  void aBowedSlatIsWhereItsBowSays() {
    Box box = bounds(part(chair(SQUARE_LEGS + "," + SLAT, ""), "slat"));
    // Between the legs' inside faces at x = 160, top at 350; the legs' middle is at y = 300, and
    // the bow's outer face stands 40 + 6 behind it.
    assertThat(box.low().x()).isCloseTo(-160, within(1e-3));
    assertThat(box.high().x()).isCloseTo(160, within(1e-3));
    assertThat(box.high().z()).isCloseTo(350, within(1e-3));
    assertThat(box.low().z()).isCloseTo(300, within(1e-3));
    assertThat(box.high().y()).isCloseTo(346, within(0.06));
  }

  @Test
  void aBentPartTellsItsBendAndTheLengthToCut() {
    Part slat = part(chair(SQUARE_LEGS + "," + SLAT, ""), "slat");
    Bend bend = slat.bend().orElseThrow();
    assertThat(bend.length()).isCloseTo(ARC, within(1e-6));
    assertThat(bend.radius()).isCloseTo(RADIUS, within(1e-6));
    assertThat(bend.thickness()).isCloseTo(12, within(1e-9));
    assertThat(bend.tightness()).isCloseTo(12 / RADIUS, within(1e-9));
    // The outer corner of a slanting end reaches 6 tan(a) beyond the middle, across the thickness
    // 6 / cos(a) of it; seen along the end that is 6 sin(a) / cos(a), with a half the arc's angle.
    double a = ARC / RADIUS / 2;
    assertThat(slat.blank().length()).isCloseTo(ARC + 2 * 6 * Math.tan(a), within(0.05));
    assertThat(slat.blank().width()).isCloseTo(50, within(1e-9));
    assertThat(slat.blank().thickness()).isCloseTo(12, within(1e-9));
  }

  @Test
  void aTenonGoesInAlongTheEndOfTheCurve() {
    Chair chair =
        chair(
            SQUARE_LEGS + "," + SLAT,
            """
            "it": { "tenon": "slat both", "into": "back-leg", "thickness": 6, "width": 40,
              "length": 20 }""");
    Joint right = joint(chair, "it", Hand.RIGHT);
    double a = ARC / RADIUS / 2;
    // The bow goes to the back, so from its middle the slat runs out and forward into the leg.
    assertThat(right.entry().x()).isCloseTo(Math.cos(a), within(1e-9));
    assertThat(right.entry().y()).isCloseTo(-Math.sin(a), within(1e-9));
    assertThat(right.at().distance(new Vec3(160, 300, 325))).isLessThan(1e-6);
    assertThat(right.lean()).isCloseTo(a, within(1e-9));
    // Where its shoulder is, the slat runs as its tenon does, and so do its section and its grain.
    Part slat = part(chair, "slat");
    assertThat(slat.lengthNear(right.at()).negated().distance(right.entry())).isLessThan(1e-9);
    assertThat(slat.grainNear(right.at())).isEqualTo(slat.lengthNear(right.at()));
    assertThat(slat.frameNear(right.at()).y().distance(Vec3.UP)).isLessThan(1e-9);
    Joint left = joint(chair, "it", Hand.LEFT);
    assertThat(left.entry().x()).isCloseTo(-Math.cos(a), within(1e-9));
    // Two tenons of 6 x 40 x 20, with as much lost to the slant of the mouth as won.
    assertThat(volume(part(chair, "slat")))
        .isCloseTo(50 * 12 * ARC + 2 * 6 * 40 * 20, within(50.0));
    double mortised = volume(part(chair, "back-leg", Hand.RIGHT));
    assertThat(640_000 - mortised).isGreaterThan(6 * 40 * 20);
  }

  @Test
  void aHalfHoopThroughPointsIsNeverTwisted() {
    // A half circle of radius 200 through 13 points, its middle line in the plane y = 100.
    StringBuilder points = new StringBuilder();
    for (int i = 0; i <= 12; i++) {
      double a = Math.PI * i / 12;
      points.append(i == 0 ? "" : ", ");
      points.append(
          String.format(
              java.util.Locale.ROOT,
              "[%.6f, 100, %.6f]",
              200 * Math.cos(a),
              300 + 200 * Math.sin(a)));
    }
    Part hoop =
        part(
            chair(
                "\"hoop\": { \"form\": \"bent\", \"section\": [16, 24], \"along\": ["
                    + points
                    + "] }",
                ""),
            "hoop");
    // Upright at the top is the width, 16; across it, front to back, the thickness.
    Box box = bounds(hoop);
    assertThat(box.low().y()).isCloseTo(88, within(1e-3));
    assertThat(box.high().y()).isCloseTo(112, within(1e-3));
    assertThat(box.high().z()).isCloseTo(508, within(0.06));
    // A batten is straight at its ends, so these are a little off the square of a true circle.
    assertThat(box.low().z()).isCloseTo(300, within(1.0));
    double whole = 16 * 24 * Math.PI * 200;
    assertThat(volume(hoop)).isCloseTo(whole, within(whole * 1e-3));
    assertThat(volume(hoop.solid().cells())).isCloseTo(volume(hoop), within(whole * 1e-6));
  }

  /** A spiral stair of points: the curve winds, so that flat sides are not to be had. */
  private static final String WINDING =
      """
      "arm": { "form": "bent", "pair": true, %s,
        "along": [ [200, 0, 300], [230, 120, 310], [220, 240, 340], [150, 320, 400] ] }""";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"section\": [30, 20]",
        "\"section\": [30, 20], \"upright\": true",
        "\"section\": [30, 20], \"turn\": 30",
        "\"section\": { \"round\": 24 }",
        "\"sections\": [ [0, 20, 24], [150, 40, 20], [400, 24, 14] ]",
        "\"sections\": [ [0, 20, 24], [150, 40, 20], [400, 24, 14] ], \"upright\": true",
        "\"diameters\": [ [0, 16], [200, 26], [400, 14] ]"
      })
  void aWindingPartIsOneSolidInEveryKernel(String section) {
    Chair chair = chair(WINDING.formatted(section), "");
    Part right = part(chair, "arm", Hand.RIGHT);
    Part left = part(chair, "arm", Hand.LEFT);
    double whole = volume(right);
    assertThat(volume(right.solid().cells())).isCloseTo(whole, within(whole * 1e-6));
    assertThat(volume(left)).isCloseTo(whole, within(whole * 1e-6));
    var exact = new ExactKernel().evaluate(right.body());
    assertThat(MassProperties.of(exact).volume()).isCloseTo(whole, within(whole * 1e-6));
    assertThat(MeshCheck.problems(exact)).isEmpty();
    assertThat(MeshCheck.problemsAsFloats(exact)).isEmpty();
    Box there = bounds(right);
    Box twin = bounds(left);
    assertThat(twin.low().x()).isCloseTo(-there.high().x(), within(1e-3));
    assertThat(twin.high().z()).isCloseTo(there.high().z(), within(1e-3));
  }

  @Test
  void aBendThatWouldFoldItsInsideIsRefused() {
    // Chord 320 and rise 160: a half circle of radius 160. The width of 330 lies in the bend.
    Problem problem =
        problems(
                SQUARE_LEGS
                    + """
                    , "hoop": { "form": "bent", "section": [330, 12],
                      "between": ["back-leg right", "back-leg left"], "middle": 200,
                      "rise": 160, "toward": "top" }""",
                "")
            .get(0);
    assertThat(problem.code()).isEqualTo("bend-too-tight");
    assertThat(problem.pointer()).isEqualTo("/parts/hoop");
    assertThat(problem.message()).contains("160.00 mm", "330.00 mm", "above 165.00 mm");
  }

  @Test
  void aPartThatPassesThroughItselfIsRefused() {
    Problem problem =
        problems(
                """
                "loop": { "form": "bent", "section": { "round": 20 },
                  "along": [ [0, 0, 0], [200, -20, 0], [300, 100, 0], [200, 200, 0], [100, 100, 0], [100, -150, 0] ] }""",
                "")
            .get(0);
    assertThat(problem.code()).isEqualTo("crosses-itself");
    assertThat(problem.message()).contains("passes through itself");
  }
}
