package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.Finding.Severity;
import org.junit.jupiter.api.Test;

/** Each check at its limit and beyond, on one upright post and one rail, millimetres. */
class ChecksTest {
  /** Two steps of the kernel's grid, mm: what a size that leans may be off by. */
  private static final double GRID = 2 / 16384.0;

  @Test
  void aSoundJointHasNothingToTell() {
    FitReport report = post("", 30, 2);
    assertThat(report.findings()).isEmpty();
    assertThat(report.fits()).isTrue();
    JointFit joint = report.joints().get(0);
    assertThat(joint.depthAlong()).isEqualTo(32, within(GRID));
    // 50 mm post: 50 - 32 behind; (50 - 10.2) / 2 at the sides.
    assertThat(joint.wall().orElseThrow()).isEqualTo(18, within(GRID));
    assertThat(joint.wallFace()).isEqualTo("outside");
    // Two cheeks of 40 x 30, long grain on both sides; the edges look at end grain of the post.
    assertThat(joint.glueLong()).isEqualTo(2 * 40 * 30, within(0.1));
    assertThat(joint.glueOther()).isEqualTo(2 * 10 * 30, within(0.1));
  }

  @Test
  void wallAtTheLimitPassesAndLessIsToBeLookedAt() {
    assertThat(Fitted.checks(post("", 42, 2))).isEmpty();
    FitReport thin = post("", 42.5, 2);
    assertThat(thin.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.check()).isEqualTo("thin-wall");
              assertThat(f.severity()).isEqualTo(Severity.LOOK);
              assertThat(f.measured()).isEqualTo(5.5, within(GRID));
              assertThat(f.limit()).isEqualTo(6);
              assertThat(f.margin()).isEqualTo(-0.5, within(GRID));
              assertThat(f.pointer()).isEqualTo("/joints/rail to post/length");
            });
    assertThat(thin.fits()).isTrue();
  }

  @Test
  void theTenonThatPassesTheOtherIsShortenedByAllThatLiesBeyond() {
    // The side tenon, 8 thick, lies from 16 to 24 below the face that the front tenon, 25 long,
    // goes into; it is 17 long where 16 would touch.
    FitReport report =
        Fitted.of(
            """
            { "format": "dryfit-chair/1", "name": "Corner", "about": "Demo data, invented.",
              "unit": "mm", "timber": "oak-white",
              "parts": {
                "post": { "form": "straight", "section": [40, 40],
                  "from": [200, 0, 0], "to": [200, 0, 400] },
                "front": { "form": "straight", "section": [60, 20],
                  "from": [180, 0, 350], "to": [-180, 0, 350] },
                "side": { "form": "straight", "section": [60, 20],
                  "from": [200, 20, 350], "to": [200, 300, 350] }
              },
              "joints": {
                "front to post": { "tenon": "front right", "into": "post",
                  "length": 25, "thickness": 8, "width": 40 },
                "side to post": { "tenon": "side front", "into": "post",
                  "length": 17, "thickness": 8, "width": 40 }
              } }
            """);
    assertThat(report.findings())
        .filteredOn(f -> f.check().equals("tenons-meet"))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.message())
                    .contains("\"front to post\" by 9.0 mm", "\"side to post\" by 1.0 mm"));
  }

  @Test
  void mortiseThatComesOutStopsTheBuild() {
    FitReport report = post("", 49, 2);
    assertThat(Fitted.checks(report)).contains("mortise-breaks-out");
    assertThat(report.fits()).isFalse();
  }

  @Test
  void tenonLongerThanTheWoodIsOutside() {
    assertThat(Fitted.checks(post("", 56, 2))).contains("tenon-outside", "mortise-breaks-out");
  }

  @Test
  void throughTenonMayStandProud() {
    FitReport report =
        Fitted.of(document("", "\"through\": true, \"proud\": 5", "0.1", "0.5", "2", ""));
    assertThat(report.findings()).isEmpty();
    assertThat(report.joints().get(0).depthAlong()).isEqualTo(50, within(GRID));
    assertThat(report.joints().get(0).bottom().least()).isEmpty();
  }

  @Test
  void aSheetOfPaperPassesAndMoreThanThatIsLoose() {
    assertThat(Fitted.checks(Fitted.of(document("", "\"length\": 30", "0.13", "0.5", "2", ""))))
        .isEmpty();
    FitReport loose = Fitted.of(document("", "\"length\": 30", "0.2", "0.5", "2", ""));
    assertThat(loose.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.check()).isEqualTo("tenon-loose");
              assertThat(f.measured()).isEqualTo(0.2, within(GRID));
              assertThat(f.source().kind()).isEqualTo(Source.Kind.PUBLISHED);
            });
  }

  /** A dry joint fitted tight swells with glue and seizes (common practice, no source). */
  @Test
  void aFitWithoutAGapIsToBeLookedAt() {
    assertThat(Fitted.checks(Fitted.of(document("", "\"length\": 30", "0", "0.5", "2", ""))))
        .containsExactly("no-glue-room");
  }

  @Test
  void aFatTenonDoesNotGoIn() {
    FitReport report = Fitted.of(document("", "\"length\": 30", "-0.2", "0.5", "2", ""));
    assertThat(report.findings())
        .anySatisfy(
            f -> {
              assertThat(f.check()).isEqualTo("tenon-too-fat");
              assertThat(f.measured()).isEqualTo(-0.2, within(GRID));
            });
    assertThat(report.fits()).isFalse();
  }

  @Test
  void aWaiverStaysVisibleAndLetsTheChairPass() {
    FitReport report =
        Fitted.of(
            document(
                "",
                "\"length\": 49",
                "0.1",
                "0.5",
                "2",
                """
                , "waived": [ { "check": "mortise-breaks-out", "joint": "rail to post",
                               "because": "a plate covers it" } ]"""));
    assertThat(report.findings())
        .anySatisfy(f -> assertThat(f.waived()).contains("a plate covers it"));
    assertThat(report.fits()).isTrue();
  }

  /** A flat shoulder against a round post sits in the middle only; a scribed one sits all over. */
  @Test
  void flatShoulderOnARoundPostIsOpenAndAScribedOneIsNot() {
    String round = "\"section\": { \"round\": 60 }";
    FitReport flat = Fitted.of(document(round, "\"length\": 30", "0.1", "0.5", "2", ""));
    assertThat(Fitted.checks(flat)).contains("shoulder-open");
    // A rail 24 thick on a round of 60: sagitta 30 - sqrt(30² - 12²) = 2.504 at its corners.
    double open = flat.joints().get(0).shoulder().greatest().orElseThrow();
    assertThat(open).isBetween(2.1, 2.504);
    FitReport scribed =
        Fitted.of(
            document(round, "\"length\": 30, \"shoulder\": \"scribed\"", "0.1", "0.5", "2", ""));
    assertThat(Fitted.checks(scribed)).doesNotContain("shoulder-open", "parts-collide");
    assertThat(scribed.joints().get(0).shoulder().greatest().orElseThrow())
        .isEqualTo(0, within(1e-3));
  }

  @Test
  void whereARailHangsOverTheEndOfALeaningLegItsShoulderHasNothingToSitOn() {
    // Raked 4 degrees, a leg 44 square is 1.5 lower at the one side of its top than in the middle.
    String chair =
        """
        { "format": "dryfit-chair/1", "name": "Sketch", "unit": "mm", "timber": "ash-white",
          "parts": {
            "leg": { "form": "straight", "section": [44, 44], "from": [0, 0, 420], "rake": "4 deg", "splay": "3 deg", "to-z": 0 },
            "rail": { "form": "straight", "section": [60, 24], "from": [-300, 0, 390], "to": [-10, 0, 390] }
          },
          "joints": { "it": { "tenon": "rail end", "into": "leg", "thickness": 10, "width": 38, "length": 25 } } }""";
    assertThat(Fitted.checks(Fitted.of(chair))).doesNotContain("shoulder-open");
  }

  @Test
  void aPartInTheWayOfAnotherIsTold() {
    FitReport report =
        Fitted.of(
            document("", "\"length\": 30", "0.1", "0.5", "2", "")
                .replace(
                    "\"rail\": {",
                    "\"bar\": { \"form\": \"straight\", \"section\": [20, 20],"
                        + " \"from\": [-100, -80, 290], \"to\": [-100, 80, 290] }, \"rail\": {"));
    assertThat(report.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.check()).isEqualTo("parts-collide");
              assertThat(f.parts()).containsExactly("bar", "rail");
              // The rail's top is at 300 and it is 60 high: the bar's 20 x 20 lies wholly in its
              // height.
              assertThat(f.measured()).isEqualTo(20, within(GRID));
            });
  }

  private static FitReport post(String section, double length, double bottom) {
    return Fitted.of(document(section, "\"length\": " + length, "0.1", "0.5", "" + bottom, ""));
  }

  /** A post 50 square at x = -250 to -200, and a rail 60 x 24 that comes in from the right. */
  private static String document(
      String section, String length, String cheek, String edge, String bottom, String more) {
    return """
        { "format": "dryfit-chair/1", "name": "Post", "about": "Demo data, invented.", "unit": "mm",
          "timber": "ash-white",
          "fit": { "cheek": CHEEK, "edge": EDGE, "bottom": BOTTOM, "least-wall": 6 },
          "parts": {
            "post": { "form": "straight", SECTION, "from": [-225, 0, 0], "to": [-225, 0, 500] },
            "rail": { "form": "straight", "section": [60, 24], "from": [200, 0, 270],
              "to": [-200, 0, 270] }
          },
          "joints": {
            "rail to post": { "tenon": "rail left", "into": "post", "thickness": 10, "width": 40,
              LENGTH }
          } MORE }
        """
        .replace("SECTION", section.isEmpty() ? "\"section\": [50, 50]" : section)
        .replace("LENGTH", length)
        .replace("CHEEK", cheek)
        .replace("EDGE", edge)
        .replace("BOTTOM", bottom)
        .replace("MORE", more);
  }

  private static FitReport legInBoard(String edge, String splay, String joint) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Sketch", "unit": "mm", "timber": "ash-white",
          "fit": { "cheek": 0.1, "edge": 0.5, "bottom": 2, "least-wall": 6 },
          "parts": {
            "board": { "form": "seat", "at": [0, 0, 450], "thickness": 40, "outline": { "circle": 340 }, "grain": [1, 0, 0] %s },
            "leg": { "form": "turned", "pair": true, "from": [95, -55, 410], "splay": "%s", "to-z": 0,
              "diameters": [ [0, 30], [200, 44], [430, 28] ] }
          },
          "joints": { "it": { "tenon": "leg top", "into": "board", "kind": "round-tenon", "diameter": 24, "shoulder": "scribed", %s } } }"""
            .formatted(edge, splay, joint));
  }

  @Test
  void aTenonInARoundSeatWithARoundedEdgeIsInsideItOnBothHands() {
    String round =
        ", \"edges\": [ { \"between\": [\"top\", \"any\"], \"shape\": \"round-over\", \"size\": 5 } ]";
    FitReport report = legInBoard(round, "10 deg", "\"length\": 30");
    assertThat(Fitted.checks(report)).doesNotContain("tenon-outside");
    // The cells of the seat are all of its wood.
    var board = report.chair().parts().get(0);
    double cells = dryfit.solid.Cells.volume(board.solid().cells());
    double mesh = dryfit.geometry.MassProperties.of(board.solid().mesh()).volume();
    assertThat(cells).isEqualTo(mesh, within(1e-6 * mesh));
  }

  @Test
  void aLeaningTenonThroughAndFlushIsNotOutside() {
    FitReport report = legInBoard("", "6 deg", "\"through\": true");
    assertThat(Fitted.checks(report)).doesNotContain("tenon-outside");
  }

  @Test
  void theWedgeOfARoundTenonFillsItsOvalAndNoMore() {
    FitReport report =
        legInBoard(
            "",
            "0 deg",
            "\"through\": true, \"proud\": 2, \"wedges\": { \"count\": 1, \"deep\": 30, \"angle\": \"5 deg\" }");
    assertThat(Fitted.checks(report)).doesNotContain("parts-collide");
  }
}
