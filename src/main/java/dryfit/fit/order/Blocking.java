package dryfit.fit.order;

import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.solid.Way;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Which part is in the way of which when it moves along one direction: the directional blocking
 * graph of R. H. Wilson and J.-C. Latombe, "Geometric reasoning about mechanical assembly",
 * Artificial Intelligence 71 (1994). Moving the other part the other way is the same question.
 */
final class Blocking {
  private final Vec3 direction;
  private final double far;
  private final BitSet[] blockedBy;

  private Blocking(Vec3 direction, double far, BitSet[] blockedBy) {
    this.direction = direction;
    this.far = far;
    this.blockedBy = blockedBy;
  }

  static Blocking along(Vec3 direction, Pieces pieces) {
    BitSet all = new BitSet();
    all.set(0, pieces.count());
    return along(direction, pieces, all);
  }

  /** Of a move that ends after so many mm. */
  static Blocking along(Vec3 direction, double far, Pieces pieces) {
    BitSet all = new BitSet();
    all.set(0, pieces.count());
    return along(direction, far, pieces, all);
  }

  /** Only among the parts of a group. */
  static Blocking along(Vec3 direction, Pieces pieces, BitSet group) {
    return along(direction, Double.POSITIVE_INFINITY, pieces, group);
  }

  private static Blocking along(Vec3 direction, double far, Pieces pieces, BitSet group) {
    int n = pieces.count();
    BitSet[] rows = new BitSet[n];
    Arrays.setAll(rows, i -> new BitSet(n));
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        if (i != k && group.get(i) && group.get(k) && blocks(pieces, i, k, direction, far)) {
          rows[i].set(k);
        }
      }
    }
    return new Blocking(direction, far, rows);
  }

  private static boolean blocks(Pieces pieces, int moving, int still, Vec3 direction, double far) {
    return mayMeet(pieces.bounds(moving), pieces.bounds(still), direction)
        && !(Double.isInfinite(far)
            ? Way.clear(pieces.cells(moving), pieces.cells(still), direction)
            : Way.of(pieces.cells(moving), pieces.cells(still), direction, far).free());
  }

  /** Whether a box that moves along a direction ever meets another. */
  private static boolean mayMeet(Box moving, Box still, Vec3 d) {
    double[] rate = {d.x(), d.y(), d.z()};
    double[] low = {moving.low().x(), moving.low().y(), moving.low().z()};
    double[] high = {moving.high().x(), moving.high().y(), moving.high().z()};
    double[] from = {still.low().x(), still.low().y(), still.low().z()};
    double[] to = {still.high().x(), still.high().y(), still.high().z()};
    double enter = 0;
    double leave = Double.POSITIVE_INFINITY;
    for (int axis = 0; axis < 3; axis++) {
      if (rate[axis] == 0) {
        if (low[axis] > to[axis] || high[axis] < from[axis]) {
          return false;
        }
      } else {
        double a = (from[axis] - high[axis]) / rate[axis];
        double b = (to[axis] - low[axis]) / rate[axis];
        enter = Math.max(enter, Math.min(a, b));
        leave = Math.min(leave, Math.max(a, b));
      }
    }
    return enter <= leave;
  }

  /** The same, with nothing within one of these groups in the way of anything else in it. */
  Blocking freed(List<BitSet> groups) {
    BitSet[] rows = new BitSet[blockedBy.length];
    for (int i = 0; i < rows.length; i++) {
      int part = i;
      rows[i] = (BitSet) blockedBy[i].clone();
      groups.stream().filter(g -> g.get(part)).forEach(rows[i]::andNot);
    }
    return new Blocking(direction, far, rows);
  }

  Vec3 direction() {
    return direction;
  }

  /** How far the move goes, mm; infinite if it does not end. */
  double far() {
    return far;
  }

  /**
   * For each part of a group, what has to move along with it: what is in its way, what is in the
   * way of that, and so on. Empty for parts outside the group.
   *
   * @param glued groups that only move as one
   */
  BitSet[] movesWith(BitSet group, Iterable<BitSet> glued) {
    BitSet[] reach = new BitSet[blockedBy.length];
    for (int i = 0; i < reach.length; i++) {
      reach[i] = new BitSet();
      if (group.get(i)) {
        reach[i].or(blockedBy[i]);
        for (BitSet one : glued) {
          if (one.get(i)) {
            reach[i].or(one);
          }
        }
        reach[i].set(i);
        reach[i].and(group);
      }
    }
    for (int via = group.nextSetBit(0); via >= 0; via = group.nextSetBit(via + 1)) {
      for (int i = group.nextSetBit(0); i >= 0; i = group.nextSetBit(i + 1)) {
        if (reach[i].get(via)) {
          reach[i].or(reach[via]);
        }
      }
    }
    return reach;
  }
}
