package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.fit.order.Step.Move;
import dryfit.fit.order.Tipping.Tipped;
import dryfit.fit.order.Together.Flight;
import dryfit.fit.order.TwoWays.Cornered;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** Takes a chair apart and keeps the steps of putting it together again. */
final class Planner {
  private final Pieces pieces;
  private final List<BitSet> given;
  private final List<BitSet> glued;
  private final List<Blocking> ways;
  private final List<Step> steps = new ArrayList<>();
  private final List<Stuck> stuck = new ArrayList<>();
  private final List<BitSet> asOne = new ArrayList<>();
  private final Onlooker onlooker;
  private final TwoWays corners;
  private int parts;

  /**
   * @param onlooker is told how many parts need no more taking apart, and what takes long
   */
  Planner(Pieces pieces, List<BitSet> glued, Onlooker onlooker) {
    this.onlooker = onlooker;
    this.pieces = pieces;
    this.corners = new TwoWays(pieces);
    this.given = glued;
    this.glued = new ArrayList<>(glued);
    this.ways = Directions.of(pieces).parallelStream().map(d -> Blocking.along(d, pieces)).toList();
  }

  List<Step> steps() {
    return steps;
  }

  List<Stuck> stuck() {
    return stuck;
  }

  /** What is locked, each the parts that are taken as one piece in the steps. */
  List<List<Integer>> asOne() {
    return asOne.stream().map(Assembling::numbers).toList();
  }

  void plan() {
    BitSet all = new BitSet();
    all.set(0, pieces.count());
    apart(all);
  }

  private void apart(BitSet group) {
    if (Locks.isOne(group, glued)) {
      settle(group);
      return;
    }
    Optional<Parting> found = Parting.best(pieces, group, ways, glued);
    if (found.isEmpty()) {
      if (!tipped(group) && !together(group) && !cornered(group)) {
        onlooker.now("finding what locks");
        lock(group);
        apart(group);
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
                    Optional.empty(),
                    Optional.empty())),
            parting.opens(),
            Assembling.numbers(newlyHeld(group, moved, onto))));
  }

  private void settle(BitSet group) {
    parts += group.cardinality();
    onlooker.settled(parts);
  }

  private boolean tipped(BitSet group) {
    Optional<Tipped> found = Tipping.out(pieces, group, glued, List.of());
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
            Optional.of(found.get().tip()),
            Optional.empty());
    steps.add(
        new Step(
            Step.Kind.TIPPED,
            Assembling.numbers(rest),
            List.of(move),
            pieces.between(piece, rest),
            Assembling.numbers(newlyHeld(group, piece, rest))));
    return true;
  }

  private boolean cornered(BitSet group) {
    Optional<Cornered> found = corners.out(group, glued, List.of());
    if (found.isEmpty()) {
      return false;
    }
    BitSet piece = found.get().piece();
    BitSet rest = (BitSet) group.clone();
    rest.andNot(piece);
    boolean fewer = Parting.moves(piece, rest);
    BitSet moved = fewer ? piece : rest;
    BitSet onto = fewer ? rest : piece;
    Cornered way = fewer ? found.get() : found.get().turned(rest);
    apart(onto);
    apart(moved);
    Move move =
        new Move(
            Assembling.numbers(moved),
            way.away().negated(),
            1,
            Optional.empty(),
            Optional.of(new Step.Leg(way.first().negated(), way.far())));
    steps.add(
        new Step(
            Step.Kind.TWO_WAYS,
            Assembling.numbers(onto),
            List.of(move),
            pieces.between(piece, rest),
            Assembling.numbers(newlyHeld(group, piece, rest))));
    return true;
  }

  private boolean together(BitSet group) {
    Optional<List<Flight>> found = Together.apart(pieces, group, glued, List.of());
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
                Optional.empty(),
                Optional.empty()));
      }
    }
    List<Integer> onto = Assembling.numbers(flights.get(0).parts());
    steps.add(new Step(Step.Kind.TOGETHER, onto, moves, closes, List.of()));
    return true;
  }

  /** Parts without joints that could be taken out before two groups met, and now cannot. */
  private BitSet newlyHeld(BitSet group, BitSet one, BitSet other) {
    BitSet held = new BitSet();
    for (int i = group.nextSetBit(0); i >= 0; i = group.nextSetBit(i + 1)) {
      BitSet before = one.get(i) ? one : other;
      if (!pieces.jointed(i) && captive(i, group) && !captive(i, before)) {
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

  /**
   * Tells what locks a group. From now on what is locked moves as one piece, so that an order of
   * the rest can be told; what such a piece keeps out or in belongs to it.
   */
  private void lock(BitSet group) {
    List<BitSet> known = stuck.stream().map(s -> Assembling.bits(s.parts())).toList();
    List<BitSet> found = Locks.of(pieces, corners, group, ways, given, known);
    found.forEach(core -> stuck.add(stuck(core)));
    List<BitSet> lumps =
        found.isEmpty()
            ? List.of(
                new Locks(pieces, corners, ways, glued, List.of()).within(group).orElse(group))
            : found;
    lumps.forEach(lump -> merge(lump, glued));
    lumps.forEach(lump -> merge(lump, asOne));
  }

  private static void merge(BitSet lump, List<BitSet> into) {
    BitSet one = (BitSet) lump.clone();
    into.stream().filter(g -> g.intersects(lump)).forEach(one::or);
    into.removeIf(g -> g.intersects(lump));
    into.add(one);
  }

  private Stuck stuck(BitSet core) {
    List<List<Integer>> collide = new ArrayList<>();
    for (int i = core.nextSetBit(0); i >= 0; i = core.nextSetBit(i + 1)) {
      for (int k = core.nextSetBit(i + 1); k >= 0; k = core.nextSetBit(k + 1)) {
        if (pieces.collide(i, k)) {
          collide.add(List.of(i, k));
        }
      }
    }
    List<Joint> joints = new ArrayList<>(pieces.between(core, core));
    given.forEach(g -> joints.removeAll(pieces.between(g, g)));
    List<Remedy> remedies = collide.isEmpty() ? Remedy.of(pieces, core, joints, given) : List.of();
    return new Stuck(Assembling.numbers(core), joints, collide, remedies);
  }
}
