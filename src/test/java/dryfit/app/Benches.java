package dryfit.app;

/** A small document for the tests, demo data: a post on either side of a board. */
final class Benches {
  private Benches() {}

  static final String TEXT =
      """
      {
        "format": "dryfit-chair/1",
        "name": "Two posts", "about": "Demo data.",
        "unit": "mm", "timber": "ash-white",

        "dimensions": {
          "height":   { "value": 440, "from": 380, "to": 480, "note": "of the posts" },
          "width": 320,
          "apart": "width - 40"
        },
        "parts": {
          "post-right": { "form": "straight", "section": [40, 40], "from": ["apart/2", 0, 0], "to": ["apart/2", 0, "height"] },
          "post-left":  { "form": "straight", "section": [40, 40], "from": ["-apart/2", 0, 0], "to": ["-apart/2", 0, "height"] }
        },
        "variants": {
          "low": { "height": 400 }
        }
      }
      """;
}
