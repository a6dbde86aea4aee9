package dryfit.solid.exact;

/** Orders numbers without boxing. */
final class Ranks {
  private Ranks() {}

  /** The places of the numbers from the least up; equal numbers keep their order. */
  static long[] sorted(double[] keys) {
    int n = keys.length;
    long[] from = new long[n];
    for (int k = 0; k < n; k++) {
      from[k] = k;
    }
    long[] to = new long[n];
    for (int width = 1; width < n; width *= 2) {
      for (int low = 0; low < n; low += 2 * width) {
        merge(keys, from, to, low, Math.min(low + width, n), Math.min(low + 2 * width, n));
      }
      long[] swap = from;
      from = to;
      to = swap;
    }
    return from;
  }

  private static void merge(double[] keys, long[] from, long[] to, int low, int middle, int high) {
    int a = low;
    int b = middle;
    for (int k = low; k < high; k++) {
      boolean first = a < middle && (b >= high || keys[(int) from[a]] <= keys[(int) from[b]]);
      to[k] = first ? from[a++] : from[b++];
    }
  }
}
