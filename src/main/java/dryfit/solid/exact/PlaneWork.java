package dryfit.solid.exact;

import java.util.Arrays;
import java.util.List;

/** Works out which parts of the facets in one plane are surface of the result. */
final class PlaneWork {
  private final Points points;
  private final Expression expression;
  private final List<Facet> facets;
  private final int[] leafStart;
  private final Neighbours neighbours;
  private final Sections sections;
  private final Segments segments;
  private final Arrangement graph;
  private final Nesting nesting;
  private final Rays rays;
  private final FaceTracer tracer;

  private final IntList leaves = new IntList();
  private final IntList chosen = new IntList();
  private final boolean[] counted;
  private final IntList countedList = new IntList();
  private final boolean[] inside;

  /** The label of each leaf that has one. */
  private final int[] labelOf;

  private int plane;
  private List<Facet> group = List.of();

  /** The leaf that alone has facets here and is not cut with the plane, or -1. */
  private int alone;

  private int width;
  private int[] state = new int[0];
  private boolean[] settled = new boolean[0];
  private int[] halfStart = new int[0];
  private int[] halves = new int[0];
  private final IntList pending = new IntList();
  private int[] keep = new int[0];
  private String[] origin = new String[0];

  PlaneWork(
      Planes planes,
      Points points,
      Expression expression,
      List<Facet> facets,
      int[] leafStart,
      Neighbours neighbours) {
    this.points = points;
    this.expression = expression;
    this.facets = facets;
    this.leafStart = leafStart;
    this.neighbours = neighbours;
    sections = new Sections(planes, points);
    segments = new Segments(planes, points);
    graph = new Arrangement(points, segments);
    nesting = new Nesting(points, segments, graph);
    rays = new Rays(planes, points, facets, leafStart, sections);
    tracer = new FaceTracer(points, segments, graph, nesting);
    counted = new boolean[facets.size()];
    inside = new boolean[leafStart.length - 1];
    labelOf = new int[inside.length];
  }

  /**
   * Adds the faces that a group of facets of one plane leave.
   *
   * @param careful whether a leaf may disagree with itself, so that its own facets must be looked
   *     at too
   * @param seams pairs of points along which faces are to be divided
   * @param touched gets, as keys, the pairs of points along which something may touch the faces
   *     from one side
   */
  void add(List<Facet> group, boolean careful, KeyMap seams, LongList touched, List<Face> into) {
    this.group = group;
    plane = group.get(0).plane;
    int leaf = group.get(0).leaf;
    alone = careful ? -1 : leaf;
    for (int f = 1; f < group.size(); f++) {
      alone = group.get(f).leaf != leaf ? -1 : alone;
    }
    segments.reset(plane);
    findLeaves();
    cutNear();
    choose();
    graph.build(plane, chosen);
    nesting.build();
    label();
    decide();
    tracer.add(plane, keep, origin, seams, into);
    tracer.touched(keep, touched);
    for (int k = 0; k < countedList.size; k++) {
      counted[countedList.at[k]] = false;
    }
    countedList.clear();
  }

  private void findLeaves() {
    leaves.clear();
    for (int l = 0; l < leafStart.length - 1; l++) {
      boolean meets = false;
      for (int f = 0; f < group.size() && !meets && l != alone; f++) {
        meets = neighbours.meets(l, group.get(f));
      }
      if (meets) {
        leaves.add(l);
      }
    }
  }

  private void cutNear() {
    for (int k = 0; k < leaves.size; k++) {
      labelOf[leaves.at[k]] = k;
    }
    for (int f = 0; f < group.size(); f++) {
      Facet facet = group.get(f);
      for (int e = 0; e < facet.from.length; e++) {
        segments.addRim(facet.from[e], facet.to[e], facet.across[e], leaves.size + f);
      }
      for (int k = 0; k < facet.near.size; k++) {
        cutNear(facets.get(facet.near.at[k]));
      }
      if (alone < 0) {
        for (int g = leafStart[facet.leaf]; g < leafStart[facet.leaf + 1]; g++) {
          if (facets.get(g).meets(facet)) {
            cutNear(facets.get(g));
          }
        }
      }
    }
  }

