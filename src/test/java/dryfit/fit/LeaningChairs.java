package dryfit.fit;

/** Small invented chairs whose parts lean, for tests; {@code labels} as in the document. */
public final class LeaningChairs {
  private LeaningChairs() {}

  /**
   * A pair of side rails, 60 by 20, that run 300 back, 30 inward and 40 down between legs square to
   * the chair.
   */
  public static String rail(String labels) {
    return """
        { "format": "dryfit-chair/1", "name": "Rail", "about": "Demo data, invented.", "unit": "mm",
          "labels": "LABELS", "timber": "ash-white",
          "fit": { "cheek": 0.1, "edge": 0.5, "bottom": 2, "least-wall": 0 },
          "parts": {
            "front-leg": { "form": "straight", "pair": true, "section": [80, 40],
              "from": [230, 0, 0], "to": [230, 0, 500] },
            "back-leg": { "form": "straight", "pair": true, "section": [80, 40],
              "from": [196, 340, 0], "to": [196, 340, 500] },
            "rail": { "form": "straight", "pair": true, "section": [60, 20],
              "between": ["front-leg", "back-leg"], "middle": [400, 360], "x": [230, 200] }
          },
          "joints": {
            "front": { "tenon": "rail front", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 20 },
            "back": { "tenon": "rail back", "into": "back-leg", "thickness": 8, "width": 40,
              "length": 20 }
          } }
        """
        .replace("LABELS", labels);
  }

  /** A pair of round legs, rake 14 and splay 8 as the views show them, in a level board. */
  public static String stool(String labels) {
    double y = 300 * Math.tan(Math.toRadians(14));
    double x = 300 * Math.tan(Math.toRadians(8));
    return """
        { "format": "dryfit-chair/1", "name": "Stool", "about": "Demo data, invented.", "unit": "mm",
          "labels": "LABELS", "timber": "ash-white",
          "parts": {
            "leg": { "form": "turned", "pair": true, "diameter": 30,
              "from": [FOOTX, FOOTY, 0], "to": [100, 100, 300] },
            "seat": { "form": "panel", "thickness": 40, "plane": "plan", "at": [0, 0, 320],
              "outline": [[-200, -20], [200, -20], [200, 320], [-200, 320]] }
          },
          "joints": { "leg": { "tenon": "leg top", "into": "seat", "kind": "round-tenon",
            "diameter": 20, "length": 25 } } }
        """
        .replace("LABELS", labels)
        .replace("FOOTX", "" + (100 + x))
        .replace("FOOTY", "" + (100 - y));
  }
}
