package dryfit.shop.setting;

import java.util.List;

/**
 * What settings depend on and no chair says: bits, and what a maker leaves for fitting.
 * Millimetres.
 *
 * @param drillPoint how far the point of the bit stands out before the edges that cut the hole's
 *     full width
 * @param fits how often an end that is coped or let in at an angle is tried and trimmed
 * @param eachFit how much shorter each of these makes the part
 * @param followers the follower bits at hand
 */
public record Bench(double drillPoint, int fits, double eachFit, List<Follower> followers) {
  private static final double INCH = 25.4;

  /**
   * A flat-bottomed bit, three fits of a thirty-second of an inch, and two follower bits of an inch
   * (common practice, no source).
   */
  public static final Bench USUAL =
      new Bench(
          0,
          3,
          INCH / 32,
          List.of(new Follower(INCH, Bearing.SHANK), new Follower(INCH, Bearing.TIP)));

  public Bench {
    followers = List.copyOf(followers);
  }

  /** Where the bearing of a follower bit sits. */
  public enum Bearing {
    /** Between the cutter and the router. */
    SHANK,
    /** At the free end of the bit. */
    TIP;

    /** As a maker writes it. */
    public String word() {
      return this == SHANK ? "shank" : "tip";
    }
  }

  /**
   * A bit whose bearing follows a template.
   *
   * @param cutter length of its edges, mm
   */
  public record Follower(double cutter, Bearing bearing) {}
}
