package dryfit.fit.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.Fitted;
import dryfit.fit.loop.Frames;
import dryfit.fit.spread.Spread.Share;
import org.junit.jupiter.api.Test;

/** Frames that are worked out by hand. */
class SpreadingTest {
  private static final double USUAL = 25.4 / 64;
  private static final double FIT = 0.1;
  private static final Spreads RECTANGLE = Spreader.of(Frames.rectangle(""));

  private static Spread only(Spreads spreads, String subject, String what) {
    return spreads.all().stream()
        .filter(s -> s.figure().subject().equals(subject) && s.figure().what().equals(what))
        .findFirst()
        .orElseThrow(() -> new AssertionError(spreads.all().stream().map(Spread::figure).toList()));
  }

  private static double each(Spread spread, String subject, String what) {
    return spread.shares().stream()
        .filter(s -> s.cut().subject().equals(subject) && s.cut().what().startsWith(what))
        .mapToDouble(Share::each)
        .sum();
  }

  @Test
  void aRailTooLongOpensTheOppositeShoulderByAsMuch() {
    Spread gap = only(RECTANGLE, "stretcher to leg, right", "gap at the shoulder");
    assertThat(each(gap, "rail", "shoulder to shoulder")).isCloseTo(1, within(1e-3));
    assertThat(each(gap, "stretcher", "shoulder to shoulder")).isCloseTo(-1, within(1e-3));
    // A leg that is thicker takes half of it on the face that is looked at, at rail and stretcher.
    assertThat(each(gap, "leg right", "width")).isCloseTo(0, within(1e-3));
    assertThat(gap.least()).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(gap.most()).isCloseTo(USUAL, within(0.02));
  }

  private static String accurate(String angle, String fit) {
    return Frames.rectangle("")
        .replace(
            "\"measured\"",
            "\"accuracy\": {\"angle\": \"" + angle + "\"}, \"fit\": " + fit + ", \"measured\"");
  }

  private static double leans(String json, String joint) {
    Spread gap = only(Spreader.of(json), "stretcher to leg, right", "gap at the shoulder");
    return Math.abs(each(gap, joint, "angle of mortise or shoulder along"));
  }

  @Test
  void aMortiseThatLeansOpensWhatIsFourHundredMillimetresOffIfItsTenonHasNoPlay() {
    // One radian over 400 mm: the stretcher's middle is 400 below the rail's, its edges 20 more or
    // less; what opens most is told.
    String tight = accurate("0.25 deg", "{\"cheek\": 0, \"edge\": 0}");
    assertThat(leans(tight, "rail to leg, right")).isBetween(379.0, 421.0);
  }

  @Test
  void onlyTheAngleBeyondThePlayOfItsTenonTurnsTheFrame() {
    // 0.1 mm at each edge of a tenon 20 mm long: 2 · 0.1 / 20 = 0.01 rad, half of 0.02 rad.
    String half = accurate(Math.toDegrees(0.02) + " deg", "{\"edge\": 0.1}");
    assertThat(leans(half, "rail to leg, right")).isBetween(189.0, 211.0);
    String within = accurate("0.5 deg", "{\"edge\": 0.1}");
    assertThat(leans(within, "rail to leg, right")).isZero();
    // Its own shoulder gapes over half of the stretcher's 40 mm whatever its play.
    assertThat(leans(within, "stretcher to leg, right")).isCloseTo(20, within(1e-6));
  }

  @Test
  void aCheekIsHalfOfWhatMortiseAndTenonAreOff() {
    Spread cheek = only(RECTANGLE, "rail to leg, right", "gap at the front cheek");
    double planned = cheek.figure().value();
    assertThat(cheek.worstHigh() - planned).isCloseTo(FIT, within(1e-9));
    assertThat(planned - cheek.worstLow()).isCloseTo(FIT, within(1e-9));
    assertThat(cheek.deviation()).isCloseTo(FIT / Math.sqrt(6), within(1e-9));
    // Two equal rectangulars make a triangle: 2.5 % are beyond (1 − √0.05) of its half width.
    double exact = FIT * (1 - Math.sqrt(0.05));
    assertThat(cheek.high() - planned).isCloseTo(exact, within(0.002));
    assertThat(planned - cheek.low()).isCloseTo(exact, within(0.002));
    // The limits are 0.05 and 0.13 and the plan 0.1 mm: (1 − 0.5)² / 2 below and (1 − 0.3)² / 2
    // above, where contact makes little of it.
    double tight = 1 - (planned - cheek.least()) / FIT;
    double loose = 1 - (cheek.most() - planned) / FIT;
    double chance = tight * tight / 2 + loose * loose / 2;
    assertThat(chance).isCloseTo(0.125 + 0.245, within(0.03));
    assertThat(cheek.chance())
        .isCloseTo(chance, within(3 * Math.sqrt(chance * (1 - chance) / RECTANGLE.draws())));
  }

