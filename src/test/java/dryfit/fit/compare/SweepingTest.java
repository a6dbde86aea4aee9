package dryfit.fit.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Quantity;
import dryfit.document.Reading;
import dryfit.fit.Fitted;
import dryfit.fit.compare.Sweep.Plan;
import dryfit.solid.exact.ExactKernel;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.IntConsumer;
import org.junit.jupiter.api.Test;

/**
 * A square frame whose rails stand 1/4 in back and are 7/8 in thick in legs of 1 3/4 in. Ends of
 * ranges worked out by hand.
 */
class SweepingTest {
  private static final double INCH = 25.4;
  private static final Document FRAME =
      ((Reading.Accepted<Document>)
              DocumentReader.read(
                  "frame.json", Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "1/4", "")))
          .value();

  private static Plan lengths(double from, double to, double step) {
    return new Plan(
        Design.AS_DRAWN, "length", Quantity.Kind.LENGTH, from * INCH, to * INCH, step * INCH);
  }

  private static Sweep sweep(Plan plan, IntConsumer done) {
    return Sweeping.of(FRAME, plan, ExactKernel::new, done);
  }

  @Test
  void findsWhereTwoTenonsBeginToMeet() {
    // The near cheek of either tenon is setback + rail / 2 - tenon / 2 = 1/4 + 7/16 - 3/16 = 1/2
    // in inside the outside face of the leg, and 1 3/4 - 1/2 - 3/8 = 7/8 in from the inside face,
    // where the other comes in.
    Sweep sweep = sweep(lengths(0.5, 1, 0.25), n -> {});
    assertThat(sweep.points()).extracting(Sweep.Point::fits).containsExactly(true, true, false);
    assertThat(sweep.ranges()).hasSize(1);
    Sweep.Range range = sweep.ranges().get(0);
    assertThat(range.from()).isCloseTo(0.5 * INCH, within(1e-9));
    assertThat(range.to()).isBetween(0.875 * INCH - 0.1, 0.875 * INCH + 0.1);
    assertThat(range.below()).isEmpty();
    assertThat(range.above().orElseThrow()).startsWith("tenons-meet");
  }

  @Test
  void aSweepIsTheSameEveryTime() {
    Plan plan = lengths(0.5, 0.75, 0.25);
    assertThat(sweep(plan, n -> {})).isEqualTo(sweep(plan, n -> {}));
  }

  @Test
  void whoeverWatchesTheProgressCanEndIt() {
    IntConsumer stop =
        n -> {
          throw new CancellationException("enough");
        };
    assertThatThrownBy(() -> sweep(lengths(0.25, 0.75, 0.25), stop))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void theEndOfTheRangeIsTriedEvenIfNoStepFallsOnIt() {
    assertThat(Sweeping.values(lengths(0, 1, 0.4))).isEqualTo(4);
    assertThat(Sweeping.values(lengths(0, 1, 0.25))).isEqualTo(5);
    assertThat(Sweeping.values(lengths(1, 1, 0.25))).isEqualTo(1);
  }

  @Test
  void whatIsNoSweepIsRefused() {
    for (Plan plan : List.of(lengths(1, 0, 1), lengths(0, 1, 0), lengths(0, 1, 1e-5))) {
      assertThatThrownBy(() -> sweep(plan, n -> {})).isInstanceOf(IllegalArgumentException.class);
    }
  }
}
