package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.PartPlan.Path;
import dryfit.document.PartPlan.Spot2;
import dryfit.document.PartPlan.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

class WideningTest {
  private static final List<Spot2> TAPER = List.of(new Spot2(0, 30), new Spot2(100, 50));

  @Test
  void movesAStraightEdgeByTheWidthAndBendsItAtTheTable() {
    Path edge = new Path(new Spot2(5, -50), List.of(new Step.Line(new Spot2(5, 200))), "/e");
    Path other = new Widening(TAPER, 1).across(edge, "/w");
    assertThat(other)
        .isEqualTo(
            new Path(
                new Spot2(35, -50),
                List.of(
                    new Step.Line(new Spot2(35, 0)),
                    new Step.Line(new Spot2(55, 100)),
                    new Step.Line(new Spot2(55, 200))),
                "/w"));
  }

  @Test
  void movesTheOtherWayWhenTheSecondEdgeIsTheOneDrawn() {
    Path edge = new Path(new Spot2(0, 10), List.of(new Step.Line(new Spot2(100, 10))), "/e");
    Path other = new Widening(TAPER, -1).across(edge, "/w");
    assertThat(other.start()).isEqualTo(new Spot2(0, -20));
    assertThat(other.steps()).containsExactly(new Step.Line(new Spot2(100, -40)));
  }

  @Test
  void runsDownAnEdgeThatIsDrawnDownwards() {
    Path edge = new Path(new Spot2(0, 200), List.of(new Step.Line(new Spot2(0, -50))), "/e");
    Path other = new Widening(TAPER, 1).across(edge, "/w");
    assertThat(other.steps())
        .containsExactly(
            new Step.Line(new Spot2(50, 100)),
            new Step.Line(new Spot2(30, 0)),
            new Step.Line(new Spot2(30, -50)));
  }

  @Test
  void isAsWideAsTheTableSaysWhereTheTableSaysIt() {
    List<Spot2> through = List.of(new Spot2(0, 260), new Spot2(0, 470), new Spot2(62, 960));
    Path edge = new Path(new Spot2(-36, 0), List.of(new Step.Curve(through)), "/e");
    List<Spot2> widths = List.of(new Spot2(0, 34), new Spot2(700, 42), new Spot2(960, 26));
    Step.Curve back = (Step.Curve) new Widening(widths, 1).across(edge, "/w").steps().get(0);
    Spot2 station = back.through().get(2);
    assertThat(station.v()).isCloseTo(700, within(1e-9));
    Batten front =
        new Batten(List.of(edge.start(), through.get(0), through.get(1), through.get(2)));
    assertThat(station.u() - front.pointWhere(2, 700, false).u()).isCloseTo(42, within(1e-9));
  }

  @Test
  void keepsTheBowOfAnArc() {
    Path edge = new Path(new Spot2(0, 0), List.of(new Step.Arc(new Spot2(100, 0), 8)), "/e");
    Path other = new Widening(List.of(new Spot2(0, 20)), 1).across(edge, "/w");
    assertThat(other.steps())
        .containsExactly(new Step.Curve(List.of(new Spot2(50, 28), new Spot2(100, 20))));
  }

  /** A natural cubic through (0,0), (1,1), (2,0) bends by -3 at the middle: solved by hand. */
  @Test
  void theBattenIsTheNaturalCubicSpline() {
    // Chords are equal, of length √2, so the spline in v is that of equal steps, scaled.
    Batten batten = new Batten(List.of(new Spot2(0, 0), new Spot2(1, 1), new Spot2(2, 0)));
    assertThat(batten.point(0, 0.5).u()).isCloseTo(0.5, within(1e-12));
    assertThat(batten.point(0, 0.5).v()).isCloseTo(11.0 / 16, within(1e-12));
    assertThat(batten.point(1, 0).v()).isEqualTo(1);
  }

  @Test
  void theBattenIsStraightThroughPointsInARow() {
    Batten batten = new Batten(List.of(new Spot2(0, 0), new Spot2(3, 6), new Spot2(4, 8)));
    assertThat(batten.pointWhere(0, 2, false).u()).isCloseTo(1, within(1e-12));
  }
}
