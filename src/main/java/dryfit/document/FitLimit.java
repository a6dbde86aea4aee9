package dryfit.document;

import dryfit.document.Quantity.Kind;

/**
 * Everything the dry fit holds a measure against: the word for it in a document, what it measures,
 * the usual value, and where that comes from. A maker may set each one, for a chair or for a joint.
 * Exactly at a limit passes.
 */
public enum FitLimit {
  LEAST_WALL("least-wall", Kind.LENGTH, 6, true, "about a quarter inch of wood beside a mortise"),
  CHEEK_GAP_LEAST(
      "cheek-gap-least",
      Kind.LENGTH,
      0.05,
      true,
      "half a sheet of paper at each cheek; water glue swells a fit without a gap"),
  CHEEK_GAP_MOST(
      "cheek-gap-most",
      Kind.LENGTH,
      0.13,
      true,
      true,
      "breaking tests of over 150 joints at Purdue University, Fine Woodworking, Jan/Feb 2017:"
          + " a gap of up to 0.13 mm (0.005 in) a side; at 0.25 mm (0.010 in) strength fell by"
          + " 21 %"),
  SHOULDER_GAP(
      "shoulder-gap", Kind.LENGTH, 25.4 / 64, true, "a shoulder gap shows from about 1/64 in"),
  TENON_LENGTH_LEAST(
      "tenon-length-least",
      Kind.NUMBER,
      3,
      true,
      "a tenon is three to five times as long as it is thick, or half to two thirds of the wood"
          + " it goes into"),
  TENON_WIDTH_MOST(
      "tenon-width-most",
      Kind.NUMBER,
      6,
      true,
      "a tenon wider than about six times its thickness is split in two"),
  TENON_SHARE_LEAST(
      "tenon-share-least",
      Kind.NUMBER,
      0.25,
      true,
      "a tenon is about a third of its part's thickness, and rather thicker than thinner"),
  TENON_SHARE_MOST(
      "tenon-share-most",
      Kind.NUMBER,
      0.6,
      true,
      "a tenon is about a third of its part's thickness; shoulders need wood too"),
  TENON_FIBRE_LEAST(
      "tenon-fibre-least",
      Kind.NUMBER,
      0.5,
      true,
      "half the fibres of a tenon run whole from its shoulder to its tip"),
  MORTISE_END_WOOD(
      "mortise-end-wood",
      Kind.LENGTH,
      12.7,
      true,
      true,
      "at least half an inch of leg above a mortise, or the short grain there splits out:"
          + " furnituremaking.us, A sturdy leg-to-apron joint"),
  POST_WALL(
      "post-wall",
      Kind.LENGTH,
      6.35,
      true,
      "a quarter inch of wood beside a hole in a small post; two posts of 1-3/8 in are reported"
          + " to have split at tight round tenons"),
  SMALL_POST("small-post", Kind.LENGTH, 38.1, true, "up to 1-1/2 in a post counts as small"),
  SIDE_RAIL_TENON(
      "side-rail-tenon",
      Kind.LENGTH,
      38.1,
      true,
      "1-1/2 by 1-1/2 in of tenon at a side rail that no stretcher and no corner block helps"),
  ARM_HOLE_WALL(
      "arm-hole-wall",
      Kind.LENGTH,
      12.7,
      true,
      true,
      "half an inch of solid wood round a hole in an arm: furnituremaking.us, Installing the arm"),
  ARM_TENON_LEAST(
      "arm-tenon-least",
      Kind.LENGTH,
      15.875,
      true,
      "arms on tenons of 5/8 in and less are reported to come off when a chair is lifted by them"),
  GRAIN_SLOPE(
      "grain-slope",
      Kind.ANGLE,
      Math.atan(1 / 5.0),
      false,
      true,
      "Wood Handbook, FPL-GTR-190 (2010), table 5-12, quoted from memory: at a slope of grain of"
          + " 1 in 5 about 55 % of the bending strength is left; the limit itself is the program's"
          + " choice"),
  FIBRE_LEAST(
      "fibre-least",
      Kind.LENGTH,
      75,
      false,
      "three inches of unbroken fibre across the weakest place of a curved part"),
  REVEAL_DIFFERENCE(
      "reveal-difference",
      Kind.LENGTH,
      25.4 / 32,
      false,
      "reveals that should be alike: 3/32 in between two ends is reported as plainly seen, and a"
          + " third of that is taken here"),
  OUT_OF_SQUARE(
      "out-of-square",
      Kind.LENGTH,
      25.4 / 16,
      false,
      "diagonals of a frame within 1/16 in of each other"),
  OUT_OF_LEVEL(
      "out-of-level", Kind.LENGTH, 25.4 / 32, false, "a seat level from side to side to 1/32 in"),
  ROCK("rock", Kind.LENGTH, 25.4 / 64, false, "a chair rocks when a foot is 1/64 in off the floor");

  private final String word;
  private final Kind kind;
  private final double usual;
  private final boolean ofJoint;
  private final boolean published;
  private final String basis;

  FitLimit(String word, Kind kind, double usual, boolean ofJoint, String basis) {
    this(word, kind, usual, ofJoint, false, basis);
  }

  FitLimit(String word, Kind kind, double usual, boolean ofJoint, boolean published, String basis) {
    this.word = word;
    this.kind = kind;
    this.usual = usual;
    this.ofJoint = ofJoint;
    this.published = published;
    this.basis = basis;
  }

  /** The word in the document. */
  public String word() {
    return word;
  }

  public Kind kind() {
    return kind;
  }

  /** What holds if the maker says nothing: millimetres, radians or a plain number. */
  public double usual() {
    return usual;
  }

  /** Whether a single joint may have its own. */
  public boolean ofJoint() {
    return ofJoint;
  }

  /** Whether the usual value is published, and not only common practice. */
  public boolean published() {
    return published;
  }

  /** Where the usual value comes from. */
  public String basis() {
    return basis;
  }
}
