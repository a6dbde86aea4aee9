package dryfit.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class EndCutTest {
  private static final Vec3 LENGTH = Vec3.RIGHT;
  private static final Vec3 WIDTH = Vec3.BACK;
  private static final Vec3 THICKNESS = Vec3.UP;

  @Property
  void linesOnTheFacesAreWhereThePlaneMeetsThem(
      @ForAll @DoubleRange(min = -2, max = 2) double y,
      @ForAll @DoubleRange(min = -2, max = 2) double z) {
    EndCut cut = new EndCut(new Vec3(1, y, z));
    Vec3 onWide = cut.normal().cross(THICKNESS);
    Vec3 onNarrow = cut.normal().cross(WIDTH);
    assertThat(Math.abs(cut.onWideFace())).isCloseTo(between(onWide, WIDTH), within(1e-9));
    assertThat(Math.abs(cut.onNarrowFace())).isCloseTo(between(onNarrow, THICKNESS), within(1e-9));
    assertThat(cut.offSquare()).isCloseTo(cut.normal().angleTo(LENGTH), within(1e-9));
  }

  /** Turns a blade as the two settings say, and looks whether it lies in the cut. */
  @Property
  void bladeSetToTheTwoAnglesLiesInTheCut(
      @ForAll @DoubleRange(min = -2, max = 2) double y,
      @ForAll @DoubleRange(min = -2, max = 2) double z) {
    EndCut cut = new EndCut(new Vec3(1, y, z));
    double mitre = cut.flat().mitre();
    double tilt = cut.flat().tilt();
    Vec3 lineOnTable = new Vec3(Math.sin(mitre), Math.cos(mitre), 0);
    Vec3 upright = new Vec3(Math.cos(mitre), -Math.sin(mitre), 0);
    Vec3 bladeUp = THICKNESS.times(Math.cos(tilt)).plus(upright.times(Math.sin(tilt)));
    assertThat(cut.normal().dot(lineOnTable)).isCloseTo(0, within(1e-9));
    assertThat(cut.normal().dot(bladeUp)).isCloseTo(0, within(1e-9));
  }

  @Test
  void cutIsPositiveWhereTheEdgeWithTheLargerWidthIsLong() {
    // Right-hand end: the plane falls back as y grows, so wood reaches further at small y.
    EndCut shortAtTop = new EndCut(new Vec3(1, 0.2, 0));
    assertThat(shortAtTop.onWideFace()).isNegative();
    assertThat(shortAtTop.longerPerWidth()).isCloseTo(-0.2, within(1e-12));
    EndCut longAtTop = new EndCut(new Vec3(1, -0.2, 0));
    assertThat(longAtTop.onWideFace()).isPositive();
  }

  @Test
  void parallelEndsHaveOppositeSigns() {
    EndCut far = new EndCut(new Vec3(1, 0.2, -0.1));
    EndCut near = new EndCut(far.normal().negated());
    assertThat(near.onWideFace()).isCloseTo(-far.onWideFace(), within(1e-12));
    assertThat(near.onNarrowFace()).isCloseTo(-far.onNarrowFace(), within(1e-12));
    assertThat(near.flat().tilt()).isCloseTo(-far.flat().tilt(), within(1e-12));
  }

  @Test
  void squareCutNeedsNoSettings() {
    EndCut square = new EndCut(new Vec3(-3, 0, 0));
    assertThat(square.flat()).isEqualTo(new EndCut.SawSetting(0, 0));
    assertThat(square.onEdge()).isEqualTo(new EndCut.SawSetting(0, 0));
    assertThat(square.flat().mitreFromFence()).isEqualTo(Math.PI / 2);
  }

  @Test
  void standingOnEdgeSwapsTheFaces() {
    EndCut cut = new EndCut(new Vec3(1, 0.3, -0.2));
    EndCut rolled = new EndCut(new Vec3(1, -0.2, 0.3));
    assertThat(cut.onEdge()).isEqualTo(rolled.flat());
  }

  @Test
  void tiltIsSmallerThanTheAngleSeenOnTheNarrowFaceInACompoundCut() {
    EndCut cut = new EndCut(new Vec3(1, -0.5, -0.5));
    assertThat(cut.flat().tilt()).isPositive().isLessThan(cut.onNarrowFace());
  }

  @Test
  void planeIsReadInTheMembersFrame() {
    Frame post = Frame.of(new Vec3(10, 20, 30), Vec3.UP, Vec3.RIGHT);
    EndCut top = EndCut.of(Plane.through(new Vec3(0, 0, 400), new Vec3(-0.1, 0, 1)), post);
    assertThat(top.longerPerWidth()).isCloseTo(0.1, within(1e-12));
    assertThat(top.onNarrowFace()).isCloseTo(0, within(1e-12));
  }

  @Test
  void ripIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new EndCut(WIDTH));
  }

  /** The acute angle between two lines. */
  private static double between(Vec3 a, Vec3 b) {
    double angle = a.angleTo(b);
    return Math.min(angle, Math.PI - angle);
  }
}
