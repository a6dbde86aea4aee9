package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Checks that need more of a chair than one joint. */
class ChairChecksTest {
  private static String frame(String length) {
    return Fitted.frame("2 in", "3/4 in", "1/4 in", "1/4 in", length + " in", "");
  }

  /** A field pattern: side rails on tenons under 1-1/2 by 1-1/2 in, with nothing below. */
  @Test
  void aSideRailOnSmallTenonsAloneIsTold() {
    FitReport report = Fitted.of(frame("1"));
    assertThat(report.findings())
        .filteredOn(f -> f.check().equals("side-rail-joint"))
        .hasSize(4)
        .anySatisfy(f -> assertThat(f.measured()).isEqualTo(25.4, within(1e-6)));
    assertThat(
            Fitted.of(frame("1-1/2")).findings().stream()
                .filter(f -> f.check().equals("side-rail-joint"))
                .flatMap(f -> f.joints().stream()))
        .allMatch(j -> j.startsWith("rear"));
  }

  @Test
  void aStretcherBelowHelpsASideRail() {
    String stretcher =
        frame("1")
            .replace(
                "\"side-rail\": {",
                "\"stretcher\": { \"form\": \"straight\", \"pair\": true, \"section\": [1, 0.75],"
                    + " \"between\": [\"front-leg\", \"back-leg\"], \"top\": 5 }, \"side-rail\": {")
            .replace(
                "\"rear\": {",
                "\"low front\": { \"tenon\": \"stretcher front\", \"into\": \"front-leg\","
                    + " \"thickness\": \"1/4 in\", \"width\": 0.75, \"length\": 1 },"
                    + "\"low back\": { \"tenon\": \"stretcher back\", \"into\": \"back-leg\","
                    + " \"thickness\": \"1/4 in\", \"width\": 0.75, \"length\": 1 }, \"rear\": {");
    assertThat(Fitted.checks(Fitted.of(stretcher))).doesNotContain("side-rail-joint");
  }

  private static FitReport arm(double wide, double length, String joint) {
    return Fitted.of(
        """
        { "format": "dryfit-chair/1", "name": "Arm", "about": "Demo data, invented.", "unit": "in",
          "timber": "oak-white", "parts": {
            "post": { "form": "straight", "section": [1.5, 1.5], "from": [9, 0, 0], "to": [9, 0, 24] },
            "arm": { "form": "straight", "section": [0.875, WIDE], "from": [9, -4, 24.4375],
              "to": [9, 16, 24.4375] } },
          "joints": { "post to arm": { "tenon": "post top", "into": "arm", "kind": "round-tenon",
            "diameter": 0.75, LENGTH JOINT } } }
        """
            .replace("WIDE", "" + wide)
            .replace("LENGTH", length > 0 ? "\"length\": " + length : "\"through\": true")
            .replace("JOINT", joint));
  }

  /**
   * Half an inch of solid wood round a post hole in an arm (furnituremaking.us, Installing the
   * arm).
   */
  @Test
  void aHoleNearTheEdgeOfAnArmIsTold() {
    String shallow = ", \"fit\": { \"bottom\": 0.02, \"cheek\": 0.004, \"least-wall\": 0.05 }";
    assertThat(Fitted.checks(arm(2, 0.65, shallow))).doesNotContain("arm-hole-near-edge");
    assertThat(arm(1.7, 0.65, shallow).findings())
        .filteredOn(f -> f.check().equals("arm-hole-near-edge"))
        .singleElement()
        // (1.7 - 0.758) / 2 in, and facets that may stand a little outside the circle.
        .satisfies(f -> assertThat(f.measured() / 25.4).isEqualTo(0.471, within(0.003)));
  }

