package dryfit.solid;

import dryfit.measure.Tolerances;
import java.util.Arrays;

/**
 * Cuts convex cells by planes. Faces that survive keep their plane to the last bit, so that planes
 * do not drift however often a cell is cut.
 */
final class Clip {
  private static final int NONE = -1;

  private final Convex cell;
  private final double[] height;
  private double[] xyz;
  private int count;

  /** New number of each old point plus one, once it is used; else 0. */
  private final int[] renamed;

  /** For each old point the last of its cut edges plus one; 0 for none. */
  private final int[] lastCut;

  /**
   * For each cut edge: its outer end, the number of the point on it, and plus one the cut edge
   * before it that has the same inner end.
   */
  private int[] cuts = new int[3 * 16];

  private int cutCount;

  private Clip(Convex cell, double[] height) {
    this.cell = cell;
    this.height = height;
    this.xyz = new double[cell.xyz.length + 3 * 16];
    this.renamed = new int[height.length];
    this.lastCut = new int[height.length];
  }

  /** The part of both cells; null if it is thinner than a sliver. */
  static Convex common(Convex a, Convex b) {
    if (!near(a, b) || apart(a, b, Tolerances.sliver())) {
      return null;
    }
    Convex rest = a;
    for (int k = 0; k < b.planes.length && rest != null; k += 4) {
      rest = inside(rest, b.planes[k], b.planes[k + 1], b.planes[k + 2], b.planes[k + 3]);
    }
    return rest;
  }

  /** Whether the boxes share more than a sliver. */
  static boolean near(Convex a, Convex b) {
    double thin = Tolerances.sliver();
    return a.box[0] < b.box[3] - thin
        && b.box[0] < a.box[3] - thin
        && a.box[1] < b.box[4] - thin
        && b.box[1] < a.box[4] - thin
        && a.box[2] < b.box[5] - thin
        && b.box[2] < a.box[5] - thin;
  }

  /** Whether a face of one keeps the other out, or lets it in no deeper than {@code depth}. */
  static boolean apart(Convex a, Convex b, double depth) {
    return keepsOut(a, b, depth) || keepsOut(b, a, depth);
  }

  private static boolean keepsOut(Convex a, Convex b, double depth) {
    double[] p = b.xyz;
    for (int f = 0; f < a.faces.length; f++) {
      boolean out = true;
      for (int i = 0; i < p.length && out; i += 3) {
        out = a.height(f, p[i], p[i + 1], p[i + 2]) >= -depth;
      }
      if (out) {
        return true;
      }
    }
    return false;
  }

  /** The part of the cell below the plane; null if it is thinner than a sliver. */
  static Convex inside(Convex cell, double nx, double ny, double nz, double offset) {
    double[] p = cell.xyz;
    double[] height = new double[cell.pointCount()];
    double least = 0;
    double most = 0;
    for (int i = 0; i < height.length; i++) {
      double h = nx * p[3 * i] + ny * p[3 * i + 1] + nz * p[3 * i + 2] - offset;
      height[i] = h;
      least = Math.min(least, h);
      most = Math.max(most, h);
    }
    if (-least <= Tolerances.sliver()) {
      return null;
    }
    if (most <= Tolerances.onPlane()) {
      return cell;
    }
    // Corners a hair below the plane beside others on it can leave no proper cell; then a little
    // more counts as on it. Planes that all but go along a ring of corners need most.
    Convex cut = null;
    for (double on = Tolerances.onPlane(); cut == null && on <= Tolerances.weld(); on *= 10) {
      settle(height, on);
      cut = new Clip(cell, height).cut(nx, ny, nz, offset);
    }
    return cut;
  }

  /** Puts heights within {@code on} of the plane on it. */
  private static void settle(double[] height, double on) {
    for (int i = 0; i < height.length; i++) {
      if (Math.abs(height[i]) <= on) {
        height[i] = 0;
      }
    }
  }

  private Convex cut(double nx, double ny, double nz, double offset) {
    int[][] kept = new int[cell.faces.length + 1][];
    double[] planes = new double[cell.planes.length + 4];
    int keptCount = 0;
    // Those with an edge in the plane, perhaps: the others have none that the new face could share.
    int[][] rim = new int[cell.faces.length][];
    int rimCount = 0;
    for (int f = 0; f < cell.faces.length; f++) {
      int[] old = cell.faces[f];
      int[] loop = cutLoop(old);
      if (loop != null) {
        System.arraycopy(cell.planes, 4 * f, planes, 4 * keptCount, 4);
        kept[keptCount++] = loop;
        if (reachesPlane(old)) {
          rim[rimCount++] = loop;
        }
      }
    }
    int[] cap = cap(rim, rimCount);
    if (cap == null) {
      return usable(Hull.around(Arrays.copyOf(xyz, 3 * count)).orElse(null));
    }
    planes[4 * keptCount] = nx;
    planes[4 * keptCount + 1] = ny;
    planes[4 * keptCount + 2] = nz;
    planes[4 * keptCount + 3] = offset;
    kept[keptCount++] = cap;
    double[] points = Arrays.copyOf(xyz, 3 * count);
    int[][] faces = keptCount == kept.length ? kept : Arrays.copyOf(kept, keptCount);
    planes = 4 * keptCount == planes.length ? planes : Arrays.copyOf(planes, 4 * keptCount);
    return usable(ShortEdges.collapsed(points, faces, planes));
  }

