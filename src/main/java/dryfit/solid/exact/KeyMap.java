package dryfit.solid.exact;

import java.util.Arrays;

/**
 * A map from long keys to non-negative ints with open addressing. Clearing it costs nothing, so one
 * map serves many small tasks.
 */
final class KeyMap {
  static final int NONE = -1;

  private long[] keys;
  private int[] values;
  private int[] round;
  private int now = 1;
  private int size;

  KeyMap(int expected) {
    int capacity = Integer.highestOneBit(Math.max(16, 2 * expected)) * 2;
    keys = new long[capacity];
    values = new int[capacity];
    round = new int[capacity];
  }

  /** A key for an unordered pair of ids. */
  static long pair(int a, int b) {
    return a < b ? ((long) a << 32) | b : ((long) b << 32) | a;
  }

  void clear() {
    now++;
    size = 0;
  }

  boolean isEmpty() {
    return size == 0;
  }

  int get(long key) {
    int slot = slot(key);
    return round[slot] == now ? values[slot] : NONE;
  }

  void put(long key, int value) {
    int slot = slot(key);
    if (round[slot] != now) {
      round[slot] = now;
      keys[slot] = key;
      size++;
    }
    values[slot] = value;
    if (4 * size > 3 * keys.length) {
      grow();
    }
  }

  private int slot(long key) {
    int mask = keys.length - 1;
    long mixed = key * 0x9E3779B97F4A7C15L;
    int slot = (int) (mixed ^ (mixed >>> 32)) & mask;
    while (round[slot] == now && keys[slot] != key) {
      slot = (slot + 1) & mask;
    }
    return slot;
  }

  private void grow() {
    long[] oldKeys = keys;
    int[] oldValues = values;
    int[] oldRound = round;
    keys = new long[2 * oldKeys.length];
    values = Arrays.copyOf(values, keys.length);
    round = new int[keys.length];
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldRound[i] == now) {
        int slot = slot(oldKeys[i]);
        round[slot] = now;
        keys[slot] = oldKeys[i];
        values[slot] = oldValues[i];
      }
    }
  }
}