  /** A flat arm 7/8 thick on 5/8 of tenon came off when the chair was lifted: a field report. */
  @Test
  void aShortTenonInAnArmIsToldAndOneThatGoesThroughIsNot() {
    String shallow = ", \"fit\": { \"bottom\": 0.02, \"cheek\": 0.004, \"least-wall\": 0.05 }";
    assertThat(arm(4, 0.625, shallow).findings())
        .filteredOn(f -> f.check().equals("arm-tenon-short"))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("wedge"));
    assertThat(Fitted.checks(arm(4, 0.64, shallow))).doesNotContain("arm-tenon-short");
    assertThat(Fitted.checks(arm(4, 0, shallow))).doesNotContain("arm-tenon-short");
  }

  /**
   * A rail meant to sit 11/32 in back came 3/32 nearer at one end, plainly seen: a field report,
   * toysmith.wordpress.com, June 2007.
   */
  @Test
  void aRailThatComesNearerAtOneEndIsTold() {
    String seat =
        Stood.seat(
            new Stood.Leg("front-left", -9, -3 / 32.0, 0),
            new Stood.Leg("front-right", 9, 0, 0),
            new Stood.Leg("back-right", 9, 17, 0),
            new Stood.Leg("back-left", -9, 17, 0),
            "");
    // Placed from point to point, the rail cannot follow the leg that has moved.
    String straight =
        seat.replaceFirst(
            "\"between\": \\[\"front-left\", \"front-right\"\\], \"top\": 16",
            "\"from\": [-8.25, -0.03125, 14.5], \"to\": [8.25, -0.03125, 14.5]");
    assertThat(Fitted.of(seat).findings())
        .filteredOn(f -> f.check().equals("reveal-uneven"))
        .isEmpty();
    assertThat(Fitted.of(straight).findings())
        .filteredOn(f -> f.check().equals("reveal-uneven"))
        .singleElement()
        .satisfies(f -> assertThat(f.measured() / 25.4).isEqualTo(3 / 32.0, within(1e-4)));
  }

  private static List<String> cutFirst(String frame) {
    return Fitted.of(frame).whole().mortises().stream()
        .filter(m -> !m.plug().isEmpty())
        .map(ChairMeasure.MortisePair::first)
        .toList();
  }

  /**
   * Equally wide, the one that is written first is cut first, for both hands, though the other is
   * deeper by a hair, or by much; a wider one goes before it, and of equally wide ones the thicker.
   */
  @Test
  void whichMortiseIsCutFirstDoesNotHangOnAHair() {
    String frame = Fitted.frame("1-1/2 in", "3/4 in", "0 in", "1/4 in", "1 in", "");
    String side = "\"width\": 2, \"length\": \"length\" },\n    \"rear\"";
    assertThat(frame).contains(side);
    for (String changed :
        List.of(
            frame,
            frame.replace(side, side.replace("\"length\" }", "\"length + 0.001\" }")),
            frame.replace(side, side.replace("\"length\" }", "\"length + 0.2\" }")),
            frame.replace(side, side.replace("2,", "2.001,")))) {
      assertThat(cutFirst(changed)).containsExactly("front, right", "front, left");
    }
    assertThat(cutFirst(frame.replace(side, side.replace("2,", "2.1,"))))
        .containsExactly("side, right", "side, left");
    String thicker =
        frame.replace(
            "\"side\": { \"tenon\": \"side-rail front\", \"into\": \"front-leg\", \"thickness\": \"tenon\"",
            "\"side\": { \"tenon\": \"side-rail front\", \"into\": \"front-leg\", \"thickness\": \"3/8 in\"");
    assertThat(cutFirst(thicker)).containsExactly("side, right", "side, left");
  }

  /** The wider one is cut first, and the block is as large as that mortise. */
  @Test
  void mortisesThatMeetAreToldWithTheBlockThatFillsTheFirst() {
    FitReport report =
        Fitted.of(
            Fitted.frame("1-1/2 in", "3/4 in", "0 in", "1/4 in", "1 in", "")
                .replace("\"bottom\": 0,", "\"bottom\": 0.0625,"));
    assertThat(report.findings())
        .filteredOn(f -> f.check().equals("mortises-meet"))
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.message()).contains("first and fill it with a block"));
    ChairMeasure.MortisePair pair =
        report.whole().mortises().stream()
            .filter(m -> !m.plug().isEmpty())
            .findFirst()
            .orElseThrow();
    assertThat(pair.plug().get(0) / 25.4).isEqualTo(0.258, within(1e-3));
    assertThat(pair.plug().get(1) / 25.4).isEqualTo(2.04, within(1e-3));
    assertThat(pair.plug().get(2) / 25.4).isEqualTo(1.0625, within(1e-3));
  }
}
