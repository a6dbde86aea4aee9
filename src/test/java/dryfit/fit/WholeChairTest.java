package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.ChairMeasure.Foot;
import dryfit.fit.ChairMeasure.FrameSquare;
import dryfit.fit.ChairMeasure.GrainRun;
import dryfit.fit.ChairMeasure.Stance;
import dryfit.fit.Stood.Leg;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The chair as a whole, against figures worked by hand and published field reports, inches. */
class WholeChairTest {
  private static final double INCH = 25.4;

  /** Makes the left side heavy, or the back, so that the chair rests on three known feet. */
  private static String weight(double x, double y) {
    return ", \"weight\": { \"form\": \"straight\", \"section\": [9, 9], \"from\": ["
        + (x - 2)
        + ", "
        + y
        + ", 26], \"to\": ["
        + (x + 2)
        + ", "
        + y
        + ", 26] }";
  }

  private static FitReport feet(double front, double back, double[] foot, String more) {
    return Fitted.of(
        Stood.seat(
            new Leg("front-left", -front / 2, 0, foot[0]),
            new Leg("front-right", front / 2, 0, foot[1]),
            new Leg("back-right", back / 2, 17, foot[2]),
            new Leg("back-left", -back / 2, 17, foot[3]),
            more));
  }

  private static Stance stance(FitReport report) {
    return report.whole().stance().orElseThrow();
  }

  private static Foot foot(Stance stance, String part) {
    return stance.feet().stream().filter(f -> f.part().equals(part)).findFirst().orElseThrow();
  }

