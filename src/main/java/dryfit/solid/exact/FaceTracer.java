package dryfit.solid.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Gathers the kept cells of a plane into faces and walks round their rims. */
final class FaceTracer {
  private final Points points;
  private final Segments segments;
  private final Arrangement graph;
  private final Nesting nesting;
  private final Sets regions = new Sets();
  private boolean[] walked = new boolean[0];
  private int[] faceOf = new int[0];
  private final IntList loop = new IntList();

  /** Edges within a face that are rims all the same. */
  private boolean[] forced = new boolean[0];

  private int[] degree = new int[0];

  FaceTracer(Points points, Segments segments, Arrangement graph, Nesting nesting) {
    this.points = points;
    this.segments = segments;
    this.graph = graph;
    this.nesting = nesting;
  }

  private static final class Draft {
    String origin;
    int facing;
    final List<int[]> loops = new ArrayList<>();
    final List<int[]> lines = new ArrayList<>();
    int outer;
    double most = Double.NEGATIVE_INFINITY;
  }

  private int cell(int half) {
    return nesting.cellOf[graph.cycle[half]];
  }

  /**
   * Adds the faces.
   *
   * @param keep for each cell 1 if it is a face with its outside in front, -1 if behind, 0 if none
   * @param seams at which edges something only touches the faces
   */
  void add(int plane, int[] keep, String[] origin, KeyMap seams, List<Face> into) {
    regions.reset(nesting.cells);
    force(keep, seams);
    for (int e = 0; e < graph.edges; e++) {
      int a = cell(2 * e);
      int b = cell(2 * e + 1);
      if (keep[a] != 0 && keep[a] == keep[b] && !forced[e]) {
        regions.join(a, b);
      }
    }
    if (faceOf.length < nesting.cells) {
      faceOf = new int[2 * nesting.cells];
    }
    Arrays.fill(faceOf, 0, nesting.cells, -1);
    List<Draft> drafts = new ArrayList<>();
    for (int c = 0; c < nesting.cells; c++) {
      if (keep[c] != 0) {
        int root = regions.find(c);
        if (faceOf[root] < 0) {
          faceOf[root] = drafts.size();
          drafts.add(new Draft());
        }
        Draft draft = drafts.get(faceOf[root]);
        draft.facing = keep[c];
        if (draft.origin == null || origin[c].compareTo(draft.origin) < 0) {
          draft.origin = origin[c];
        }
      }
    }
    if (walked.length < 2 * graph.edges) {
      walked = new boolean[4 * graph.edges];
    }
    Arrays.fill(walked, 0, 2 * graph.edges, false);
    for (int h = 0; h < 2 * graph.edges; h++) {
      if (!walked[h] && isRim(h, keep)) {
        walk(h, keep, drafts.get(faceOf[regions.find(cell(h))]));
      }
    }
    for (Draft d : drafts) {
      int[][] loops = d.loops.toArray(new int[0][]);
      int[][] lines = d.lines.toArray(new int[0][]);
      swap(loops, d.outer);
      swap(lines, d.outer);
      into.add(new Face(plane, d.facing, d.origin, loops, lines));
    }
  }

  private static void swap(int[][] loops, int outer) {
    int[] first = loops[0];
    loops[0] = loops[outer];
    loops[outer] = first;
  }

  private boolean isRim(int half, int[] keep) {
    int own = keep[cell(half)];
    return own != 0 && (own != keep[cell(half ^ 1)] || forced[half >> 1]);
  }

  /** Whether an edge lies within a face although two or more facets of another plane end at it. */
  private boolean isTouched(int edge, int[] keep) {
    int own = keep[cell(2 * edge)];
    int first = graph.over[edge];
    return own != 0 && own == keep[cell(2 * edge + 1)] && graph.overNext.at[first] >= 0;
  }

  /**
   * Lists, as pairs of points, the edges at which something may touch a face without cutting it.
   */
  void touched(int[] keep, LongList into) {
    for (int e = 0; e < graph.edges; e++) {
      if (isTouched(e, keep)) {
        into.add(KeyMap.pair(graph.vertex[graph.u[e]], graph.vertex[graph.v[e]]));
      }
    }
  }

  /**
   * Divides faces along the seams given, so that nobody may lay a diagonal over them. Seams that
   * end within a face are left alone: a diagonal cannot reach their end.
   */
  private void force(int[] keep, KeyMap seams) {
    if (forced.length < graph.edges) {
      forced = new boolean[2 * graph.edges];
      degree = new int[4 * graph.edges];
    }
    Arrays.fill(forced, 0, graph.edges, false);
    if (seams.isEmpty()) {
      return;
    }
    Arrays.fill(degree, 0, graph.vertices, 0);
    for (int e = 0; e < graph.edges; e++) {
      forced[e] =
          isTouched(e, keep)
              && seams.get(KeyMap.pair(graph.vertex[graph.u[e]], graph.vertex[graph.v[e]]))
                  != KeyMap.NONE;
      if (forced[e] || keep[cell(2 * e)] != keep[cell(2 * e + 1)]) {
        degree[graph.u[e]]++;
        degree[graph.v[e]]++;
      }
    }
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int e = 0; e < graph.edges; e++) {
        if (forced[e] && (degree[graph.u[e]] == 1 || degree[graph.v[e]] == 1)) {
          forced[e] = false;
          degree[graph.u[e]]--;
          degree[graph.v[e]]--;
          changed = true;
        }
      }
    }
  }

  private void walk(int start, int[] keep, Draft draft) {
    loop.clear();
    double area = 0;
    int half = start;
    do {
      walked[half] = true;
      loop.add(half);
      int a = graph.vertex[graph.origin(half)];
      int b = graph.vertex[graph.target(half)];
      area +=
          points.along(a, segments.i) * points.along(b, segments.j)
              - points.along(b, segments.i) * points.along(a, segments.j);
      half = graph.next(half);
      while (!isRim(half, keep)) {
        half = graph.clockwise(half);
      }
    } while (half != start);
    if (area > draft.most) {
      draft.most = area;
      draft.outer = draft.loops.size();
    }
    int n = loop.size;
    int[] ids = new int[n];
    int[] lines = new int[n];
    for (int k = 0; k < n; k++) {
      boolean turned = draft.facing < 0;
      int h = loop.at[turned ? n - 1 - k : k];
      ids[k] = graph.vertex[turned ? graph.target(h) : graph.origin(h)];
      lines[k] = graph.line[h >> 1];
    }
    draft.loops.add(ids);
    draft.lines.add(lines);
  }
}
