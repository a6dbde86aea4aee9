package dryfit.fit.loop;

/** Frames small enough to be worked out by hand; demo data, invented. */
public final class Frames {
  private Frames() {}

  private static final String HEAD =
      """
      { "format": "dryfit-chair/1", "name": "Frame", "about": "Demo data, invented.", "unit": "mm",
        "timber": "ash-white",
      """;

  /**
   * Two legs 400 mm apart between their faces, a rail and a stretcher whose middles are 400 mm
   * apart.
   */
  public static String rectangle(String measured) {
    return HEAD
        + """
          "parts": {
            "leg": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [220, 0, 0], "to": [220, 0, 500] },
            "rail": { "form": "straight", "section": [60, 22],
              "between": ["leg right", "leg left"], "middle": 450 },
            "stretcher": { "form": "straight", "section": [40, 22],
              "between": ["leg right", "leg left"], "middle": 50 } },
          "joints": {
            "rail to leg": { "tenon": "rail both", "into": "leg", "thickness": 8, "width": 40, "length": 20 },
            "stretcher to leg": { "tenon": "stretcher both", "into": "leg", "thickness": 8, "width": 30,
              "length": 20 } },
          "measured": [MEASURED] }
        """
            .replace("MEASURED", measured);
  }

  /**
   * A seat frame: legs 40 mm square, their middles 400 mm apart in front, 320 mm behind, and 340 mm
   * from front to back, so that each side rail goes 40 sideways on 340.
   */
  public static String trapezoid(String measured) {
    return HEAD
        + """
          "parts": {
            "front-leg": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [200, 0, 0], "to": [200, 0, 440] },
            "back-leg": { "form": "straight", "pair": true, "section": [40, 40],
              "from": [160, 340, 0], "to": [160, 340, 440] },
            "front-rail": { "form": "straight", "section": [60, 22],
              "between": ["front-leg right", "front-leg left"], "top": 430 },
            "back-rail": { "form": "straight", "section": [60, 22],
              "between": ["back-leg right", "back-leg left"], "top": 430 },
            "side-rail": { "form": "straight", "pair": true, "section": [60, 22],
              "between": ["front-leg", "back-leg"], "top": 430 } },
          "joints": {
            "front": { "tenon": "front-rail both", "into": "front-leg", "thickness": 8, "width": 40, "length": 12 },
            "back": { "tenon": "back-rail both", "into": "back-leg", "thickness": 8, "width": 40, "length": 12 },
            "side in front": { "tenon": "side-rail front", "into": "front-leg", "thickness": 8, "width": 40,
              "length": 12 },
            "side behind": { "tenon": "side-rail back", "into": "back-leg", "thickness": 8, "width": 40,
              "length": 12 } },
          "measured": [MEASURED] }
        """
            .replace("MEASURED", measured);
  }

  public static String part(String name, String what, double value) {
    return "{\"part\": \"%s\", \"what\": \"%s\", \"value\": %s}"
        .formatted(name, what, Double.toString(value));
  }

  public static String joint(String name, String hand, String what, String value) {
    return "{\"joint\": \"%s\", \"hand\": \"%s\", \"what\": \"%s\", \"value\": \"%s\"}"
        .formatted(name, hand, what, value);
  }
}