  /**
   * A chair that rocked about 1/8 in was cured by 1/16 off each leg of the long diagonal: a field
   * report, oregonwoodworker.blogspot.com, April 2016. That is exact for a rectangle.
   */
  @Test
  void aRockingRectangleIsCuredByHalfTheGapOffEachLegOfTheLongDiagonal() {
    FitReport report = feet(18, 18, new double[] {0, 0.125, 0, 0}, weight(-6, 9));
    Stance stance = stance(report);
    assertThat(foot(stance, "front-right").gap() / INCH).isEqualTo(0.125, within(1e-4));
    assertThat(foot(stance, "front-left").trim() / INCH).isEqualTo(0.0625, within(1e-4));
    assertThat(foot(stance, "back-right").trim() / INCH).isEqualTo(0.0625, within(1e-4));
    assertThat(foot(stance, "back-left").trim()).isZero();
    assertThat(report.findings())
        .filteredOn(f -> f.check().equals("rocks"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.measured() / INCH).isEqualTo(0.125, within(1e-4));
              assertThat(f.message()).contains("front-left and back-right");
            });
  }

  /**
   * Feet 20 in apart in front and 16 behind: 0.0556 under a front foot, 0.0694 under a rear one.
   */
  @Test
  void onATrapezoidTheTrimDependsOnWhichFootHangs() {
    Stance front = stance(feet(20, 16, new double[] {0, 0.125, 0, 0}, weight(-6, 9)));
    assertThat(foot(front, "front-right").gap() / INCH).isEqualTo(0.125, within(1e-3));
    assertThat(foot(front, "front-left").trim() / INCH).isEqualTo(0.0556, within(1e-3));
    Stance rear = stance(feet(20, 16, new double[] {0, 0, 0.125, 0}, weight(-6, 6)));
    assertThat(foot(rear, "back-right").gap() / INCH).isEqualTo(0.125, within(1e-3));
    assertThat(foot(rear, "back-left").trim() / INCH).isEqualTo(0.0694, within(1e-3));
  }

  @Test
  void aFootAtTheLimitIsNotTold() {
    double limit = 1 / 64.0;
    assertThat(Fitted.checks(feet(18, 18, new double[] {0, limit, 0, 0}, weight(-6, 9))))
        .doesNotContain("rocks");
    assertThat(Fitted.checks(feet(18, 18, new double[] {0, limit + 0.001, 0, 0}, weight(-6, 9))))
        .contains("rocks");
  }

  @Test
  void threeFeetNeverRock() {
    Stance stance =
        stance(
            Fitted.of(
                """
                { "format": "dryfit-chair/1", "name": "Three", "about": "Demo data, invented.",
                  "unit": "mm", "timber": "ash-white", "parts": {
                    "a": { "form": "straight", "section": [30, 30], "from": [-150, 0, 0], "to": [-150, 0, 400] },
                    "b": { "form": "straight", "section": [30, 30], "from": [150, 0, 9], "to": [150, 0, 400] },
                    "c": { "form": "straight", "section": [30, 30], "from": [0, 250, 4], "to": [0, 250, 400] } },
                  "joints": {} }
                """));
    assertThat(stance.feet()).hasSize(3);
    assertThat(stance.rock()).isZero();
    assertThat(stance.stands()).isTrue();
  }

  @Test
  void aChairWhoseWeightIsOutsideItsFeetTipsOver() {
    assertThat(Fitted.checks(feet(18, 18, new double[] {0, 0, 0, 0}, weight(-80, 9))))
        .contains("tips-over");
  }

  /**
   * A seat 20 in front, 16 behind and 17 deep whose diagonals differ by 1/8 has slipped .0860
   * sideways, .290 degrees: worked from the two triangles.
   */
  @Test
  void diagonalsTellHowFarASeatHasSlipped() {
    double slip = 0.0860;
    FitReport report =
        Fitted.of(
            Stood.seat(
                new Leg("front-left", -10 + slip, 0, 0),
                new Leg("front-right", 10 + slip, 0, 0),
                new Leg("back-right", 8, 17, 0),
                new Leg("back-left", -8, 17, 0),
                ""));
    FrameSquare seat = report.whole().frames().get(0);
    assertThat(seat.which()).isEqualTo("seat");
    assertThat(Math.abs(seat.difference()) / INCH).isEqualTo(0.125, within(1e-3));
    assertThat(Math.abs(seat.shift()) / INCH).isEqualTo(slip, within(1e-4));
    assertThat(Math.toDegrees(Math.abs(seat.angle()))).isEqualTo(0.290, within(1e-3));
    assertThat(report.findings())
        .filteredOn(f -> f.check().equals("out-of-square"))
        .singleElement()
        // The front has gone to the right, so it must come away from the right.
        .satisfies(f -> assertThat(f.message()).contains("away from the right"));
  }

  @Test
  void aSeatMadeTrueIsSquareAndLevel() {
    FitReport report = feet(20, 16, new double[] {0, 0, 0, 0}, "");
    assertThat(report.whole().frames()).extracting(FrameSquare::which).contains("seat", "front");
    assertThat(report.whole().frames())
        .allSatisfy(f -> assertThat(f.difference()).isEqualTo(0, within(1e-6)));
    assertThat(report.whole().frames().get(0).fromLeft() / INCH).isEqualTo(24.759, within(1e-3));
    assertThat(report.whole().level().orElseThrow().outOfLevel()).isEqualTo(0, within(1e-6));
    assertThat(Fitted.checks(report)).doesNotContain("out-of-square", "out-of-level", "rocks");
  }

  /** Its panels under the arms lie between the legs too, and are wider than any rail. */
  @Test
  void aPanelInGroovesIsNoRailOfTheSeat() throws IOException {
    FitReport report = Fitted.of(Files.readString(Path.of("models/harbour-armchair.json")));
    ChairMeasure.SeatLevel level = report.whole().level().orElseThrow();
    // The seat is drawn to fall by 4 degrees.
    assertThat(Math.toDegrees(Math.abs(level.foreAft()))).isEqualTo(4, within(0.2));
    assertThat(level.outOfLevel()).isEqualTo(0, within(1e-6));
  }

  /**
   * Front legs 1/2 in longer than the back ones, put on one side by mistake (reported twice): over
   * 16 in the seat slopes sideways by 1.79 degrees, over 17 in by 1.68.
   */
  @Test
  void longLegsOnOneSideTiltTheSeat() {
    FitReport sideways = feet(16, 16, new double[] {-0.5, 0, 0, -0.5}, "");
    ChairMeasure.SeatLevel level = sideways.whole().level().orElseThrow();
    assertThat(Math.toDegrees(level.sideways())).isEqualTo(-1.79, within(0.005));
    assertThat(sideways.findings())
        .filteredOn(f -> f.check().equals("out-of-level"))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("1.79°").contains("on the left"));
    FitReport right = feet(16, 16, new double[] {-0.5, -0.5, 0, 0}, "");
    assertThat(Math.toDegrees(right.whole().level().orElseThrow().foreAft()))
        .isEqualTo(-1.68, within(0.01));
    assertThat(Fitted.checks(right)).doesNotContain("out-of-level");
  }

  private static FitReport bar(String grain, String limits) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Bar", "about": "Demo data, invented.", "unit": "mm",
          "timber": "ash-white", LIMITS "parts": {
            "bar": { "form": "straight", "section": [40, 40], "from": [0, 0, 100],
              "to": [0, 0, 900], "grain": GRAIN } }, "joints": {} }
        """
            .replace("GRAIN", grain)
            .replace("LIMITS", limits));
  }

  /** Grain that leaves a bar 40 wide at 1 in 5 gives fibres of 40 / sin(11.31°) = 204.0 mm. */
  @Test
  void grainThatRunsOutIsMeasuredAgainstTheLineOfThePart() {
    FitReport report = bar("[0.2, 0, 1]", "");
    GrainRun run = report.whole().grain().get(0);
    assertThat(Math.tan(run.slope())).isEqualTo(0.2, within(1e-9));
    assertThat(run.fibre()).isEqualTo(203.96, within(0.01));
    assertThat(report.findings()).isEmpty();
    assertThat(Fitted.checks(bar("[0.201, 0, 1]", ""))).containsExactly("grain-runs-out");
    assertThat(bar("\"length\"", "").whole().grain()).isEmpty();
  }

  @Test
  void shortFibresAreTold() {
    FitReport report = bar("[1, 0, 1]", "\"limits\": { \"grain-slope\": 45 },");
    assertThat(report.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.check()).isEqualTo("short-fibre");
              assertThat(f.measured()).isEqualTo(40 * Math.sqrt(2), within(0.01));
              assertThat(f.source().limit()).isEqualTo("fibre-least");
            });
  }

  @Test
  void whereLegsGoIntoTheSeatItsHeightIsThereAndNotAtTheStretchers() {
    FitReport report =
        Fitted.of(
            """
            { "format": "dryfit-chair/1", "name": "Sketch", "unit": "mm", "timber": "ash-white",
              "parts": {
                "board": { "form": "seat", "at": [0, 0, 440], "thickness": 40,
                  "outline": [ [-200, -200], [200, -200], [200, 200], [-200, 200] ] },
                "front-leg": { "form": "straight", "pair": true, "section": [40, 40], "from": [150, -150, 0], "to": [150, -150, 400] },
                "back-leg": { "form": "straight", "pair": true, "section": [40, 40], "from": [150, 150, 0], "to": [150, 150, 400] },
                "side": { "form": "straight", "pair": true, "section": [30, 20], "between": ["front-leg", "back-leg"], "middle": 150 },
                "cross": { "form": "straight", "section": [30, 20], "between": ["front-leg right", "front-leg left"], "middle": 170 },
                "rear": { "form": "straight", "section": [30, 20], "between": ["back-leg right", "back-leg left"], "middle": 170 }
              },
              "joints": {
                "front leg": { "tenon": "front-leg top", "into": "board", "thickness": 20, "width": 20, "length": 25 },
                "back leg": { "tenon": "back-leg top", "into": "board", "thickness": 20, "width": 20, "length": 25 },
                "side front": { "tenon": "side front", "into": "front-leg", "thickness": 8, "width": 20, "length": 15 },
                "side back": { "tenon": "side back", "into": "back-leg", "thickness": 8, "width": 20, "length": 15 },
                "cross": { "tenon": "cross both", "into": "front-leg", "thickness": 8, "width": 20, "length": 15 },
                "rear": { "tenon": "rear both", "into": "back-leg", "thickness": 8, "width": 20, "length": 15 }
              } }""");
    ChairMeasure.SeatLevel level = report.whole().level().orElseThrow();
    assertThat(level.heights()).allSatisfy(h -> assertThat(h).isEqualTo(400, within(0.01)));
    FrameSquare seat = report.whole().frames().get(0);
    assertThat(seat.fromLeft()).isEqualTo(Math.hypot(300, 300), within(0.01));
  }
}
