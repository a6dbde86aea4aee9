package dryfit.fit.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The parts of a chair that hold each other against every move we know. What can leave a set can
 * leave any smaller set, so what is left when nothing more comes off holds a lock, and a part
 * without which nothing is left belongs to it.
 */
final class Locks {
  private final Pieces pieces;
  private final TwoWays corners;
  private final List<Blocking> ways;
  private final List<BitSet> glued;
  private final List<BitSet> freed;

  /**
   * @param glued groups that only move as one
   * @param freed groups that are taken as free among themselves
   */
  Locks(
      Pieces pieces, TwoWays corners, List<Blocking> ways, List<BitSet> glued, List<BitSet> freed) {
    this.pieces = pieces;
    this.corners = corners;
    this.glued = glued;
    this.freed = freed;
    this.ways = freed.isEmpty() ? ways : ways.parallelStream().map(w -> w.freed(freed)).toList();
  }

  /**
   * All locks of a group, each with the fewest parts that hold each other: found one by one, those
   * before taken as free, so that a lock that follows only from another is not told.
   */
  static List<BitSet> of(
      Pieces pieces,
      TwoWays corners,
      BitSet group,
      List<Blocking> ways,
      List<BitSet> glued,
      List<BitSet> known) {
    List<BitSet> freed = new ArrayList<>(known);
    List<BitSet> found = new ArrayList<>();
    Optional<BitSet> next = new Locks(pieces, corners, ways, glued, freed).core(group);
    while (next.isPresent()) {
      found.add(next.get());
      freed.add(next.get());
      next = new Locks(pieces, corners, ways, glued, freed).core(group);
    }
    return found;
  }

  /** What is left of a group when all that can come off it has come off; empty if all does. */
  Optional<BitSet> within(BitSet group) {
    if (isOne(group, glued)) {
      return Optional.empty();
    }
    for (BitSet half : apart(group)) {
      Optional<BitSet> left = half.equals(group) ? Optional.of(group) : within(half);
      if (left.isPresent()) {
        return left;
      }
    }
    return Optional.empty();
  }

  /** The pieces that a group comes apart into by one move; itself if there is none. */
  private List<BitSet> apart(BitSet group) {
    Optional<BitSet> leaving =
        Parting.any(group, ways, glued)
            .or(() -> Tipping.out(pieces, group, glued, freed).map(Tipping.Tipped::piece));
    if (leaving.isPresent()) {
      return halves(group, leaving.get());
    }
    return Together.apart(pieces, group, glued, freed)
        .map(flights -> flights.stream().map(Together.Flight::parts).toList())
        .or(() -> corners.out(group, glued, freed).map(c -> halves(group, c.piece())))
        .orElse(List.of(group));
  }

  private static List<BitSet> halves(BitSet group, BitSet leaving) {
    BitSet staying = (BitSet) group.clone();
    staying.andNot(leaving);
    return List.of(leaving, staying);
  }

  private Optional<BitSet> core(BitSet group) {
    return within(group).map(this::fewest);
  }

  private BitSet fewest(BitSet locked) {
    BitSet core = locked;
    // What has no joint first, then what is written last: what is left tells most to a maker.
    List<Integer> order =
        locked.stream()
            .boxed()
            .sorted(Comparator.comparing(pieces::jointed).thenComparing(i -> -i))
            .toList();
    for (int part : order) {
      BitSet fewer = (BitSet) core.clone();
      fewer.clear(part);
      glued.stream().filter(g -> g.get(part)).forEach(fewer::andNot);
      core = core.get(part) ? within(fewer).orElse(core) : core;
    }
    return core;
  }

  static boolean isOne(BitSet group, List<BitSet> glued) {
    return group.cardinality() < 2 || glued.stream().anyMatch(g -> holdsAll(g, group));
  }

  private static boolean holdsAll(BitSet outer, BitSet inner) {
    BitSet rest = (BitSet) inner.clone();
    rest.andNot(outer);
    return rest.isEmpty();
  }
}
