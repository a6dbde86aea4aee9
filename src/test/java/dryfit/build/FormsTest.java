package dryfit.build;

import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.chair;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import dryfit.geometry.Box;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // A leg 40 x 40 x 400 holds 640000. To the foot: a wedge of 12 x 300 / 2 x 40 goes.
        "[\"inside\"] | 300 | 0 | 568000",
        // Two neighbours: 300 (40 - 12 s)^2 over s from 0 to 1, and 100 x 1600 above.
        "[\"inside\", \"back\"] | 300 | 0 | 510400",
        // Two opposite ones take 6 each: as much as one of 12.
        "[\"inside\", \"outside\"] | 300 | 0 | 568000",
        // Stopping 100 above the foot, level from there: 12 x 200 / 2 x 40 and 12 x 100 x 40.
        "[\"inside\"] | 300 | 100 | 544000",
        "[\"inside\", \"outside\"] | 300 | 100 | 544000",
        // Upwards to the top.
        "[\"front\"] | 250 | 400 | 604000"
      })
  void aTaperTakesOffWhatItSays(String faces, double from, double to, double left) {
    String leg =
        """
        "leg": { "form": "straight", "pair": true, "section": [40, 40],
          "from": [180, 20, 0], "to": [180, 20, 400],
          "tapers": [ { "faces": %s, "from": %s, "to": %s, "leaves": 28 } ] },
        "back": { "form": "straight", "section": [20, 20], "from": [0, 300, 0], "to": [0, 300, 400] }"""
            .formatted(faces, from, to);
    assertThat(volume(part(chair(leg, ""), "leg", Hand.RIGHT))).isCloseTo(left, within(1.0));
  }

  @Test
  void aTaperIsOnTheFaceItNames() {
    String leg =
        """
        "leg": { "form": "straight", "pair": true, "section": [40, 40],
          "from": [180, 20, 0], "to": [180, 20, 400],
          "tapers": [ { "faces": ["inside", "back"], "from": 300, "to": 0, "leaves": 28 } ] },
        "back": { "form": "straight", "section": [20, 20], "from": [0, 300, 0], "to": [0, 300, 400] }""";
    var chair = chair(leg, "");
    for (Hand hand : new Hand[] {Hand.RIGHT, Hand.LEFT}) {
      Box foot = footOf(part(chair, "leg", hand));
      // Outside at 200 and front at 0 stay; 28 are left of each.
      assertThat(Math.max(Math.abs(foot.low().x()), Math.abs(foot.high().x())))
          .isCloseTo(200, within(1e-3));
      assertThat(foot.size().x()).isCloseTo(28, within(1e-3));
      assertThat(foot.low().y()).isCloseTo(0, within(1e-3));
      assertThat(foot.high().y()).isCloseTo(28, within(1e-3));
    }
  }

  private static Box footOf(Part part) {
    var mesh = part.placedMesh();
    return Box.around(
        java.util.stream.IntStream.range(0, mesh.pointCount())
            .mapToObj(mesh::point)
            .filter(p -> p.z() < 1e-3)
            .toList());
  }

  @Test
  void aPartSawnFromTwoOutlinesIsWhatBothLeave() {
    String arm =
        """
        "arm": { "form": "sawn", "pair": true, "between": ["front-leg", "back-leg"], "underside": 200,
          "plan": { "inside":  [ [0, -20], [240, -20] ], "outside": [ [0, 20], [240, 10] ] },
          "side": { "bottom": [ [0, 0], [240, 0] ], "top": [ [0, 30], [240, 24] ] } }""";
    Part right = part(chair(SQUARE_LEGS + "," + arm, ""), "arm", Hand.RIGHT);
    // 240 times the integral of (40 - 10 s)(30 - 6 s) over s from 0 to 1: 240 x 950.
    assertThat(volume(right)).isCloseTo(228000, within(2.0));
    Box box = bounds(right);
    // Between the faces at y = 40 and 280, about the middle of the legs at 180, from 200 up.
    assertThat(box.low().y()).isCloseTo(40, within(1e-3));
    assertThat(box.high().y()).isCloseTo(280, within(1e-3));
    assertThat(box.low().x()).isCloseTo(160, within(1e-3));
    assertThat(box.high().x()).isCloseTo(200, within(1e-3));
    assertThat(box.low().z()).isCloseTo(200, within(1e-3));
    assertThat(box.high().z()).isCloseTo(230, within(1e-3));
  }

  @Test
  void aStandingPartIsDrawnFromWhereItStands() {
    String post =
        """
        "post": { "form": "sawn", "thickness": 30, "stands-at": [50, 100, 10],
          "side": [ [-10, 0], [20, 0], [40, 300], [10, 300] ] }""";
    Part part = part(chair(post, ""), "post");
    Box box = bounds(part);
    // A parallelogram 30 deep and 300 high, 30 thick.
    assertThat(volume(part)).isCloseTo(270000, within(1.0));
    assertThat(box.low().x()).isCloseTo(35, within(1e-3));
    assertThat(box.high().x()).isCloseTo(65, within(1e-3));
    assertThat(box.low().y()).isCloseTo(90, within(1e-3));
    assertThat(box.high().y()).isCloseTo(140, within(1e-3));
    assertThat(box.low().z()).isCloseTo(10, within(1e-3));
    assertThat(box.high().z()).isCloseTo(310, within(1e-3));
  }

  @Test
  void anArcHoldsTheAreaOfItsSegment() {
    String board =
        """
        "board": { "form": "panel", "thickness": 10, "plane": "front", "at": [0, 0, 100],
          "outline": [ [-100, 0], [100, 0], { "arc-to": [-100, 0], "rise": %s } ] }""";
    // Chord 200, rise 50: radius (100^2 + 50^2) / (2 x 50) = 125, half angle asin(100 / 125); the
    // segment is r^2 (a - sin a cos a) with a that half angle. The arc runs from right to left, so
    // its left is down and a bow upwards has a negative rise.
    double a = Math.asin(0.8);
    double segment = 125 * 125 * (a - Math.sin(a) * Math.cos(a));
    Part up = part(chair(board.formatted("-50"), ""), "board");
    // Facets stand in from the arc by at most 0.05 mm along its 232 mm.
    assertThat(volume(up)).isBetween((segment - 0.05 * 232) * 10, segment * 10);
    assertThat(bounds(up).high().z()).isCloseTo(150, within(0.05));
  }

  @Test
  void aTurnedPartHoldsTheVolumeOfItsFrusta() {
    String spindle =
        """
        "spindle": { "form": "turned", "from": [0, 0, 0], "to": [0, 0, 200],
          "diameters": [ [0, 20], [80, 40], [200, 30] ] }""";
    Part part = part(chair(spindle, ""), "spindle");
    // A frustum holds pi h / 3 (R^2 + R r + r^2).
    double whole = Math.PI / 3 * (80 * (400 + 200 + 100) + 120 * (400 + 300 + 225));
    // A polygon inscribed with a chord error of 0.05 mm at radius 20 loses less than 0.05/20 x 4/3.
    assertThat(volume(part)).isBetween(whole * (1 - 0.0034), whole);
  }

  @Test
  void aTurnedPartKeepsItsEndDiametersBeyondItsStations() {
    String rod =
        """
        "rod": { "form": "turned", "from": [0, 0, 0], "to": [0, 0, 200],
          "diameters": [ [50, 20], [150, 30] ] }""";
    Box box = bounds(part(chair(rod, ""), "rod"));
    assertThat(box.high().z()).isCloseTo(200, within(1e-3));
    assertThat(box.size().x()).isCloseTo(30, within(0.1));
  }

  @Test
  void aBoardLiesInItsView() {
    String boards =
        """
        "plan": { "form": "panel", "thickness": 10, "plane": "plan", "at": [1, 2, 300],
          "outline": [ [-50, -20], [50, -20], [50, 20], [-50, 20] ] },
        "side": { "form": "panel", "thickness": 10, "plane": "side", "at": [1, 2, 300],
          "outline": [ [-50, -20], [50, -20], [50, 20], [-50, 20] ] },
        "front": { "form": "panel", "thickness": 10, "plane": "front", "at": [1, 2, 300],
          "outline": [ [-50, -20], [50, -20], [50, 20], [-50, 20] ] }""";
    var chair = chair(boards, "");
    assertThat(bounds(part(chair, "plan")).toString())
        .isEqualTo(
            Box.around(
                    java.util.List.of(
                        new dryfit.geometry.Vec3(-49, -18, 295),
                        new dryfit.geometry.Vec3(51, 22, 305)))
                .toString());
    assertThat(bounds(part(chair, "side")).size()).isEqualTo(new dryfit.geometry.Vec3(10, 100, 40));
    assertThat(bounds(part(chair, "front")).size())
        .isEqualTo(new dryfit.geometry.Vec3(100, 10, 40));
  }
}
