package dryfit.export.picture;

/**
 * What is seen at every sample of the picture: how near it is, which figure it is, and how the two
 * lights fall on it. Samples are rows of {@code width}, from the top left.
 */
final class Canvas {
  final int width;
  final int height;

  /** One over the depth; 0 where there is only paper. Nearer is greater. */
  final float[] nearness;

  /** Figure number + 1; 0 where there is only paper. */
  final short[] figure;

  /** Share of the key light, 0 to 1. */
  final float[] key;

  /** How far the surface turns up, -1 to 1. */
  final float[] upward;

  /** How much ink lies on it, 0 to 1. */
  final float[] ink;

  Canvas(int width, int height) {
    this.width = width;
    this.height = height;
    int n = width * height;
    nearness = new float[n];
    figure = new short[n];
    key = new float[n];
    upward = new float[n];
    ink = new float[n];
  }

  /**
   * A corner of a triangle in the picture.
   *
   * @param w one over the depth
   */
  record Corner(double x, double y, double w, double key, double upward) {}

  /** Fills a triangle that runs anticlockwise as seen; others are turned away and left out. */
  void fill(int number, Corner a, Corner b, Corner c) {
    // y runs down, so what is anticlockwise to the eye has a negative area here.
    double area = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
    if (!(area < 0)) {
      return;
    }
    int y0 = Math.max(0, (int) Math.ceil(min(a.y, b.y, c.y) - 0.5));
    int y1 = Math.min(height - 1, (int) Math.floor(max(a.y, b.y, c.y) - 0.5));
    Ramp w = new Ramp(a, b, c, a.w, b.w, c.w, area);
    Ramp k = new Ramp(a, b, c, a.key, b.key, c.key, area);
    Ramp u = new Ramp(a, b, c, a.upward, b.upward, c.upward, area);
    for (int y = y0; y <= y1; y++) {
      double py = y + 0.5;
      double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
      cross(a, b, py, span);
      cross(b, c, py, span);
      cross(c, a, py, span);
      int x0 = Math.max(0, (int) Math.ceil(span[0] - 0.5));
      int x1 = Math.min(width - 1, (int) Math.ceil(span[1] - 0.5) - 1);
      int at = y * width + x0;
      for (int x = x0; x <= x1; x++, at++) {
        double px = x + 0.5;
        float near = (float) w.at(px, py);
        if (near > nearness[at]) {
          nearness[at] = near;
          figure[at] = (short) (number + 1);
          key[at] = (float) k.at(px, py);
          upward[at] = (float) u.at(px, py);
        }
      }
    }
  }

  private static void cross(Corner a, Corner b, double y, double[] span) {
    if (a.y <= y != b.y <= y) {
      double x = a.x + (b.x - a.x) * ((y - a.y) / (b.y - a.y));
      span[0] = Math.min(span[0], x);
      span[1] = Math.max(span[1], x);
    }
  }

  private static double min(double a, double b, double c) {
    return Math.min(a, Math.min(b, c));
  }

  private static double max(double a, double b, double c) {
    return Math.max(a, Math.max(b, c));
  }

  /** A value that changes evenly across a triangle. */
  private static final class Ramp {
    private final double dx;
    private final double dy;
    private final double zero;

    Ramp(Corner a, Corner b, Corner c, double va, double vb, double vc, double area) {
      dx = ((vb - va) * (c.y - a.y) - (vc - va) * (b.y - a.y)) / area;
      dy = ((vc - va) * (b.x - a.x) - (vb - va) * (c.x - a.x)) / area;
      zero = va - dx * a.x - dy * a.y;
    }

    double at(double x, double y) {
      return zero + dx * x + dy * y;
    }
  }
}
