package dryfit.geometry;

import java.util.Arrays;
import java.util.function.DoubleSupplier;
import java.util.function.IntConsumer;

/**
 * Boxes in a binary tree, halved at the median of their middles along the longest side, so that a
 * ray need only look at few of them.
 */
final class BoxTree {
  private static final int FEW = 4;

  private final double[] boxes;
  private final int[] order;

  /** Box of each node; a node's children follow at 2i + 1 and 2i + 2. */
  private final double[] nodes;

  private final int[] from;
  private final int[] to;

  /** The axis along which a node's children lie, the lower one first. */
  private final byte[] split;

  /**
   * @param boxes six numbers each: lowest x, y, z and highest x, y, z
   */
  BoxTree(double[] boxes) {
    this.boxes = boxes;
    int n = boxes.length / 6;
    order = new int[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
    }
    int depth = 1;
    while ((long) FEW << (depth - 1) < n) {
      depth++;
    }
    int count = (1 << depth) - 1;
    nodes = new double[6 * count];
    from = new int[count];
    to = new int[count];
    split = new byte[count];
    build(0, 0, n);
  }

  private void build(int node, int start, int end) {
    from[node] = start;
    to[node] = end;
    fit(node, start, end);
    if (2 * node + 2 >= from.length) {
      return;
    }
    int axis = 0;
    for (int k = 1; k < 3; k++) {
      if (side(node, k) > side(node, axis)) {
        axis = k;
      }
    }
    split[node] = (byte) axis;
    long[] keys = new long[end - start];
    for (int i = start; i < end; i++) {
      keys[i - start] = key(middle(order[i], axis), order[i]);
    }
    Arrays.sort(keys);
    for (int i = start; i < end; i++) {
      order[i] = (int) keys[i - start];
    }
    int half = (start + end + 1) / 2;
    build(2 * node + 1, start, half);
    build(2 * node + 2, half, end);
  }

  /**
   * Rises with the middle, and for middles that are equal as 32-bit numbers with the box's number.
   */
  private static long key(double middle, int box) {
    int bits = Float.floatToIntBits((float) middle);
    int rising = bits < 0 ? bits ^ Integer.MAX_VALUE : bits;
    return (long) rising << 32 | box;
  }

  private double side(int node, int axis) {
    return nodes[6 * node + axis + 3] - nodes[6 * node + axis];
  }

  private double middle(int i, int axis) {
    return boxes[6 * i + axis] + boxes[6 * i + axis + 3];
  }

  private void fit(int node, int start, int end) {
    for (int axis = 0; axis < 3; axis++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int i = start; i < end; i++) {
        low = Math.min(low, boxes[6 * order[i] + axis]);
        high = Math.max(high, boxes[6 * order[i] + axis + 3]);
      }
      nodes[6 * node + axis] = low;
      nodes[6 * node + axis + 3] = high;
    }
  }

  /** The numbers of all boxes that may be on the way of a ray of the bundle. */
  int[] among(Bundle bundle) {
    int[] met = new int[order.length];
    return Arrays.copyOf(met, gather(0, bundle, met, 0));
  }

  private int gather(int node, Bundle bundle, int[] met, int count) {
    if (from[node] == to[node] || !bundle.mayMeet(nodes, 6 * node)) {
      return count;
    }
    if (2 * node + 2 < from.length) {
      return gather(2 * node + 2, bundle, met, gather(2 * node + 1, bundle, met, count));
    }
    int n = count;
    for (int i = from[node]; i < to[node]; i++) {
      if (bundle.mayMeet(boxes, 6 * order[i])) {
        met[n++] = order[i];
      }
    }
    return n;
  }

  /**
   * Calls {@code sink} with every box that the ray may meet, and with some that it does not; those
   * that lie nearer first, more or less.
   *
   * @param bound how far along the ray there is something to look for; may shrink on the way
   */
  void along(Vec3 origin, Vec3 direction, DoubleSupplier bound, IntConsumer sink) {
    if (order.length > 0) {
      double[] o = {origin.x(), origin.y(), origin.z()};
      double[] per = {1 / direction.x(), 1 / direction.y(), 1 / direction.z()};
      visit(0, o, per, bound, sink);
    }
  }

  private void visit(int node, double[] o, double[] per, DoubleSupplier bound, IntConsumer sink) {
    if (from[node] == to[node] || !meets(node, o, per, bound.getAsDouble())) {
      return;
    }
    if (2 * node + 2 >= from.length) {
      for (int i = from[node]; i < to[node]; i++) {
        sink.accept(order[i]);
      }
      return;
    }
    boolean falling = per[split[node]] < 0;
    visit(2 * node + (falling ? 2 : 1), o, per, bound, sink);
    visit(2 * node + (falling ? 1 : 2), o, per, bound, sink);
  }

  /**
   * @param per one over each component of the direction: infinite where it does not move
   */
  private boolean meets(int node, double[] o, double[] per, double bound) {
    double near = 0;
    double far = bound;
    for (int axis = 0; axis < 3; axis++) {
      double low = nodes[6 * node + axis] - o[axis];
      double high = nodes[6 * node + axis + 3] - o[axis];
      if (Double.isInfinite(per[axis])) {
        if (low > 0 || high < 0) {
          return false;
        }
      } else {
        double s = low * per[axis];
        double t = high * per[axis];
        near = Math.max(near, Math.min(s, t));
        far = Math.min(far, Math.max(s, t));
      }
    }
    return near <= far;
  }
}
