package dryfit.solid.exact;

/**
 * A flat piece of one leaf's surface: faces in one plane that share edges. Its directed rim runs
 * anticlockwise round it, seen from outside the leaf.
 */
final class Facet {
  final int id;
  final int leaf;
  final int plane;

  /** 1 if the leaf's outside is in front of the plane, -1 if behind, 0 if the facet is folded. */
  final int facing;

  final String origin;

  /** Corners from which and to which each directed rim edge runs. */
  int[] from;

  int[] to;

  /** For each rim edge a second plane through it. */
  int[] across;

  /** Corner loops, the outer one first; null if the facet came from several faces. */
  final int[][] loops;

  double lowX = Double.POSITIVE_INFINITY;
  double lowY = Double.POSITIVE_INFINITY;
  double lowZ = Double.POSITIVE_INFINITY;
  double highX = Double.NEGATIVE_INFINITY;
  double highY = Double.NEGATIVE_INFINITY;
  double highZ = Double.NEGATIVE_INFINITY;

  /** Facets of other leaves whose boxes meet this one's. */
  final IntList near = new IntList();

  Facet(int id, int leaf, int plane, int facing, String origin, int[][] loops) {
    this.id = id;
    this.leaf = leaf;
    this.plane = plane;
    this.facing = facing;
    this.origin = origin;
    this.loops = loops;
  }

  void reach(Points points, int corner) {
    lowX = Math.min(lowX, points.x[corner]);
    lowY = Math.min(lowY, points.y[corner]);
    lowZ = Math.min(lowZ, points.z[corner]);
    highX = Math.max(highX, points.x[corner]);
    highY = Math.max(highY, points.y[corner]);
    highZ = Math.max(highZ, points.z[corner]);
  }

  double low(int axis) {
    return axis == 0 ? lowX : axis == 1 ? lowY : lowZ;
  }

  double high(int axis) {
    return axis == 0 ? highX : axis == 1 ? highY : highZ;
  }

  boolean meets(Facet o) {
    return lowX <= o.highX
        && o.lowX <= highX
        && lowY <= o.highY
        && o.lowY <= highY
        && lowZ <= o.highZ
        && o.lowZ <= highZ;
  }
}
