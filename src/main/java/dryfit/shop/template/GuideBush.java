package dryfit.shop.template;

/**
 * A guide bush round a router cutter. The bush runs along the template, the cutter cuts inside it,
 * so that the template's edge stands back from the cut by half of what the bush is thicker.
 *
 * @param outside diameter of the bush where it meets the template, mm
 * @param cutter diameter of the cutter, mm
 */
public record GuideBush(double outside, double cutter) {
  /**
   * @throws IllegalArgumentException if the cutter is not thinner than the bush
   */
  public GuideBush {
    if (!(cutter > 0) || !(outside > cutter)) {
      throw new IllegalArgumentException(
          "a cutter of " + cutter + " mm does not go through a bush of " + outside + " mm");
    }
  }

  /** How far the template is smaller than the part on every side, and its openings larger. */
  public double offset() {
    return (outside - cutter) / 2;
  }
}
