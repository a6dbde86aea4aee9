package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import dryfit.solid.Convex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How deep two tenons can go that enter one leg from two sides. A tenon's near cheek lies a =
 * setback + (rail - tenon)/2 from the outside of the leg; two equal tenons just touch at T - a -
 * tenon; mitred, the long cheek reaches T - a.
 *
 * <p>Cases: 1-1/2 in leg with a flush, a set-back and a centred apron, and 1-3/4 and 1-3/8 in legs
 * with the apron 1/8 in back, as asked on woodworking forums (threads "tenon size, length" and
 * "Mortise Depth"); the depths are worked from the formula above, common practice, no source.
 */
class TwoTenonsInOneLegTest {

  @ParameterizedTest
  @CsvSource({
    "1 1/2, 3/4, 0, 1/4, 1.0",
    "1 1/2, 3/4, 1/8, 1/4, 0.875",
    "1 1/2, 3/4, 3/8, 1/4, 0.625",
    "1 3/4, 3/4, 1/8, 1/4, 1.125",
    "1 3/4, 3/4, 1/8, 3/8, 1.0625",
    "1 3/8, 3/4, 1/8, 3/8, 0.6875",
  })
  void buttedTenonsTouchAtThatDepthAndMeetBeyondIt(
      String leg, String rail, String setback, String tenon, double depth) {
    FitReport touching = fit(leg, rail, setback, tenon, depth, "");
    assertThat(Fitted.checks(touching)).doesNotContain("tenons-meet", "parts-collide");

    double over = 1 / 64.0;
    FitReport meeting = fit(leg, rail, setback, tenon, depth + over, "");
    assertThat(meeting.findings())
        .filteredOn(f -> f.check().equals("tenons-meet"))
        .hasSize(2)
        .allSatisfy(f -> assertThat(f.measured()).isEqualTo(over * 25.4, within(1e-6)));
    assertThat(meeting.fits()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "1 3/8, 3/4, 1/8, 3/8, 1.0625",
    "1 1/2, 3/4, 0, 1/4, 1.25",
    "1 1/2, 3/4, 1/8, 1/4, 1.125",
    "1 3/4, 3/4, 1/8, 1/4, 1.375",
  })
  void mitredTenonsReachTheOtherTenonsFarCheek(
      String leg, String rail, String setback, String tenon, double longCheek) {
    FitReport report =
        fit(leg, rail, setback, tenon, 1.4, ", \"mitre-with\": \"side\", \"mitre-gap\": 0");
    assertThat(Fitted.checks(report)).doesNotContain("tenons-meet", "parts-collide");
    for (String label : new String[] {"front, right", "side, right", "front, left", "side, left"}) {
      Vec3 entry = Fitted.joint(report, label).joint().entry();
      double mouth = Fitted.joint(report, label).joint().at().dot(entry);
      double reach = 0;
      for (Convex cell : Fitted.joint(report, label).joint().tenon()) {
        reach = Math.max(reach, cell.reach(entry) - mouth);
      }
      assertThat(reach / 25.4).describedAs(label).isEqualTo(longCheek, within(1e-9));
      // Mitred at 45 degrees it is on average half its thickness shorter than its long cheek.
      double volume =
          Fitted.joint(report, label).joint().tenon().stream().mapToDouble(Convex::volume).sum();
      double thick = Length.parse(tenon + " in", Length.Unit.IN).orElseThrow();
      assertThat(volume / (thick * 2 * 25.4) / 25.4)
          .describedAs("mean of " + label)
          .isEqualTo(longCheek - thick / 25.4 / 2, within(1e-9));
    }
  }

  private static FitReport fit(
      String leg, String rail, String setback, String tenon, double length, String mitre) {
    return Fitted.of(
        Fitted.frame(
            leg + " in", rail + " in", setback + " in", tenon + " in", length + " in", mitre));
  }
}
