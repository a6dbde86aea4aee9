package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Design;
import dryfit.fit.FitReport;
import dryfit.fit.Fitted;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the fit tells of each kind of joint, in words and as JSON; demo data. */
class JointKindsTextTest {
  private static final FitReport REPORT =
      Fitted.of(
          """
          { "format": "dryfit-chair/1", "name": "Kinds", "about": "Demo data.", "unit": "mm",
            "timber": "ash-white",
            "parts": {
              "leg": { "form": "straight", "pair": true, "section": [40, 40], "from": [120, 0, 0],
                "to": [120, 0, 400] },
              "top": { "form": "straight", "section": [60, 20], "between": ["leg right", "leg left"],
                "top": 400 },
              "rail": { "form": "straight", "section": [60, 24], "between": ["leg right", "leg left"],
                "top": 320 },
              "bar": { "form": "straight", "section": [60, 20], "between": ["leg right", "leg left"],
                "top": 220 },
              "foot": { "form": "straight", "section": [40, 20], "between": ["leg right", "leg left"],
                "top": 120 },
              "block": { "form": "straight", "section": [40, 30], "from": [-50, 27, 290],
                "to": [50, 27, 290] } },
            "joints": {
              "bridled": { "tenon": "top both", "into": "leg", "kind": "bridle", "thickness": 10 },
              "dowelled": { "tenon": "rail both", "into": "leg", "kind": "dowels", "diameter": 8,
                "length": 20, "own-length": 30, "count": 2, "spacing": 32 },
              "wedged": { "tenon": "bar both", "into": "leg", "thickness": 8, "width": 40,
                "through": true, "wedges": { "count": 2, "deep": 30, "angle": "1:20" } },
              "lapped": { "tenon": "foot both", "into": "leg", "kind": "lap", "share": 0.4 },
              "screwed": { "tenon": "block middle", "into": "rail", "kind": "screwed",
                "diameter": 4, "length": 42, "slot": 5 } } }
          """);

  private static String block(String title) {
    String text = FitText.of(REPORT, TextStyle.of(Design.LengthUnit.MM));
    return Arrays.stream(text.split("\n\n"))
        .filter(b -> b.startsWith(title))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void wedgesSayHowThickTheyAreAndHowFarTheMortiseOpens() {
    assertThat(block("wedged, both hands").replaceAll("\\s+", " "))
        .contains("2 wedges, 3.00 mm thick at the far face, across the grain")
        .contains("mortise opened by 1.50 mm at each end, tenon spreads by 1.50 mm");
  }

  @Test
  void dowelsAreToldInBothParts() {
    assertThat(block("dowelled, both hands  (dowels)")).contains("2 dowels").contains("22.0 mm");
    assertThat(block("dowelled, both hands, in rail"))
        .contains("the same pieces, into rail")
        .contains("32.0 mm");
  }

  @Test
  void lapSaysItsShare() {
    assertThat(block("lapped, both hands  (lap)")).contains("40 % of the shared depth");
  }

  @Test
  void screwsSayPilotAndSlotAndContact() {
    assertThat(block("screwed").replaceAll("\\s+", " "))
        .contains("block, to rail")
        .contains("pilot 2.8 mm")
        .contains("slot 5.0 mm across the grain")
        .contains("contact");
  }

  @Test
  void theJsonOfEveryKindFollowsItsSchema() {
    byte[] bytes = FitJson.bytes(REPORT);
    assertThat(
            Schemas.problems("fit-report-1.schema.json", new String(bytes, StandardCharsets.UTF_8)))
        .isEmpty();
    JsonNode joints = JsonMapper.shared().readTree(bytes).get("joints");
    for (JsonNode joint : joints) {
      if (joint.get("label").asString().equals("dowelled, right")) {
        assertThat(joint.get("count").asInt()).isEqualTo(2);
        assertThat(joint.get("pieces").get(0).asString()).isEqualTo("dowelled-dowel-1 right");
        assertThat(joint.get("slant").isNull()).isTrue();
      }
      if (joint.get("label").asString().equals("wedged, right")) {
        assertThat(joint.get("wedges").get("spread").asDouble()).isEqualTo(1.5);
      }
    }
    assertThat(REPORT.fits()).isTrue();
  }
}
