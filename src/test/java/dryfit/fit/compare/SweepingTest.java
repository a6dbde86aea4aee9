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
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
        Design.AS_DRAWN,
        "length",
        Quantity.Kind.LENGTH,
        from * INCH,
        to * INCH,
        step * INCH,
        Double.NaN,
        Double.NaN);
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

  private static Sweep millimetres(
      String json, String dimension, double from, double to, double step) {
    Document document =
        ((Reading.Accepted<Document>) DocumentReader.read("rails.json", json)).value();
    Plan plan =
        new Plan(
            Design.AS_DRAWN,
            dimension,
            Quantity.Kind.LENGTH,
            from,
            to,
            step,
            Double.NaN,
            Double.NaN);
    return Sweeping.of(document, plan, ExactKernel::new, n -> {});
  }

  /** Two legs 40 mm square and, between them, what is given. */
  private static String legs(String dimension, String rails, String joints) {
    return """
        { "format": "dryfit-chair/1", "name": "Rails", "about": "Demo data, invented.", "unit": "mm",
          "timber": "ash-white", "fit": { "bottom": 0, "least-wall": 0 },
          "dimensions": { DIMENSION },
          "parts": {
            "leg": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [220, 0, 0], "to": [220, 0, 500] },
            RAILS },
          "joints": { JOINTS } }
        """
        .replace("DIMENSION", dimension)
        .replace("RAILS", rails)
        .replace("JOINTS", joints);
  }

  private static void fitsOnlyWithin(Sweep sweep, double from, double to) {
    assertThat(sweep.points()).noneMatch(Sweep.Point::fits);
    assertThat(sweep.ranges()).hasSize(1);
    Sweep.Range range = sweep.ranges().get(0);
    double found = Sweeping.resolution(Quantity.Kind.LENGTH);
    assertThat(range.from()).isBetween(from - 1e-3, from + found);
    assertThat(range.to()).isBetween(to - found, to + 1e-3);
    assertThat(range.below().orElseThrow()).startsWith("tenon-outside");
    assertThat(range.above().orElseThrow()).startsWith("tenon-outside");
  }

  @Test
  void findsARangeBetweenTwoStepsWhereOneThingEndsBeforeAnotherBegins() {
    // Tenons of length and 79 - length in legs of 40: neither comes through from 39 to 40.
    String json =
        legs(
            "\"length\": 20",
            """
            "rail": { "form": "straight", "section": [60, 22], "between": ["leg right", "leg left"],
              "top": 450 },
            "stretcher": { "form": "straight", "section": [60, 22],
              "between": ["leg right", "leg left"], "top": 150 }""",
            """
            "rail to leg": { "tenon": "rail both", "into": "leg", "thickness": 8, "width": 40,
              "length": "length" },
            "stretcher to leg": { "tenon": "stretcher both", "into": "leg", "thickness": 8,
              "width": 40, "length": "79 - length" }""");
    fitsOnlyWithin(millimetres(json, "length", 20, 56, 12), 39, 40);
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 10})
  void findsARangeBetweenTwoStepsThatHaveTheSameThingAgainstThem(double step) {
    // A tenon of 38 in a rail of 39, set back: from -0.5 to 1.5 it is within the leg's 40. Below it
    // comes out of the one face, above out of the other, which is one finding.
    String json =
        legs(
            "\"setback\": 0",
            """
            "rail": { "form": "straight", "section": [60, 39], "between": ["leg right", "leg left"],
              "top": 450, "outside": "setback" }""",
            """
            "rail to leg": { "tenon": "rail both", "into": "leg", "thickness": 38, "width": 40,
              "length": 20 }""");
    fitsOnlyWithin(millimetres(json, "setback", -3, 7, step), -0.5, 1.5);
  }

  @Test
  void doesNotHalveAgainAndAgainWhereNothingCanFit() {
    AtomicInteger tried = new AtomicInteger();
    // The tenons overlap more and more from 7/8 in on.
    Sweep sweep = sweep(lengths(1, 1.3, 0.1), tried::set);
    assertThat(sweep.ranges()).isEmpty();
    assertThat(tried.get()).isEqualTo(4);
  }
}
