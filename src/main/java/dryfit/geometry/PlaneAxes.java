package dryfit.geometry;

/**
 * Two of the three space axes, chosen so that a flat face keeps its shape best when the third is
 * dropped. Seen from the side its normal points to, the face turns the same way in the plane.
 */
public record PlaneAxes(int across, int up) {

  /** The axes for faces with this normal, which need not have unit length. */
  public static PlaneAxes facing(Vec3 normal) {
    double x = Math.abs(normal.x());
    double y = Math.abs(normal.y());
    double z = Math.abs(normal.z());
    if (z >= x && z >= y) {
      return normal.z() >= 0 ? new PlaneAxes(0, 1) : new PlaneAxes(1, 0);
    }
    if (y >= x) {
      return normal.y() >= 0 ? new PlaneAxes(2, 0) : new PlaneAxes(0, 2);
    }
    return normal.x() >= 0 ? new PlaneAxes(1, 2) : new PlaneAxes(2, 1);
  }

  /** The points of {@code xyz} (3 numbers a point) in the plane, 2 numbers a point. */
  public double[] flatten(double[] xyz) {
    double[] xy = new double[xyz.length / 3 * 2];
    for (int i = 0; i < xy.length / 2; i++) {
      xy[2 * i] = xyz[3 * i + across];
      xy[2 * i + 1] = xyz[3 * i + up];
    }
    return xy;
  }
}
