package dryfit.fit.order;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.fit.Fitted;
import org.junit.jupiter.api.Test;

/** A chair of forty parts goes together. Demo data, invented. */
class SpindleBackTest {
  private static final int PAIRS = 15;

  /**
   * Four upright legs and three stretchers under a seat, thirty-one spindles under a crest rail.
   */
  static String document() {
    StringBuilder parts = new StringBuilder();
    StringBuilder joints = new StringBuilder();
    for (int k = 0; k <= PAIRS; k++) {
      String name = k == 0 ? "middle-spindle" : "spindle-" + k;
      String pair = k == 0 ? "" : "\"pair\": true, ";
      int x = 14 * k;
      parts.append(
          """
          , "%s": { "form": "straight", %s"section": { "round": 9 },
              "from": [%d, 400, 460], "to": [%d, 400, 760] }
          """
              .formatted(name, pair, x, x));
      for (String end : new String[] {"top", "bottom"}) {
        joints.append(
            """
            , "%s %s": { "tenon": "%s %s", "into": "%s", "kind": "round-tenon",
                "diameter": 7, "length": 15 }
            """
                .formatted(name, end, name, end, end.equals("top") ? "crest" : "seat"));
      }
    }
    return """
        { "format": "dryfit-chair/1", "name": "Spindle back", "about": "Demo data, invented.",
          "unit": "mm", "timber": "ash-white",
          "fit": { "cheek": 0.1, "edge": 0.5, "bottom": 2, "least-wall": 2 },
          "parts": {
            "seat": { "form": "panel", "thickness": 40, "plane": "plan", "at": [0, 220, 440],
              "grain": [1, 0, 0],
              "outline": [ [-240, -220], [240, -220], [240, 220], [-240, 220] ] },
            "front-leg": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [180, 60, 0], "to": [180, 60, 420] },
            "back-leg": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [180, 340, 0], "to": [180, 340, 420] },
            "side-stretcher": { "form": "straight", "pair": true, "section": [30, 20],
              "between": ["front-leg", "back-leg"], "middle": 150, "centred": 0 },
            "cross-stretcher": { "form": "straight", "section": [26, 16],
              "between": ["side-stretcher right", "side-stretcher left"], "middle": 150, "y": 200 },
            "crest": { "form": "straight", "section": [50, 22],
              "from": [-230, 400, 785], "to": [230, 400, 785] }
            PARTS
          },
          "joints": {
            "front leg": { "tenon": "front-leg top", "into": "seat", "kind": "round-tenon",
              "diameter": 25, "length": 28 },
            "back leg": { "tenon": "back-leg top", "into": "seat", "kind": "round-tenon",
              "diameter": 25, "length": 28 },
            "stretcher front": { "tenon": "side-stretcher front", "into": "front-leg",
              "thickness": 8, "width": 20, "length": 20 },
            "stretcher back": { "tenon": "side-stretcher back", "into": "back-leg",
              "thickness": 8, "width": 20, "length": 20 },
            "cross": { "tenon": "cross-stretcher both", "into": "side-stretcher",
              "thickness": 6, "width": 16, "length": 10 }
            JOINTS
          } }
        """
        .replace("PARTS", parts)
        .replace("JOINTS", joints);
  }

  @Test
  void aChairOfFortyPartsGoesTogetherAndCanBeRehearsed() {
    Assembling order = Assembling.of(Fitted.of(document()).chair());
    assertThat(order.chair().parts()).hasSize(40);
    assertThat(order.possible()).isTrue();
    assertThat(Rehearsal.problems(order)).isEmpty();
  }
}
