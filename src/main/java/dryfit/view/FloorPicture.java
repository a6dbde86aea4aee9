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

  /** What ends below this height darkens the floor right under it, mm. */
  private static final double NEAR_FLOOR = 60;

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

  /** Darkens what lies below one triangle: middles of pixels, row by row. */
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
    boolean nearFloor = height < NEAR_FLOOR;
    // What one side of a closed surface shades, the other shades too.
    if (area == 0 || area > 0 && !nearFloor) {
      return;
    }
    int top = (int) Math.max(0, Math.ceil(Math.min(y[0], Math.min(y[1], y[2])) - 0.5));
    int end = (int) Math.min(PIXELS - 1, Math.max(y[0], Math.max(y[1], y[2])) - 0.5);
    double[] span = new double[2];
    for (int row = top; row <= end; row++) {
      across(x, y, row + 0.5, Math.signum(area), span);
      int from = row * PIXELS + (int) Math.max(0, Math.ceil(span[0] - 0.5));
      int to = row * PIXELS + (int) Math.min(PIXELS, Math.floor(span[1] - 0.5) + 1);
      if (from < to) {
        Arrays.fill(high, from, to, 1);
        if (nearFloor) {
          Arrays.fill(low, from, to, 1);
        }
      }
    }
  }

  /**
   * From where to where a level line is inside a triangle; the first beyond the second if nowhere.
   */
  private static void across(double[] x, double[] y, double level, double turn, double[] span) {
    span[0] = 0;
    span[1] = PIXELS;
    for (int k = 0; k < 3; k++) {
      int n = (k + 1) % 3;
      double rise = turn * (y[n] - y[k]);
      double run = turn * (x[n] - x[k]) * (level - y[k]) + rise * x[k];
      if (rise > 0) {
        span[1] = Math.min(span[1], run / rise);
      } else if (rise < 0) {
        span[0] = Math.max(span[0], run / rise);
      } else if (run < 0) {
        span[1] = -1;
      }
    }
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
