package dryfit.solid.exact;

import java.util.Arrays;

/**
 * The segments of one plane as a planar graph. Edge {@code e} gives two halves: {@code 2e} runs
 * with the sweep, {@code 2e + 1} against it; each has the cell to its left on its side. Loops of
 * halves round one cell are its cycles.
 */
final class Arrangement {
  private final Points points;
  private final Segments segments;
  private final Splits splits;
  private final IntList run = new IntList();
  private final IntList distinct = new IntList();
  private int[] nextEqual = new int[64];
  private final KeyMap edgeAt = new KeyMap(256);
  private int[] localOf = new int[256];

  int vertices;
  int[] vertex = new int[64];
  int edges;
  int[] u = new int[64];
  int[] v = new int[64];
  int[] line = new int[64];
  byte[] left = new byte[64];

  /** For each edge the first of the segments that run over it, chained by {@link #overNext}. */
  int[] over = new int[64];

  final IntList overSegment = new IntList();
  final IntList overNext = new IntList();

  /** Outgoing halves, anticlockwise from straight down, of vertex w from star[w] to star[w+1]. */
  int[] star = new int[64];

  private int[] filled = new int[64];

  int[] spoke = new int[128];

  /** For each half its place in {@link #spoke}. */
  int[] placeOf = new int[128];

  int cycles;
  int[] cycle = new int[128];

  Arrangement(Points points, Segments segments) {
    this.points = points;
    this.segments = segments;
    splits = new Splits(points, segments);
  }

  void build(int plane, IntList chosen) {
    gatherEqual(chosen);
    splits.find(plane, distinct);
    vertices = 0;
    edges = 0;
    overSegment.clear();
    overNext.clear();
    edgeAt.clear();
    if (localOf.length < points.count) {
      localOf = Arrays.copyOf(localOf, 2 * points.count);
    }
    for (int k = 0; k < distinct.size; k++) {
      splits.along(distinct.at[k], run);
      for (int m = 0; m + 1 < run.size; m++) {
        addEdge(run.at[m], run.at[m + 1], distinct.at[k]);
      }
    }
    sortSpokes();
    traceCycles();
  }

  /** Segments with the same ends are divided once for all of them. */
  private void gatherEqual(IntList chosen) {
    edgeAt.clear();
    distinct.clear();
    if (nextEqual.length < segments.count) {
      nextEqual = new int[2 * segments.count];
    }
    for (int k = 0; k < chosen.size; k++) {
      int s = chosen.at[k];
      long key = KeyMap.pair(segments.p[s], segments.q[s]);
      int first = edgeAt.get(key);
      if (first == KeyMap.NONE) {
        edgeAt.put(key, s);
        distinct.add(s);
        nextEqual[s] = -1;
      } else {
        nextEqual[s] = nextEqual[first];
        nextEqual[first] = s;
      }
    }
  }

  private void addEdge(int p, int q, int segment) {
    int a = local(p);
    int b = local(q);
    long key = KeyMap.pair(a, b);
    int e = edgeAt.get(key);
    if (e == KeyMap.NONE) {
      e = edges++;
      if (e == u.length) {
        u = Arrays.copyOf(u, 2 * e);
        v = Arrays.copyOf(v, 2 * e);
        line = Arrays.copyOf(line, 2 * e);
        left = Arrays.copyOf(left, 2 * e);
        over = Arrays.copyOf(over, 2 * e);
        spoke = new int[4 * e];
        placeOf = new int[4 * e];
        cycle = new int[4 * e];
      }
      u[e] = a;
      v[e] = b;
      line[e] = segments.line[segment];
      left[e] = segments.left[segment];
      over[e] = -1;
      edgeAt.put(key, e);
    }
    for (int s = segment; s >= 0; s = nextEqual[s]) {
      overSegment.add(s);
      overNext.add(over[e]);
      over[e] = overSegment.size - 1;
    }
  }

  private int local(int point) {
    int l = localOf[point];
    if (l < vertices && l >= 0 && vertex[l] == point) {
      return l;
    }
    if (vertices == vertex.length) {
      vertex = Arrays.copyOf(vertex, 2 * vertices);
    }
    vertex[vertices] = point;
    localOf[point] = vertices;
    return vertices++;
  }

  int origin(int half) {
    return (half & 1) == 0 ? u[half >> 1] : v[half >> 1];
  }

  int target(int half) {
    return (half & 1) == 0 ? v[half >> 1] : u[half >> 1];
  }

  /** Side of a point seen along a half: positive on its left. */
  int turn(int half, int point) {
    int sign = points.side(point, line[half >> 1]) * left[half >> 1];
    return (half & 1) == 0 ? sign : -sign;
  }

  private void sortSpokes() {
    if (star.length <= vertices) {
      star = new int[2 * vertices + 1];
      filled = new int[2 * vertices + 1];
    }
    Arrays.fill(star, 0, vertices + 1, 0);
    Arrays.fill(filled, 0, vertices, 0);
    for (int h = 0; h < 2 * edges; h++) {
      star[origin(h) + 1]++;
    }
    for (int w = 0; w < vertices; w++) {
      star[w + 1] += star[w];
    }
    for (int h = 0; h < 2 * edges; h++) {
      int w = origin(h);
      int at = star[w] + filled[w]++;
      while (at > star[w] && before(h, spoke[at - 1])) {
        spoke[at] = spoke[at - 1];
        at--;
      }
      spoke[at] = h;
    }
    for (int k = 0; k < 2 * edges; k++) {
      placeOf[spoke[k]] = k;
    }
  }

  /** Whether one spoke comes before another of the same vertex. */
  private boolean before(int a, int b) {
    if (((a ^ b) & 1) != 0) {
      return (a & 1) == 0;
    }
    return turn(a, vertex[target(b)]) > 0;
  }

  /** The spoke before this one, clockwise, round their vertex. */
  int clockwise(int half) {
    int w = origin(half);
    int k = placeOf[half];
    return spoke[k == star[w] ? star[w + 1] - 1 : k - 1];
  }

  /** The next half round the cell on the left. */
  int next(int half) {
    return clockwise(half ^ 1);
  }

  private void traceCycles() {
    Arrays.fill(cycle, 0, 2 * edges, -1);
    cycles = 0;
    for (int h = 0; h < 2 * edges; h++) {
      if (cycle[h] < 0) {
        for (int g = h; cycle[g] < 0; g = next(g)) {
          cycle[g] = cycles;
        }
        cycles++;
      }
    }
  }
}
