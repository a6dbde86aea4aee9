package dryfit.fit.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.fit.Fitted;
import dryfit.fit.PlannedSizes;
import dryfit.fit.loop.Remade.Change;
import dryfit.fit.loop.Remade.Cure;
import org.junit.jupiter.api.Test;

/** A chair closed again around its made parts, in frames that are worked out by hand. */
class RemadeTest {
  private static final double RULE = 0.05; // what is told is told to 0.1 mm

  private static Remade remade(String json) {
    Chair chair = Fitted.of(json).chair();
    return Remade.of(chair, new PlannedSizes(chair));
  }

  private static Change change(Remade remade, String part) {
    return remade.changes().stream()
        .filter(c -> c.part().equals(part))
        .findFirst()
        .orElseThrow(() -> new AssertionError(remade.toString()));
  }

  @Test
  void withNothingMeasuredNothingIsMadeAndNothingChanges() {
    Remade remade = remade(Frames.rectangle(""));
    assertThat(remade.made()).isEmpty();
    assertThat(remade.changes()).isEmpty();
    assertThat(remade.conflicts()).isEmpty();
    assertThat(remade.frames()).isEmpty();
  }

  @Test
  void aStretcherIsMadeAsMuchShorterAsTheRailIs() {
    Remade remade = remade(Frames.rectangle(Frames.part("rail", "shoulder to shoulder", 399)));
    assertThat(remade.made()).containsExactly("rail");
    assertThat(remade.changes()).hasSize(1);
    Change stretcher = change(remade, "stretcher");
    assertThat(stretcher.what()).isEqualTo("shoulder to shoulder");
    assertThat(stretcher.planned()).hasValueCloseTo(400.0, within(1e-3));
    assertThat(stretcher.by()).isCloseTo(-1, within(RULE));
    assertThat(stretcher.because()).hasSize(1);
    assertThat(stretcher.because().get(0).cause().subject()).isEqualTo("rail");
  }

  @Test
  void thinnerLegsStandNearerAndNoLaterPartChanges() {
    String legs =
        Frames.part("leg left", "width", 38) + "," + Frames.part("leg right", "width", 38);
    Remade remade = remade(Frames.rectangle(legs));
    assertThat(remade.changes()).isEmpty();
    assertThat(remade.conflicts()).isEmpty();
  }

  @Test
  void theTwinOfAMadeRailIsMadeLikeIt() {
    Remade remade =
        remade(Frames.trapezoid(Frames.part("side-rail left", "shoulder to shoulder", 301.65)));
    // hypot(40, 300) is 302.65: the left one is 1.00 short.
    Change right = change(remade, "side-rail right");
    assertThat(right.planned()).hasValueCloseTo(Math.hypot(40, 300), within(1e-2));
    assertThat(right.by()).isCloseTo(-1, within(RULE));
  }

  @Test
  void shorterSideRailsOfATrapezoidAskForALongerBackRail() {
    double short1 = Math.hypot(40, 300) - 3;
    String both =
        Frames.part("side-rail left", "shoulder to shoulder", short1)
            + ","
            + Frames.part("side-rail right", "shoulder to shoulder", short1);
    Remade remade = remade(Frames.trapezoid(both));
    // Each back leg stays 3 sin(7.595 deg) = 0.396 further out; the front or the back rail gives.
    double more = change(remade, "back-rail").by() - change(remade, "front-rail").by();
    assertThat(more).isCloseTo(2 * 3 * 40 / Math.hypot(40, 300), within(RULE));
  }

  @Test
  void aBackRailIsMadeAsMuchLongerAsTheFrontRailIs() {
    // The side rails keep their lengths and their angles, so the legs stand 1 mm further apart.
    Remade remade =
        remade(Frames.trapezoid(Frames.part("front-rail", "shoulder to shoulder", 361)));
    assertThat(change(remade, "back-rail").by()).isCloseTo(1, within(0.005));
  }

  @Test
  void theTwinOfAThinLegCountsAsThinAsItIsAdvisedToBeMade() {
    Remade one = remade(Frames.trapezoid(Frames.part("front-leg left", "width", 37)));
    Remade both =
        remade(
            Frames.trapezoid(
                Frames.part("front-leg left", "width", 37)
                    + ","
                    + Frames.part("front-leg right", "width", 37)));
    for (Change c : both.changes()) {
      assertThat(one.changes())
          .anySatisfy(
              o -> {
                assertThat(o.part() + o.what()).isEqualTo(c.part() + c.what());
                assertThat(o.by()).isCloseTo(c.by(), within(0.01));
              });
    }
    assertThat(both.changes()).isNotEmpty();
    Change leg = change(one, "front-leg right");
    assertThat(leg.what()).isEqualTo("width");
    assertThat(leg.planned()).hasValueCloseTo(40.0, within(1e-9));
    assertThat(leg.by()).as("the twin has to be made as thin").isCloseTo(-3, within(1e-9));
    assertThat(leg.because()).hasSize(1);
    assertThat(leg.because().get(0).cause().subject()).isEqualTo("front-leg left");
    assertThat(both.changes()).noneMatch(c -> c.part().equals("front-leg right"));
  }