  private void cutNear(Facet facet) {
    if (facet.plane != plane && !counted[facet.id]) {
      counted[facet.id] = true;
      countedList.add(facet.id);
      sections.cut(facet, plane, labelOf[facet.leaf], segments);
    }
  }

  /** Segments beside all facets of the group need no arranging. */
  private void choose() {
    double lowI = Double.POSITIVE_INFINITY;
    double lowJ = Double.POSITIVE_INFINITY;
    double highI = Double.NEGATIVE_INFINITY;
    double highJ = Double.NEGATIVE_INFINITY;
    for (Facet f : group) {
      lowI = Math.min(lowI, f.low(segments.i));
      lowJ = Math.min(lowJ, f.low(segments.j));
      highI = Math.max(highI, f.high(segments.i));
      highJ = Math.max(highJ, f.high(segments.j));
    }
    chosen.clear();
    for (int s = 0; s < segments.count; s++) {
      double a = points.along(segments.p[s], segments.j);
      double b = points.along(segments.q[s], segments.j);
      if (points.along(segments.q[s], segments.i) >= lowI - 1
          && points.along(segments.p[s], segments.i) <= highI + 1
          && Math.max(a, b) >= lowJ - 1
          && Math.min(a, b) <= highJ + 1) {
        chosen.add(s);
      }
    }
  }

  private void label() {
    width = 2 * (leaves.size + group.size());
    int cells = nesting.cells;
    if (state.length < cells * width) {
      state = new int[2 * cells * width];
    }
    if (settled.length < cells) {
      settled = new boolean[2 * cells];
      halfStart = new int[2 * cells + 2];
      keep = new int[2 * cells];
      origin = new String[2 * cells];
    }
    if (halves.length < 2 * graph.edges) {
      halves = new int[4 * graph.edges];
    }
    Arrays.fill(halfStart, 0, cells + 2, 0);
    for (int h = 0; h < 2 * graph.edges; h++) {
      halfStart[nesting.cellOf[graph.cycle[h]] + 2]++;
    }
    for (int c = 0; c < cells; c++) {
      halfStart[c + 2] += halfStart[c + 1];
    }
    for (int h = 0; h < 2 * graph.edges; h++) {
      halves[halfStart[nesting.cellOf[graph.cycle[h]] + 1]++] = h;
    }
    labelCoverage(cells);
    labelLeaves(cells);
  }

  /** Which facets of the group cover each cell; none covers the endless one. */
  private void labelCoverage(int cells) {
    Arrays.fill(settled, 0, cells, false);
    Arrays.fill(state, 0, width, 0);
    spread(0, 2 * leaves.size, width, false);
  }

  private void labelLeaves(int cells) {
    Arrays.fill(settled, 0, cells, false);
    int labelled = 2 * leaves.size;
    if (labelled == 0) {
      return;
    }
    for (int c = 0; c < cells; c++) {
      if (!settled[c] && isCovered(c)) {
        start(c);
        spread(c, 0, labelled, true);
      }
    }
  }

  private boolean isCovered(int cell) {
    for (int k = 2 * leaves.size; k < width; k += 2) {
      if (state[cell * width + k] != 0) {
        return true;
      }
    }
    return false;
  }

  /** Carries labels from one cell over edges to others. */
  private void spread(int first, int fromLabel, int toLabel, boolean coveredOnly) {
    pending.clear();
    pending.add(first);
    settled[first] = true;
    while (pending.size > 0) {
      int cell = pending.at[--pending.size];
      for (int k = halfStart[cell]; k < halfStart[cell + 1]; k++) {
        int half = halves[k];
        int other = nesting.cellOf[graph.cycle[half ^ 1]];
        if (!settled[other] && (!coveredOnly || isCovered(other))) {
          settled[other] = true;
          System.arraycopy(
              state,
              cell * width + fromLabel,
              state,
              other * width + fromLabel,
              toLabel - fromLabel);
          cross(half ^ 1, state, other * width, fromLabel, toLabel);
          pending.add(other);
        }
      }
    }
  }

