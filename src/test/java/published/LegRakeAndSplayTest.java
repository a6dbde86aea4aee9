package published;

import static java.lang.Math.abs;
import static java.lang.Math.toDegrees;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.Fitted;
import dryfit.fit.JointAngles;
import dryfit.fit.MortiseAngles;
import dryfit.fit.RakeAndSplay;
import dryfit.geometry.Lean;
import dryfit.measure.Length.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Legs written by rake and splay in whole documents, against figures that makers have published.
 */
class LegRakeAndSplayTest {

  /**
   * What one angle on what line to drill for a leg of rake 14 and splay 8, asked and derived at
   * blackdogswoodshop.blogspot.com/2020/02 and
   * dblaney.wordpress.com/2015/01/30/rake-splay-and-sighting-the-result; the rows were worked out
   * by a separate script from the relations derived there.
   */
  @ParameterizedTest
  @CsvSource({
    "14, 8, 15.972, 29.409",
    "10, 10, 14.002, 45",
    "15, 10, 17.784, 33.347",
    "20, 15, 24.32, 36.36"
  })
  void oneAngleAndOneLineForTheDrill(double rake, double splay, double angle, double sight) {
    var report = Fitted.of(stool("\"rake\": " + rake + ", \"splay\": " + splay));
    Lean lean = RakeAndSplay.of(report.chair()).get(0).floor().lean();
    assertThat(toDegrees(lean.resultant())).isCloseTo(angle, within(0.006));
    MortiseAngles hole =
        JointAngles.of(report.chair(), Fitted.joint(report, "leg, right").joint())
            .mortise()
            .orElseThrow();
    assertThat(toDegrees(hole.lean().offSquare())).isCloseTo(angle, within(0.006));
    assertThat(hole.sight().from()).isEqualTo("the fore-aft line");
    assertThat(toDegrees(hole.sight().angle())).isCloseTo(sight, within(0.006));
    assertThat(hole.sight().otherFrom()).isEqualTo("the side-to-side line");
    assertThat(toDegrees(hole.sight().otherAngle())).isCloseTo(90 - sight, within(0.006));
  }

  /**
   * The trap in the same question: 14 and then 8 turned one after the other is 16.08, and the side
   * view then shows 14.13 (separate script). The program tells the two turns that do give 14 and 8.
   */
  @Test
  void twoViewsAreNotTwoTurns() {
    var report = Fitted.of(stool("\"rake\": 14, \"splay\": 8"));
    Lean lean = RakeAndSplay.of(report.chair()).get(0).floor().lean();
    assertThat(toDegrees(lean.resultant())).isCloseTo(15.972, within(0.0005));
    assertThat(abs(toDegrees(lean.turns().swing()))).isCloseTo(8, within(1e-9));
    assertThat(toDegrees(lean.turns().tip())).isLessThan(14);
    Lean wrong = Lean.afterTwoTurns(lean.rake(), lean.splay());
    assertThat(toDegrees(wrong.resultant())).isCloseTo(16.08, within(0.005));
    Lean again = Lean.afterTwoTurns(lean.turns().tip(), lean.turns().swing());
    assertThat(again.resultant()).isCloseTo(lean.resultant(), within(1e-12));
  }

  /**
   * With a seat that falls 4 to the back, a front leg of 10 and 8 to the seat wants 12.71 on a line
   * of 38.56 (the same question, separate script); to the floor it is raked 14. A rear leg raked 18
   * to the floor is 22 to that seat (common practice, no source).
   */
  @Test
  void aSlopingSeatHasAnglesOfItsOwn() {
    var report = Fitted.of(slopingSeat());
    assertThat(toDegrees(RakeAndSplay.seat(report.chair()).orElseThrow().fallsBack()))
        .isCloseTo(4, within(1e-6));
    RakeAndSplay front = leaning(report.chair(), "front-leg right");
    Lean seat = front.seat().orElseThrow().lean();
    assertThat(toDegrees(seat.rake())).isCloseTo(10, within(1e-6));
    assertThat(abs(toDegrees(seat.splay()))).isCloseTo(8, within(1e-6));
    assertThat(toDegrees(seat.resultant())).isCloseTo(12.71, within(0.005));
    assertThat(abs(toDegrees(seat.sightLine()))).isCloseTo(38.56, within(0.005));
    assertThat(toDegrees(front.floor().lean().rake())).isCloseTo(14, within(1e-6));
    RakeAndSplay back = leaning(report.chair(), "back-leg right");
    assertThat(toDegrees(back.floor().lean().rake())).isCloseTo(-18, within(1e-6));
    assertThat(toDegrees(back.seat().orElseThrow().lean().rake())).isCloseTo(-22, within(1e-6));
  }

