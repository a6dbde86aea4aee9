package dryfit.solid.exact;

import java.util.Arrays;

/** A growing list of longs. */
final class LongList {
  long[] at = new long[16];
  int size;

  void add(long value) {
    if (size == at.length) {
      at = Arrays.copyOf(at, 2 * size);
    }
    at[size++] = value;
  }
}
