package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.fit.order.Step.Move;
import dryfit.fit.order.Tipping.Tipped;
import dryfit.fit.order.Together.Flight;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

/** Takes a chair apart and keeps the steps of putting it together again. */
final class Planner {
  private final Pieces pieces;
  private final List<BitSet> glued;
  private final List<Blocking> ways;
  private final List<Step> steps = new ArrayList<>();
  private final List<Stuck> stuck = new ArrayList<>();
  private final IntConsumer settled;
  private int parts;

  /**
   * @param settled is told how many parts need no more taking apart, whenever it is more
   */
  Planner(Pieces pieces, List<BitSet> glued, IntConsumer settled) {
    this.settled = settled;
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
      settle(group);
      return;
    }
    Optional<Parting> found = Parting.best(pieces, group, ways, glued);
    if (found.isEmpty()) {
      if (!tipped(group) && !together(group)) {
        stuck.add(stuck(group));
        settle(group);
      }
      return;
    }
    Parting parting = found.get();
    boolean fewer = Parting.moves(parting.leaving(), parting.staying());
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

  private void settle(BitSet group) {
    parts += group.cardinality();
    settled.accept(parts);
  }

  private boolean tipped(BitSet group) {
    Optional<Tipped> found = Tipping.out(pieces, group, glued);
    if (found.isEmpty()) {
      return false;
    }
    BitSet piece = found.get().piece();
    BitSet rest = (BitSet) group.clone();
    rest.andNot(piece);
    apart(rest);
    apart(piece);
    Move move =
        new Move(
            Assembling.numbers(piece),
            found.get().away().negated(),
            1,
            Optional.of(found.get().tip()));
    steps.add(
        new Step(
            Step.Kind.TIPPED,
            Assembling.numbers(rest),
            List.of(move),
            pieces.between(piece, rest),
            Assembling.numbers(newlyHeld(group, piece, rest))));
    return true;
  }

  private boolean together(BitSet group) {
    Optional<List<Flight>> found = Together.apart(pieces, group, glued);
    if (found.isEmpty()) {
      return false;
    }
    List<Flight> flights = found.get();
    List<Move> moves = new ArrayList<>();
    List<Joint> closes = new ArrayList<>(pieces.between(group, group));
    for (Flight f : flights) {
      apart(f.parts());
      closes.removeAll(pieces.between(f.parts(), f.parts()));
      double share = f.speed().length();
      if (share > 0) {
        moves.add(
            new Move(
                Assembling.numbers(f.parts()),
                f.speed().negated().unit(),
                share,
                Optional.empty()));
      }
    }
    List<Integer> onto = Assembling.numbers(flights.get(0).parts());
    steps.add(new Step(Step.Kind.TOGETHER, onto, moves, closes, List.of()));
    return true;
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
      BitSet before = one.get(i) ? one : other;
      if (!jointed(i) && captive(i, group) && !captive(i, before)) {
        held.set(i);
      }
    }
    return held;
  }

  private boolean jointed(int part) {
    return pieces.chair().holding().stream()
        .anyMatch(j -> j.tenoned() == part || j.mortised() == part);
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
    // What has no joint first, then what is written last: what is left tells most to a maker.
    List<Integer> order =
        group.stream()
            .boxed()
            .sorted(Comparator.comparing(this::jointed).thenComparing(i -> -i))
            .toList();
    for (int part : order) {
      BitSet fewer = (BitSet) core.clone();
      fewer.clear(part);
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
    List<Joint> joints = new ArrayList<>(pieces.between(core, core));
    glued.forEach(g -> joints.removeAll(pieces.between(g, g)));
    List<Remedy> remedies = collide.isEmpty() ? Remedy.of(pieces, core, joints, glued) : List.of();
    return new Stuck(Assembling.numbers(core), joints, collide, remedies);
  }
}
