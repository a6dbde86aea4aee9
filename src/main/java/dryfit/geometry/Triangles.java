package dryfit.geometry;

/** Points and triangles on their way to a mesh; whoever holds it owns the arrays. */
final class Triangles {
  private final double[] xyz;
  private final int[] corners;
  private final int[] faces;

  Triangles(double[] xyz, int[] corners, int[] faces) {
    this.xyz = xyz;
    this.corners = corners;
    this.faces = faces;
  }

  /** 3 numbers a point. */
  double[] xyz() {
    return xyz;
  }

  /** 3 point numbers a triangle. */
  int[] corners() {
    return corners;
  }

  /** The face of each triangle. */
  int[] faces() {
    return faces;
  }
}
