package dryfit.build;

import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import org.junit.jupiter.api.Test;

class DropInTest {
  private static String rails(String more) {
    return """
        "front-rail": { "form": "straight", "section": [60, 25],
          "between": ["front-leg right", "front-leg left"], "top": 400, "outside": 0, %1$s },
        "back-rail": { "form": "straight", "section": [60, 25],
          "between": ["back-leg right", "back-leg left"], "top": 400, "outside": 0, %1$s },
        "side-rail": { "form": "straight", "pair": true, "section": [60, 25],
          "between": ["front-leg", "back-leg"], "top": 400, "outside": 0, %1$s }"""
        .formatted(more);
  }

  private static final String REBATE =
      "\"rebate\": { \"edge\": [\"top\", \"inside\"], \"wide\": 10, \"deep\": 12 }";

  private static final String SEAT =
      """
      "drop-in": { "form": "panel", "thickness": 18, "gap": 2,
        "drops-into": ["front-rail", "back-rail", "side-rail right", "side-rail left",
          "front-leg right", "front-leg left", "back-leg right", "back-leg left"] }""";

  @Test
  void aRebateTakesAStepOffTheEdgeItNames() {
    Part rail = part(Sound.chair(SQUARE_LEGS + "," + rails(REBATE), ""), "side-rail", Hand.LEFT);
    // 240 from leg to leg.
    assertThat(volume(rail)).isCloseTo(240 * (60 * 25 - 10 * 12), within(1.0));
    var mesh = rail.placedMesh();
    double topInside =
        java.util.stream.IntStream.range(0, mesh.pointCount())
            .mapToObj(mesh::point)
            .filter(p -> p.z() > 399.9)
            .mapToDouble(dryfit.geometry.Vec3::x)
            .max()
            .orElseThrow();
    // Outside face at -200; 15 of the top are left.
    assertThat(topInside).isCloseTo(-185, within(1e-3));
  }

  @Test
  void aDropInSeatIsTheOpeningLessItsGap() {
    Part seat = part(Sound.chair(SQUARE_LEGS + "," + rails(REBATE) + "," + SEAT, ""), "drop-in");
    // The walls of the rebates stand 15 inside the legs' outside faces at x = ±200, y = 0 and 320;
    // less the gap of 2. The legs reach 25 further in both ways and take a corner each.
    assertThat(bounds(seat).low().x()).isCloseTo(-183, within(1e-3));
    assertThat(bounds(seat).high().x()).isCloseTo(183, within(1e-3));
    assertThat(bounds(seat).low().y()).isCloseTo(17, within(1e-3));
    assertThat(bounds(seat).high().y()).isCloseTo(303, within(1e-3));
    assertThat(bounds(seat).low().z()).isCloseTo(388, within(1e-3));
    assertThat(bounds(seat).high().z()).isCloseTo(406, within(1e-3));
    assertThat(volume(seat)).isCloseTo((366 * 286 - 4 * 25 * 25) * 18, within(10.0));
  }

  @Test
  void rebatesThatAreNotInOnePlaneCarryNoSeat() {
    String uneven =
        rails(REBATE).replace("back-leg left\"], \"top\": 400", "back-leg left\"], \"top\": 390");
    assertThat(Sketch.problems(SQUARE_LEGS + "," + uneven + "," + SEAT, "").get(0).message())
        .contains("not in one plane: one is off by");
  }

  @Test
  void aDropInSeatSlopesWithItsRails() {
    // The side rails fall 24 over the 240 between the legs; the front rail's inside face is 15 in
    // front of where they begin, the back rail's 15 behind where they end: 1.5 higher and lower.
    String sloping =
        rails(REBATE)
            .replace(
                "[\"front-leg\", \"back-leg\"], \"top\": 400",
                "[\"front-leg\", \"back-leg\"], \"top\": [390, 366]")
            .replace("front-leg left\"], \"top\": 400", "front-leg left\"], \"top\": %s")
            .replace("back-leg left\"], \"top\": 400", "back-leg left\"], \"top\": %s");
    // A rebate of 12 square to a rail that falls 1 in 10 is 12 sqrt(1.01) deep plumb.
    double more = 12 * (Math.sqrt(1.01) - 1);
    String front = String.format(java.util.Locale.ROOT, "%.6f", 390 + 1.5 * 1.8333333 - more);
    String back = String.format(java.util.Locale.ROOT, "%.6f", 366 - 1.5 * 1.8333333 - more);
    Part seat =
        part(
            Sound.chair(SQUARE_LEGS + "," + sloping.formatted(front, back) + "," + SEAT, ""),
            "drop-in");
    assertThat(seat.frame().z().z()).isCloseTo(1 / Math.sqrt(1.01), within(1e-4));
  }
}
