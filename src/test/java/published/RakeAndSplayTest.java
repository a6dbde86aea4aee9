package published;

import static java.lang.Math.atan;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.Lean;
import dryfit.geometry.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Resultant angles and sight lines against published figures of chair makers and roof framers. */
class RakeAndSplayTest {

  /**
   * The relations tan R = hypot(tan rake, tan splay) and tan sight = tan splay / tan rake are
   * derived, with rake in the side view, splay in the front view and the seat level, at
   * tinyshopww.blogspot.com/2020/05/resultant-and-sightline-angle-calculator.html and
   * blackdogswoodshop.blogspot.com/2020/02. The rows were worked out from those relations by a
   * separate script and rounded to 0.001 degree; they are not read off a printed table.
   */
  @ParameterizedTest
  @CsvSource({
    "5,5,7.053,45", "10,5,11.136,26.389", "10,10,14.002,45", "12,8,14.296,33.472",
    "14,11,17.544,37.941", "15,10,17.784,33.347", "20,10,22.020,25.848", "25,15,28.272,29.882",
    "30,15,32.477,24.896", "20,20,27.236,45", "45,45,54.736,45", "0,10,10,90",
    "14,8,15.972,29.409", "20,15,24.32,36.36", "10,8,12.71,38.56"
  })
  void resultantAndSightLineFollowFromRakeAndSplay(
      double rake, double splay, double resultant, double sight) {
    Lean lean = new Lean(toRadians(rake), toRadians(splay));
    assertThat(toDegrees(lean.resultant())).isCloseTo(resultant, within(0.006));
    assertThat(toDegrees(lean.sightLine())).isCloseTo(sight, within(0.006));
    assertThat(toDegrees(lean.sightLineFromSide())).isCloseTo(90 - sight, within(0.006));
  }

  /**
   * Common practice, no source: the run of a hip on a square building is 16.97 for every 12 of the
   * common rafter (so in Griffith, Carpentry, chapter on hip and valley rafters, at
   * chestofbooks.com), which fixes the slope of the hip: 12, 8 and 6 in 16.97. A hip is a leg whose
   * two views show the two roof slopes.
   */
  @ParameterizedTest
  @CsvSource({"12,35.264", "8,25.239", "6,19.471"})
  void hipOverEqualSlopesHasTheFramingSquaresAngle(double rise, double slopeOfHip) {
    Lean hip = Lean.of(new Vec3(12, 12, rise));
    assertThat(90 - toDegrees(hip.resultant())).isCloseTo(slopeOfHip, within(0.001));
    assertThat(toDegrees(hip.sightLine())).isCloseTo(45, within(1e-9));
    assertThat(toDegrees(atan(rise / 16.97))).isCloseTo(slopeOfHip, within(0.003));
  }

  /**
   * Printed worked examples of roofs whose two slopes differ: the slope of the hip or valley and
   * the angle of its line in plan. Row 1: geocities.ws/web_sketches/framing_math/irregular_roof;
   * row 2: .../framing_math/irregular_valley_roof; row 3: oocities.org/web_sketches/
   * hip_valley_dimensioning (which prints no plan angle; atan(13/10) by hand).
   */
  @ParameterizedTest
  @CsvSource({"8,14,30.063493,60.255119", "12,8,29.01714,33.69007", "10,13,33.44556,52.431408"})
  void hipOverUnequalSlopesHasThePrintedAngles(
      double risePer12Back, double risePer12Right, double slopeOfHip, double plan) {
    // Seen from the side the line rises as the one roof does, seen from the front as the other.
    Lean hip = new Lean(atan(12 / risePer12Back), atan(12 / risePer12Right));
    assertThat(90 - toDegrees(hip.resultant())).isCloseTo(slopeOfHip, within(1e-5));
    assertThat(toDegrees(hip.sightLineFromSide())).isCloseTo(plan, within(1e-5));
  }

  /**
   * Wood Handbook FPL-GTR-190, section on slope of grain: slopes of 1 in 12 and (the 18 from
   * memory) 1 in 18 on faces at right angles combine to "a slope of 1 in 10".
   */
  @Test
  void slopesOnTwoFacesCombineAsTheWoodHandbookSays() {
    Lean grain = Lean.of(new Vec3(1.0 / 18, 1.0 / 12, 1));
    assertThat(1 / Math.tan(grain.resultant())).isCloseTo(10, within(0.05));
  }

  /**
   * A slope of 5:1 read as 5.1 degrees spoiled a shoulder by 0.166 in over 1.5 in; the plan meant
   * 11.31 degrees (woodworkingmasterclasses.com, floor lamp, episode 2; sizes worked out by hand).
   */
  @Test
  void aSlopeOfOneInFiveIsElevenDegreesAndAThird() {
    Lean slope = Lean.of(new Vec3(0, 1, 5));
    assertThat(toDegrees(slope.rake())).isCloseTo(11.310, within(0.0005));
    double miss = 1.5 * (Math.tan(slope.rake()) - Math.tan(toRadians(5.1)));
    assertThat(miss).isCloseTo(0.166, within(0.0005));
  }

  /** Worked by hand: cos R = cos 14 cos 8 for turns, tan R = hypot(tan 14, tan 8) for views. */
  @Test
  void twoTurnsLeanFurtherThanTwoViewsOfTheSameAngles() {
    Lean turned = Lean.afterTwoTurns(toRadians(14), toRadians(8));
    Lean drawn = new Lean(toRadians(14), toRadians(8));
    assertThat(toDegrees(turned.resultant())).isCloseTo(16.08, within(0.005));
    assertThat(toDegrees(drawn.resultant())).isCloseTo(15.97, within(0.005));
  }

  /** Worked by hand: tan rake = tan 14 / cos 8. */
  @Test
  void theSideViewOfTwoTurnsShowsMoreRakeThanWasSet() {
    Lean turned = Lean.afterTwoTurns(toRadians(14), toRadians(8));
    assertThat(toDegrees(turned.rake())).isCloseTo(14.13, within(0.005));
    assertThat(toDegrees(turned.splay())).isCloseTo(8, within(1e-9));
  }

  /** Common practice, no source: on a seat that falls 4 to the back, 14 forward is 10, 18 is 22. */
  @Test
  void aSlopingSeatTakesItsSlopeOffOneLegAndAddsItToTheOther() {
    double slope = toRadians(4);
    Vec3 seatUp = new Vec3(0, Math.sin(slope), Math.cos(slope));
    Vec3 frontLeg = new Lean(toRadians(14), 0).direction();
    Vec3 backLeg = new Lean(toRadians(-18), 0).direction();
    assertThat(toDegrees(Lean.of(frontLeg, seatUp, Vec3.BACK).rake())).isCloseTo(10, within(1e-9));
    assertThat(toDegrees(Lean.of(backLeg, seatUp, Vec3.BACK).rake())).isCloseTo(-22, within(1e-9));
  }
}
