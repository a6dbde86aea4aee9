package dryfit.fit.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.ChairMeasure.Foot;
import dryfit.fit.ChairMeasure.Stance;
import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import dryfit.fit.compare.Comparison.Row;
import dryfit.fit.compare.Comparison.Side;
import dryfit.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Square frames of four legs and four rails, inches; differences worked out by hand. */
class ComparisonTest {
  private static final FitReport THIN =
      Fitted.of(Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "3/4", ""));
  private static final FitReport WIDE_SETBACK =
      Fitted.of(Fitted.frame("1 3/4", "7/8", "3/8", "3/8", "3/4", ""));
  private static final FitReport LONG_TENONS =
      Fitted.of(Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "1 1/2", ""));

  private static Comparison compare(FitReport a, FitReport b) {
    return Comparison.of(List.of(new Side("one", a), new Side("other", b)));
  }

  private static Row row(Comparison comparison, String subject, String what) {
    return comparison.rows().stream()
        .filter(r -> r.key().subject().equals(subject) && r.key().what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aChairDoesNotDifferFromItself() {
    Comparison same = compare(THIN, THIN).differences();
    assertThat(same.rows()).isEmpty();
    assertThat(same.findings()).isEmpty();
  }

  @Test
  void aDimensionThatChangesIsToldWithBothValues() {
    Row setback = row(compare(THIN, WIDE_SETBACK), "setback", "");
    assertThat(setback.differs()).isTrue();
    assertThat(setback.values().get(0)).hasValueCloseTo(6.35, within(1e-9));
    assertThat(setback.values().get(1)).hasValueCloseTo(9.525, within(1e-9));
  }

  @Test
  void aRailGrowsByBothItsTenons() {
    // Two tenons, each 3/4 in longer.
    Row length = row(compare(THIN, LONG_TENONS), "front-rail", "length");
    double grown = length.values().get(1).getAsDouble() - length.values().get(0).getAsDouble();
    assertThat(grown).isCloseTo(2 * 0.75 * 25.4, within(1e-3));
  }

  @Test
  void whatOnlyOneChairIsFoundToHaveIsGainedOrLost() {
    Comparison comparison = compare(THIN, LONG_TENONS).differences();
    assertThat(comparison.findings())
        .filteredOn(f -> f.finding().check().equals("tenons-meet"))
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.present()).containsExactly(false, true));
  }

  @Test
  void eachChairTellsTheFiguresOfAFindingAsItsOwn() {
    FitReport one = Fitted.of(Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "1 1/4", ""));
    FitReport other = Fitted.of(Fitted.frame("1 3/4", "7/8", "1/4", "3/8", "1 3/8", ""));
    var meeting =
        compare(one, other).findings().stream()
            .filter(f -> f.finding().check().equals("tenons-meet"))
            .findFirst()
            .orElseThrow();
    assertThat(meeting.lacking()).isFalse();
    assertThat(meeting.differs()).as("it is worse in one of them").isTrue();
    assertThat(meeting.sentences()).hasSize(2);
    assertThat(meeting.sentences().get(0).present()).containsExactly(true, false);
    assertThat(meeting.sentences().get(1).present()).containsExactly(false, true);
    String said = meeting.sentences().get(1).finding().message();
    assertThat(other.findings()).anyMatch(f -> f.message().equals(said));
  }

  @Test
  void everyFigureHasAKeyOfItsOwn() {
    List<Datum> all = Data.of(THIN);
    assertThat(all.stream().map(Datum::key).distinct()).hasSameSizeAs(all);
  }

  @Test
  void aChairTipsWhenItsWeightStandsOverTwoFeet() {
    // Feet 200 wide and 400 deep, weight 300 high over their middle.
    Stance stance =
        new Stance(
            List.of(foot(-100, 0), foot(100, 0), foot(100, 400), foot(-100, 400)),
            new Vec3(0, 200, 300),
            Vec3.UP,
            true);
    List<Tipping> tipping = Tipping.of(stance);
    assertThat(tipping)
        .extracting(Tipping::way)
        .containsExactlyInAnyOrder("to the right", "to the left", "forwards", "backwards");
    assertThat(tipping.get(0).angle()).isCloseTo(Math.atan2(100, 300), within(1e-12));
    assertThat(tipping.get(3).angle()).isCloseTo(Math.atan2(200, 300), within(1e-12));
  }

  private static Foot foot(double x, double y) {
    return new Foot("leg", new Vec3(x, y, 0), 0, 0);
  }
}
