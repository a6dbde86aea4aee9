package dryfit.fit;

import static java.lang.Math.toDegrees;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.measure.BenchAngle;
import org.junit.jupiter.api.Test;

/**
 * A side rail, 60 by 20, that runs 300 back, 30 inward and 40 down between two faces square to the
 * chair, its front end into the front leg; a rod that leans into a board. Values worked by hand.
 */
class JointAnglesTest {
  private static final FitReport RAIL = Fitted.of(LeaningChairs.rail("as-you-face-it"));

  private static JointAngles angles(FitReport report, String label) {
    return JointAngles.of(report.chair(), Fitted.joint(report, label).joint());
  }

  private static ShoulderAngles shoulder(FitReport report, String label) {
    return angles(report, label).shoulder().orElseThrow();
  }

  private static MortiseAngles mortise(FitReport report, String label) {
    return angles(report, label).mortise().orElseThrow();
  }

  private static double degrees(BenchAngle angle) {
    return toDegrees(angle.offSquare());
  }

  /**
   * The rail falls 40 in a level run of hypot(300, 30): a plumb shoulder on its side shows that.
   */
  @Test
  void knifeLinesOfACompoundShoulderSayWhichEdgeIsLong() {
    ShoulderAngles front = shoulder(RAIL, "front, right");
    KnifeLine wide = front.wide().orElseThrow();
    assertThat(wide.face()).isEqualTo("outside");
    assertThat(wide.opposite()).isEqualTo("inside");
    assertThat(wide.longEdge()).isEqualTo("top");
    assertThat(wide.shortEdge()).isEqualTo("bottom");
    KnifeLine narrow = front.narrow().orElseThrow();
    assertThat(narrow.face()).isEqualTo("top");
    assertThat(narrow.longEdge()).isEqualTo("outside");
    assertThat(front.longest()).isEqualTo("top outside");
    // Unit vectors: length (-30, 300, -40)/d, thickness (300, 30, 0)/h, width their product.
    double h = Math.hypot(300, 30);
    double d = Math.hypot(h, 40);
    double onSide = (300 * 40 / (h * d)) / (300 / d);
    double onTop = (30 / h) / (300 / d);
    assertThat(wide.angle().rise()).isCloseTo(onSide, within(1e-9));
    assertThat(narrow.angle().rise()).isCloseTo(onTop, within(1e-9));
    assertThat(wide.longer()).isCloseTo(60 * onSide, within(1e-3));
    assertThat(narrow.longer()).isCloseTo(20 * onTop, within(1e-3));
    assertThat(Math.cos(front.offSquare().offSquare())).isCloseTo(300 / d, within(1e-9));
  }

  @Test
  void theOtherEndOfAParallelogramIsLongAtTheOtherCorner() {
    assertThat(shoulder(RAIL, "back, right").longest()).isEqualTo("bottom inside");
    assertThat(shoulder(RAIL, "back, right").wide().orElseThrow().angle())
        .isEqualTo(shoulder(RAIL, "front, right").wide().orElseThrow().angle());
  }

  /** Outside is outside on both; what changes is the maker's hand on which the long edge lies. */
  @Test
  void theTwinHasTheSameWordsAndTheMirroredSawing() {
    ShoulderAngles right = shoulder(RAIL, "front, right");
    ShoulderAngles left = shoulder(RAIL, "front, left");
    assertThat(left.longest()).isEqualTo(right.longest());
    assertThat(left.narrow().orElseThrow().longEdge()).isEqualTo("outside");
    SawSet rightSaw = right.saw().orElseThrow();
    SawSet leftSaw = left.saw().orElseThrow();
    assertThat(rightSaw.up()).isEqualTo("outside");
    assertThat(leftSaw.up()).isEqualTo("outside");
    // The right-hand rail lies on its inside, its front end away: its top is on the right.
    assertThat(rightSaw.longOnRight()).isTrue();
    assertThat(leftSaw.longOnRight()).isFalse();
    assertThat(rightSaw.longUp()).isTrue();
    assertThat(leftSaw.longUp()).isTrue();
    assertThat(degrees(leftSaw.tilt())).isCloseTo(degrees(rightSaw.tilt()), within(1e-9));
  }

  /** The blade's tilt is asin of the normal's share along the thickness, 30/h. */
  @Test
  void theBladeTiltsLessThanTheLineOnTheEdgeShows() {
    ShoulderAngles front = shoulder(RAIL, "front, right");
    SawSet saw = front.saw().orElseThrow();
    assertThat(saw.mitre()).isEqualTo(front.wide().orElseThrow().angle());
    assertThat(Math.sin(saw.tilt().offSquare())).isCloseTo(30 / Math.hypot(300, 30), within(1e-9));
    assertThat(saw.tilt().offSquare()).isLessThan(front.narrow().orElseThrow().angle().offSquare());
  }

