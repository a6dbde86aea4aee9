package dryfit.build;

import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeatFormTest {
  private static String seat(String more) {
    return """
        "seat": { "form": "seat", "at": [0, 180, 450], "thickness": 30,
          "outline": [ [-200, -180], [200, -180], [200, 180], [-200, 180] ]%s }"""
        .formatted(more.isEmpty() ? "" : ", " + more);
  }

  private static Part built(String more) {
    return part(Sound.chair(seat(more), ""), "seat");
  }

  private static double lowestTopAt(Part part, double x, double y) {
    Mesh mesh = part.placedMesh();
    return java.util.stream.IntStream.range(0, mesh.pointCount())
        .mapToObj(mesh::point)
        .filter(p -> Math.hypot(p.x() - x, p.y() - y) < 0.01 && p.z() > 421)
        .mapToDouble(Vec3::z)
        .min()
        .orElseThrow();
  }

  @Test
  void aSeatLiesUnderItsTop() {
    Part seat = built("");
    assertThat(volume(seat)).isCloseTo(400 * 360 * 30, within(10.0));
    Box box = bounds(seat);
    assertThat(box.low().z()).isCloseTo(420, within(1e-3));
    assertThat(box.high().z()).isCloseTo(450, within(1e-3));
    assertThat(box.low().y()).isCloseTo(0, within(1e-3));
    assertThat(box.high().y()).isCloseTo(360, within(1e-3));
  }

  @Test
  void aSlopingSeatFallsTowardsTheBack() {
    Part seat = built("\"slope\": \"3 deg\"");
    Box box = bounds(seat);
    // 180 in front of and behind the place, along the seat; 30 thick square to it.
    double s = Math.sin(Math.toRadians(3));
    double c = Math.cos(Math.toRadians(3));
    assertThat(box.high().z()).isCloseTo(450 + 180 * s, within(1e-3));
    assertThat(box.low().z()).isCloseTo(450 - 180 * s - 30 * c, within(1e-3));
    assertThat(volume(seat)).isCloseTo(400 * 360 * 30, within(10.0));
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 12", "0, 40, 12", "-25, 30, 20", "0, 0, 3"})
  void aRoundHollowIsAParaboloidWhereverItIsDeepest(double u, double v, double deep) {
    double whole = 400 * 360 * 30;
    Part seat =
        built(
            "\"hollow\": { \"deep\": %s, \"outline\": { \"circle\": 300 }, \"deepest\": [%s, %s] }"
                .formatted(deep, u, v));
    // A paraboloid holds half the cylinder round it: pi r^2 d / 2; one with its lowest place aside
    // is the same sheared in every layer. Facets stand inside it by at most 0.05 mm.
    double bowl = Math.PI * 150 * 150 * deep / 2;
    assertThat(whole - volume(seat)).isBetween(bowl - 0.05 * Math.PI * 150 * 150 - 100, bowl);
    assertThat(lowestTopAt(seat, u, 180 + v)).isCloseTo(450 - deep, within(1e-3));
  }

  @Test
  void anInsetHollowTakesHalfItsRimTimesItsDepth() {
    Part seat = built("\"hollow\": { \"deep\": 10, \"inset\": 40, \"deepest\": [0, 30] }");
    // The rim is 320 by 280.
    double taken = 400 * 360 * 30 - volume(seat);
    assertThat(taken).isBetween(320 * 280 * 5 - 0.05 * 320 * 280, 320.0 * 280 * 5 + 1);
  }

  @Test
  void aHollowMayHaveARimThatIsNotConvex() {
    String saddle =
        """
        "hollow": { "deep": 10, "deepest": [0, 0],
          "outline": [ [-150, -60], [0, -20], [150, -60], [150, 60], [0, 120], [-150, 60] ] }""";
    // By the shoelace rule: 300 x 120 - 300 x 40 / 2 + 300 x 60 / 2.
    double rim = 300 * 120 - 300 * 40 / 2.0 + 300 * 60 / 2.0;
    double taken = 400 * 360 * 30 - volume(built(saddle));
    assertThat(taken).isBetween(rim * 5 - 0.05 * rim, rim * 5 + 1);
  }

  @Test
  void aHollowedSeatKeepsItsThicknessUnderTheDeepestPlace() {
    Part seat = built("\"slope\": \"4 deg\", \"hollow\": { \"deep\": 12, \"inset\": 30 }");
    Mesh mesh = seat.solid().mesh();
    // In the seat's own frame the top is z = 0 and the deepest place 12 below it.
    double deepest =
        java.util.stream.IntStream.range(0, mesh.pointCount())
            .mapToObj(mesh::point)
            .filter(p -> p.z() > -29)
            .mapToDouble(Vec3::z)
            .min()
            .orElseThrow();
    assertThat(deepest).isCloseTo(-12, within(1e-3));
  }

  @Test
  void aSeatIsCutRoundItsPostsWithMoreRoomAcrossTheGrain() {
    String seat =
        """
        "seat": { "form": "seat", "at": [0, 180, 390], "thickness": 30, "grain": [1, 0, 0],
          "outline": [ [-200, -180], [200, -180], [200, 140], [-200, 140] ],
          "notch-round": { "parts": ["back-leg"], "gap": 1, "across": 3 } }""";
    Part part = part(Sound.chair(SQUARE_LEGS + "," + seat, ""), "seat");
    // Two back legs, x from 160 to 200 and y from 280 to 320, at the seat's back corners: the notch
    // begins 1 further in along the grain, which is x, and 3 further in along y.
    double notch = 41 * 43 * 30;
    assertThat(volume(part)).isCloseTo(400 * 320 * 30 - 2 * notch, within(10.0));
  }

  @Test
  void aNotchFollowsALeaningPost() {
    String parts =
        """
        "post": { "form": "straight", "pair": true, "section": [30, 30],
          "from": [150, 200, 0], "to": [150, 280, 400] },
        "seat": { "form": "seat", "at": [0, 0, 210], "thickness": 20,
          "outline": [ [-200, 0], [200, 0], [200, 400], [-200, 400] ],
          "notch-round": { "parts": ["post"], "gap": 0, "across": 0 } }""";
    Part part = part(Sound.chair(parts, ""), "seat");
    // Rake 1 in 5: cut level, the post is 30 wide and 30 sqrt(1 + 1/25) deep.
    double hole = 30 * 30 * Math.sqrt(1 + 1 / 25.0) * 20;
    assertThat(volume(part)).isCloseTo(400 * 400 * 20 - 2 * hole, within(10.0));
  }
}
