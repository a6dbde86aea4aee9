package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.PartPlan.Placement;
import dryfit.document.PartPlan.Spot;
import org.junit.jupiter.api.Test;

/** Legs written by rake and splay; places worked by hand. */
class LeaningRunTest {
  private static final double RAKE = Math.tan(Math.toRadians(14));
  private static final double SPLAY = Math.tan(Math.toRadians(8));

  private static String chair(String placement) {
    return """
        { "format": "dryfit-chair/1", "name": "Leg", "unit": "mm", "timber": "ash-white",
          "parts": { "leg": { "form": "turned", "diameter": 30, PLACEMENT } } }
        """
        .replace("PLACEMENT", placement);
  }

  private static Placement.Run run(String placement) {
    Document document = Samples.document(chair(placement));
    Reading<Design> design = document.design(Design.AS_DRAWN);
    PartPlan leg = ((Reading.Accepted<Design>) design).value().parts().get(0);
    return (Placement.Run) ((PartPlan.Turned) leg).placement();
  }

  private static void isAt(Spot spot, double x, double y, double z) {
    assertThat(spot.x()).isCloseTo(x, within(1e-9));
    assertThat(spot.y()).isCloseTo(y, within(1e-9));
    assertThat(spot.z()).isCloseTo(z, within(1e-9));
  }

  @Test
  void theFootStandsForwardByTheRakeAndOutsideByTheSplay() {
    Placement.Run fromTop =
        run("\"from\": [120, 80, 400], \"rake\": 14, \"splay\": 8, \"to-z\": 0");
    isAt(fromTop.to(), 120 + 400 * SPLAY, 80 - 400 * RAKE, 0);
  }

  @Test
  void fromTheFootTheSameAnglesLeadBackToTheTop() {
    Placement.Run fromFoot =
        run("\"from\": [120, 80, 0], \"rake\": 14, \"splay\": 8, \"to-z\": 400");
    isAt(fromFoot.to(), 120 - 400 * SPLAY, 80 + 400 * RAKE, 400);
  }

  @Test
  void belowZeroTheFootStandsBehind() {
    Placement.Run backLeg = run("\"from\": [0, 300, 400], \"rake\": \"-18 deg\", \"to-z\": 0");
    isAt(backLeg.to(), 0, 300 + 400 * Math.tan(Math.toRadians(18)), 0);
  }

  @Test
  void aLengthCountsAlongTheLegUpwards() {
    double perRise = Math.sqrt(1 + RAKE * RAKE + SPLAY * SPLAY);
    Placement.Run up = run("\"from\": [0, 0, 0], \"rake\": 14, \"splay\": 8, \"length\": 400");
    assertThat(up.to().z()).isCloseTo(400 / perRise, within(1e-9));
    Placement.Run down = run("\"from\": [0, 0, 0], \"rake\": 14, \"splay\": 8, \"length\": -400");
    isAt(down.to(), -up.to().x(), -up.to().y(), -up.to().z());
  }

  /** On a seat that falls 4 to the back, 10 to the seat is 14 to the floor. */
  @Test
  void measuredFromASlopingSeatTheSlopeIsAdded() {
    Placement.Run leg =
        run("\"from\": [0, 0, 400], \"rake\": 10, \"seat-slope\": \"4 deg\", \"to-z\": 0");
    isAt(leg.to(), 0, -400 * RAKE, 0);
  }

  /** 1 in 5 and 5.1 degrees are told apart: 80 and 35.7 in 400. */
  @Test
  void aSlopeIsNotADecimalOfADegree() {
    isAt(run("\"from\": [0, 0, 400], \"rake\": \"1:5\", \"to-z\": 0").to(), 0, -80, 0);
    isAt(
        run("\"from\": [0, 0, 400], \"rake\": \"5.1 deg\", \"to-z\": 0").to(),
        0,
        -400 * Math.tan(Math.toRadians(5.1)),
        0);
  }

  private static void refused(String placement, String code, String pointer) {
    assertThat(Samples.problems(chair(placement)))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.code()).isEqualTo(code);
              assertThat(p.pointer()).isEqualTo(pointer);
            });
  }

  @Test
  void whatIsMissingOrSaidTwiceIsRefused() {
    refused("\"from\": [0, 0, 0], \"rake\": 14", "missing-value", "/parts/leg");
    refused("\"from\": [0, 0, 0], \"to-z\": 400", "missing-value", "/parts/leg");
    refused("\"rake\": 14, \"to-z\": 400", "missing-value", "/parts/leg");
    refused("\"from\": [0, 0, 0], \"to\": [0, 0, 400], \"rake\": 14", "conflict", "/parts/leg/to");
    refused(
        "\"from\": [0, 0, 0], \"rake\": 14, \"to-z\": 400, \"length\": 400",
        "conflict",
        "/parts/leg/length");
  }

  @Test
  void aLegWithoutLengthOrOneThatLiesIsRefused() {
    refused(
        "\"from\": [0, 0, 400], \"rake\": 14, \"to-z\": 400", "not-positive", "/parts/leg/to-z");
    refused(
        "\"from\": [0, 0, 400], \"rake\": 80.5, \"to-z\": 0", "out-of-range", "/parts/leg/rake");
    refused(
        "\"from\": [0, 0, 400], \"rake\": \"10 mm\", \"to-z\": 0", "wrong-unit", "/parts/leg/rake");
  }
}
