package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Way;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Takes a group of parts apart by moving several of them at the same time, each straight, so that
 * every joint opens along its own entry: as the legs of a stool that splay leave the seat while the
 * stretchers between them give way. How fast each joint opens follows from the loops of joints:
 * around each loop the ways add up to nothing.
 */
final class Together {
  private final Pieces pieces;
  private final BitSet group;
  private final List<Joint> joints;
  private final int[] node;
  private final List<BitSet> freed;

  private Together(Pieces pieces, BitSet group, List<BitSet> glued, List<BitSet> freed) {
    this.freed = freed;
    this.pieces = pieces;
    this.group = group;
    this.node = new int[pieces.count()];
    Arrays.setAll(node, i -> i);
    for (BitSet one : glued) {
      one.stream().forEach(i -> node[i] = one.nextSetBit(0));
    }
    this.joints =
        pieces.between(group, group).stream()
            .filter(j -> node[j.tenoned()] != node[j.mortised()])
            .filter(j -> !free(j.tenoned(), j.mortised()))
            .toList();
  }

  /**
   * What moves as one, and how.
   *
   * @param speed in which it leaves, the fastest 1 long; zero for what stays
   */
  record Flight(BitSet parts, Vec3 speed) {}

  /**
   * A way to take the group apart, what stays first; empty if none was found.
   *
   * @param freed groups that are taken as free among themselves
   */
  static Optional<List<Flight>> apart(
      Pieces pieces, BitSet group, List<BitSet> glued, List<BitSet> freed) {
    Together all = new Together(pieces, group, glued, freed);
    return all.speeds().map(all::flights).filter(all::clear);
  }

  /** How fast each part leaves; empty if the joints allow no such motion. */
  private Optional<Vec3[]> speeds() {
    Vec3[][] reached = new Vec3[node.length][];
    List<double[]> loops = new ArrayList<>();
    for (int start : Assembling.numbers(group)) {
      if (reached[node[start]] == null) {
        if (start != group.nextSetBit(0) && degree(start) > 0 && freed.isEmpty()) {
          return Optional.empty();
        }
        reached[node[start]] = zeros();
        spread(reached, loops);
      }
    }
    int n = joints.size();
    double[] all = new double[n];
    Arrays.fill(all, 1);
    loops.add(all);
    double[] wanted = new double[loops.size()];
    wanted[wanted.length - 1] = 1;
    double[] rates = LeastSquares.notNegative(loops.toArray(double[][]::new), wanted, n);
    for (double[] loop : loops.subList(0, loops.size() - 1)) {
      double left = 0;
      for (int k = 0; k < n; k++) {
        left += loop[k] * rates[k];
      }
      if (Math.abs(left) > Tolerances.drift()) {
        return Optional.empty();
      }
    }
    if (Arrays.stream(rates).sum() < 0.5) {
      return Optional.empty();
    }
    Vec3[] speeds = new Vec3[node.length];
    for (int i = group.nextSetBit(0); i >= 0; i = group.nextSetBit(i + 1)) {
      speeds[i] = Vec3.ZERO;
      for (int k = 0; k < n; k++) {
        speeds[i] = speeds[i].plus(reached[node[i]][k].times(rates[k]));
      }
    }
    return Optional.of(speeds);
  }

  private boolean touches(Joint j, int part) {
    return node[j.tenoned()] == node[part] || node[j.mortised()] == node[part];
  }

  private Vec3[] zeros() {
    Vec3[] all = new Vec3[joints.size()];
    Arrays.fill(all, Vec3.ZERO);
    return all;
  }

  /** Goes along joints to parts not reached yet; joints to parts that were close loops. */
  private void spread(Vec3[][] reached, List<double[]> loops) {
    boolean[] used = new boolean[joints.size()];
    boolean further = true;
    while (further) {
      further = false;
      for (int k = 0; k < used.length; k++) {
        Joint j = joints.get(k);
        Vec3[] tenoned = reached[node[j.tenoned()]];
        Vec3[] mortised = reached[node[j.mortised()]];
        if (used[k] || tenoned == null && mortised == null) {
          continue;
        }
        used[k] = true;
        further = true;
        Vec3 exit = j.entry().negated();
        if (tenoned == null) {
          Vec3[] next = mortised.clone();
          next[k] = next[k].plus(exit);
          reached[node[j.tenoned()]] = next;
        } else if (mortised == null) {
          Vec3[] next = tenoned.clone();
          next[k] = next[k].minus(exit);
          reached[node[j.mortised()]] = next;
        } else {
          close(loops, tenoned, mortised, k, exit);
        }
      }
    }
  }

  private static void close(
      List<double[]> loops, Vec3[] tenoned, Vec3[] mortised, int joint, Vec3 exit) {
    double[][] rows = new double[3][tenoned.length];
    for (int k = 0; k < tenoned.length; k++) {
      Vec3 d = tenoned[k].minus(mortised[k]);
      Vec3 left = k == joint ? d.minus(exit) : d;
      rows[0][k] = left.x();
      rows[1][k] = left.y();
      rows[2][k] = left.z();
    }
    loops.addAll(List.of(rows));
  }

  private List<Flight> flights(Vec3[] speeds) {
    int base = group.nextSetBit(0);
    for (int i = base; i >= 0; i = group.nextSetBit(i + 1)) {
      base = degree(i) > degree(base) ? i : base;
    }
    Vec3 still = speeds[base];
    double fastest = group.stream().mapToDouble(i -> speeds[i].distance(still)).max().orElseThrow();
    List<Flight> flights = new ArrayList<>();
    flights.add(new Flight(new BitSet(), Vec3.ZERO));
    for (int i = group.nextSetBit(0); i >= 0; i = group.nextSetBit(i + 1)) {
      Vec3 speed = fastest > 0 ? speeds[i].minus(still).times(1 / fastest) : Vec3.ZERO;
      Flight flight =
          flights.stream()
              .filter(f -> f.speed().distance(speed) <= Tolerances.drift())
              .findFirst()
              .orElse(null);
      if (flight == null) {
        flight = new Flight(new BitSet(), speed);
        flights.add(flight);
      }
      flight.parts().set(i);
    }
    return flights;
  }

  private long degree(int part) {
    return joints.stream().filter(j -> touches(j, part)).count();
  }

  /** Whether nothing is in anything's way, and something moves. */
  private boolean clear(List<Flight> flights) {
    for (int i = 0; i < flights.size(); i++) {
      for (int k = i + 1; k < flights.size(); k++) {
        Flight a = flights.get(i);
        Flight b = flights.get(k);
        Vec3 d = a.speed().minus(b.speed()).unit();
        if (!clear(a.parts(), b.parts(), d)) {
          return false;
        }
      }
    }
    return flights.size() > 1;
  }

  private boolean clear(BitSet moving, BitSet still, Vec3 d) {
    return moving.stream()
        .allMatch(
            i ->
                still.stream()
                    .filter(k -> !free(i, k))
                    .allMatch(k -> Way.clear(pieces.cells(i), pieces.cells(k), d)));
  }

  private boolean free(int i, int k) {
    return freed.stream().anyMatch(f -> f.get(i) && f.get(k));
  }
}
