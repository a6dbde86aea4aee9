package dryfit.build;

import static dryfit.build.Sketch.FRONT_RAIL;
import static dryfit.build.Sketch.SIDE_RAIL;
import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.TRAPEZOID_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.chair;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlacementTest {
  private static final Offset<Double> SAME = within(1e-4);

  private static void isBox(Box box, double... ends) {
    assertThat(box.low().x()).isCloseTo(ends[0], SAME);
    assertThat(box.high().x()).isCloseTo(ends[1], SAME);
    assertThat(box.low().y()).isCloseTo(ends[2], SAME);
    assertThat(box.high().y()).isCloseTo(ends[3], SAME);
    assertThat(box.low().z()).isCloseTo(ends[4], SAME);
    assertThat(box.high().z()).isCloseTo(ends[5], SAME);
  }

  @Test
  void aRailReachesFromShoulderToShoulderAtItsHeightAndSetback() {
    var chair = chair(SQUARE_LEGS + "," + FRONT_RAIL, "");
    // Inside faces at 160; set back 5 from the front at y = 0, 20 thick; 60 high below 380.
    isBox(bounds(part(chair, "front-rail")), -160, 160, 5, 25, 320, 380);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // The leg runs from y = 0 (outside, for it is in front) to y = 40.
        "\"outside\": 0   | 0  | 20",
        "\"outside\": -3  | -3 | 17",
        "\"inside\": 4    | 16 | 36",
        "\"centred\": 0   | 10 | 30",
        "\"centred\": 6   | 4  | 24",
        "\"y\": 22        | 12 | 32"
      })
  void aRevealIsTakenFromTheFaceItNames(String reveal, double front, double back) {
    String rail =
        """
        "rail": { "form": "straight", "section": [60, 20],
          "between": ["front-leg right", "front-leg left"], "middle": 200, %s }"""
            .formatted(reveal);
    var chair = chair(SQUARE_LEGS + "," + rail, "");
    isBox(bounds(part(chair, "rail")), -160, 160, front, back, 170, 230);
  }

  @ParameterizedTest
  @CsvSource({"top, 140, 200", "bottom, 200, 260", "underside, 200, 260", "middle, 170, 230"})
  void aHeightIsThatOfTheEdgeItNames(String edge, double low, double high) {
    String rail =
        """
        "rail": { "form": "straight", "section": [60, 20],
          "between": ["front-leg right", "front-leg left"], "%s": 200 }"""
            .formatted(edge);
    var chair = chair(SQUARE_LEGS + "," + rail, "");
    isBox(bounds(part(chair, "rail")), -160, 160, 10, 30, low, high);
  }

  @Test
  void onATrapezoidTheSetbackIsRightAtBothShoulders() {
    var chair = chair(TRAPEZOID_LEGS + "," + SIDE_RAIL, "");
    Part rail = part(chair, "side-rail", Hand.RIGHT);
    // Outside face through (195, 40) and (165, 280), 5 in from the legs' outsides at 200 and 170.
    assertThat(outermostAt(rail, 40)).isCloseTo(195, SAME);
    assertThat(outermostAt(rail, 280)).isCloseTo(165, SAME);
    // A parallelogram in plan: 240 between the shoulders, 20 / cos(atan(1/8)) across each.
    assertThat(volume(rail)).isCloseTo(240 * 20 * Math.sqrt(65) / 8 * 60, within(1.0));
  }

  private static double outermostAt(Part part, double y) {
    return points(part.placedMesh()).stream()
        .filter(p -> Math.abs(p.y() - y) < 1e-3)
        .mapToDouble(Vec3::x)
        .max()
        .orElseThrow();
  }

  private static java.util.List<Vec3> points(Mesh mesh) {
    return java.util.stream.IntStream.range(0, mesh.pointCount()).mapToObj(mesh::point).toList();
  }

  @Test
  void aRailMayRiseBetweenItsEnds() {
    String rail =
        """
        "side-rail": { "form": "straight", "pair": true, "section": [60, 20],
          "between": ["front-leg", "back-leg"], "top": [380, 350], "outside": 5 }""";
    var chair = chair(SQUARE_LEGS + "," + rail, "");
    Part right = part(chair, "side-rail", Hand.RIGHT);
    // 30 down over 240, 1 in 8: the heights are those of the top edge at the two faces.
    isBox(bounds(right), 175, 195, 40, 280, 350 - 60 * Math.sqrt(65) / 8, 380);
  }

  @Test
  void theTwinIsTheExactMirrorImage() {
    String joint =
        """
        "side rail": { "tenon": "side-rail both", "into": "front-leg", "thickness": 8,
          "width": 40, "length": 20 }"""
            .replace("both", "front");
    var chair = chair(TRAPEZOID_LEGS + "," + SIDE_RAIL, joint);
    for (String name : new String[] {"side-rail", "front-leg", "back-leg"}) {
      var right = points(part(chair, name, Hand.RIGHT).placedMesh());
      var left = points(part(chair, name, Hand.LEFT).placedMesh());
      assertThat(left.stream().map(Vec3::mirrored)).containsExactlyInAnyOrderElementsOf(right);
      assertThat(volume(part(chair, name, Hand.LEFT))).isPositive();
    }
  }

  @Test
  void anUprightPartStandsBetweenTwoThatLie() {
    String rails =
        FRONT_RAIL
            + """
            , "low-rail": { "form": "straight", "section": [40, 20],
                "between": ["front-leg right", "front-leg left"], "top": 140, "outside": 5 },
              "post": { "form": "straight", "section": [30, 10],
                "between": ["low-rail", "front-rail"], "x": 50 }""";
    var chair = chair(SQUARE_LEGS + "," + rails, "");
    // From the top of the lower rail, 140, to the underside of the upper, 320; in their middle.
    isBox(bounds(part(chair, "post")), 35, 65, 10, 20, 140, 320);
  }

  @Test
  void aRailBetweenTwoThatRunBackMeetsThemAtTheGivenY() {
    String bar =
        """
        "bar": { "form": "straight", "section": [30, 16],
          "between": ["side-rail right", "side-rail left"], "y": 160, "middle": 350 }""";
    var chair = chair(SQUARE_LEGS + "," + SIDE_RAIL + "," + bar, "");
    // Inside faces of the side rails at 195 - 20 = 175.
    isBox(bounds(part(chair, "bar")), -175, 175, 152, 168, 335, 365);
  }

  @Test
  void aRailBetweenTwinsOfRoundLegsIsSquareToTheMiddle() {
    String parts =
        """
        "leg": { "form": "turned", "pair": true, "diameter": 37,
          "from": [190, 10, 0], "to": [150, 60, 400] },
        "back": { "form": "straight", "section": [20, 20], "from": [0, 300, 0], "to": [0, 300, 400] },
        "rail": { "form": "straight", "section": [30, 12],
          "between": ["leg right", "leg left"], "middle": 200 }""";
    var chair = chair(parts, "");
    Vec3 along = part(chair, "rail").frame().x();
    // The twins are mirror images, so what runs between them is level and runs straight across.
    assertThat(along.x()).isCloseTo(-1, within(1e-12));
    assertThat(along.y()).isCloseTo(0, within(1e-12));
    // Half way up the legs' middle is at y = 35.
    assertThat(part(chair, "rail").frame().origin().y()).isCloseTo(35, within(0.1));
  }

  @Test
  void aTurnLeansAPartAboutItsOwnLength() {
    String rail =
        """
        "rail": { "form": "straight", "section": [60, 20], "turn": "30 deg",
          "between": ["front-leg right", "front-leg left"], "middle": 200 }""";
    var chair = chair(SQUARE_LEGS + "," + rail, "");
    // A 60 x 20 rectangle turned 30 degrees is 60 cos 30 + 20 sin 30 high; from the left end,
    // looking to the right one, it turns anticlockwise: the top goes back.
    Box box = bounds(part(chair, "rail"));
    double high = 60 * Math.cos(Math.PI / 6) + 20 * Math.sin(Math.PI / 6);
    double deep = 60 * Math.sin(Math.PI / 6) + 20 * Math.cos(Math.PI / 6);
    isBox(box, -160, 160, 20 - deep / 2, 20 + deep / 2, 200 - high / 2, 200 + high / 2);
    Vec3 top =
        points(part(chair, "rail").placedMesh()).stream()
            .max(java.util.Comparator.comparingDouble(Vec3::z))
            .orElseThrow();
    assertThat(top.y()).isGreaterThan(20);
  }
}
