package dryfit.app;

import dryfit.document.Design;

/**
 * A size that a new chair is begun with. It sets one dimension of a pattern, and whatever follows
 * from it follows.
 *
 * @param which what the maker calls it
 * @param dimension the dimension with its value, its range and its note, millimetres
 */
public record StartSize(Which which, Design.Dimension dimension) {

  /** The sizes there are; a pattern without the dimension does not ask for it. */
  public enum Which {
    SEAT_HEIGHT("seat height", "seatTop"),
    SEAT_WIDTH("seat width", "seatWidth"),
    SEAT_DEPTH("seat depth", "seatDepth"),
    ARM_HEIGHT("arm height", "armHeight");

    private final String spoken;
    private final String dimension;

    Which(String spoken, String dimension) {
      this.spoken = spoken;
      this.dimension = dimension;
    }

    /** What the maker calls it. */
    public String spoken() {
      return spoken;
    }

    /** The name of the dimension it sets. */
    String dimension() {
      return dimension;
    }
  }

  /** What it is, in millimetres; before an answer, what is usual. */
  public double mm() {
    return dimension.value().value();
  }
}
