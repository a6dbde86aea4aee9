package dryfit.build;

import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FootTest {
  private static List<Vec3> points(Part part) {
    Mesh mesh = part.placedMesh();
    return java.util.stream.IntStream.range(0, mesh.pointCount()).mapToObj(mesh::point).toList();
  }

  private static Box standing(Part part, double z) {
    return Box.around(points(part).stream().filter(p -> Math.abs(p.z() - z) < 1e-3).toList());
  }

  private static String leg(String foot) {
    return """
        "leg": { "form": "straight", "pair": true, "section": [40, 40],
          "from": [200, 0, 0], "to": [150, 0, 400], "foot": %s }"""
        .formatted(foot);
  }

  @Test
  void aLeaningLegStandsOnTheWholeOfItsFoot() {
    Part leg = part(Sound.chair(leg("\"floor\""), ""), "leg", Hand.RIGHT);
    Box foot = standing(leg, 0);
    // Splay 1 in 8: the level section is 40 sqrt(1 + 1/64) wide, about x = 200 on the floor.
    double wide = 40 * Math.sqrt(1 + 1 / 64.0);
    assertThat(foot.low().x()).isCloseTo(200 - wide / 2, within(1e-3));
    assertThat(foot.high().x()).isCloseTo(200 + wide / 2, within(1e-3));
    assertThat(foot.size().y()).isCloseTo(40, within(1e-3));
    assertThat(points(leg).stream().mapToDouble(Vec3::z).min().orElseThrow())
        .isCloseTo(0, within(1e-3));
    // As much as a leg cut square at the same place on its middle line.
    assertThat(volume(leg)).isCloseTo(1600 * Math.hypot(400, 50), within(1.0));
  }

  @Test
  void aFootMayBeHigherThanTheFloor() {
    Part leg = part(Sound.chair(leg("{ \"z\": 12 }"), ""), "leg", Hand.LEFT);
    // On the middle line, 12 above the floor is 12 x 50 / 400 further in.
    assertThat(standing(leg, 12).middle().x()).isCloseTo(-(200 - 1.5), within(1e-3));
  }

  @Test
  void anEasedFootIsSmallerAllRoundAtTheFloor() {
    String leg =
        """
        "leg": { "form": "straight", "pair": true, "section": [40, 30],
          "from": [200, 0, 0], "to": [200, 0, 400], "foot": { "ease": 3 } }""";
    Part part = part(Sound.chair(leg, ""), "leg", Hand.RIGHT);
    Box foot = standing(part, 0);
    assertThat(foot.size().x()).isCloseTo(34, within(1e-3));
    assertThat(foot.size().y()).isCloseTo(24, within(1e-3));
    // A pyramid's frustum of 34 x 24 and 40 x 30, 3 high: h/6 (a b + A B + (a + A)(b + B)).
    double eased = 3 / 6.0 * (34 * 24 + 40 * 30 + 74 * 54);
    assertThat(volume(part)).isCloseTo(40 * 30 * 397 + eased, within(1.0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"floor\"", "{ \"ease\": 2 }"})
  void aTurnedLegThatRakesAndSplaysStandsFlat(String foot) {
    String leg =
        """
        "leg": { "form": "turned", "pair": true, "from": [200, 60, 0], "to": [120, 0, 400],
          "diameters": [ [0, 26], [200, 40], [400, 30] ], "smooth": true, "foot": %s }"""
            .formatted(foot);
    Part part = part(Sound.chair(leg, ""), "leg", Hand.RIGHT);
    double least = points(part).stream().mapToDouble(Vec3::z).min().orElseThrow();
    assertThat(least).isCloseTo(0, within(1e-3));
    assertThat(points(part).stream().filter(p -> Math.abs(p.z()) < 1e-3).count()).isGreaterThan(11);
  }

  @Test
  void theToolsOfARoundFootReachOnlyTheirNeighbours() {
    String leg =
        """
        "leg": { "form": "turned", "from": [0, 0, 0], "to": [0, 0, 400],
          "diameters": [ [0, 26], [400, 30] ], "foot": { "ease": 2 } }""";
    Part part = part(Sound.chair(leg, ""), "leg", Hand.NONE);
    List<Csg> tools = ((Csg.Cut) part.body()).tools();
    assertThat(tools).hasSizeGreaterThan(20);
    for (Csg tool : tools) {
      Box one = ((Csg.Leaf) tool).mesh().bounds();
      assertThat(tools)
          .filteredOn(other -> ((Csg.Leaf) other).mesh().bounds().meets(one))
          .hasSizeLessThan(tools.size() * 2 / 3);
    }
    assertThat(standing(part, 0).size().x()).isCloseTo(22, within(0.1));
  }

  @Test
  void aSawnLegIsCutWhereItsOutlineReachesBelowTheFloor() {
    String leg =
        """
        "post": { "form": "sawn", "pair": true, "thickness": 30, "stands-at": [150, 300, 0],
          "side": [ [-20, -30], [20, -30], [60, 400], [20, 400] ], "foot": "floor" }""";
    Part part = part(Sound.chair(leg, ""), "post", Hand.RIGHT);
    // The parallelogram is 40 deep at every height.
    assertThat(volume(part)).isCloseTo(40 * 30 * 400, within(1.0));
    assertThat(standing(part, 0).size().y()).isCloseTo(40, within(1e-3));
  }

  @Test
  void aSawnLegTurnedInPlanFacesTheSitter() {
    String leg =
        """
        "post": { "form": "sawn", "pair": true, "thickness": 30, "stands-at": [150, 300, 0],
          "side": [ [-20, 0], [20, 0], [60, 400], [20, 400] ], "turn": "90 deg" }""";
    Part part = part(Sound.chair(leg, ""), "post", Hand.RIGHT);
    Box box = Sketch.bounds(part);
    // A quarter turn anticlockwise seen from above: what went back now goes left.
    assertThat(box.low().x()).isCloseTo(150 - 60, within(1e-3));
    assertThat(box.high().x()).isCloseTo(150 + 20, within(1e-3));
    assertThat(box.size().y()).isCloseTo(30, within(1e-3));
  }

  @Test
  void aHeadIsCutLevelAtTheEndOfTheMiddleLineOrWhereItSays() {
    // Splay 1 in 8, so the level section is 40 sqrt(1 + 1/64) wide, about x = 150 at the top.
    double wide = 40 * Math.sqrt(1 + 1 / 64.0);
    Part level =
        part(Sound.chair(leg("\"floor\", \"upper-end\": \"level\""), ""), "leg", Hand.RIGHT);
    Box top = standing(level, 400);
    assertThat(top.low().x()).isCloseTo(150 - wide / 2, within(1e-3));
    assertThat(top.high().x()).isCloseTo(150 + wide / 2, within(1e-3));
    assertThat(points(level).stream().mapToDouble(Vec3::z).max().orElseThrow())
        .isCloseTo(400, within(1e-3));
    // Between two level planes 400 apart: the level section, times the height.
    assertThat(volume(level)).isCloseTo(wide * 40 * 400, within(1.0));

    Part lower =
        part(Sound.chair(leg("\"floor\", \"upper-end\": { \"z\": 380 }"), ""), "leg", Hand.LEFT);
    assertThat(points(lower).stream().mapToDouble(Vec3::z).max().orElseThrow())
        .isCloseTo(380, within(1e-3));
    assertThat(volume(lower)).isCloseTo(wide * 40 * 380, within(1.0));
  }
}
