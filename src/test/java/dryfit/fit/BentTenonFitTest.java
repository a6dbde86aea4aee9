package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Part;
import dryfit.geometry.Box;
import dryfit.measure.Tolerances;
import org.junit.jupiter.api.Test;

/**
 * A crest 20 thick between posts 400 apart, bowed by 40: it runs out of the posts at twice the
 * angle whose tangent is 40 / 200, that is 22.62 degrees, and its straight tenons go in that way.
 */
public class BentTenonFitTest {
  public static final String BOWED =
      """
      { "format": "dryfit-chair/1", "name": "Bow", "about": "Demo data, invented.", "unit": "mm",
        "timber": "ash-white",
        "parts": {
          "post": { "form": "straight", "pair": true, "section": [60, 60],
            "from": [230, 0, 0], "to": [230, 0, 800] },
          "crest": { "form": "bent", "section": [60, 20], "between": ["post right", "post left"],
            "middle": 700, "rise": 40, "toward": "back" } },
        "joints": {
          "crest to post": { "tenon": "crest both", "into": "post", "thickness": 10, "width": 40,
            "length": 25 } } }
      """;

  private final FitReport report = Fitted.of(BOWED);
  private final JointFit fit = Fitted.joint(report, "crest to post, right");

  @Test
  void theMortiseLeansAsTheCrestRunsAndTheTenonIsStraight() {
    Slant slant = Slant.of(report.chair(), fit.joint()).orElseThrow();
    assertThat(slant.leaningMortise()).isTrue();
    assertThat(slant.wholeFibres()).isEqualTo(1);
    assertThat(Math.toDegrees(slant.angle())).isEqualTo(22.62, within(1.0));
    assertThat(fit.lean()).isEqualTo(slant.angle(), within(1e-6));
  }

  /** 10 of 20 is half: neither too thick nor too thin, however much the shoulder leans. */
  @Test
  void theTenonIsHeldAgainstTheWholeThicknessOfItsPart() {
    assertThat(Fitted.checks(report))
        .doesNotContain("tenon-thick", "tenon-thin", "tenon-short-grain", "tenon-outgrows-stock");
  }

  /**
   * The shoulder lies in the post's face, 22.62 degrees off square to the crest as it runs there:
   * over 20 of thickness the front is longer by 20 tan 22.62 = 20 x 5/12. Along the chord it would
   * be square.
   */
  @Test
  void theShoulderIsSetOutFromTheFacesAsTheyRunAtTheEnd() {
    ShoulderAngles shoulder = JointAngles.of(report.chair(), fit.joint()).shoulder().orElseThrow();
    double angle = 2 * Math.atan(40.0 / 200);
    assertThat(shoulder.offSquare().offSquare()).isCloseTo(angle, within(1e-4));
    assertThat(shoulder.longest()).isEqualTo("front");
    assertThat(shoulder.wide().orElseThrow().angle().isSquare()).isTrue();
    KnifeLine line = shoulder.narrow().orElseThrow();
    assertThat(line.face()).isEqualTo("top");
    assertThat(line.longEdge()).isEqualTo("front");
    assertThat(line.longer()).isCloseTo(20 * 5 / 12.0, within(Tolerances.facet()));
    assertThat(shoulder.saw()).isEmpty();
  }

  /**
   * The feet of a hoop stand side by side 300 apart and are one part: only the section of the one
   * that is asked about counts, 30 by 16 at right angles to the level seat.
   */
  @Test
  void theOtherLegOfAHoopIsNoPartOfTheShoulder() {
    FitReport hoop =
        Fitted.of(
            """
            { "format": "dryfit-chair/1", "name": "Hoop", "about": "Demo data, invented.",
              "unit": "mm", "timber": "ash-white",
              "parts": {
                "seat": { "form": "straight", "section": [60, 40], "from": [-220, 0, 0],
                  "to": [220, 0, 0] },
                "hoop": { "form": "bent", "section": [16, 30], "along": [ [-150, 0, 20],
                  [-150, 0, 200], [0, 0, 420], [150, 0, 200], [150, 0, 20] ] } },
              "joints": {
                "hoop": { "tenon": "hoop start", "into": "seat", "thickness": 8, "width": 10,
                  "length": 15 } } }
            """);
    JointFit foot = Fitted.joint(hoop, "hoop");
    Part part = hoop.chair().parts().get(foot.joint().tenoned());
    Box section =
        EndSection.of(
            part, foot.joint().mouth().flipped(), foot.joint().at(), foot.joint().atStart());
    assertThat(section.size().y() * section.size().z()).isCloseTo(16 * 30, within(20.0));
  }
}
