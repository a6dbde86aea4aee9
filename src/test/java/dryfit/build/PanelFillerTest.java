package dryfit.build;

import static dryfit.build.Sketch.FRONT_RAIL;
import static dryfit.build.Sketch.SQUARE_LEGS;
import static dryfit.build.Sketch.bounds;
import static dryfit.build.Sketch.chair;
import static dryfit.build.Sketch.part;
import static dryfit.build.Sketch.volume;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import dryfit.geometry.Box;
import dryfit.solid.Overlap;
import org.junit.jupiter.api.Test;

class PanelFillerTest {
  private static final String FRAME =
      SQUARE_LEGS
          + ","
          + FRONT_RAIL
          + """
          , "low-rail": { "form": "straight", "section": [40, 20],
              "between": ["front-leg right", "front-leg left"], "top": 140, "outside": 5 },
            "panel": { "form": "panel", "thickness": 10,
              "fills": ["front-leg right", "front-rail", "front-leg left", "low-rail"],
              "groove": { "deep": 8, "gap": 2, "slack": 0.25 } }""";

  @Test
  void aPanelReachesIntoItsGrooveUpToTheGap() {
    var chair = chair(FRAME, "");
    // The opening is 320 wide and runs from 140 to 320; 8 - 2 = 6 go in all round; the middle of
    // the rails is at y = 15.
    Box box = bounds(part(chair, "panel"));
    assertThat(box.size().x()).isCloseTo(332, within(1e-3));
    assertThat(box.low().z()).isCloseTo(134, within(1e-3));
    assertThat(box.high().z()).isCloseTo(326, within(1e-3));
    assertThat(box.low().y()).isCloseTo(10, within(1e-3));
    assertThat(box.high().y()).isCloseTo(20, within(1e-3));
  }

  @Test
  void theGrooveIsCutFromEveryPartAroundIt() {
    var chair = chair(FRAME, "");
    // In a leg 8 deep, 10 and twice 0.25 wide, 180 and twice 8 long; in a rail 320 long.
    assertThat(volume(part(chair, "front-leg", Hand.RIGHT)))
        .isCloseTo(640000 - 8 * 10.5 * 196, within(2.0));
    assertThat(volume(part(chair, "front-rail")))
        .isCloseTo(320 * 60 * 20 - 320 * 8 * 10.5, within(2.0));
  }

  @Test
  void nothingCollides() {
    var chair = chair(FRAME, "");
    var panel = part(chair, "panel").placedCells();
    for (Part other : chair.parts()) {
      if (!other.name().equals("panel")) {
        assertThat(Overlap.between(panel, other.placedCells())).as(other.label()).isEmpty();
      }
    }
  }

  @Test
  void aPairOfPanelsFillsBothSides() {
    String sides =
        SQUARE_LEGS
            + """
            , "high": { "form": "straight", "pair": true, "section": [60, 20],
                "between": ["front-leg", "back-leg"], "top": 380 },
              "low": { "form": "straight", "pair": true, "section": [60, 20],
                "between": ["front-leg", "back-leg"], "top": 160 },
              "panel": { "form": "panel", "pair": true, "thickness": 8,
                "fills": ["front-leg", "high", "back-leg", "low"], "groove": { "deep": 6 } }""";
    var chair = chair(sides, "");
    Box right = bounds(part(chair, "panel", Hand.RIGHT));
    Box left = bounds(part(chair, "panel", Hand.LEFT));
    assertThat(right.low().x()).isCloseTo(176, within(1e-3));
    assertThat(left.high().x()).isCloseTo(-176, within(1e-3));
    // Opening 240 long, 160 to 320 high; 6 less the usual 2 go in.
    assertThat(right.size().y()).isCloseTo(248, within(1e-3));
    assertThat(left.size().z()).isCloseTo(168, within(1e-3));
  }

  @Test
  void aPanelLiesInARingOfRailsThatLie() {
    String seat =
        SQUARE_LEGS
            + ","
            + FRONT_RAIL
            + """
            , "back-rail": { "form": "straight", "section": [60, 20],
                "between": ["back-leg right", "back-leg left"], "top": 380, "outside": 5 },
              "side-rail": { "form": "straight", "pair": true, "section": [60, 20],
                "between": ["front-leg", "back-leg"], "top": 380, "outside": 5 },
              "panel": { "form": "panel", "thickness": 10, "grain": [1, 0, 0],
                "fills": ["front-rail", "front-leg right", "side-rail right", "back-leg right",
                          "back-rail", "back-leg left", "side-rail left", "front-leg left"],
                "groove": { "deep": 8, "gap": 2, "slack": 0.25 } }""";
    var chair = chair(seat, "");
    Box box = bounds(part(chair, "panel"));
    Box rail = bounds(part(chair, "front-rail"));
    Box side = bounds(part(chair, "side-rail", Hand.RIGHT));
    // It reaches 8 - 2 = 6 into the inside faces of the rails, in the middle of their height.
    assertThat(box.high().x()).isCloseTo(side.low().x() + 6, within(1e-3));
    assertThat(box.low().y()).isCloseTo(rail.high().y() - 6, within(1e-3));
    assertThat(box.low().z()).isCloseTo((rail.low().z() + rail.high().z()) / 2 - 5, within(1e-3));
    assertThat(box.size().z()).isCloseTo(10, within(1e-3));
  }
}
