package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import dryfit.fit.JointFit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A trapezoid seat measured on its solids: shoulder angle atan((front - back) / 2 / depth),
 * shoulder to shoulder hypot(depth, (front - back) / 2). Handbook proportions 20 / 16 / 17 in give
 * 6.71 degrees and 17.117 in; a chair with 18-1/2 in front and 13-1/2 in back gives 9.46, 8.88 and
 * 8.37 degrees at 15, 16 and 17 in (tinyshopww.blogspot.com, dining chair rebuild, part 4; angles
 * recomputed).
 */
class LeaningRailFitTest {
  /** Two steps of the kernel's grid, 2^-14 mm each. */
  private static final double GRID = 2 / 16384.0;

  @ParameterizedTest
  @CsvSource({
    "20, 16, 17, 6.710",
    "18.5, 13.5, 15, 9.462",
    "18.5, 13.5, 16, 8.881",
    "18.5, 13.5, 17, 8.366"
  })
  void sideRailLeansByTheTaperOfTheSeat(double front, double back, double depth, double degrees) {
    FitReport report = seat(front, back, depth, "along");
    JointFit joint = Fitted.joint(report, "front end, right");
    assertThat(Math.toDegrees(joint.lean())).isEqualTo(degrees, within(6e-4));
    assertThat(Math.toDegrees(Math.abs(joint.leanAcross()))).isEqualTo(degrees, within(6e-4));
    assertThat(joint.leanAlong()).isEqualTo(0, within(1e-9));
    // The shoulder is off square on the narrow (top) face alone: the rail is level.
    assertThat(Math.toDegrees(Math.abs(joint.shoulderNarrow()))).isEqualTo(degrees, within(6e-4));
    assertThat(joint.shoulderWide()).isEqualTo(0, within(1e-9));
    double shoulderToShoulder =
        joint.joint().at().distance(Fitted.joint(report, "back end, right").joint().at());
    assertThat(shoulderToShoulder / 25.4)
        .isEqualTo(Math.hypot(depth, (front - back) / 2), within(1e-9));
    assertThat(report.fits()).isTrue();
  }

  @Test
  void leftAndRightShouldersLeanOppositeWays() {
    FitReport report = seat(20, 16, 17, "along");
    JointFit right = Fitted.joint(report, "front end, right");
    JointFit left = Fitted.joint(report, "front end, left");
    assertThat(left.leanAcross()).isEqualTo(-right.leanAcross(), within(1e-12));
    assertThat(left.glueLong()).isEqualTo(right.glueLong(), within(1e-6));
  }

  /** Depth along the hole and square to the face differ by the cosine of the lean. */
  @Test
  void leaningMortiseIsShallowerSquareThanAlong() {
    JointFit joint = Fitted.joint(seat(20, 16, 17, "along"), "front end, right");
    assertThat(joint.depthAlong() / 25.4).isEqualTo(1 + 1 / 16.0, within(GRID));
    assertThat(joint.depthSquare() / 25.4)
        .isEqualTo((1 + 1 / 16.0) * 17 / Math.hypot(17, 2), within(GRID));
    assertThat(joint.cheek().least().orElseThrow()).isEqualTo(0.1016, within(GRID));
    assertThat(joint.cheek().greatest().orElseThrow()).isEqualTo(0.1016, within(GRID));
    assertThat(joint.edge().greatest().orElseThrow()).isEqualTo(0.508, within(GRID));
    assertThat(joint.bottom().least().orElseThrow()).isEqualTo(25.4 / 16, within(GRID));
    assertThat(joint.shoulder().greatest().orElseThrow()).isEqualTo(0, within(GRID));
  }

  @Test
  void squareMortiseTakesAnAngledTenon() {
    JointFit joint = Fitted.joint(seat(20, 16, 17, "square"), "front end, right");
    assertThat(joint.lean()).isEqualTo(0, within(GRID));
    assertThat(Math.toDegrees(Math.abs(joint.shoulderNarrow()))).isEqualTo(6.710, within(6e-4));
    assertThat(joint.cheek().greatest().orElseThrow()).isEqualTo(0.1016, within(GRID));
    assertThat(joint.shoulder().greatest().orElseThrow()).isEqualTo(0, within(GRID));
  }

  /** Widths are outside the legs at the seat, depth is between the faces the side rail meets. */
  private static FitReport seat(double front, double back, double depth, String entry) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Seat", "about": "Demo data, invented.", "unit": "in",
          "timber": "cherry-black",
          "fit": { "cheek": 0.004, "edge": 0.02, "bottom": "1/16 in", "least-wall": "1/8 in" },
          "dimensions": { "front": FRONT, "back": BACK, "depth": DEPTH, "leg": 1.75 },
          "parts": {
            "front-leg": { "form": "straight", "pair": true, "section": ["leg", "leg"],
              "from": ["front/2 - leg/2", "leg/2", 0], "to": ["front/2 - leg/2", "leg/2", 18] },
            "back-leg": { "form": "straight", "pair": true, "section": ["leg", "leg"],
              "from": ["back/2 - leg/2", "leg + depth + leg/2", 0],
              "to": ["back/2 - leg/2", "leg + depth + leg/2", 18] },
            "side-rail": { "form": "straight", "pair": true, "section": [3, "7/8 in"],
              "between": ["front-leg", "back-leg"], "top": 16, "outside": "1/8 in" }
          },
          "joints": {
            "front end": { "tenon": "side-rail front", "into": "front-leg", "thickness": "3/8 in",
              "width": 2, "length": 1, "entry": "ENTRY" },
            "back end": { "tenon": "side-rail back", "into": "back-leg", "thickness": "3/8 in",
              "width": 2, "length": 1, "entry": "ENTRY" }
          } }
        """
            .replace("FRONT", "" + front)
            .replace("BACK", "" + back)
            .replace("DEPTH", "" + depth)
            .replace("ENTRY", entry));
  }
}