  /** Changes labels as when crossing a half from its right to its left. */
  private void cross(int half, int[] labels, int at, int fromLabel, int toLabel) {
    int sign = (half & 1) == 0 ? 1 : -1;
    for (int o = graph.over[half >> 1]; o >= 0; o = graph.overNext.at[o]) {
      int s = graph.overSegment.at[o];
      int k = 2 * segments.label[s];
      if (k >= fromLabel && k < toLabel) {
        int change = sign * segments.times[s];
        labels[at + k] += (segments.sides[s] & Segments.FRONT) != 0 ? change : 0;
        labels[at + k + 1] += (segments.sides[s] & Segments.BACK) != 0 ? change : 0;
      }
    }
  }

  /** Finds the labels of a cell from outside, by a ray to one of its corners and round it. */
  private void start(int cell) {
    int half = halves[halfStart[cell]];
    int w = graph.origin(half);
    int point = graph.vertex[w];
    int[] counts = new int[2 * leaves.size];
    rays.count(segments, leaves.size, point, counts);
    for (int k = 0; k < leaves.size; k++) {
      rays.countFar(leaves.at[k], k, plane, point, counted, counts);
    }
    int first = graph.star[w];
    int degree = graph.star[w + 1] - first;
    // The ray ends above spokes that run straight left and below all that rise to the left.
    int k = 0;
    while (k < degree && !fallsLeft(graph.spoke[first + k], point)) {
      k++;
    }
    for (int step = 0; step < degree; step++, k++) {
      int before = graph.spoke[first + (k + degree - 1) % degree];
      if (graph.cycle[before] == graph.cycle[half]) {
        System.arraycopy(counts, 0, state, cell * width, counts.length);
        return;
      }
      cross(graph.spoke[first + k % degree], counts, 0, 0, counts.length);
    }
    throw new IllegalStateException("a cell without a corner");
  }

  private boolean fallsLeft(int spoke, int point) {
    return (spoke & 1) == 1
        && points.compare(graph.vertex[graph.target(spoke)], point, segments.j) <= 0;
  }

  /** Evaluates the expression on both sides of every covered cell. */
  private void decide() {
    for (int c = 0; c < nesting.cells; c++) {
      keep[c] = 0;
      if (isCovered(c)) {
        boolean front = holds(c, 0);
        boolean back = holds(c, 1);
        keep[c] = front == back ? 0 : back ? 1 : -1;
        origin[c] = keep[c] == 0 ? null : origin(c);
      }
    }
  }

  private boolean holds(int cell, int side) {
    for (int k = 0; k < leaves.size; k++) {
      inside[leaves.at[k]] = state[cell * width + 2 * k + side] > 0;
    }
    if (alone >= 0) {
      int covered = 0;
      for (int k = 2 * leaves.size; k < width; k += 2) {
        covered += state[cell * width + k];
      }
      inside[alone] = side == 0 ? covered < 0 : covered > 0;
    }
    boolean holds = expression.holds(inside);
    for (int k = 0; k < leaves.size; k++) {
      inside[leaves.at[k]] = false;
    }
    if (alone >= 0) {
      inside[alone] = false;
    }
    return holds;
  }

  /** The smallest origin among the facets that make the cell a face. */
  private String origin(int cell) {
    String best = null;
    boolean bestFaces = false;
    for (int f = 0; f < group.size(); f++) {
      int covered = state[cell * width + 2 * (leaves.size + f)];
      if (covered != 0) {
        // A facet that looks the other way belongs to a tool that only lies against the face.
        boolean faces = covered > 0 == keep[cell] > 0;
        String own = group.get(f).origin;
        if (best == null
            || (faces && !bestFaces)
            || (faces == bestFaces && own.compareTo(best) < 0)) {
          best = own;
          bestFaces = faces;
        }
      }
    }
    return best;
  }
}