  private static Convex usable(Convex cell) {
    if (cell == null) {
      return null;
    }
    for (int f = 0; f < cell.faces.length; f++) {
      if (!deeperThanSliver(cell, f)) {
        return null;
      }
    }
    return cell;
  }

  private static boolean deeperThanSliver(Convex cell, int f) {
    for (int i = 0; i < cell.xyz.length; i += 3) {
      if (cell.height(f, cell.xyz[i], cell.xyz[i + 1], cell.xyz[i + 2]) < -Tolerances.sliver()) {
        return true;
      }
    }
    return false;
  }

  /** The loop below the plane, in new numbers; null if nothing of the face is below it. */
  private int[] cutLoop(int[] loop) {
    boolean below = false;
    int size = 0;
    double last = height[loop[loop.length - 1]];
    for (int p : loop) {
      double h = height[p];
      below |= h < 0;
      size += (h <= 0 ? 1 : 0) + ((h < 0 && last > 0) || (h > 0 && last < 0) ? 1 : 0);
      last = h;
    }
    if (!below || size < 3) {
      return null;
    }
    int[] out = new int[size];
    int n = 0;
    for (int i = 0; i < loop.length; i++) {
      int p = loop[i];
      int q = loop[i + 1 < loop.length ? i + 1 : 0];
      if (height[p] <= 0) {
        out[n++] = keep(p);
      }
      if (height[p] < 0 && height[q] > 0) {
        out[n++] = onEdge(p, q);
      } else if (height[p] > 0 && height[q] < 0) {
        out[n++] = onEdge(q, p);
      }
    }
    return out;
  }

  private boolean reachesPlane(int[] loop) {
    for (int p : loop) {
      if (height[p] >= 0) {
        return true;
      }
    }
    return false;
  }

  private int keep(int p) {
    if (renamed[p] == 0) {
      renamed[p] = 1 + add(cell.xyz[3 * p], cell.xyz[3 * p + 1], cell.xyz[3 * p + 2]);
    }
    return renamed[p] - 1;
  }

  private int onEdge(int in, int out) {
    for (int c = lastCut[in]; c > 0; c = cuts[3 * c - 1]) {
      if (cuts[3 * c - 3] == out) {
        return cuts[3 * c - 2];
      }
    }
    double t = height[in] / (height[in] - height[out]);
    double[] p = cell.xyz;
    int a = 3 * in;
    int b = 3 * out;
    int made =
        add(
            p[a] + t * (p[b] - p[a]),
            p[a + 1] + t * (p[b + 1] - p[a + 1]),
            p[a + 2] + t * (p[b + 2] - p[a + 2]));
    if (3 * cutCount == cuts.length) {
      cuts = Arrays.copyOf(cuts, 2 * cuts.length);
    }
    cuts[3 * cutCount] = out;
    cuts[3 * cutCount + 1] = made;
    cuts[3 * cutCount + 2] = lastCut[in];
    lastCut[in] = ++cutCount;
    return made;
  }

  private int add(double x, double y, double z) {
    if (3 * count == xyz.length) {
      xyz = Arrays.copyOf(xyz, 2 * xyz.length);
    }
    xyz[3 * count] = x;
    xyz[3 * count + 1] = y;
    xyz[3 * count + 2] = z;
    return count++;
  }

  /**
   * The loop of the new face: the edges in the plane that the kept faces leave open, turned round.
   * Null if they do not make one ring, which only happens when corners within rounding of the plane
   * fall on both sides of it.
   */
  private int[] cap(int[][] rim, int rimCount) {
    boolean[] onPlane = new boolean[count];
    for (int p = 0; p < renamed.length; p++) {
      if (renamed[p] != 0 && height[p] == 0) {
        onPlane[renamed[p] - 1] = true;
      }
    }
    for (int k = 1; k < 3 * cutCount; k += 3) {
      onPlane[cuts[k]] = true;
    }
    // The number of the next point plus one.
    int[] next = new int[count];
    int edges = 0;
    int start = NONE;
    for (int f = 0; f < rimCount; f++) {
      int[] loop = rim[f];
      for (int i = 0; i < loop.length; i++) {
        int p = loop[i];
        int q = loop[i + 1 < loop.length ? i + 1 : 0];
        if (onPlane[p] && onPlane[q]) {
          if (next[q] != 0) {
            return null;
          }
          next[q] = p + 1;
          start = start == NONE ? q : start;
          edges++;
        }
      }
    }
    if (edges < 3) {
      return null;
    }
    int[] ring = new int[edges];
    int at = start;
    for (int i = 0; i < edges; i++) {
      ring[i] = at;
      at = next[at] - 1;
      if (at == NONE || (at == start) != (i == edges - 1)) {
        return null;
      }
    }
    return ring;
  }
}
