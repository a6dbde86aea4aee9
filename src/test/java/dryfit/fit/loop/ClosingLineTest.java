package dryfit.fit.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.fit.Fitted;
import dryfit.fit.PlannedSizes;
import dryfit.fit.loop.Remade.Change;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Frames of which all but one part is made, so that the places its ends have to reach are known.
 * They are worked out as a surveyor closes a traverse of which one side was not measured (sums of
 * latitudes and departures, then length and bearing of the closing line; in any textbook of
 * surveying, from memory), with turns in full; the answer of small motions may differ by what is of
 * second order.
 */
class ClosingLineTest {
  private static final double RULE = 0.01; // mm
  private static final double GAUGE = Math.toRadians(0.01);

  /** A side rail of the trapezoid goes 40 sideways and 300 back between its shoulders. */
  private static final double SIDE = Math.hypot(40, 300);

  private static Remade remade(String json) {
    Chair chair = Fitted.of(json).chair();
    return Remade.of(chair, new PlannedSizes(chair));
  }

  /** All of the trapezoid but its back rail, with side rails that differ from the plan. */
  private static Remade withoutBackRail(double left, double right) {
    return remade(
        Frames.trapezoid(
            String.join(
                ",",
                Frames.part("front-leg", "width", 40),
                Frames.part("back-leg", "width", 40),
                Frames.part("front-rail", "shoulder to shoulder", 360),
                Frames.part("side-rail left", "shoulder to shoulder", SIDE + left),
                Frames.part("side-rail right", "shoulder to shoulder", SIDE + right))));
  }

  private static Change length(Remade remade, String part) {
    List<Change> lengths =
        remade.changes().stream().filter(c -> c.what().equals(Causes.BETWEEN)).toList();
    assertThat(lengths).extracting(Change::part).containsExactly(part);
    return lengths.get(0);
  }

  private static List<Double> angles(Remade remade) {
    return remade.changes().stream().filter(Change::angle).map(c -> Math.abs(c.by())).toList();
  }

  @Test
  void theBackRailClosesTheSeatBetweenTwoShortSideRails() {
    Remade remade = withoutBackRail(-3, -3);
    // Either back leg stands 3 * 40 / SIDE further out, and both as far forward.
    assertThat(length(remade, "back-rail").by()).isCloseTo(2 * 3 * 40 / SIDE, within(RULE));
    assertThat(angles(remade)).isEmpty();
    assertThat(remade.frames()).isEmpty();
  }

  @Test
  void theBackRailClosesTheSeatBesideOneShortSideRail() {
    Remade remade = withoutBackRail(-2, 0);
    double out = 2 * 40 / SIDE;
    double forward = 2 * 300 / SIDE;
    // From leg to leg 280 were planned.
    assertThat(length(remade, "back-rail").by())
        .isCloseTo(Math.hypot(280 + out, forward) - 280, within(RULE));
    // No leg is turned, so both shoulders turn as the rail does; where its tenons are cut aside the
    // rail turns less. Together they take up the whole way.
    List<Double> angles = angles(remade);
    assertThat(angles).hasSize(2);
    assertThat(angles.get(0)).isCloseTo(angles.get(1), within(GAUGE));
    double aside =
        remade.changes().stream()
            .filter(c -> c.what().startsWith("tenon at"))
            .mapToDouble(c -> Math.abs(c.by()))
            .sum();
    assertThat(280 * Math.tan(angles.get(0)) + aside).isCloseTo(forward, within(RULE));
  }

  @Test
  void oneShortSideRailPutsTheSeatOutOfSquare() {
    Remade remade = withoutBackRail(-2, 0);
    double out = 2 * 40 / SIDE;
    double forward = 2 * 300 / SIDE;
    // Pythagoras on both diagonals: 360 and 340 were planned; the left back leg has moved.
    double fromLeft = Math.hypot(360, 340);
    double fromRight = Math.hypot(360 + out, 340 - forward);
    assertThat(remade.frames()).hasSize(1);
    assertThat(remade.frames().get(0).frame()).isEqualTo("seat");
    assertThat(remade.frames().get(0).expected()).isCloseTo(fromLeft - fromRight, within(RULE));
  }

  @Test
  void theDiagonalsOfASeatWithEqualSidesStayEqualWhateverTheirLength() {
    // Ptolemy, Almagest I.10: in a quadrilateral on a circle the product of the diagonals is that
    // of
    // the sides, plus that of front and back; with equal sides both are the root of c c + a b.
    assertThat(Math.hypot(360, 340))
        .isCloseTo(Math.sqrt(40 * 40 + 340 * 340 + 400 * 320), within(1e-9));
    for (double by : new double[] {-3, 2}) {
      assertThat(withoutBackRail(by, by).frames()).isEmpty();
    }
  }

  @Test
  void theStretcherClosesALegThatLeans() {
    String made =
        String.join(
            ",",
            Frames.part("leg", "width", 40),
            Frames.part("rail", "shoulder to shoulder", 400),
            Frames.joint("rail to leg", "right", "lean along", "1 deg"));
    Remade remade = remade(Frames.rectangle(made));
    // The leg turns about its shoulder; 400 lower its face is 400 sin 1 deg away.
    double away = 400 * Math.sin(Math.toRadians(1));
    assertThat(Math.abs(length(remade, "stretcher").by())).isCloseTo(away, within(RULE));
    // The turns round a closed frame come to nothing: both shoulders together take up the degree.
    double turned = angles(remade).stream().mapToDouble(a -> a).sum();
    assertThat(turned).isCloseTo(Math.toRadians(1), within(GAUGE));
    assertThat(remade.conflicts()).isEmpty();
  }
}
