package dryfit.geometry;

import static java.lang.Math.toRadians;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LeanTest {

  @Property
  void directionAndLeanAreTwoWritingsOfOneLine(
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double rake,
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double splay) {
    Lean lean = new Lean(rake, splay);
    Lean up = Lean.of(lean.direction());
    assertThat(up.rake()).isCloseTo(rake, within(1e-9));
    assertThat(up.splay()).isCloseTo(splay, within(1e-9));
    Lean down = Lean.of(lean.direction().times(-700));
    assertThat(down.rake()).isCloseTo(rake, within(1e-9));
    assertThat(down.splay()).isCloseTo(splay, within(1e-9));
  }

  @Property
  void resultantIsTheAngleToThePlumbLine(
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double rake,
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double splay) {
    Lean lean = new Lean(rake, splay);
    assertThat(lean.resultant()).isCloseTo(lean.direction().angleTo(Vec3.UP), within(1e-9));
  }

  @Property
  void legSeenAlongItsSightLineLooksPlumb(
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double rake,
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double splay) {
    Lean lean = new Lean(rake, splay);
    double sight = lean.sightLine();
    Vec3 acrossTheView = new Vec3(Math.cos(sight), -Math.sin(sight), 0);
    assertThat(lean.direction().dot(acrossTheView)).isCloseTo(0, within(1e-9));
    assertThat(sight).isGreaterThan(-Math.PI / 2).isLessThanOrEqualTo(Math.PI / 2);
  }

  @Test
  void footForwardIsPositiveRakeAndTopToTheRightPositiveSplay() {
    Vec3 foot = new Vec3(0, -100, 0);
    Vec3 top = new Vec3(50, 0, 400);
    Lean lean = Lean.of(top.minus(foot));
    assertThat(lean.rake()).isPositive();
    assertThat(lean.splay()).isPositive();
    assertThat(lean.sightLine()).isPositive();
  }

  @Test
  void mirroredLegHasTheSameRakeAndTheOppositeSplay() {
    Vec3 right = new Lean(0.2, -0.1).direction();
    Lean left = Lean.of(right.mirrored());
    assertThat(left.rake()).isCloseTo(0.2, within(1e-12));
    assertThat(left.splay()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void theTwoReadingsOfASightLineAgreeInSignAndAddUpToSquare() {
    Lean lean = new Lean(0.2, -0.1);
    assertThat(lean.sightLine()).isNegative();
    assertThat(lean.sightLineFromSide()).isNegative();
    assertThat(lean.sightLine() + lean.sightLineFromSide()).isCloseTo(-Math.PI / 2, within(1e-12));
  }

  @Test
  void legThatOnlySplaysIsSightedAlongTheSide() {
    assertThat(new Lean(0, 0.1).sightLine()).isEqualTo(Math.PI / 2);
    assertThat(new Lean(0, -0.1).sightLine()).isEqualTo(Math.PI / 2);
    assertThat(new Lean(0, -0.1).sightLineFromSide()).isZero();
  }

  @Test
  void plumbLegNeedsNoSightLine() {
    Lean plumb = Lean.of(new Vec3(1e-9, -1e-9, 400));
    assertThat(plumb.sightLine()).isZero();
    assertThat(plumb.resultant()).isCloseTo(0, within(1e-9));
  }

  @Test
  void leanInAMortiseIsCountedFromTheSquareOfItsFace() {
    // A rail runs into the front leg's back face, dropping 3 degrees and turning in by 7.
    Vec3 rail = new Vec3(-Math.tan(toRadians(7)), -1, -Math.tan(toRadians(3)));
    Lean mortise = Lean.of(rail, Vec3.BACK.negated(), Vec3.UP);
    assertThat(mortise.rake()).isCloseTo(toRadians(-3), within(1e-12));
    assertThat(Math.abs(mortise.splay())).isCloseTo(toRadians(7), within(1e-12));
  }

  @Test
  void levelLineIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Lean.of(Vec3.RIGHT));
    assertThatIllegalArgumentException().isThrownBy(() -> new Lean(Math.PI / 2, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Lean(Double.NaN, 0));
  }

  @Test
  void backAlongUpIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Lean.of(new Vec3(1, 1, 1), Vec3.UP, Vec3.UP));
  }

  @Test
  void twoTurnsAndTwoViewsConvertBothWays() {
    for (double rake : new double[] {-0.4, 0, 0.25}) {
      for (double splay : new double[] {-0.2, 0, 0.3}) {
        Lean lean = new Lean(rake, splay);
        Lean again = Lean.afterTwoTurns(lean.turns().tip(), lean.turns().swing());
        assertThat(again.rake()).isCloseTo(rake, within(1e-12));
        assertThat(again.splay()).isCloseTo(splay, within(1e-12));
      }
    }
  }

  @Test
  void aDirectionAgainstASlopingSeatReadsBackTheSame() {
    Vec3 up = new Vec3(0, 0.07, 1);
    Vec3 way = new Lean(0.2, -0.1).direction(up, Vec3.BACK);
    Lean again = Lean.of(way, up, Vec3.BACK);
    assertThat(again.rake()).isCloseTo(0.2, within(1e-12));
    assertThat(again.splay()).isCloseTo(-0.1, within(1e-12));
    assertThat(way.dot(up)).isPositive();
    Vec3 plumb = new Lean(0.2, -0.1).direction(Vec3.UP, Vec3.BACK);
    assertThat(plumb.distance(new Lean(0.2, -0.1).direction())).isLessThan(1e-12);
  }
}
