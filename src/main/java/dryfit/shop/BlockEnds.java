package dryfit.shop;

import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.geometry.EndCut;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import java.util.Optional;

/**
 * How the two ends of a corner block are sawn. Angles in radians. The block of the other hand has
 * the same ends, sawn the other way round.
 *
 * @param first at the rail that is named first
 */
public record BlockEnds(End first, End second) {

  /**
   * One end.
   *
   * @param cut with the block's upright faces as the wide ones
   */
  public record End(EndCut cut) {
    /** Between a square cut and this one: what a saw's gauge reads that shows 0 when square. */
    public double offSquare() {
      return Math.abs(cut.onNarrowFace());
    }

    /**
     * Between the long face of the block and this end: what a bevel laid to that face reads. It is
     * also the angle between the block and the rail.
     */
    public double fromTheFace() {
      return Math.PI / 2 - offSquare();
    }

    /** How far the blade leans, where a rail stands out of plumb. */
    public double tilt() {
      return Math.abs(cut.onWideFace());
    }
  }

  /** The ends of a part, if it is a corner block. */
  public static Optional<BlockEnds> of(Part part) {
    if (!(part.plan() instanceof PartPlan.CornerBlock)) {
      return Optional.empty();
    }
    return Optional.of(new BlockEnds(end(part, Vec3.RIGHT.negated()), end(part, Vec3.RIGHT)));
  }

  /** The face that looks most along the block. */
  private static End end(Part part, Vec3 out) {
    Plane best = null;
    for (Plane plane : part.bodyCells().get(0).planes()) {
      if (best == null || plane.normal().dot(out) > best.normal().dot(out)) {
        best = plane;
      }
    }
    return new End(new EndCut(best.normal()));
  }
}
