package dryfit.solid.exact;

import java.util.Arrays;

/** A growing list of ints; the kernel counts in ids, so that its inner loops make no objects. */
final class IntList {
  int[] at = new int[16];
  int size;

  void add(int value) {
    if (size == at.length) {
      at = Arrays.copyOf(at, 2 * size);
    }
    at[size++] = value;
  }

  void clear() {
    size = 0;
  }

  int[] toArray() {
    return Arrays.copyOf(at, size);
  }
}
