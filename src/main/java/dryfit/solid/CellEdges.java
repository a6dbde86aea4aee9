package dryfit.solid;

import java.util.Arrays;

/**
 * The edges of a cell: four numbers each, the two ends and the faces to the left and to the right
 * of the way from the first to the second.
 */
final class CellEdges {
  private CellEdges() {}

  static int[] of(int[][] faces) {
    int count = 0;
    for (int[] loop : faces) {
      count += loop.length;
    }
    // Ends in order, then the face, packed so that both sides of an edge become neighbours.
    long[] sides = new long[count];
    int k = 0;
    for (int f = 0; f < faces.length; f++) {
      int[] loop = faces[f];
      for (int i = 0; i < loop.length; i++) {
        int p = loop[i];
        int q = loop[i + 1 < loop.length ? i + 1 : 0];
        long way = p < q ? 0 : 1;
        sides[k++] = (long) Math.min(p, q) << 42 | (long) Math.max(p, q) << 21 | way << 20 | f;
      }
    }
    Arrays.sort(sides);
    int[] edges = new int[2 * count];
    int n = 0;
    for (int i = 0; i + 1 < count; i++) {
      if (sides[i] >>> 21 == sides[i + 1] >>> 21) {
        edges[n++] = (int) (sides[i] >>> 42);
        edges[n++] = (int) (sides[i] >>> 21) & 0x1fffff;
        edges[n++] = (int) sides[i] & 0xfffff;
        edges[n++] = (int) sides[i + 1] & 0xfffff;
        i++;
      }
    }
    return Arrays.copyOf(edges, n);
  }
}