  /** Into the front leg the tenon goes forward, outward and up: 30 and 40 in 300. */
  @Test
  void theMortiseLeansAlongAndAcrossWithItsSense() {
    MortiseAngles m = mortise(RAIL, "front, right");
    assertThat(m.along().towards()).isEqualTo("top");
    assertThat(m.along().angle().rise()).isCloseTo(40 / 300.0, within(1e-9));
    assertThat(m.across().towards()).isEqualTo("outside");
    assertThat(m.across().angle().rise()).isCloseTo(30 / 300.0, within(1e-9));
    assertThat(m.lean().rise()).isCloseTo(50 / 300.0, within(1e-9));
    assertThat(m.sight().from()).isEqualTo("the length of front-leg");
    assertThat(Math.tan(m.sight().angle())).isCloseTo(30 / 40.0, within(1e-9));
    assertThat(m.sight().angle() + m.sight().otherAngle()).isCloseTo(Math.PI / 2, within(1e-12));
    assertThat(m.sight().towards()).isEqualTo("top outside");
    assertThat(mortise(RAIL, "back, right").sight().towards()).isEqualTo("bottom inside");
    assertThat(mortise(RAIL, "front, left").across().towards()).isEqualTo("outside");
  }

  /**
   * A level rod, 30 aside in 300: opening size/cos, the inside cheek sooner by size tan, its tip
   * deeper at the corner by half of size sin.
   */
  @Test
  void aLeanInOneViewOpensByTheCosineAndLeadsByTheTangent() {
    FitReport level =
        Fitted.of(LeaningChairs.rail("as-you-face-it").replace("[400, 360]", "[400, 400]"));
    MortiseAngles m = mortise(level, "front, right");
    double theta = Math.atan(0.1);
    MortiseAngles.Opening o = m.opening().orElseThrow();
    // 8 thick and 0.1 at each cheek; 40 wide and 0.5 at each edge.
    assertThat(o.acrossCheeks()).isCloseTo(8.2 / Math.cos(theta), within(1e-6));
    assertThat(o.acrossEdges()).isCloseTo(41, within(1e-6));
    assertThat(o.corner().isSquare()).isTrue();
    assertThat(o.cheekSooner()).isCloseTo(8.2 * 0.1, within(1e-6));
    assertThat(o.firstCheek()).isEqualTo("inside");
    assertThat(o.firstEdge()).isEmpty();
    assertThat(m.deepEdge().orElseThrow())
        .isCloseTo(22 * Math.cos(theta) + 4.1 * Math.sin(theta), within(1e-6));
  }

  /** A compound lean makes the opening a parallelogram. */
  @Test
  void aCompoundMortiseOpensAskew() {
    MortiseAngles.Opening o = mortise(RAIL, "front, right").opening().orElseThrow();
    assertThat(o.corner().isSquare()).isFalse();
    assertThat(o.firstCheek()).isEqualTo("inside");
    assertThat(o.firstEdge()).isEqualTo("bottom");
  }

  /** From above, with rake 14 and splay 8 as the two views show them. */
  @Test
  void aRoundTenonInALevelBoardHasItsSightLineFromTheForeAftLine() {
    FitReport report = Fitted.of(LeaningChairs.stool("as-you-face-it"));
    MortiseAngles m = mortise(report, "leg, right");
    assertThat(degrees(m.lean())).isCloseTo(15.972, within(5e-4));
    assertThat(m.sight().from()).isEqualTo("the fore-aft line");
    assertThat(toDegrees(m.sight().angle())).isCloseTo(29.409, within(5e-4));
    assertThat(m.sight().towards()).isEqualTo("back inside");
    ShoulderAngles s = shoulder(report, "leg, right");
    assertThat(s.wide()).isEmpty();
    assertThat(s.longest()).isEqualTo("back inside");
  }

  @Test
  void uprightPartsTellWhereTheirFeetStand() {
    RakeAndSplay leg =
        RakeAndSplay.of(Fitted.of(LeaningChairs.stool("as-you-face-it")).chair()).get(0);
    assertThat(leg.floor().rakeFoot()).isEqualTo("front");
    assertThat(leg.floor().splayFoot()).isEqualTo("outside");
    assertThat(leg.floor().foot()).isEqualTo("front outside");
    assertThat(toDegrees(leg.floor().lean().rake())).isCloseTo(14, within(1e-9));
    assertThat(toDegrees(Math.abs(leg.floor().lean().splay()))).isCloseTo(8, within(1e-9));
    assertThat(leg.seat()).isEmpty();
  }

  /** A part of its own has a right and a left, and a maker who sits in the chair swaps them. */
  @Test
  void rightAndLeftFollowTheDocumentsWord() {
    String one = LeaningChairs.stool("as-you-face-it").replace("\"pair\": true,", "");
    assertThat(RakeAndSplay.of(Fitted.of(one).chair()).get(0).floor().splayFoot())
        .isEqualTo("right");
    String seated = one.replace("as-you-face-it", "as-seated");
    assertThat(RakeAndSplay.of(Fitted.of(seated).chair()).get(0).floor().splayFoot())
        .isEqualTo("left");
  }
}