  @Test
  void aFrameWithBothDiagonalsLongIsLargerNotRacked() {
    Chair chair = Fitted.of(Frames.trapezoid("")).chair();
    PlannedSizes plan = new PlannedSizes(chair);
    double planned = plan.diagonals().get(0).length();
    // Level, middle of leg to middle of leg: 360 across on 340.
    assertThat(planned).isCloseTo(Math.hypot(360, 340), within(0.01));
    String json = "{\"frame\": \"seat\", \"what\": \"diagonal from the %s\", \"value\": %s}";
    Remade.Square seat =
        remade(
                Frames.trapezoid(
                    json.formatted("left", planned + 2)
                        + ","
                        + json.formatted("right", planned + 2)))
            .frames()
            .get(0);
    assertThat(seat.racked()).hasValueCloseTo(0.0, within(1e-6));
    assertThat(seat.larger()).hasValueCloseTo(2.0, within(1e-6));
    assertThat(seat.across()).isCloseTo(2 * planned / 360, within(1e-3));
    assertThat(seat.along()).isCloseTo(2 * planned / 340, within(1e-3));
  }

  @Test
  void madePartsThatDoNotCloseAreAtOddsAndTheLongerOneCanBeTrimmed() {
    String legs = Frames.part("leg", "width", 40);
    Remade remade =
        remade(
            Frames.rectangle(
                legs
                    + ","
                    + Frames.part("rail", "shoulder to shoulder", 410)
                    + ","
                    + Frames.part("stretcher", "shoulder to shoulder", 400)));
    assertThat(remade.changes()).isEmpty();
    assertThat(remade.conflicts()).isNotEmpty();
    Cure trim = remade.cures().get(0);
    assertThat(trim.parts()).containsExactly("rail");
    assertThat(trim.trims()).isTrue();
    assertThat(trim.by()).isCloseTo(-10, within(RULE));
    // The other way is a new stretcher, for nothing makes the old one longer.
    Cure anew = remade.cures().get(1);
    assertThat(anew.parts()).containsExactly("stretcher");
    assertThat(anew.by()).isCloseTo(10, within(RULE));
  }

  @Test
  void aLittleTooLongOpensTheShouldersLessThanAnyoneSees() {
    // 1 mm over 400: 0.14 deg, and 0.08 mm at the corners of a rail 60 high.
    String legs = Frames.part("leg", "width", 40);
    Remade remade =
        remade(
            Frames.rectangle(
                legs
                    + ","
                    + Frames.part("rail", "shoulder to shoulder", 401)
                    + ","
                    + Frames.part("stretcher", "shoulder to shoulder", 400)));
    assertThat(remade.conflicts()).isEmpty();
  }

  @Test
  void aMortiseThatLeansIsMetByTheShouldersOfWhatIsStillToBeMade() {
    Remade remade =
        remade(
            Frames.rectangle(
                Frames.joint("rail to leg", "right", "lean along", "1 deg")
                    + ","
                    + Frames.part("rail", "thickness", 22)));
    // The angles round a closed frame come to nothing: what is new takes up the whole degree, in
    // several places, and what is less than 0.05 deg is not told.
    double turned =
        remade.changes().stream().filter(Change::angle).mapToDouble(c -> Math.abs(c.by())).sum();
    assertThat(Math.toDegrees(turned)).isBetween(0.95, 1.0);
    assertThat(remade.conflicts()).isEmpty();
  }

  @Test
  void whatHoldsNoEndOfAPartIsToldWhereItComesOutOtherwise() {
    String board =
        """
        "seat": { "form": "panel", "thickness": 20, "plane": "plan", "at": [0, 0, 510], "grain": [1, 0, 0],
          "outline": [[-250, -30], [250, -30], [250, 30], [-250, 30]] },
        "rail": {""";
    String shorter = Frames.part("rail", "shoulder to shoulder", 396);
    Remade remade = remade(Frames.rectangle(shorter).replace("\"rail\": {", board));
    assertThat(remade.leftOut()).hasSize(1);
    assertThat(remade.leftOut().get(0).what()).isEqualTo("seat, which no joint holds");
    // Each leg comes in by half of the 4 mm.
    assertThat(remade.leftOut().get(0).by()).isCloseTo(2, within(0.1));
    String asPlanned = Frames.part("rail", "shoulder to shoulder", 400);
    assertThat(remade(Frames.rectangle(asPlanned).replace("\"rail\": {", board)).leftOut())
        .isEmpty();
  }

  @Test
  void diagonalsThatDifferWithoutAnyPartToBlameAreRacked() {
    String seat =
        "{\"frame\": \"seat\", \"what\": \"diagonal from the left\", \"value\": 498},"
            + "{\"frame\": \"seat\", \"what\": \"diagonal from the right\", \"value\": 495}";
    Remade remade = remade(Frames.trapezoid(seat));
    assertThat(remade.frames()).hasSize(1);
    Remade.Square square = remade.frames().get(0);
    assertThat(square.expected()).isCloseTo(0, within(1e-6));
    assertThat(square.racked()).hasValueCloseTo(3.0, within(1e-6));
  }
}