  @Test
  void aBottomIsDepthLessLength() {
    Spread bottom = only(RECTANGLE, "rail to leg, right", "gap at the bottom");
    assertThat(bottom.shares()).hasSize(2).allSatisfy(s -> assertThat(s.of()).isEqualTo(0.5));
    assertThat(bottom.worstLow()).isCloseTo(2 - 2 * USUAL, within(1e-3));
  }

  @Test
  void theFaceOfARailMovesWithItsMortiseAndByHalfOfItsThickness() {
    Spread back = only(RECTANGLE, "rail to leg, right", "set back at the front");
    assertThat(each(back, "rail", "thickness")).isCloseTo(-0.5, within(1e-9));
    double moves = each(back, "rail to leg, right", "mortise off its place across");
    assertThat(Math.abs(moves)).isBetween(0.5, 1.0);
  }

  @Test
  void woodToAFaceIsLessByHalfOfAWiderMortise() {
    Spread wall = only(RECTANGLE, "rail to leg, right", "wood to the front");
    assertThat(each(wall, "rail to leg, right", Cuts.MORTISE_THICK)).isCloseTo(-0.5, within(1e-9));
    double place = each(wall, "rail to leg, right", "mortise off its place across");
    assertThat(Math.abs(place)).isCloseTo(1, within(1e-9));
  }

  @Test
  void behindTheBottomThereIsTheWholeWidthLessTheDepth() {
    Spread wall = only(RECTANGLE, "rail to leg, right", "wood to the outside");
    assertThat(each(wall, "leg right", "width")).isCloseTo(1, within(1e-9));
    assertThat(each(wall, "rail to leg, right", "depth")).isCloseTo(-1, within(1e-9));
    // Two lengths, each as likely anywhere within 0.4 mm: together within 0.8, and a triangle of
    // half base 0.8 has 95 of 100 within 0.8 (1 - sqrt(0.05)).
    double accuracy = wall.shares().get(0).cut().accuracy();
    double planned = wall.figure().value();
    assertThat(wall.worstHigh() - planned).isCloseTo(2 * accuracy, within(1e-9));
    assertThat(wall.high() - planned)
        .isCloseTo(2 * accuracy * (1 - Math.sqrt(0.05)), within(0.02 * accuracy));
  }

  @Test
  void whatALegsLengthIsOffLiesAtItsTop() {
    Spread top = only(RECTANGLE, "rail to leg, right", "wood to the top");
    Spread bottom = only(RECTANGLE, "rail to leg, right", "wood to the bottom");
    assertThat(each(top, "leg right", "length")).isCloseTo(1, within(1e-9));
    assertThat(each(bottom, "leg right", "length")).isZero();
    double both = each(top, "rail to leg, right", "mortise off its place along");
    assertThat(both)
        .isCloseTo(
            -each(bottom, "rail to leg, right", "mortise off its place along"), within(1e-9));
  }

  @Test
  void bothHandsAndBothCheeksAreOneAndWhatMattersAddsUpToAll() {
    assertThat(RECTANGLE.folded())
        .filteredOn(f -> f.what().equals("gap at each cheek"))
        .extracting(Spreads.Folded::hands)
        .containsExactly(4, 4);
    double all = RECTANGLE.matters().stream().mapToDouble(Spreads.Matter::share).sum();
    assertThat(all).isCloseTo(1, within(1e-9));
    double sorts = RECTANGLE.sorts().values().stream().mapToDouble(d -> d).sum();
    assertThat(sorts).isCloseTo(1, within(1e-9));
  }

  @Test
  void whoeverCutsPerfectlyHasNoSpread() {
    String json =
        Frames.rectangle("")
            .replace(
                "\"measured\"",
                "\"accuracy\": {\"length\": 0, \"angle\": 0, \"fit\": 0}, \"measured\"");
    assertThat(Spreader.of(json).all())
        .allSatisfy(
            s -> {
              assertThat(s.low()).isEqualTo(s.figure().value());
              assertThat(s.worstHigh()).isEqualTo(s.figure().value());
              assertThat(s.shares()).isEmpty();
            });
  }

  private static String setback(String more) {
    return Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "3/4", "")
        .replace("\"setback\": \"1/4\"", "\"setback\": {\"value\": \"1/4\"" + more + "}");
  }

  @Test
  void aDimensionOfItsOwnAccuracyMovesWhatRestsOnIt() {
    Spreads spreads = Spreader.of(setback(", \"accuracy\": \"1/32\""));
    Spread back = only(spreads, "front, right", "set back at the front");
    assertThat(each(back, "setback", "")).isCloseTo(1, within(1e-6));
    Spread diagonals = only(spreads, "", "seat diagonals differ by");
    assertThat(each(diagonals, "setback", "")).isZero();
  }

  @Test
  void aDimensionThatCannotBeSoFarOffIsLeftOutAndTold() {
    // A rail of 7/8 in cannot be 1 in thinner.
    Spreads spreads = Spreader.of(Spreader.rail("1"));
    assertThat(spreads.unbuilt()).containsOnlyKeys("rail");
    assertThat(spreads.unbuilt().get("rail")).contains("above zero");
  }
}
