package published;

import static java.lang.Math.PI;
import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.geometry.EndCut;
import dryfit.geometry.EndCut.SawSetting;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Saw settings of a many-sided box with sloping sides, from solid geometry, against the chart of
 * compound angle settings printed in table-saw owner's manuals (seen in two independent copies, at
 * manualsdump.com/en/manuals/craftsman-315.21212/276873/24 and
 * esmanual.top/manual/109885/Ryobi-Tss121.html?page=32). The chart is rounded to 0.01 degree or a
 * little worse; no formula for mitre or tilt is used here, only planes.
 */
class HopperMitreTest {

  @ParameterizedTest
  @CsvSource({
    "4,0,45,0",
    "4,5,44.89,3.53",
    "4,10,44.56,7.05",
    "4,15,44.01,10.55",
    "4,20,43.22,14.00",
    "4,25,42.19,17.39",
    "4,30,40.89,20.70",
    "4,35,39.32,23.93",
    "4,40,37.45,27.03",
    "4,45,35.26,30.00",
    "4,50,32.73,32.80",
    "4,55,29.84,35.40",
    "4,60,26.57,37.76",
    "4,65,22.91,39.86",
    "4,70,18.88,41.64",
    "4,75,14.51,43.08",
    "4,90,0,45",
    "5,5,35.90,2.94",
    "5,10,35.58,5.86",
    "5,15,35.06,8.75",
    "5,20,34.32,11.60",
    "5,25,33.36,14.38",
    "5,30,32.18,17.09",
    "5,35,30.76,19.70",
    "5,40,29.10,22.20",
    "5,45,27.19,24.56",
    "5,50,25.03,26.76",
    "6,5,29.91,2.50",
    "6,30,26.57,14.48",
    "6,45,22.21,20.70",
    "7,30,22.64,12.53",
    "7,45,18.80,17.87",
    "8,30,19.73,11.03",
    "8,45,16.32,15.70",
    "9,30,17.50,9.85",
    "9,45,14.43,14.00",
    "10,30,15.72,8.89",
    "10,45,12.94,12.62"
  })
  void settingsAgreeWithThePrintedChart(int sides, double slope, double mitre, double tilt) {
    SawSetting saw = cutBetween(sides, toRadians(slope)).flat();
    assertThat(Math.abs(toDegrees(saw.mitre()))).isCloseTo(mitre, within(0.01));
    assertThat(Math.abs(toDegrees(saw.tilt()))).isCloseTo(tilt, within(0.01));
  }

  /**
   * Gauges that show 90 at square. 45 degrees, four sides: common practice, no source. 30 degrees,
   * four sides: 49.1074 printed in Popular Woodworking no. 119, December 2000, page 46, which is
   * 0.0008 off the exact angle.
   */
  @ParameterizedTest
  @CsvSource({"45,54.74,0.005", "30,49.1074,0.001"})
  void gaugeOfTheOtherConventionShowsTheComplement(double slope, double gauge, double off) {
    SawSetting saw = cutBetween(4, toRadians(slope)).flat();
    assertThat(toDegrees(saw.mitreFromFence())).isCloseTo(gauge, within(off));
  }

  /** An upper edge that flares out is the long one, and so is the outer face at a mitre. */
  @Test
  void flaringSideIsLongAtItsUpperEdgeAndOnItsOuterFace() {
    SawSetting saw = cutBetween(4, toRadians(60)).flat();
    assertThat(saw.mitre()).isPositive();
    assertThat(saw.tilt()).isPositive();
  }

  /**
   * Moulding sprung off the wall, laid flat on the saw: figures printed at
   * geocities.ws/web_sketches (square cut fascia, crown examples; same page mirrored under
   * geocities.ws/xpf51); 45 spring is the square hopper again.
   */
  @ParameterizedTest
  @CsvSource({
    "38,135,14.30638,17.55124,0.00001",
    "38,90,31.6190,33.8629,0.0001",
    "45,90,35.264,30,0.0005"
  })
  void sprungMouldingHasThePrintedSettings(
      double spring, double corner, double mitre, double tilt, double off) {
    double s = toRadians(spring);
    double half = toRadians(corner) / 2;
    Frame moulding = Frame.of(Vec3.ZERO, Vec3.RIGHT, new Vec3(0, sin(s), cos(s)));
    Plane bisector = Plane.through(Vec3.ZERO, new Vec3(sin(half), -cos(half), 0));
    SawSetting saw = EndCut.of(bisector, moulding).flat();
    assertThat(Math.abs(toDegrees(saw.mitre()))).isCloseTo(mitre, within(off));
    assertThat(Math.abs(toDegrees(saw.tilt()))).isCloseTo(tilt, within(off));
  }

  /**
   * The cut at the right-hand end of one side of a hopper that flares upwards, each side at {@code
   * slope} to the level. Both sides lie against the plane that halves the corner between them. A
   * level hopper has no corner left to halve, but its mitres still stand plumb on the same lines.
   */
  private static EndCut cutBetween(int sides, double slope) {
    double turn = 2 * PI / sides;
    Vec3 outward = new Vec3(1, 0, 0);
    Vec3 nextOutward = new Vec3(cos(turn), sin(turn), 0);
    Vec3 face = outward.times(sin(slope)).minus(Vec3.UP.times(cos(slope)));
    Vec3 nextFace = nextOutward.times(sin(slope)).minus(Vec3.UP.times(cos(slope)));
    Vec3 halving = slope > 0 ? nextFace.minus(face) : nextOutward.minus(outward);
    // Length along the side, width up its slope; thickness then points out of the box.
    Vec3 width = outward.times(cos(slope)).plus(Vec3.UP.times(sin(slope)));
    Frame side = Frame.of(Vec3.ZERO, Vec3.BACK, width);
    assertThat(side.z().dot(face)).isCloseTo(1, within(1e-12));
    return EndCut.of(Plane.through(Vec3.ZERO, halving), side);
  }
}
