package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.order.Assembling;
import org.junit.jupiter.api.Test;

/**
 * A seat frame, legs 40 square and 400 apart from front to back; side rails that run in by 54 on
 * 360 between the faces, so that they lean by a tangent of 0.15; a cross rail at front and back.
 * Tenons 30 long with 0.1 at each cheek and 0.4 at each edge.
 */
class SlantTest {
  private static FitReport seat(String front, String back, double length) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Seat", "about": "Demo data, invented.", "unit": "mm",
          "timber": "ash-white",
          "fit": { "cheek": 0.1, "edge": 0.4, "bottom": 1, "least-wall": 0 },
          "parts": {
            "front-leg": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [250, 0, 0], "to": [250, 0, 450] },
            "back-leg": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [190, 400, 0], "to": [190, 400, 450] },
            "front-rail": { "form": "straight", "section": [60, 24],
              "between": ["front-leg right", "front-leg left"], "top": 420 },
            "back-rail": { "form": "straight", "section": [60, 24],
              "between": ["back-leg right", "back-leg left"], "top": 420 },
            "side-rail": { "form": "straight", "pair": true, "section": [60, 24],
              "between": ["front-leg", "back-leg"], "middle": 330, "x": [247, 193] } },
          "joints": {
            "f": { "tenon": "front-rail both", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 10 },
            "b": { "tenon": "back-rail both", "into": "back-leg", "thickness": 8, "width": 40,
              "length": 10 },
            "front": { "tenon": "side-rail start", "into": "front-leg", "thickness": 8, "width": 40,
              "length": LENGTH, "angled": "FRONT" },
            "back": { "tenon": "side-rail end", "into": "back-leg", "thickness": 8, "width": 40,
              "length": LENGTH, "angled": "BACK" } } }
        """
            .replace("FRONT", front)
            .replace("BACK", back)
            .replace("LENGTH", "" + length));
  }

  private static Slant slant(FitReport report, String joint) {
    return Slant.of(report.chair(), Fitted.joint(report, joint).joint()).orElseThrow();
  }

  /**
   * Tangent 54/360 = 0.15: the tip is 30 sin 8.53 aside, and 0.2 / 0.15 of a tenon goes in square.
   */
  @Test
  void theTipIsAsideByTheSineAndTheFramesAreForced() {
    FitReport report = seat("mortise", "mortise", 30);
    Slant front = slant(report, "front, right");
    assertThat(front.shift()).isCloseTo(30 * 54 / Math.hypot(54, 360), within(1e-3));
    assertThat(front.squareEntry()).isCloseTo(0.2 / 0.15, within(1e-4));
    assertThat(front.order()).isEqualTo(Slant.Order.FRAMES_FIRST);
    assertThat(front.firstFrames()).isEqualTo("side frames");
    assertThat(slant(report, "back, left").order()).isEqualTo(Slant.Order.FRAMES_FIRST);
  }

  /** A tenon of 1.3 goes in square with what 0.1 at each cheek lets it stray: nothing is forced. */
  @Test
  void aTenonShortEnoughToGoInSquareForcesNothing() {
    Slant front = slant(seat("mortise", "mortise", 1.3), "front, right");
    assertThat(front.order()).isEqualTo(Slant.Order.ANY);
    assertThat(front.firstFrames()).isEmpty();
  }

  /**
   * Leaning in front and square at the back: each rail goes into the front frame along itself, and
   * the back frame on both of them; the two ends say so in the same sense, and so it goes together.
   */
  @Test
  void theTwoEndsOfAPartAskForOneOrder() {
    FitReport report = seat("mortise", "tenon", 30);
    assertThat(slant(report, "front, right").order()).isEqualTo(Slant.Order.THIS_END_FIRST);
    assertThat(slant(report, "back, right").order()).isEqualTo(Slant.Order.OTHER_END_FIRST);
    assertThat(Assembling.of(report.chair()).stuck()).isEmpty();
  }

  /**
   * A rail of its own between legs that splay, sine 0.06 / hypot(1, 0.06): it leans along its edges
   * only. Of 0.4 at each edge 0.8 / 0.06 = 13.3 of a tenon goes in square; it has no twin, so that
   * nothing is forced.
   */
  @Test
  void aLeanAlongTheEdgesCounts() {
    FitReport report =
        Fitted.of(
            """
            { "format": "dryfit-chair/1", "name": "Splay", "about": "Demo data, invented.",
              "unit": "mm", "timber": "ash-white",
              "fit": { "cheek": 0.1, "edge": 0.4, "bottom": 1, "least-wall": 0 },
              "parts": {
                "leg": { "form": "straight", "pair": true, "section": [40, 40],
                  "from": [200, 0, 400], "to": [224, 0, 0] },
                "rail": { "form": "straight", "section": [60, 24],
                  "between": ["leg right", "leg left"], "top": 380 } },
              "joints": { "rail": { "tenon": "rail both", "into": "leg", "thickness": 8,
                "width": 40, "length": 25 } } }
            """);
    Slant slant = slant(report, "rail, right");
    assertThat(slant.leaningMortise()).isTrue();
    assertThat(slant.shift()).isCloseTo(25 * 0.06 / Math.hypot(1, 0.06), within(1e-3));
    assertThat(slant.squareEntry()).isCloseTo(0.8 / 0.06, within(1e-2));
    assertThat(slant.order()).isEqualTo(Slant.Order.ALONG);
  }
}
