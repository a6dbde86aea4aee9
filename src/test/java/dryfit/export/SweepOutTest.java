package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Design.LengthUnit;
import dryfit.document.Quantity;
import dryfit.fit.compare.Datum;
import dryfit.fit.compare.Sweep;
import dryfit.fit.compare.Sweep.Point;
import dryfit.fit.compare.Sweep.Range;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A sweep of three invented steps as text, JSON and a page. */
class SweepOutTest {
  private static final Sweep SWEEP =
      new Sweep(
          new Sweep.Plan(
              "as drawn", "rail", Quantity.Kind.LENGTH, 40, 60, 10, Double.NaN, Double.NaN),
          List.of(
              point(40, 2.5, Optional.empty()),
              point(50, 2.75, Optional.empty()),
              point(60, 3, Optional.of("tenons-meet: they share wood"))),
          List.of(
              new Range(40, 53.4, Optional.empty(), Optional.of("tenons-meet: they share wood"))));

  private static Point point(double value, double mass, Optional<String> reason) {
    Datum datum = new Datum(Datum.Group.WHOLE, "", "mass", Datum.Kind.MASS, mass);
    return new Point(value, reason, reason.isPresent() ? 1 : 0, 0, List.of(datum));
  }

  @Test
  void theTableHasAStepALineAndTheAnswerIsTheLastLine() {
    String text = SweepOut.text(SWEEP, TextStyle.of(LengthUnit.MM));
    assertThat(text).containsPattern("50\\.00 mm +fits +0 +0 +2\\.75 kg");
    assertThat(text).contains("above 53.40 mm: tenons-meet");
    assertThat(text).endsWith("FITS from 40.00 mm to 53.40 mm\n");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void aChairThatFitsNowhereIsToldSo() {
    Sweep nowhere = new Sweep(SWEEP.plan(), SWEEP.points().subList(2, 3), List.of());
    assertThat(SweepOut.text(nowhere, TextStyle.of(LengthUnit.MM)))
        .endsWith("DOES NOT FIT anywhere in this range\n");
  }

  @Test
  void theJsonHasEveryFigureAtEveryStep() {
    String json = new String(SweepOut.json(SWEEP), StandardCharsets.UTF_8);
    assertThat(json).contains("\"value\" : 2.75", "\"to\" : 53.4", "\"unit\" : \"kg\"");
  }

  @Test
  void theJsonFollowsItsSchemaEvenWhereTheDocumentIsRefused() {
    Point refused = new Point(70, Optional.of("a leg has no length"), 0, 0, List.of());
    Point unknown = point(30, Double.NaN, Optional.empty());
    Sweep sweep =
        new Sweep(SWEEP.plan(), List.of(unknown, SWEEP.points().get(0), refused), SWEEP.ranges());
    for (Sweep each : List.of(SWEEP, sweep)) {
      String json = new String(SweepOut.json(each), StandardCharsets.UTF_8);
      assertThat(Schemas.problems("sweep-1.schema.json", json)).isEmpty();
    }
    String misspelt =
        new String(SweepOut.json(SWEEP), StandardCharsets.UTF_8).replace("\"look\"", "\"lok\"");
    assertThat(Schemas.problems("sweep-1.schema.json", misspelt)).isNotEmpty();
  }

  private static Point diagonals(double value, double left, double right, double volume) {
    List<Datum> data =
        List.of(
            new Datum(
                Datum.Group.WHOLE, "", "front diagonal from the left", Datum.Kind.LENGTH, left),
            new Datum(
                Datum.Group.WHOLE, "", "front diagonal from the right", Datum.Kind.LENGTH, right),
            new Datum(Datum.Group.WHOLE, "", "board measure", Datum.Kind.VOLUME, volume));
    return new Point(value, Optional.empty(), 0, 0, data);
  }

  @Test
  void axesNameTheirUnitAndWhatIsTheSameIsOnePlot() {
    // A board foot is 144 cubic inches.
    double boardFoot = 144 * 25.4 * 25.4 * 25.4;
    List<Point> points =
        List.of(
            diagonals(406.4, 508, 508, 5 * boardFoot),
            diagonals(431.8, 533.4, 533.4, 6 * boardFoot));
    Sweep sweep = new Sweep(SWEEP.plan(), points, SWEEP.ranges());
    String page =
        new String(
            SweepOut.page(sweep, "Chair", TextStyle.of(LengthUnit.IN)), StandardCharsets.UTF_8);
    assertThat(page).contains(">front diagonal from the left; front diagonal from the right, in<");
    assertThat(page).contains(">board measure, bd ft<", ">5.00<", ">6.00<", ", in</text>");
    assertThat(page.split("<svg ", -1)).hasSize(1 + 2);
    assertThat(page).contains("name=\"viewport\"", "prefers-color-scheme:dark", "local codes");
  }

  @Test
  void whatChangesByLessThanAnAxisShowsIsNotDrawn() {
    List<Point> points =
        List.of(point(40, 2.75, Optional.empty()), point(50, 2.76, Optional.empty()));
    Sweep sweep = new Sweep(SWEEP.plan(), points, SWEEP.ranges());
    String page =
        new String(
            SweepOut.page(sweep, "Chair", TextStyle.of(LengthUnit.MM)), StandardCharsets.UTF_8);
    assertThat(page).doesNotContain("<svg ").contains("Nothing of the whole chair changes");
  }

  @Test
  void thePageShadesWhatTheDocumentDoesNotAllow() {
    Sweep bounded =
        new Sweep(
            new Sweep.Plan("as drawn", "rail", Quantity.Kind.LENGTH, 40, 60, 10, 45, Double.NaN),
            SWEEP.points(),
            SWEEP.ranges());
    String page =
        new String(
            SweepOut.page(bounded, "A chair", TextStyle.of(LengthUnit.MM)), StandardCharsets.UTF_8);
    // 40 to 45 of 20 on 520, and good from there to 53.4.
    assertThat(page)
        .contains("width=\"130.00\" height=\"222.00\" class=\"beyond\"")
        .contains("width=\"218.40\" height=\"222.00\" class=\"good\"")
        .contains("Grey: beyond what the document allows.");
  }

  @Test
  void thePageDrawsWhatChanges() {
    byte[] bytes = SweepOut.page(SWEEP, "A <chair>", TextStyle.of(LengthUnit.MM));
    String page = new String(bytes, StandardCharsets.UTF_8);
    assertThat(page).contains("A &lt;chair&gt;", "<polyline", "aria-label=\"mass, kg\"");
    // Forty to sixty over 520 units of drawing: the good range ends at 90 + 520 * 13.4 / 20.
    assertThat(page).contains("width=\"348.40\"");
    assertThat(SweepOut.page(SWEEP, "A <chair>", TextStyle.of(LengthUnit.MM))).isEqualTo(bytes);
  }
}
