package dryfit.fit.order;

import dryfit.fit.order.Step.Move;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** Takes a chair apart and keeps the steps of putting it together again. */
final class Planner {
  private final Pieces pieces;
  private final List<BitSet> glued;
  private final List<Blocking> ways;
  private final List<Step> steps = new ArrayList<>();
  private final List<Stuck> stuck = new ArrayList<>();

  Planner(Pieces pieces, List<BitSet> glued) {
    this.pieces = pieces;
    this.glued = glued;
    this.ways = Directions.of(pieces).parallelStream().map(d -> Blocking.along(d, pieces)).toList();
  }

  List<Step> steps() {
    return steps;
  }

  List<Stuck> stuck() {
    return stuck;
  }

  void plan() {
    BitSet all = new BitSet();
    all.set(0, pieces.count());
    apart(all);
  }

  private void apart(BitSet group) {
    if (isOne(group)) {
      return;
    }
    Optional<Parting> found = Parting.best(pieces, group, ways, glued);
    if (found.isEmpty()) {
      stuck.add(stuck(group));
      return;
    }
    Parting parting = found.get();
    boolean fewer = parting.leaving().cardinality() <= parting.staying().cardinality();
    BitSet moved = fewer ? parting.leaving() : parting.staying();
    BitSet onto = fewer ? parting.staying() : parting.leaving();
    apart(onto);
    apart(moved);
    steps.add(
        new Step(
            Step.Kind.STRAIGHT,
            Assembling.numbers(onto),
            List.of(
                new Move(
                    Assembling.numbers(moved),
                    fewer ? parting.away().negated() : parting.away(),
                    1,
                    Optional.empty())),
            parting.opens(),
            Assembling.numbers(newlyHeld(group, moved, onto))));
  }

  private boolean isOne(BitSet group) {
    return group.cardinality() < 2 || glued.stream().anyMatch(g -> holdsAll(g, group));
  }

  private static boolean holdsAll(BitSet outer, BitSet inner) {
    BitSet rest = (BitSet) inner.clone();
    rest.andNot(outer);
    return rest.isEmpty();
  }

  /** Parts without joints that could be taken out before two groups met, and now cannot. */
  private BitSet newlyHeld(BitSet group, BitSet one, BitSet other) {
    BitSet held = new BitSet();
    for (int i = group.nextSetBit(0); i >= 0; i = group.nextSetBit(i + 1)) {
      int part = i;
      BitSet before = one.get(i) ? one : other;
      boolean jointed =
          pieces.chair().joints().stream()
              .anyMatch(j -> j.tenoned() == part || j.mortised() == part);
      if (!jointed && captive(i, group) && !captive(i, before)) {
        held.set(i);
      }
    }
    return held;
  }

  /** Whether a part cannot leave a group alone, neither along any direction nor against it. */
  private boolean captive(int part, BitSet group) {
    for (Blocking way : ways) {
      BitSet[] with = way.movesWith(group, glued);
      boolean holdsOther = group.stream().anyMatch(k -> k != part && with[k].get(part));
      if (with[part].cardinality() == 1 || !holdsOther) {
        return false;
      }
    }
    return true;
  }

  private Stuck stuck(BitSet group) {
    BitSet core = (BitSet) group.clone();
    for (int i = group.nextSetBit(0); i >= 0; i = group.nextSetBit(i + 1)) {
      int part = i;
      BitSet fewer = (BitSet) core.clone();
      fewer.clear(i);
      glued.stream().filter(g -> g.get(part)).forEach(fewer::andNot);
      if (!isOne(fewer) && Parting.best(pieces, fewer, ways, glued).isEmpty()) {
        core = fewer;
      }
    }
    List<List<Integer>> collide = new ArrayList<>();
    for (int i = core.nextSetBit(0); i >= 0; i = core.nextSetBit(i + 1)) {
      for (int k = core.nextSetBit(i + 1); k >= 0; k = core.nextSetBit(k + 1)) {
        if (pieces.collide(i, k)) {
          collide.add(List.of(i, k));
        }
      }
    }
    return new Stuck(Assembling.numbers(core), pieces.between(core, core), collide);
  }
}
