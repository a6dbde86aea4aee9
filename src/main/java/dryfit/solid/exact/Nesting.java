package dryfit.solid.exact;

import java.util.Arrays;

/**
 * Joins the cycles of an arrangement into cells. Each connected part of the graph lies in a cell of
 * the rest: the one seen first from its leftmost vertex when looking to the left, a hair above it.
 */
final class Nesting {
  private final Points points;
  private final Segments segments;
  private final Arrangement graph;
  private final Sets parts = new Sets();
  private final Sets cycles = new Sets();
  private int[] leftmost = new int[64];

  /** For each cycle its cell, numbered from 1; cell 0 is the one without end. */
  int[] cellOf = new int[64];

  int cells;

  Nesting(Points points, Segments segments, Arrangement graph) {
    this.points = points;
    this.segments = segments;
    this.graph = graph;
  }

  void build() {
    int outside = graph.cycles;
    cycles.reset(graph.cycles + 1);
    parts.reset(graph.vertices);
    for (int e = 0; e < graph.edges; e++) {
      parts.join(graph.u[e], graph.v[e]);
    }
    if (leftmost.length < graph.vertices) {
      leftmost = new int[2 * graph.vertices];
    }
    Arrays.fill(leftmost, 0, graph.vertices, -1);
    int count = 0;
    for (int w = 0; w < graph.vertices; w++) {
      int part = parts.find(w);
      int best = leftmost[part];
      count += best < 0 ? 1 : 0;
      if (best < 0 || segments.compare(graph.vertex[w], graph.vertex[best]) < 0) {
        leftmost[part] = w;
      }
    }
    for (int part = 0; part < graph.vertices; part++) {
      int w = leftmost[part];
      if (w >= 0) {
        // All spokes go right, so what lies left of the last one is the outside of the part.
        int outer = graph.cycle[graph.spoke[graph.star[w + 1] - 1]];
        int seen = count == 1 ? -1 : seenFrom(w, part);
        cycles.join(outer, seen < 0 ? outside : graph.cycle[seen]);
      }
    }
    number(outside);
  }

  private void number(int outside) {
    if (cellOf.length <= outside) {
      cellOf = new int[2 * outside + 2];
    }
    Arrays.fill(cellOf, 0, outside + 1, -1);
    cellOf[cycles.find(outside)] = 0;
    cells = 1;
    for (int c = 0; c < outside; c++) {
      int root = cycles.find(c);
      if (cellOf[root] < 0) {
        cellOf[root] = cells++;
      }
      cellOf[c] = cellOf[root];
    }
  }

  /** The half of another part that is seen from a vertex to its left, or -1. */
  private int seenFrom(int w, int part) {
    int point = graph.vertex[w];
    double height = points.along(point, segments.j);
    int best = -1;
    for (int e = 0; e < graph.edges; e++) {
      int p = graph.vertex[graph.u[e]];
      int q = graph.vertex[graph.v[e]];
      double a = points.along(p, segments.j);
      double b = points.along(q, segments.j);
      if (Math.min(a, b) > height + 1 || Math.max(a, b) < height - 1) {
        continue;
      }
      if (parts.find(graph.u[e]) == part) {
        continue;
      }
      boolean pLow = points.compare(p, point, segments.j) <= 0;
      boolean qLow = points.compare(q, point, segments.j) <= 0;
      if (pLow == qLow) {
        continue;
      }
      // Upward edges have what is right of them on their right.
      int half = pLow ? 2 * e + 1 : 2 * e;
      if (graph.turn(half, point) > 0 && (best < 0 || isNearer(half, best))) {
        best = half;
      }
    }
    return best;
  }

  /** Whether, of two downward halves that span one height without crossing, a is right of b. */
  private boolean isNearer(int a, int b) {
    int aHigh = graph.vertex[graph.origin(a)];
    int bHigh = graph.vertex[graph.origin(b)];
    int aLow = graph.vertex[graph.target(a)];
    int bLow = graph.vertex[graph.target(b)];
    boolean aStartsLower = points.compare(aHigh, bHigh, segments.j) <= 0;
    int sign = aStartsLower ? graph.turn(b, aHigh) : -graph.turn(a, bHigh);
    if (sign == 0) {
      boolean aEndsHigher = points.compare(aLow, bLow, segments.j) >= 0;
      sign = aEndsHigher ? graph.turn(b, aLow) : -graph.turn(a, bLow);
    }
    return sign > 0;
  }
}
