package dryfit.export.picture;

import dryfit.geometry.Box;
import dryfit.geometry.Vec3;

/**
 * The shadow on the floor, z = 0: a map from above of how much light the chair keeps from it. One
 * part falls along the key light and is a little soft; the other straight down and is very soft.
 */
final class GroundShadow {
  private static final int CELLS = 400;

  private final double x0;
  private final double y0;
  private final double cell;
  private final float[] dark;

  GroundShadow(Iterable<Surface> surfaces, Box bounds, Vec3 towardsKey) {
    double high = Math.max(1, bounds.high().z());
    double reach = high * Math.hypot(towardsKey.x(), towardsKey.y()) / towardsKey.z();
    double size = Math.max(bounds.size().x(), bounds.size().y()) + 2 * reach + 0.5 * high;
    cell = size / CELLS;
    x0 = bounds.middle().x() - size / 2;
    y0 = bounds.middle().y() - size / 2;
    float[] cast = new float[CELLS * CELLS];
    float[] below = new float[CELLS * CELLS];
    for (Surface s : surfaces) {
      project(s, towardsKey.x() / towardsKey.z(), towardsKey.y() / towardsKey.z(), cast);
      project(s, 0, 0, below);
    }
    blur(cast, Math.max(1, (int) Math.round(0.016 * high / cell)));
    blur(below, Math.max(1, (int) Math.round(0.055 * high / cell)));
    dark = new float[CELLS * CELLS];
    for (int i = 0; i < dark.length; i++) {
      dark[i] = 0.20f * cast[i] + 0.36f * below[i];
    }
  }

  /** How much darker the floor is at a place, 0 to 1. */
  double at(double x, double y) {
    double u = (x - x0) / cell - 0.5;
    double v = (y - y0) / cell - 0.5;
    int i = (int) Math.floor(u);
    int j = (int) Math.floor(v);
    if (i < 0 || j < 0 || i >= CELLS - 1 || j >= CELLS - 1) {
      return 0;
    }
    double a = u - i;
    double b = v - j;
    int at = j * CELLS + i;
    return (1 - b) * ((1 - a) * dark[at] + a * dark[at + 1])
        + b * ((1 - a) * dark[at + CELLS] + a * dark[at + CELLS + 1]);
  }

  /** Marks the cells under each triangle, slid along by its height. */
  private void project(Surface s, double slantX, double slantY, float[] map) {
    double[] x = new double[3];
    double[] y = new double[3];
    for (int t = 0; t < s.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        int p = 3 * s.triangles[3 * t + k];
        x[k] = (s.xyz[p] - slantX * s.xyz[p + 2] - x0) / cell;
        y[k] = (s.xyz[p + 1] - slantY * s.xyz[p + 2] - y0) / cell;
      }
      fill(x, y, map);
    }
  }

  private static void fill(double[] x, double[] y, float[] map) {
    double low = Math.min(y[0], Math.min(y[1], y[2]));
    double high = Math.max(y[0], Math.max(y[1], y[2]));
    int j0 = Math.max(0, (int) Math.ceil(low - 0.5));
    int j1 = Math.min(CELLS - 1, (int) Math.floor(high - 0.5));
    for (int j = j0; j <= j1; j++) {
      double row = j + 0.5;
      double left = Double.POSITIVE_INFINITY;
      double right = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < 3; k++) {
        int n = (k + 1) % 3;
        if (y[k] <= row != y[n] <= row) {
          double at = x[k] + (x[n] - x[k]) * ((row - y[k]) / (y[n] - y[k]));
          left = Math.min(left, at);
          right = Math.max(right, at);
        }
      }
      int i0 = Math.max(0, (int) Math.ceil(left - 0.5));
      int i1 = Math.min(CELLS - 1, (int) Math.floor(right - 0.5));
      for (int i = i0; i <= i1; i++) {
        map[j * CELLS + i] = 1;
      }
    }
  }

  /** Three running means one after the other come close to a bell curve. */
  private static void blur(float[] map, int radius) {
    for (int pass = 0; pass < 3; pass++) {
      for (int j = 0; j < CELLS; j++) {
        mean(map, j * CELLS, 1, radius);
      }
      for (int i = 0; i < CELLS; i++) {
        mean(map, i, CELLS, radius);
      }
    }
  }

  private static void mean(float[] map, int start, int stride, int radius) {
    float[] line = new float[CELLS];
    for (int i = 0; i < CELLS; i++) {
      line[i] = map[start + i * stride];
    }
    double sum = 0;
    for (int i = -radius; i < CELLS; i++) {
      sum += i + radius < CELLS ? line[i + radius] : 0;
      sum -= i - radius - 1 >= 0 ? line[i - radius - 1] : 0;
      if (i >= 0) {
        map[start + i * stride] = (float) (sum / (2 * radius + 1));
      }
    }
  }
}
