package dryfit.shop;

/** A small invented chair: arms of 12 1/2 in from the shoulder on, one edge of each eased. */
public final class EasedArm {
  /**
   * Between 1 in from each end; cut into cells along that edge, the arm's outline is made of many
   * pieces whose corners lie on each other's sides.
   */
  public static final String JSON =
      """
      { "format": "dryfit-chair/1", "name": "Arm", "unit": "in", "timber": "oak-white",
        "parts": {
          "post": { "form": "turned", "pair": true, "diameter": "1 1/4 in",
            "from": [7, 13.992, 17.25], "to": [7, 17.859, 34] },
          "stump": { "form": "turned", "pair": true, "from": [8.5, 5, 17.25], "rake": "5 deg", "splay": "-6 deg", "to-z": 25.5, "diameter": 1 },
          "arm": { "form": "sawn", "pair": true, "between": ["post", "stump"], "underside": 25.5, "thickness": "1 in",
            "plan": { "inside": [ [0, -0.5], [1, -0.5], {"curve-through": [ [5, -0.75], [10, -1.25], [12.5, -1] ] } ],
                      "outside": [ [0, 0.5], [1, 0.5], {"curve-through": [ [5, 0.9], [10, 1.4], [12.5, 1] ] } ] },
            "edges": [ { "between": ["top", "outside"], "shape": "eased", "size": "1/8 in", "leave-ends": 1 } ] } },
        "joints": {
          "stump to arm": { "tenon": "stump top", "into": "arm", "kind": "round-tenon", "diameter": "5/8 in", "length": "5/8 in" },
          "arm to post": { "tenon": "arm back", "into": "post", "kind": "round-tenon", "diameter": "5/8 in", "length": "3/4 in", "shoulder": "scribed" } } }""";

  private EasedArm() {}
}
