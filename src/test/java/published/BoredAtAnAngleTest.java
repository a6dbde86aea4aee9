package published;

import static java.lang.Math.toDegrees;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import dryfit.fit.JointAngles;
import dryfit.fit.JointFit;
import dryfit.fit.MortiseAngles;
import dryfit.geometry.LeaningHole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holes and mortises that go in at an angle, built and measured on the solids. */
class BoredAtAnAngleTest {

  private static MortiseAngles angles(FitReport report, JointFit joint) {
    return JointAngles.of(report.chair(), joint.joint()).mortise().orElseThrow();
  }

  /**
   * Legs bored through for want of a collar (moonlightwoodworker.blogspot.com/2013/10/
   * two-chairs-completed.html). At 16 degrees, the tape at 1 1/4 on a 5/8 bit with a flat bottom:
   * 1.202 deep in the middle, 1.288 at the deep edge (separate script).
   */
  @Test
  void theTapeOnTheBitSaysOneThingAndTheWoodAnother() {
    FitReport report = Fitted.of(rung(16, "\"length\": 1.25"));
    JointFit rung = Fitted.joint(report, "rung");
    assertThat(toDegrees(rung.lean())).isCloseTo(16, within(1e-6));
    assertThat(rung.depthAlong() / 25.4).isCloseTo(1.25, within(0.0005));
    assertThat(rung.depthSquare() / 25.4).isCloseTo(1.202, within(0.0005));
    // A facet of the bored hole may lie five hundredths of a millimetre inside the true circle.
    assertThat(angles(report, rung).deepEdge().orElseThrow() / 25.4)
        .isCloseTo(1.288, within(0.001));
  }

  /**
   * The question turned round: where to put the tape so that 3/8 in is left of a 1 3/4 leg. The
   * hole made with that tape leaves it, measured on the solid.
   */
  @Test
  void aTapeWorkedOutForTheWallLeavesThatWall() {
    double deep = 25.4 * (1.75 - 0.375);
    double tape = LeaningHole.noDeeperThan(deep, Math.toRadians(16), 0.625 * 25.4).along();
    FitReport report = Fitted.of(rung(16, "\"length\": \"" + tape + " mm\""));
    JointFit rung = Fitted.joint(report, "rung");
    assertThat(rung.wall().orElseThrow() / 25.4).isCloseTo(0.375, within(0.001));
    assertThat(angles(report, rung).deepEdge().orElseThrow()).isCloseTo(deep, within(0.03));
  }

  /**
   * A through mortise chopped from both faces that meets 5 mm out in the middle: each side ran off
   * by atan(5/T), 5.7 degrees in 50 mm, 4.1 in 70, 3.2 in 90 (direvus.github.io/2020/10/21/
   * mortise-skew.html gives the 5 mm; angles by a separate script).
   */
  @ParameterizedTest
  @CsvSource({"50, 5.71", "70, 4.09", "90, 3.18"})
  void aMortiseThatRunsOffByFiveMillimetres(double leg, double degrees) {
    FitReport report = Fitted.of(through(leg));
    MortiseAngles mortise = angles(report, Fitted.joint(report, "rail"));
    assertThat(toDegrees(mortise.lean().offSquare())).isCloseTo(degrees, within(0.005));
    assertThat(mortise.lean().over(leg)).isCloseTo(5, within(1e-6));
    assertThat(mortise.deepEdge()).isEmpty();
  }

  /**
   * Heights stepped off with a block taken for 5/8 that measured .608: .153 out after nine, and the
   * piece was scrapped (anansi-web.com/2013/04/05/precision-leads-to-accuracy).
   */
  @Test
  void nineStepsOfASpacerThatIsALittleShort() {
    double planned = heightOfNinth("5/8 in");
    double real = heightOfNinth("0.608 in");
    assertThat((planned - real) / 25.4).isCloseTo(0.153, within(0.0005));
  }

  private static double heightOfNinth(String spacer) {
    FitReport report = Fitted.of(rung(0, "\"length\": 1").replace("10 in", spacer + " * 9"));
    return Fitted.joint(report, "rung").joint().at().z();
  }

  /**
   * Aprons whose tenons each wanted the same place in the leg, found with glue on; half an inch was
   * sawn off each tenon
   * (buttjointpocketjig.blogspot.com/2010/07/maple-dining-room-table-glue-up.html; sizes invented).
   * They clash before, and go in after.
   */
  @Test
  void halfAnInchOffEachTenonLetsThemPassInTheLeg() {
    FitReport planned =
        Fitted.of(Fitted.frame("2 1/2 in", "7/8 in", "1/8 in", "3/8 in", "2 in", ""));
    assertThat(Fitted.checks(planned)).contains("tenons-meet");
    assertThat(planned.fits()).isFalse();
    FitReport sawn =
        Fitted.of(Fitted.frame("2 1/2 in", "7/8 in", "1/8 in", "3/8 in", "1 1/2 in", ""));
    assertThat(Fitted.checks(sawn)).doesNotContain("tenons-meet");
  }

  /** A rung of 5/8 whose end goes into a plumb leg at an angle; no gap anywhere. */
  static String rung(double degrees, String length) {
    return """
        { "format": "dryfit-chair/1", "name": "Rung", "about": "Demo data, invented.", "unit": "in",
          "timber": "ash-white",
          "fit": { "cheek": 0, "edge": 0, "bottom": 0, "least-wall": 0 },
          "parts": {
            "leg": { "form": "straight", "section": [1.75, 1.75], "from": [0, 0, 0], "to": [0, 0, 18] },
            "far-leg": { "form": "straight", "section": [1.75, 6],
              "from": [0, 18, 0], "to": [0, 18, 18] },
            "rung": { "form": "turned", "diameter": "7/8 in", "between": ["leg", "far-leg"],
              "middle": ["10 in", "10 in + 14.125 in * tan(DEGREES)"], "x": 0 }
          },
          "joints": { "rung": { "tenon": "rung front", "into": "leg", "kind": "round-tenon",
            "diameter": "5/8 in", LENGTH } } }
        """
        .replace("DEGREES", "" + degrees)
        .replace("LENGTH", length);
  }

  private static String through(double leg) {
    return """
        { "format": "dryfit-chair/1", "name": "Leg", "about": "Demo data, invented.", "unit": "mm",
          "timber": "oak-white",
          "parts": {
            "leg": { "form": "straight", "section": [120, LEG], "from": [0, 0, 0], "to": [0, 0, 400] },
            "far-leg": { "form": "straight", "section": [120, 60],
              "from": [0, 400, 0], "to": [0, 400, 400] },
            "rail": { "form": "straight", "section": [80, 24], "between": ["leg", "far-leg"],
              "middle": 200 }
          },
          "joints": { "rail": { "tenon": "rail front", "into": "leg", "thickness": 8, "width": 50,
            "through": true, "entry": [5, -LEG, 0] } } }
        """
        .replace("LEG", "" + leg);
  }
}
