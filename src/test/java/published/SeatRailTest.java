package published;

import static java.lang.Math.abs;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.EndCut;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Trapezoid;
import dryfit.geometry.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Side rails of seats that narrow to the back, in inches as their makers gave them. */
class SeatRailTest {

  /**
   * Seat of a published rebuild, 18 1/2 in front and 13 1/2 in back between the legs
   * (tinyshopww.blogspot.com/2016/11/nanas-dining-chair-rebuild-part-4.html), depth not given;
   * second row the stock sizes of chair handbooks. Angles and lengths worked out by a separate
   * script.
   */
  @ParameterizedTest
  @CsvSource({
    "20,16,17,6.710,17.117",
    "18.5,13.5,15,9.46,15.207",
    "18.5,13.5,16,8.88,16.194",
    "18.5,13.5,17,8.37,17.183",
    "22,16.25,16,10.19,16.256"
  })
  void shouldersAndLengthFollowFromWidthsAndDepth(
      double front, double back, double depth, double angle, double length) {
    Trapezoid seat = new Trapezoid(front, back, depth);
    assertThat(toDegrees(seat.angle())).isCloseTo(angle, within(0.005));
    assertThat(seat.side()).isCloseTo(length, within(0.0006));
  }

  /** Worked by hand: hypot(17, 18) = sqrt(613). */
  @Test
  void diagonalsOfAStockSeat() {
    assertThat(new Trapezoid(20, 16, 17).diagonal()).isCloseTo(24.759, within(0.0005));
  }

  /** Worked out by a separate script: 1/8 in between the diagonals is 0.0860 in, 0.290 degree. */
  @Test
  void unequalDiagonalsTellHowFarTheSeatIsRacked() {
    double shift = new Trapezoid(20, 16, 17).shift(0.125);
    assertThat(shift).isCloseTo(0.0860, within(0.00005));
    assertThat(toDegrees(Math.atan(shift / 17))).isCloseTo(0.290, within(0.0005));
  }

  /**
   * A published chair saws both ends of its side rails at 85.5 degrees, for sides 4.5 degrees off
   * square (issuhub.com/view/index/5674, page 57): one long parallelogram.
   */
  @Test
  void bothShouldersAreSawnAlikeAndParallel() {
    double halfDifference = 16 * Math.tan(toRadians(4.5));
    Trapezoid seat = new Trapezoid(16 + 2 * halfDifference, 16, 16);
    assertThat(toDegrees(seat.frontCorner())).isCloseTo(85.5, within(1e-9));

    Frame rail = Frame.of(Vec3.ZERO, new Vec3(-halfDifference, 16, 0), Vec3.UP);
    EndCut atBack = EndCut.of(Plane.through(Vec3.ZERO, Vec3.BACK), rail);
    EndCut atFront = EndCut.of(Plane.through(Vec3.ZERO, Vec3.BACK.negated()), rail);
    assertThat(abs(toDegrees(atBack.onNarrowFace()))).isCloseTo(4.5, within(1e-9));
    assertThat(atFront.onNarrowFace()).isCloseTo(-atBack.onNarrowFace(), within(1e-12));
    assertThat(atBack.onWideFace()).isCloseTo(0, within(1e-12));
  }

  /**
   * A rail that goes 2 out and 1 up; its maker measured 6.5 and 3.25
   * (oregonwoodworker.blogspot.com/2016/03/fdr-chair-dangled-tenons.html). Run 17.5 and the third
   * decimals worked out by a separate script.
   */
  @Test
  void compoundRailReadsOtherAnglesOnItsFacesThanInTheViews() {
    Vec3 along = new Vec3(2, 17.5, 1);
    Frame rail = Frame.of(Vec3.ZERO, along, Vec3.UP);
    EndCut shoulder = EndCut.of(Plane.through(Vec3.ZERO, Vec3.BACK), rail);
    assertThat(abs(toDegrees(shoulder.onWideFace()))).isCloseTo(3.249, within(0.0005));
    assertThat(abs(toDegrees(shoulder.onNarrowFace()))).isCloseTo(6.530, within(0.0005));
    assertThat(toDegrees(shoulder.offSquare())).isCloseTo(7.282, within(0.0005));
  }

  /** Worked by hand: 7/8 tan 8.88 = 0.137; a leg canted 3 moves a 3 in shoulder by 0.157. */
  @Test
  void longAndShortShoulderDifferByTheRailTimesTheSlope() {
    double theta = toRadians(8.88);
    EndCut plan = new EndCut(new Vec3(Math.cos(theta), 0, -Math.sin(theta)));
    assertThat(0.875 * plan.longerPerThickness()).isCloseTo(0.137, within(0.0005));
    double cant = toRadians(3);
    EndCut canted = new EndCut(new Vec3(Math.cos(cant), -Math.sin(cant), 0));
    assertThat(3 * canted.longerPerWidth()).isCloseTo(0.157, within(0.0005));
  }

  /**
   * The front end of an arm against a leg face that leans 9 about a level line turned 4 in plan.
   * Mitre 4 and tilt 9 are exact by construction; were the 9 read in the side view, the tilt would
   * be atan(cos 4 tan 9) = 8.98, worked by hand.
   */
  @Test
  void leaningTurnedFaceSetsMitreAndTiltDirectly() {
    double turn = toRadians(4);
    double lean = toRadians(9);
    Vec3 level = new Vec3(Math.cos(turn), Math.sin(turn), 0);
    EndCut arm = new EndCut(level.times(Math.cos(lean)).plus(Vec3.UP.times(Math.sin(lean))));
    assertThat(abs(toDegrees(arm.flat().mitre()))).isCloseTo(4, within(1e-9));
    assertThat(abs(toDegrees(arm.flat().tilt()))).isCloseTo(9, within(1e-9));

    EndCut fromSideView =
        new EndCut(new Vec3(Math.cos(turn), Math.sin(turn), Math.cos(turn) * Math.tan(lean)));
    assertThat(abs(toDegrees(fromSideView.onNarrowFace()))).isCloseTo(9, within(1e-9));
    assertThat(abs(toDegrees(fromSideView.flat().tilt()))).isCloseTo(8.98, within(0.005));
  }
}
