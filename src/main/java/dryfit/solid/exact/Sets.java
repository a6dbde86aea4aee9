package dryfit.solid.exact;

import java.util.Arrays;

/** Disjoint sets of ids; the smallest member names its set, so that the answer has one form. */
final class Sets {
  private int[] parent = new int[0];

  /** Starts anew with {@code count} sets of one. */
  void reset(int count) {
    if (parent.length < count) {
      parent = Arrays.copyOf(parent, Math.max(count, 2 * parent.length));
    }
    for (int i = 0; i < count; i++) {
      parent[i] = i;
    }
  }

  int find(int member) {
    int m = member;
    while (parent[m] != m) {
      parent[m] = parent[parent[m]];
      m = parent[m];
    }
    return m;
  }

  void join(int a, int b) {
    int x = find(a);
    int y = find(b);
    if (x < y) {
      parent[y] = x;
    } else {
      parent[x] = y;
    }
  }
}
