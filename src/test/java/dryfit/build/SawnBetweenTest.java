package dryfit.build;

import static dryfit.build.Sketch.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Hand;
import dryfit.geometry.Box;
import org.junit.jupiter.api.Test;

/** Where a part stands that is sawn to one outline and has a thickness the other way; demo data. */
class SawnBetweenTest {
  private static Box arm(String height) {
    String parts =
        """
        "post": { "form": "straight", "section": [30, 30], "from": [0, 300, 0], "to": [0, 300, 800] },
        "stump": { "form": "straight", "section": [30, 30], "from": [0, 0, 0], "to": [0, 0, 800] },
        "arm": { "form": "sawn", "between": ["stump", "post"], %s, "thickness": 26,
          "plan": { "inside": [ [0, -20], [270, -30] ], "outside": [ [0, 20], [270, 30] ] } }"""
            .formatted(height);
    Part arm = part(Sound.chair(parts, ""), "arm", Hand.NONE);
    return arm.placedMesh().bounds();
  }

  @Test
  void itsUndersideTopAndMiddleAreThoseOfItsThickness() {
    assertThat(arm("\"underside\": 640").low().z()).isCloseTo(640, within(1e-3));
    assertThat(arm("\"underside\": 640").high().z()).isCloseTo(666, within(1e-3));
    assertThat(arm("\"top\": 640").high().z()).isCloseTo(640, within(1e-3));
    assertThat(arm("\"middle\": 640").middle().z()).isCloseTo(640, within(1e-3));
  }
}
