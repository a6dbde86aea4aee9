package dryfit.document;

import java.util.List;

/**
 * What the maker says about the wood that the parts are cut from. Lengths in millimetres, angles in
 * radians.
 *
 * @param allow what blanks are larger than the finished parts, where a part has no oversize of its
 *     own
 * @param waste the share of wood that is bought on top of the blanks, e.g. 0.3
 * @param kerf width of the saw cut between two blanks
 * @param margin what is left along every edge and end of a board
 * @param grainWithin greatest angle between the grain of a part and that of its board
 * @param have the boards that are there
 */
public record BoardsPlan(
    Allowance allow,
    double waste,
    double kerf,
    double margin,
    double grainWithin,
    List<Board> have) {

  public BoardsPlan {
    have = List.copyOf(have);
  }

  /**
   * Half an inch at each end and an eighth at each edge; no thickness, for planing is in the
   * surfaced thickness already; a kerf of 1/8 in; all common practice, no source.
   */
  public static final BoardsPlan USUAL =
      new BoardsPlan(new Allowance(25.4, 6.35, 0), 0.3, 3.175, 3, Math.toRadians(5), List.of());

  /** What a blank is larger than the finished part, over all: both ends, both edges, both faces. */
  public record Allowance(double length, double width, double thickness) {}

  /**
   * Boards of one size.
   *
   * @param thickness as it lies there
   * @param planed whether it is planed already; otherwise planing takes its share
   * @param slope angle of the grain to its edge, seen from its upper face; above zero if the grain
   *     climbs towards the far edge
   * @param count how many there are
   * @param bad places that no part may touch
   */
  public record Board(
      String name,
      String timber,
      double length,
      double width,
      double thickness,
      boolean planed,
      double slope,
      int count,
      List<Bad> bad,
      String pointer) {
    public Board {
      bad = List.copyOf(bad);
    }
  }

  /** A knot, a check, sapwood: a rectangle from the near left corner of the board's upper face. */
  public record Bad(PartPlan.Spot2 from, PartPlan.Spot2 to) {}

  /** The same with other boards. */
  public BoardsPlan with(List<Board> boards) {
    return new BoardsPlan(allow, waste, kerf, margin, grainWithin, boards);
  }
}
