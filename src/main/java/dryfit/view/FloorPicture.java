package dryfit.view;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import java.util.Arrays;
import java.util.List;

/**
 * What lies on the floor round the chair: its soft shadow, as the sky would leave it.
 *
 * @param side length of the square picture, mm
 * @param middle where its centre is on the floor
 * @param dark for each of {@link #PIXELS} by {@link #PIXELS} places how dark it is, 0 to 1; the
 *     first row is the farthest back
 */
record FloorPicture(double side, Vec3 middle, float[] dark) {
  static final int PIXELS = 256;

  /** How far the shadow of a point wanders off for every millimetre above the floor. */
  private static final double LEAN_X = 0.16;

  private static final double LEAN_Y = 0.12;

  static FloorPicture of(Chair chair, Box bounds) {
    Vec3 size = bounds.size();
    double side = 2.6 * Math.max(Math.max(size.x(), size.y()), 0.7 * size.z());
    Vec3 middle = new Vec3(bounds.middle().x(), bounds.middle().y(), 0);
    float[] high = new float[PIXELS * PIXELS];
    float[] low = new float[PIXELS * PIXELS];
    for (Part part : chair.parts()) {
      Mesh mesh = part.placedMesh();
      int[] corners = mesh.triangles();
      double[] xyz = mesh.coordinates();
      for (int t = 0; t < mesh.triangleCount(); t++) {
        fill(high, low, xyz, corners, 3 * t, side, middle);
      }
    }
    float[] wide = blurred(blurred(high, 7), 7);
    float[] near = blurred(blurred(low, 2), 2);
    float[] dark = new float[high.length];
    for (int i = 0; i < dark.length; i++) {
      dark[i] = Math.min(1, 0.75f * wide[i] + 0.45f * near[i]);
    }
    return new FloorPicture(side, middle, dark);
  }

  private static void fill(
      float[] high, float[] low, double[] xyz, int[] corners, int first, double side, Vec3 middle) {
    double[] x = new double[3];
    double[] y = new double[3];
    double height = 0;
    for (int k = 0; k < 3; k++) {
      int p = 3 * corners[first + k];
      double z = Math.max(0, xyz[p + 2]);
      x[k] = ((xyz[p] + LEAN_X * z - middle.x()) / side + 0.5) * PIXELS;
      y[k] = (0.5 - (xyz[p + 1] + LEAN_Y * z - middle.y()) / side) * PIXELS;
      height = Math.max(height, z);
    }
    double area = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]);
    if (area == 0) {
      return;
    }
    int y0 = (int) Math.max(0, Math.floor(Arrays.stream(y).min().orElseThrow()));
    int y1 = (int) Math.min(PIXELS - 1, Math.ceil(Arrays.stream(y).max().orElseThrow()));
    int x0 = (int) Math.max(0, Math.floor(Arrays.stream(x).min().orElseThrow()));
    int x1 = (int) Math.min(PIXELS - 1, Math.ceil(Arrays.stream(x).max().orElseThrow()));
    for (int py = y0; py <= y1; py++) {
      for (int px = x0; px <= x1; px++) {
        if (inside(x, y, px + 0.5, py + 0.5, area)) {
          high[py * PIXELS + px] = 1;
          if (height < 60) {
            low[py * PIXELS + px] = 1;
          }
        }
      }
    }
  }

  private static boolean inside(double[] x, double[] y, double px, double py, double area) {
    for (int k = 0; k < 3; k++) {
      int n = (k + 1) % 3;
      double side = (x[n] - x[k]) * (py - y[k]) - (px - x[k]) * (y[n] - y[k]);
      if (side * area < 0) {
        return false;
      }
    }
    return true;
  }

  /** The mean over a square of {@code 2 reach + 1} pixels, one direction after the other. */
  private static float[] blurred(float[] from, int reach) {
    return across(across(from, reach, 1, PIXELS), reach, PIXELS, 1);
  }

  private static float[] across(float[] from, int reach, int step, int next) {
    float[] to = new float[from.length];
    for (int line = 0; line < PIXELS; line++) {
      float sum = 0;
      for (int i = -reach; i < PIXELS + reach; i++) {
        sum += i + reach < PIXELS && i + reach >= 0 ? from[line * next + (i + reach) * step] : 0;
        if (i >= 0 && i < PIXELS) {
          to[line * next + i * step] = sum / (2 * reach + 1);
        }
        sum -= i - reach >= 0 && i - reach < PIXELS ? from[line * next + (i - reach) * step] : 0;
      }
    }
    return to;
  }

  /** The corners of the picture on the floor: front left, front right, back right, back left. */
  List<Vec3> corners() {
    double h = side / 2;
    return List.of(
        middle.plus(new Vec3(-h, -h, 0)),
        middle.plus(new Vec3(h, -h, 0)),
        middle.plus(new Vec3(h, h, 0)),
        middle.plus(new Vec3(-h, h, 0)));
  }
}
