package dryfit.build;

import static dryfit.build.Sketch.FRONT_RAIL;
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
import dryfit.geometry.Box;
import dryfit.geometry.MassProperties;
import dryfit.geometry.MeshCheck;
import dryfit.solid.exact.ExactKernel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Openings, raised panels and splats, against what can be worked out by hand. */
class BoardsTest {
  private static String board(String more) {
    return """
        "board": { "form": "panel", "thickness": 18, "plane": "front", "at": [0, 0, 300], %s,
          "outline": [ [-100, -150], [100, -150], [100, 150], [-100, 150] ] }"""
        .formatted(more);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // A bevel that falls by d over m round a board a x b takes m d (a + b) - 4 m² d / 3: each
        // side m d / 2 times its length, less a third of m² d for each end it shares.
        "'tongue': 6, 'margin': 40, 'face': 'front' | 12 | 1",
        "'tongue': 6, 'margin': 40 | 6 | 2"
      })
  void aRaisedFieldFallsToItsTongue(String raised, double deep, int faces) {
    Part panel =
        part(chair(board("\"raised\": { " + raised.replace('\'', '"') + " }"), ""), "board");
    double m = 40;
    double off = m * deep * (200 + 300) - 4 * m * m * deep / 3;
    assertThat(200 * 300 * 18 - volume(panel)).isCloseTo(faces * off, within(5.0));
    assertThat(volume(panel.solid().cells())).isCloseTo(volume(panel), within(5.0));
    Box box = bounds(panel);
    assertThat(box.low().y()).isCloseTo(-9, within(1e-3));
    assertThat(box.high().y()).isCloseTo(9, within(1e-3));
    Box edge =
        Box.around(
            java.util.stream.IntStream.range(0, panel.placedMesh().pointCount())
                .mapToObj(panel.placedMesh()::point)
                .filter(p -> p.x() > 99.9)
                .toList());
    // Raised to the front alone, its back stays flat.
    assertThat(edge.low().y()).isCloseTo(faces == 1 ? 3 : -3, within(1e-3));
    assertThat(edge.high().y()).isCloseTo(faces == 1 ? 9 : 3, within(1e-3));
  }

  @Test
  void aTongueMayRunFlatBeforeTheBevelBegins() {
    Part panel =
        part(
            chair(
                board(
                    "\"raised\": { \"tongue\": 6, \"flat\": 10, \"margin\": 40, \"face\": \"back\" }"),
                ""),
            "board");
    // The flat takes a frame 10 wide and 12 deep, the bevel what it takes of a board 180 x 280.
    double flat = 12.0 * (200 * 300 - 180 * 280);
    double bevel = 30 * 12 * (180 + 280) - 4 * 30 * 30 * 12 / 3.0;
    assertThat(200 * 300 * 18 - volume(panel)).isCloseTo(flat + bevel, within(5.0));
  }

  @Test
  void aRaisedPanelSitsInItsGrooveByItsTongue() {
    String rails =
        """
        "low-rail": { "form": "straight", "section": [60, 20],
          "between": ["front-leg right", "front-leg left"], "top": 120, "outside": 5 },
        "panel": { "form": "panel", "thickness": 16,
          "fills": ["front-rail", "front-leg right", "low-rail", "front-leg left"],
          "groove": { "deep": 8, "gap": 2, "slack": 0.1 },
          "raised": { "tongue": 6, "margin": 50, "face": "front" } }""";
    var chair = chair(SQUARE_LEGS + "," + FRONT_RAIL + "," + rails, "");
    Part panel = part(chair, "panel");
    // The rail is 20 thick, its face 5 back: its middle at y = 15. The tongue of 6 is in the middle
    // of it, from 12 to 18, and the field stands 10 out to the front.
    assertThat(bounds(panel).high().y()).isCloseTo(18, within(1e-3));
    assertThat(bounds(panel).low().y()).isCloseTo(2, within(1e-3));
    // The opening is 320 x 200; the tongue goes 6 of the 8 deep.
    assertThat(bounds(panel).size().x()).isCloseTo(332, within(0.01));
    assertThat(bounds(panel).size().z()).isCloseTo(212, within(0.01));
    // A groove 320 long, 8 deep and 6.2 wide goes from the rail's lower edge.
    assertThat(320 * 60 * 20 - volume(part(chair, "front-rail")))
        .isCloseTo(320 * 8 * 6.2, within(2.0));
  }

  @Test
  void openingsAreCutThrough() {
    Part panel =
        part(
            chair(
                board(
                    "\"openings\": [ [ [-20, -20], [20, -20], [20, 20], [-20, 20] ],"
                        + " { \"circle\": 60, \"at\": [0, 80] } ]"),
                ""),
            "board");
    double whole = 200 * 300 * 18 - 40 * 40 * 18 - Math.PI * 30 * 30 * 18;
    // Facets stand in the circle by 0.05 mm at most.
    assertThat(volume(panel)).isBetween(whole, whole + 0.05 * Math.PI * 60 * 18);
    assertThat(MeshCheck.genus(panel.solid().mesh())).isEqualTo(2);
    assertThat(MassProperties.of(new ExactKernel().evaluate(panel.body())).volume())
        .isCloseTo(volume(panel), within(1.0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'openings': [ { 'circle': 60, 'at': [80, 0] } ] | opening-outside | /openings/0",
        "'openings': [ { 'circle': 60, 'at': [70, 0] } ] | opening-outside | /openings/0",
        "'openings': [ { 'circle': 20 }, { 'circle': 20, 'at': [10, 0] } ] | opening-outside |"
            + " /openings/1",
        "'raised': { 'tongue': 6, 'margin': 101 } | edge-too-tight | /raised/margin",
        "'raised': { 'tongue': 6, 'margin': 30, 'face': 'top' } | absent-face | /raised/face"
      })
  void whatNoBoardHasRoomForIsRefused(String more, String code, String place) {
    var problems = problems(board(more.replace('\'', '"')), "");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).code()).isEqualTo(code);
    assertThat(problems.get(0).pointer()).isEqualTo("/parts/board" + place);
  }

  // ---- splats ----

  private static String splat(String more) {
    return SQUARE_LEGS
        + """
        , "low": { "form": "straight", "section": [40, 30],
          "between": ["back-leg right", "back-leg left"], "top": 100 },
        "high": { "form": "straight", "section": [40, 30],
          "between": ["back-leg right", "back-leg left"], "top": 380 },
        "splat": { "form": "splat", "thickness": 10, "between": ["low", "high"], "x": 0, %s }"""
            .formatted(more);
  }

  @Test
  void aSplatStandsBetweenItsRailsAndMirrorsItsEdge() {
    Part splat = part(chair(splat("\"edge\": [ [40, 0], [60, 240] ]"), ""), "splat");
    // From the top of the low rail at 100 to the underside of the high one at 340.
    Box box = bounds(splat);
    assertThat(box.low().z()).isCloseTo(100, within(1e-3));
    assertThat(box.high().z()).isCloseTo(340, within(1e-3));
    assertThat(box.low().x()).isCloseTo(-60, within(1e-3));
    assertThat(box.high().x()).isCloseTo(60, within(1e-3));
    assertThat(box.low().y()).isCloseTo(295, within(1e-3));
    // A trapezoid from 80 to 120 over 240.
    assertThat(volume(splat)).isCloseTo(240 * 100 * 10, within(2.0));
  }

  @Test
  void aSplatIsPiercedAndTenoned() {
    var chair =
        chair(
            splat(
                "\"outline\": [ [-50, 0], [50, 0], [50, 260], [-50, 260] ],"
                    + " \"openings\": [ { \"circle\": 40, \"at\": [0, 120] } ]"),
            """
            "foot": { "tenon": "splat bottom", "into": "low", "thickness": 6, "width": 60,
              "length": 15 }""");
    Part splat = part(chair, "splat");
    assertThat(bounds(splat).low().z()).isCloseTo(85, within(1e-3));
    assertThat(bounds(splat).high().z()).isCloseTo(340, within(1e-3));
    double whole = 240 * 100 * 10 + 6 * 60 * 15 - Math.PI * 20 * 20 * 10;
    assertThat(volume(splat)).isBetween(whole - 1, whole + 0.05 * Math.PI * 40 * 10);
    assertThat(joint(chair, "foot", Hand.NONE).at().z()).isCloseTo(100, within(1e-6));
  }

  @Test
  void aBowedSplatIsSawnFromABentBoard() {
    String bowed =
        splat(
            "\"edge\": [ [40, 0], [40, 240] ], \"rise\": 20, \"toward\": \"back\","
                + " \"openings\": [ [ [-10, 80], [10, 80], [10, 160], [-10, 160] ] ]");
    Part splat = part(chair(bowed, "", new ExactKernel()), "splat");
    // Chord 240, rise 20: radius (120² + 20²) / 40 = 370.
    double radius = 370;
    double arc = 4 * radius * Math.atan(40.0 / 240);
    // The hole, 80 high as seen from the front, is as long as its arc on the middle line.
    double hole = 20 * 10 * 2 * radius * Math.asin(40 / radius);
    assertThat(volume(splat)).isCloseTo(80 * 10 * arc - hole, within(80 * 10 * arc * 1e-3));
    assertThat(volume(splat.solid().cells())).isCloseTo(volume(splat), within(2.0));
    assertThat(MeshCheck.problems(splat.solid().mesh())).isEmpty();
    assertThat(MeshCheck.problemsAsFloats(splat.solid().mesh())).isEmpty();
    assertThat(splat.bend().orElseThrow().radius()).isCloseTo(radius, within(1e-6));
    assertThat(splat.blank().width()).isCloseTo(80, within(1e-6));
    Box box = bounds(splat);
    assertThat(box.low().z()).isCloseTo(100, within(1e-3));
    assertThat(box.high().z()).isCloseTo(340, within(1e-3));
    assertThat(box.high().y()).isCloseTo(325, within(0.06));
  }
}
