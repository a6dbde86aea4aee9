package dryfit.solid.exact;

/** A flat face of the result while it is being made. */
final class Face {
  private final int plane;
  private final int facing;
  private final String origin;
  private final int[][] loops;
  private final int[][] lines;

  Face(int plane, int facing, String origin, int[][] loops, int[][] lines) {
    this.plane = plane;
    this.facing = facing;
    this.origin = origin;
    this.loops = loops;
    this.lines = lines;
  }

  /** The plane it lies in. */
  int plane() {
    return plane;
  }

  /** 1 if its outside is in front of the plane, -1 if behind. */
  int facing() {
    return facing;
  }

  /** What made it. */
  String origin() {
    return origin;
  }

  /** Point ids; seen from outside the outer loop first and anticlockwise, then the holes. */
  int[][] loops() {
    return loops;
  }

  /** For the edge that starts at each point of a loop, a second plane through it. */
  int[][] lines() {
    return lines;
  }

  /** The facet as it is, or turned round. */
  static Face of(Facet facet, boolean turned) {
    int[][] loops = new int[facet.loops.length][];
    int[][] lines = new int[loops.length][];
    int edge = 0;
    for (int l = 0; l < loops.length; l++) {
      int n = facet.loops[l].length;
      loops[l] = new int[n];
      lines[l] = new int[n];
      for (int i = 0; i < n; i++) {
        loops[l][turned ? n - 1 - i : i] = facet.loops[l][i];
        // Turned, the edge from i to i + 1 starts at the image of i + 1.
        lines[l][turned ? (2 * n - 2 - i) % n : i] = facet.across[edge++];
      }
    }
    return new Face(facet.plane, turned ? -facet.facing : facet.facing, facet.origin, loops, lines);
  }
}
