package dryfit.export.picture;

/** Draws ink lines with soft edges; where lines meet the ink does not get thicker. */
final class Pen {
  private final float[] ink;
  private final int width;
  private final int height;

  /**
   * @param ink rows of {@code width} samples, 0 to 1
   */
  Pen(float[] ink, int width, int height) {
    this.ink = ink;
    this.width = width;
    this.height = height;
  }

  /** A line with round ends, {@code thick} samples wide, as dark as {@code strength}. */
  void line(double x0, double y0, double x1, double y1, double thick, double strength) {
    double half = thick / 2;
    double dx = x1 - x0;
    double dy = y1 - y0;
    double square = dx * dx + dy * dy;
    int top = Math.max(0, (int) Math.floor(Math.min(y0, y1) - half - 1));
    int bottom = Math.min(height - 1, (int) Math.ceil(Math.max(y0, y1) + half + 1));
    for (int y = top; y <= bottom; y++) {
      double py = y + 0.5;
      double[] span = span(x0, y0, x1, y1, py, half + 1);
      int left = Math.max(0, (int) Math.floor(span[0]));
      int right = Math.min(width - 1, (int) Math.ceil(span[1]));
      for (int x = left; x <= right; x++) {
        double px = x + 0.5;
        double along = square > 0 ? ((px - x0) * dx + (py - y0) * dy) / square : 0;
        double t = Math.max(0, Math.min(1, along));
        double away = Math.hypot(px - x0 - t * dx, py - y0 - t * dy);
        double cover = Math.max(0, Math.min(1, half + 0.5 - away)) * strength;
        int at = y * width + x;
        if (cover > ink[at]) {
          ink[at] = (float) cover;
        }
      }
    }
  }

  /** A circle, {@code thick} samples wide. */
  void ring(double x, double y, double radius, double thick) {
    int sides = 72;
    for (int i = 0; i < sides; i++) {
      double a = 2 * Math.PI * i / sides;
      double b = 2 * Math.PI * (i + 1) / sides;
      line(
          x + radius * Math.cos(a),
          y + radius * Math.sin(a),
          x + radius * Math.cos(b),
          y + radius * Math.sin(b),
          thick,
          1);
    }
  }

  /** The stretch of row {@code y} that the line, {@code reach} wide to each side, can touch. */
  private static double[] span(double x0, double y0, double x1, double y1, double y, double reach) {
    double dy = y1 - y0;
    if (Math.abs(dy) < 1) {
      return new double[] {Math.min(x0, x1) - reach, Math.max(x0, x1) + reach};
    }
    double slope = (x1 - x0) / dy;
    // Sideways reach of a slanting line grows with its slant.
    double wide = reach * Math.hypot(1, slope);
    double low = Math.max(0, Math.min(1, (y - reach - y0) / dy));
    double high = Math.max(0, Math.min(1, (y + reach - y0) / dy));
    double a = x0 + low * (x1 - x0);
    double b = x0 + high * (x1 - x0);
    return new double[] {
      Math.max(Math.min(x0, x1) - reach, Math.min(a, b) - wide),
      Math.min(Math.max(x0, x1) + reach, Math.max(a, b) + wide)
    };
  }
}
