package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.fit.Finding.Severity;
import org.junit.jupiter.api.Test;

/** Whose limit holds, what exactly at a limit does, and what a waiver can and cannot do. */
class LimitsAndWaiversTest {
  /**
   * A post 50 square and a rail that comes in from the right.
   *
   * @param joint more of the joint, with a comma before it
   * @param top more of the document, with a comma after it
   */
  private static FitReport fit(String joint, String top) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Post", "about": "Demo data, invented.", "unit": "mm",
          "timber": "ash-white", TOP
          "parts": {
            "post": { "form": "straight", "section": [50, 50], "from": [-225, 0, 0],
              "to": [-225, 0, POSTTOP] },
            "rail": { "form": "straight", "section": [60, 24], "from": [200, 0, 270],
              "to": [-200, 0, 270] }
          },
          "joints": { "rail to post": { "tenon": "rail left", "into": "post" JOINT } } }
        """
            .replace("TOP\n", top + "\n")
            .replace("POSTTOP", joint.contains("near the end") ? "302" : "500")
            .replace("JOINT", joint));
  }

  private static String tenon(double thick, double wide, double length) {
    return ", \"thickness\": " + thick + ", \"width\": " + wide + ", \"length\": " + length;
  }

  @Test
  void theJointsOwnLimitComesBeforeTheChairsAndThatBeforeTheUsual() {
    String thin = tenon(10, 40, 43);
    Source usual = fit(thin, "").findings().get(0).source();
    assertThat(usual.kind()).isEqualTo(Source.Kind.COMMON_PRACTICE);
    assertThat(usual.limit()).isEqualTo("least-wall");
    // 50 - 43 - 2 are left.
    assertThat(fit(thin, "\"limits\": { \"least-wall\": 5 },").findings()).isEmpty();
    FitReport own =
        fit(thin + ", \"limits\": { \"least-wall\": 5.5 }", "\"limits\": { \"least-wall\": 5 },");
    assertThat(own.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.limit()).isEqualTo(5.5);
              assertThat(f.margin()).isEqualTo(-0.5, within(1e-3));
              assertThat(f.source().kind()).isEqualTo(Source.Kind.THE_MAKER);
              assertThat(f.source().text()).contains("/joints/rail to post/limits/least-wall");
            });
  }

  @Test
  void aGapAtACheekPassesAtItsLimits() {
    String fit = tenon(10, 40, 30) + ", \"fit\": { \"cheek\": ";
    assertThat(fit(fit + "0.05 }", "").findings()).isEmpty();
    assertThat(Fitted.checks(fit(fit + "0.04 }", ""))).containsExactly("no-glue-room");
    assertThat(fit(fit + "0.3 }", "\"limits\": { \"cheek-gap-most\": 0.3 },").findings()).isEmpty();
  }

  /** Three times as long as thick, or half of the 50 mm of wood it goes into. */
  @Test
  void aShortTenonIsTold() {
    assertThat(fit(tenon(9, 40, 25), "").findings()).isEmpty();
    assertThat(fit(tenon(7, 40, 21), "").findings()).isEmpty();
    assertThat(fit(tenon(9, 40, 24), "").findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.check()).isEqualTo("tenon-short");
              assertThat(f.limit()).isEqualTo(25, within(1e-3));
              assertThat(f.message()).contains("1.0 mm longer");
            });
    assertThat(fit(tenon(9, 40, 24) + ", \"role\": \"locating\"", "").findings()).isEmpty();
  }

  @Test
  void aTenonOutOfProportionIsTold() {
    assertThat(fit(tenon(8, 48, 30), "").findings()).isEmpty();
    assertThat(Fitted.checks(fit(tenon(8, 48.1, 30), ""))).containsExactly("tenon-wide");
    // The rail is 24 thick: a quarter is 6, six tenths are 14.4.
    assertThat(Fitted.checks(fit(tenon(6, 36, 30), ""))).isEmpty();
    assertThat(Fitted.checks(fit(tenon(5.9, 35, 30), ""))).containsExactly("tenon-thin");
    assertThat(Fitted.checks(fit(tenon(14.4, 40, 30), ""))).isEmpty();
    assertThat(Fitted.checks(fit(tenon(14.5, 40, 30), ""))).containsExactly("tenon-thick");
  }

  /** 3/8 in by 1-1/4 at 10 degrees keeps 41 % of its fibres; worked from the grain's drift. */
  @Test
  void aTenonAcrossTheGrainOfItsPartIsTold() {
    double thick = 9.525;
    double length = 31.75;
    String angled =
        tenon(thick, 40, length) + ", \"entry\": [-1, " + Math.tan(Math.toRadians(10)) + ", 0]";
    assertThat(fit(angled, "").findings())
        .filteredOn(f -> f.check().equals("tenon-short-grain"))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("10.00°").contains("41 %"));
    assertThat(Fitted.checks(fit(angled + ", \"limits\": { \"tenon-fibre-least\": 0.41 }", "")))
        .doesNotContain("tenon-short-grain");
  }

  /** A dowel comes out of its post into a strip; only its joint has a name in the document. */
  @Test
  void whatADowelStandsInIsAcceptedByTheDowelsJoint() {
    String doc =
        """
        { "format": "dryfit-chair/1", "name": "Corner", "about": "Demo data, invented.", "unit": "mm",
          "timber": "ash-white", WAIVED
          "parts": {
            "post": { "form": "straight", "section": [50, 50], "from": [-225, 0, 0],
              "to": [-225, 0, 500] },
            "strip": { "form": "straight", "section": [20, 60], "from": [-260, 0, 0],
              "to": [-260, 0, 500] },
            "rail": { "form": "straight", "section": [60, 24], "from": [200, 0, 270],
              "to": [-200, 0, 270] }
          },
          "joints": {
            "rail to post": { "kind": "dowels", "tenon": "rail left", "into": "post",
              "diameter": 8, "length": 60, "own-length": 30, "count": 1 } } }
        """;
    Finding found = collision(doc.replace("WAIVED", ""));
    assertThat(found.joints()).isEmpty();
    assertThat(found.parts()).containsExactly("strip", "rail-to-post-dowel-1");
    assertThat(found.waived()).isEmpty();
    String waived =
        "\"waived\": [ { \"check\": \"parts-collide\", \"joint\": \"rail to post\", \"because\": \"pinned\" } ],";
    assertThat(collision(doc.replace("WAIVED", waived)).waived()).contains("pinned");
  }

  private static Finding collision(String doc) {
    return Fitted.of(doc).findings().stream()
        .filter(f -> f.check().equals("parts-collide"))
        .findFirst()
        .orElseThrow();
  }

  /** The post ends 302 - 290.5 = 11.5 mm above the mortise, and half an inch is wanted. */
  @Test
  void aMortiseNearTheEndOfItsPostIsTold() {
    assertThat(fit(tenon(10, 40, 30) + ", \"note\": \"near the end\"", "").findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.check()).isEqualTo("mortise-near-end");
              assertThat(f.measured()).isEqualTo(11.5, within(1e-3));
              assertThat(f.limit()).isEqualTo(12.7);
            });
  }

  @Test
  void aWaiverForAPartStaysVisible() {
    FitReport report =
        fit(
            tenon(10, 40, 49),
            "\"waived\": [ { \"check\": \"mortise-breaks-out\", \"part\": \"post\","
                + " \"because\": \"a plate covers it\" } ],");
    assertThat(report.findings())
        .filteredOn(f -> f.check().equals("mortise-breaks-out"))
        .singleElement()
        .satisfies(f -> assertThat(f.waived()).contains("a plate covers it"));
    assertThat(report.fits()).isTrue();
  }

  @Test
  void aWaiverThatAcceptsNothingIsTold() {
    FitReport report =
        fit(
            tenon(10, 40, 30),
            "\"waived\": [ { \"check\": \"thin-wall\", \"joint\": \"rail to post\","
                + " \"because\": \"it was thin once\" } ],");
    assertThat(report.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.check()).isEqualTo("waiver-idle");
              assertThat(f.severity()).isEqualTo(Severity.KNOW);
              assertThat(f.pointer()).isEqualTo("/waived/0");
            });
  }

  /** A tenon beside its post meets no wood: nothing of its fit can be measured. */
  @Test
  void aWaiverNeverHidesWhatCouldNotBeMeasured() {
    FitReport report =
        fit(
            tenon(10, 40, 0.2),
            "\"waived\": [ { \"check\": \"could-not-measure\", \"because\": \"no matter\" } ],");
    assertThat(Fitted.checks(report)).contains("could-not-measure", "waiver-idle");
    assertThat(report.findings())
        .filteredOn(f -> f.check().equals("could-not-measure"))
        .allSatisfy(f -> assertThat(f.waived()).isEmpty());
  }
}