  private static RakeAndSplay leaning(dryfit.build.Chair chair, String label) {
    return RakeAndSplay.of(chair).stream()
        .filter(s -> s.part().label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  /**
   * A jig that rises 3/8 in 4-5/8 is called 1 in 12; exactly it is .973, 4.64 degrees and not 4.76,
   * .036 in over a 16 in leg (jefflefkowitzchairmaker.com, side chair build 28; .973 printed there
   * as rise and run, the rest from a separate script).
   */
  @Test
  void aJigOfOneInTwelveIsNotQuiteThat() {
    RakeAndSplay jig = RakeAndSplay.of(Fitted.of(stool("\"rake\": \"3:37\"")).chair()).get(0);
    RakeAndSplay nominal = RakeAndSplay.of(Fitted.of(stool("\"rake\": \"1:12\"")).chair()).get(0);
    var angle = dryfit.measure.BenchAngle.of(jig.floor().lean().rake());
    var other = dryfit.measure.BenchAngle.of(nominal.floor().lean().rake());
    assertThat(toDegrees(angle.offSquare())).isCloseTo(4.64, within(0.005));
    assertThat(toDegrees(other.offSquare())).isCloseTo(4.76, within(0.005));
    assertThat(angle.over(12)).isCloseTo(0.973, within(0.0005));
    assertThat(angle.slope(Unit.IN, 64)).isEqualTo("31/32 in over 12 in");
    assertThat(other.over(16) - angle.over(16)).isCloseTo(0.036, within(0.0005));
  }

  /** Feet left long: only the lean is asked about. */
  static String stool(String lean) {
    return """
        { "format": "dryfit-chair/1", "name": "Stool", "about": "Demo data, invented.", "unit": "in",
          "timber": "ash-white",
          "parts": {
            "leg": { "form": "turned", "pair": true, "diameter": 1.25,
              "from": [4, 4, 16], LEAN, "to-z": 0 },
            "seat": { "form": "panel", "thickness": 1.75, "plane": "plan", "at": [0, 0, 16.875],
              "outline": [[-8, -2], [8, -2], [8, 13], [-8, 13]] }
          },
          "joints": { "leg": { "tenon": "leg top", "into": "seat", "kind": "round-tenon",
            "diameter": 0.75, "length": 1.25 } } }
        """
        .replace("LEAN", lean);
  }

  /** A board in rails that fall 4 degrees to the back, and two pairs of legs beside the frame. */
  private static String slopingSeat() {
    return """
        { "format": "dryfit-chair/1", "name": "Seat", "about": "Demo data, invented.", "unit": "mm",
          "timber": "ash-white",
          "dimensions": { "slope": "4 deg", "fall": "400 mm * tan(slope)" },
          "parts": {
            "front-post": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [200, 0, 300], "to": [200, 0, 500] },
            "back-post": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [200, 440, 300], "to": [200, 440, 500] },
            "side-rail": { "form": "straight", "pair": true, "section": [22, 60], "turn": 90,
              "between": ["front-post", "back-post"], "middle": [420, "420 - fall"] },
            "front-rail": { "form": "straight", "section": [60, 22],
              "between": ["front-post right", "front-post left"], "middle": 420 },
            "back-rail": { "form": "straight", "section": [60, 22],
              "between": ["back-post right", "back-post left"], "middle": "420 - fall" },
            "seat": { "form": "panel", "thickness": 8,
              "fills": ["side-rail right", "front-post right", "front-rail", "front-post left",
                "side-rail left", "back-post left", "back-rail", "back-post right"],
              "groove": { "deep": 6 } },
            "front-leg": { "form": "turned", "pair": true, "diameter": 30, "from": [300, 0, 400],
              "rake": 10, "splay": 8, "seat-slope": "slope", "to-z": 0 },
            "back-leg": { "form": "turned", "pair": true, "diameter": 30, "from": [300, 400, 400],
              "rake": -18, "to-z": 0 }
          } }
        """;
  }
}
