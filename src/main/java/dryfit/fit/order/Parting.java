package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.PartPlan;
import dryfit.geometry.Vec3;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * A way to take a set of parts apart in two.
 *
 * @param leaving the parts that leave
 * @param staying the others
 * @param away unit direction in which they leave
 * @param opens the joints that this opens
 * @param worth what speaks against it; the least is chosen
 */
record Parting(BitSet leaving, BitSet staying, Vec3 away, List<Joint> opens, double worth) {
  /** More than any joint: what falls apart in the hand is no assembly. */
  private static final double FALLS_APART = 4;

  /** A frame that has a name is what a maker would glue up beforehand. */
  private static final double FRAME = 0.1;

  /** Front frame against back frame rather than side against side; common practice, no source. */
  private static final double NOT_FRONT_TO_BACK = 0.01;

  /** What has no joint is set down from above, and a pin driven from its head. */
  private static final double NOT_AS_MEANT = 0.25;

  /** Of two ways that are alike, the one that moves fewer parts. */
  private static final double PART = 0.001;

  static Parting of(Pieces pieces, BitSet group, BitSet leaving, Vec3 away) {
    BitSet staying = (BitSet) group.clone();
    staying.andNot(leaving);
    List<Joint> opens = pieces.between(leaving, staying);
    int loose = pieces.loose(leaving) + pieces.loose(staying) - pieces.loose(group) - 1;
    double worth = opens.size() + FALLS_APART * Math.max(0, loose);
    Groups names = pieces.names();
    worth -= names.frame(leaving).isPresent() ? FRAME : 0;
    worth -= names.frame(staying).isPresent() ? FRAME : 0;
    worth +=
        opens.isEmpty()
            ? NOT_AS_MEANT * (1 - push(leaving, staying, away).dot(meant(pieces, leaving, staying)))
            : NOT_FRONT_TO_BACK * (1 - Math.abs(away.y()));
    worth += PART * Math.min(leaving.cardinality(), staying.cardinality());
    return new Parting(leaving, staying, away, opens, worth);
  }

  /**
   * Whether of two groups that part the first is the one that is moved in putting them together.
   */
  static boolean moves(BitSet leaving, BitSet staying) {
    return leaving.cardinality() <= staying.cardinality();
  }

  private static Vec3 push(BitSet leaving, BitSet staying, Vec3 away) {
    return moves(leaving, staying) ? away.negated() : away;
  }

  private static Vec3 meant(Pieces pieces, BitSet leaving, BitSet staying) {
    BitSet moved = moves(leaving, staying) ? leaving : staying;
    Part first = pieces.chair().parts().get(moved.nextSetBit(0));
    return moved.cardinality() == 1 && first.plan() instanceof PartPlan.Pin
        ? first.frame().x()
        : Vec3.UP.negated();
  }

  /** The best way to take a group apart along one of these directions. */
  static Optional<Parting> best(
      Pieces pieces, BitSet group, List<Blocking> ways, List<BitSet> glued) {
    Parting best = null;
    for (Blocking way : ways) {
      BitSet[] with = way.movesWith(group, glued);
      for (int i = group.nextSetBit(0); i >= 0; i = group.nextSetBit(i + 1)) {
        best = better(best, pieces, group, with[i], way.direction());
        BitSet without = (BitSet) group.clone();
        for (int k = group.nextSetBit(0); k >= 0; k = group.nextSetBit(k + 1)) {
          if (with[k].get(i)) {
            without.clear(k);
          }
        }
        best = better(best, pieces, group, without, way.direction());
      }
    }
    return Optional.ofNullable(best);
  }

  /** What leaves a group along one of these directions, whatever it is; empty if nothing does. */
  static Optional<BitSet> any(BitSet group, List<Blocking> ways, List<BitSet> glued) {
    int all = group.cardinality();
    for (Blocking way : ways) {
      for (BitSet with : way.movesWith(group, glued)) {
        if (!with.isEmpty() && with.cardinality() < all) {
          return Optional.of(with);
        }
      }
    }
    return Optional.empty();
  }

  private static Parting better(
      Parting best, Pieces pieces, BitSet group, BitSet leaving, Vec3 away) {
    if (leaving.isEmpty() || leaving.cardinality() == group.cardinality()) {
      return best;
    }
    Parting other = of(pieces, group, leaving, away);
    return best == null || other.worth < best.worth ? other : best;
  }
}
