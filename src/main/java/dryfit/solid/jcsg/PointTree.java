package dryfit.solid.jcsg;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the points near a segment: a balanced tree of points, split along the three axes in turn.
 */
final class PointTree {
  private final double[] xyz;
  private final int[] order;

  /**
   * @param xyz 3 numbers a point; not copied
   * @param points the numbers of those to be found
   */
  PointTree(double[] xyz, int[] points) {
    this.xyz = xyz;
    this.order = points.clone();
    sort(0, order.length, 0);
  }

  private void sort(int from, int to, int axis) {
    if (to - from < 2) {
      return;
    }
    int middle = (from + to) >>> 1;
    select(from, to - 1, middle, axis);
    sort(from, middle, (axis + 1) % 3);
    sort(middle + 1, to, (axis + 1) % 3);
  }

  /** Hoare's selection: afterwards nothing before {@code middle} is greater, nothing after less. */
  private void select(int from, int to, int middle, int axis) {
    int low = from;
    int high = to;
    while (low < high) {
      double pivot = at(order[(low + high) >>> 1], axis);
      int i = low;
      int j = high;
      while (i <= j) {
        while (at(order[i], axis) < pivot) {
          i++;
        }
        while (at(order[j], axis) > pivot) {
          j--;
        }
        if (i <= j) {
          int swap = order[i];
          order[i++] = order[j];
          order[j--] = swap;
        }
      }
      if (middle <= j) {
        high = j;
      } else if (middle >= i) {
        low = i;
      } else {
        return;
      }
    }
  }

  private double at(int point, int axis) {
    return xyz[3 * point + axis];
  }

  /** The points inside the box, both limits included, in no particular order. */
  List<Integer> inBox(double[] low, double[] high) {
    List<Integer> found = new ArrayList<>();
    collect(0, order.length, 0, low, high, found);
    return found;
  }

  private void collect(
      int from, int to, int axis, double[] low, double[] high, List<Integer> found) {
    if (from >= to) {
      return;
    }
    int middle = (from + to) >>> 1;
    int p = order[middle];
    double v = at(p, axis);
    if (at(p, 0) >= low[0]
        && at(p, 0) <= high[0]
        && at(p, 1) >= low[1]
        && at(p, 1) <= high[1]
        && at(p, 2) >= low[2]
        && at(p, 2) <= high[2]) {
      found.add(p);
    }
    int next = (axis + 1) % 3;
    if (low[axis] <= v) {
      collect(from, middle, next, low, high, found);
    }
    if (high[axis] >= v) {
      collect(middle + 1, to, next, low, high, found);
    }
  }
}
