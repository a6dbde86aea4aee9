package dryfit.document;

import dryfit.document.PartPlan.PartRef;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Wood that is taken off a part of any form once its shape is known, and wood that is added to its
 * blank. Lengths in millimetres.
 *
 * @param foot where the lower end is cut level
 * @param head where the upper end is cut level
 * @param rebates steps cut along an edge
 * @param notch where it is cut round other parts that stand up through it
 * @param oversize what the blank is larger than the finished shape
 */
public record PartCuts(
    Optional<Foot> foot,
    Optional<Head> head,
    List<Rebate> rebates,
    Optional<Notch> notch,
    Oversize oversize) {

  public PartCuts {
    rebates = List.copyOf(rebates);
  }

  /** A part that is only what its form says. */
  public static final PartCuts NONE =
      new PartCuts(
          Optional.empty(), Optional.empty(), List.of(), Optional.empty(), new Oversize(0, 0));

  /**
   * The lower end cut parallel to the floor, whichever way the part leans.
   *
   * @param z height of the cut above the floor
   * @param ease size of the chamfer round the foot, up and inward; 0 for none
   */
  public record Foot(double z, double ease, String pointer) {}

  /**
   * The upper end cut parallel to the floor, whichever way the part leans.
   *
   * @param z height of the cut above the floor; empty for that of the part's middle line at its
   *     upper end
   */
  public record Head(OptionalDouble z, String pointer) {}

  /**
   * A step along one edge of a straight part.
   *
   * @param opens the face it opens to and is {@code deep} from
   * @param beside the other face of that edge, from which it is {@code wide}
   */
  public record Rebate(String opens, String beside, double wide, double deep, String pointer) {}

  /**
   * Cut round other parts with room to spare.
   *
   * @param gap room along the grain, and all round a part that has none in its face
   * @param across room across the grain, where wood moves
   */
  public record Notch(List<PartRef> round, double gap, double across, String pointer) {
    public Notch {
      round = List.copyOf(round);
    }
  }

  /**
   * What a blank is larger than the finished shape.
   *
   * @param sides on each of the four long faces
   * @param ends at each end
   */
  public record Oversize(double sides, double ends) {}
}
