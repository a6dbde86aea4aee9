package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import dryfit.fit.JointFit;
import dryfit.fit.Slant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The two answers to a rail that meets its leg askew, as argued in Fine Woodworking ("Angled
 * mortise is better than angled tenon", Feb 2012) and by its critics; the numbers are recomputed
 * from the geometry. A slanted tenon's cheeks shift by length times tangent, so much less of its
 * fibres run whole, and it needs stock of t cos a + l sin a: its far corner stands l along the
 * slant and t across it. (The rule of thumb t / cos a + l tan a, 0.601 in for the first row below
 * and 0.536 in for the third, takes thickness and length along and across the rail instead.)
 */
class AngledAnswersTest {

  @ParameterizedTest
  @CsvSource({
    // front, back, depth, length -> shift in, whole fibres, stock needed in
    "18.5, 12.857537, 16, 1.25, 0.2204, 0.412, 0.5864",
    "20, 16, 17, 1, 0.1176, 0.686, 0.4893",
    "18.5, 13.5, 16, 1, 0.1563, 0.583, 0.5249",
  })
  void slantedTenonLosesFibreAndNeedsStock(
      double front,
      double back,
      double depth,
      double length,
      double shift,
      double fibres,
      double stock) {
    Slant slant = slant(seat(front, back, depth, length, "tenon"));
    assertThat(slant.leaningMortise()).isFalse();
    assertThat(slant.shift() / 25.4).isEqualTo(shift, within(1e-4));
    assertThat(slant.wholeFibres()).isEqualTo(fibres, within(1e-3));
    assertThat(slant.stockNeeded() / 25.4).isEqualTo(stock, within(1e-4));
    assertThat(slant.stockThere() / 25.4).isEqualTo(0.875, within(1e-6));
    // Square mortises: the tenons come in all one way, so the frames at the ends may go first.
    assertThat(slant.order()).isEqualTo(Slant.Order.FRAMES_MAY);
    assertThat(slant.firstFrames()).isEqualTo("front and back frames");
  }

  /** At 6.71 degrees and 0.008 in of room no tenon above 0.068 in goes in square to the face. */
  @Test
  void straightTenonKeepsItsFibreAndForcesTheSidesFirst() {
    FitReport report = seat(20, 16, 17, 1, "mortise");
    Slant slant = slant(report);
    assertThat(slant.leaningMortise()).isTrue();
    assertThat(slant.wholeFibres()).isEqualTo(1);
    assertThat(slant.squareEntry() / 25.4).isEqualTo(0.068, within(5e-4));
    assertThat(slant.order()).isEqualTo(Slant.Order.FRAMES_FIRST);
    assertThat(slant.firstFrames()).isEqualTo("side frames");
    // Its tip is 1 in along the tenon, so it stands aside by the sine: 2 / hypot(2, 17).
    assertThat(slant.shift() / 25.4).isEqualTo(2 / Math.hypot(2, 17), within(1e-4));
    JointFit joint = Fitted.joint(report, "front end, right");
    assertThat(Math.toDegrees(joint.lean())).isEqualTo(6.710, within(6e-4));
  }

  /** 3/8 in by 1 in at 9.46 degrees needs 0.534 in: a half-inch rail is too thin. */
  @Test
  void slantedTenonThatOutgrowsItsRailIsTold() {
    FitReport thin =
        Fitted.of(text(18.5, 13.5, 15, 1, "tenon").replace("\"7/8 in\"", "\"1/2 in\""));
    assertThat(Fitted.checks(thin)).contains("tenon-outgrows-stock");
    assertThat(Fitted.checks(seat(18.5, 13.5, 15, 1, "tenon")))
        .doesNotContain("tenon-outgrows-stock");
    FitReport leaning =
        Fitted.of(text(18.5, 13.5, 15, 1, "mortise").replace("\"7/8 in\"", "\"1/2 in\""));
    assertThat(Fitted.checks(leaning)).doesNotContain("tenon-outgrows-stock");
  }

  private static Slant slant(FitReport report) {
    return Slant.of(report.chair(), Fitted.joint(report, "front end, right").joint()).orElseThrow();
  }

  private static FitReport seat(
      double front, double back, double depth, double length, String angled) {
    return Fitted.of(text(front, back, depth, length, angled));
  }

  /** Widths are outside the legs at the seat, depth is between the faces the side rail meets. */
  private static String text(
      double front, double back, double depth, double length, String angled) {
    return """
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
              "between": ["front-leg", "back-leg"], "top": 16, "centred": 0 }
          },
          "joints": {
            "front end": { "tenon": "side-rail front", "into": "front-leg", "thickness": "3/8 in",
              "width": 2, "length": LENGTH, "angled": "ANGLED" },
            "back end": { "tenon": "side-rail back", "into": "back-leg", "thickness": "3/8 in",
              "width": 2, "length": LENGTH, "angled": "ANGLED" }
          } }
        """
        .replace("FRONT", "" + front)
        .replace("BACK", "" + back)
        .replace("DEPTH", "" + depth)
        .replace("LENGTH", "" + length)
        .replace("ANGLED", angled);
  }
}
