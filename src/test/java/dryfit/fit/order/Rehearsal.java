package dryfit.fit.order;

import dryfit.build.Chair;
import dryfit.fit.order.Step.Move;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Overlap;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Goes through the steps of an order as a maker would: at many places along each move the parts are
 * really put there and asked whether they overlap. It shares no code with the planner, which never
 * looks at a place but only at whole moves.
 */
final class Rehearsal {
  private Rehearsal() {}

  /** Near home, where tenons are in their mortises, mm; farther out the steps grow. */
  private static final double STEP = 0.7;

  private static final double GROWTH = 1.15;

  /** What goes wrong, in words; empty if every step works and everything is put together. */
  static List<String> problems(Assembling order) {
    List<String> found = new ArrayList<>();
    Chair chair = order.chair();
    List<BitSet> made = new ArrayList<>();
    for (List<Integer> group : order.asOne()) {
      made.add(Assembling.bits(group));
    }
    for (List<Integer> group : order.glued()) {
      if (made.stream().noneMatch(m -> m.get(group.get(0)))) {
        made.add(Assembling.bits(group));
      }
    }
    for (int i = 0; i < chair.parts().size(); i++) {
      int part = i;
      if (made.stream().noneMatch(g -> g.get(part))) {
        made.add(Assembling.bits(List.of(i)));
      }
    }
    for (int n = 0; n < order.steps().size(); n++) {
      Step step = order.steps().get(n);
      BitSet whole = new BitSet();
      List<List<Integer>> groups = new ArrayList<>(List.of(step.onto()));
      step.moves().forEach(m -> groups.add(m.parts()));
      for (List<Integer> group : groups) {
        if (!made.remove(Assembling.bits(group))) {
          found.add("step " + (n + 1) + " uses what was not made before: " + group);
        }
        whole.or(Assembling.bits(group));
      }
      made.add(whole);
      int number = n + 1;
      clash(chair, step).forEach(c -> found.add("in step " + number + ": " + c));
    }
    if (made.size() != 1) {
      found.add("it ends with " + made.size() + " pieces");
    }
    return found;
  }

  private static List<String> clash(Chair chair, Step step) {
    List<String> found = new ArrayList<>();
    double out = reach(chair);
    List<List<Convex>> home = new ArrayList<>(List.of(cells(chair, step.onto())));
    List<Move> moves = step.moves();
    moves.forEach(m -> home.add(cells(chair, m.parts())));
    double at = 0;
    while (at < out && found.isEmpty()) {
      List<List<Convex>> there = new ArrayList<>(List.of(home.get(0)));
      for (int k = 0; k < moves.size(); k++) {
        Move m = moves.get(k);
        Vec3 back = m.push().times(-at * m.share());
        Vec3 last = m.last().map(l -> l.push().times(-l.far())).orElse(Vec3.ZERO);
        List<Convex> near = home.get(k + 1).stream().map(c -> moved(c, last)).toList();
        List<Convex> start = m.tip().isPresent() ? tipped(near, m, 1) : near;
        there.add(start.stream().map(c -> moved(c, back)).toList());
      }
      add(found, there, at + " mm from home");
      at = at * GROWTH < at + STEP ? at + STEP : at * GROWTH;
    }
    for (int k = 0; k <= 50 && moves.get(0).last().isPresent(); k++) {
      Step.Leg leg = moves.get(0).last().orElseThrow();
      Vec3 back = leg.push().times(-leg.far() * k / 50.0);
      add(
          found,
          List.of(home.get(0), home.get(1).stream().map(c -> moved(c, back)).toList()),
          k + " fiftieths of the last leg");
    }
    for (int turn = 0; turn <= 50 && moves.get(0).tip().isPresent(); turn++) {
      add(
          found,
          List.of(home.get(0), tipped(home.get(1), moves.get(0), turn / 50.0)),
          turn + " fiftieths turned");
    }
    return found;
  }

  private static void add(List<String> found, List<List<Convex>> there, String where) {
    for (int i = 0; i < there.size(); i++) {
      for (int k = i + 1; k < there.size(); k++) {
        if (Overlap.exists(there.get(i), there.get(k))) {
          found.add("group " + i + " and group " + k + " overlap " + where);
        }
      }
    }
  }

  private static List<Convex> tipped(List<Convex> cells, Move move, double share) {
    Step.Tip tip = move.tip().orElseThrow();
    Vec3 a = tip.axis();
    double angle = tip.angle() * share;
    Vec3 x = turned(Vec3.RIGHT, a, angle);
    Vec3 y = turned(Vec3.BACK, a, angle);
    Vec3 z = turned(Vec3.UP, a, angle);
    Vec3 p = tip.pivot();
    Vec3 fixed = p.minus(x.times(p.x()).plus(y.times(p.y())).plus(z.times(p.z())));
    Frame frame = new Frame(fixed, x, y, z);
    Vec3 lift = tip.lift();
    return cells.stream().map(c -> moved(c, lift).placed(frame)).toList();
  }

  /** Rodrigues' formula. */
  private static Vec3 turned(Vec3 v, Vec3 a, double angle) {
    return v.times(Math.cos(angle))
        .plus(a.cross(v).times(Math.sin(angle)))
        .plus(a.times(a.dot(v) * (1 - Math.cos(angle))));
  }

  private static Convex moved(Convex cell, Vec3 by) {
    return cell.placed(new Frame(by, Vec3.RIGHT, Vec3.BACK, Vec3.UP));
  }

  private static List<Convex> cells(Chair chair, List<Integer> parts) {
    return parts.stream().flatMap(i -> chair.parts().get(i).placedCells().stream()).toList();
  }

  private static double reach(Chair chair) {
    Box all =
        chair.parts().stream().map(p -> p.placedMesh().bounds()).reduce(Box::with).orElseThrow();
    return 2 * all.size().length();
  }
}
