package dryfit.geometry;

import dryfit.measure.Tolerances;
import java.util.Arrays;
import java.util.List;

/** The triangles of a mesh, laid out for rays. */
final class Facets {
  /** A triangle: one corner, its normal, and for each edge its inward normal and offset. */
  private static final int WIDTH = 3 + 3 + 3 * 4;

  private final double[] data;
  private final boolean[] borders;
  private final int[] face;
  private final double[] boxes;

  Facets(Mesh mesh) {
    int n = mesh.triangleCount();
    data = new double[WIDTH * n];
    borders = borders(mesh);
    face = new int[n];
    boxes = new double[6 * n];
    for (int t = 0; t < n; t++) {
      face[t] = mesh.faceOf(t);
      Vec3[] p = {
        mesh.point(mesh.corner(t, 0)), mesh.point(mesh.corner(t, 1)), mesh.point(mesh.corner(t, 2))
      };
      Vec3 normal = p[1].minus(p[0]).cross(p[2].minus(p[0])).unit();
      store(WIDTH * t, p[0]);
      store(WIDTH * t + 3, normal);
      for (int e = 0; e < 3; e++) {
        Vec3 inward = normal.cross(p[(e + 1) % 3].minus(p[e])).unit();
        store(WIDTH * t + 6 + 4 * e, inward);
        data[WIDTH * t + 9 + 4 * e] = inward.dot(p[e]);
      }
      Box box = Box.around(Arrays.asList(p)).grown(Tolerances.coincident());
      double[] ends = {
        box.low().x(), box.low().y(), box.low().z(), box.high().x(), box.high().y(), box.high().z()
      };
      System.arraycopy(ends, 0, boxes, 6 * t, 6);
    }
  }

  double[] boxes() {
    return boxes;
  }

  private void store(int at, Vec3 p) {
    data[at] = p.x();
    data[at + 1] = p.y();
    data[at + 2] = p.z();
  }

  /** For each edge of each triangle, whether another face begins there. */
  private static boolean[] borders(Mesh mesh) {
    boolean[] out = new boolean[3 * mesh.triangleCount()];
    Arrays.fill(out, true);
    // The triangles of a face mostly follow each other, and few faces have more than two.
    int start = 0;
    for (int t = 1; t <= mesh.triangleCount(); t++) {
      if (t == mesh.triangleCount() || mesh.faceOf(t) != mesh.faceOf(start)) {
        meetWithin(mesh, start, t, out);
        start = t;
      }
    }
    return out;
  }

  /** Edges that two triangles from {@code start} to before {@code end} share are no border. */
  private static void meetWithin(Mesh mesh, int start, int end, boolean[] borders) {
    int n = 3 * (end - start);
    if (n == 3) {
      return;
    }
    long[] edges = new long[n];
    for (int i = 0; i < n; i++) {
      long p = mesh.corner(start + i / 3, i % 3);
      long q = mesh.corner(start + i / 3, (i + 1) % 3);
      edges[i] = Math.min(p, q) << 32 | Math.max(p, q);
    }
    long[] sorted = edges.clone();
    Arrays.sort(sorted);
    for (int i = 0; i < n; i++) {
      int at = Arrays.binarySearch(sorted, edges[i]);
      boolean shared =
          (at > 0 && sorted[at - 1] == edges[i]) || (at + 1 < n && sorted[at + 1] == edges[i]);
      borders[3 * start + i] = !shared;
    }
  }

  /** Adds the hit with a triangle, if there is one; whether it is clear if there is. */
  boolean meet(int t, Vec3 from, Vec3 d, List<Rays.Hit> hits) {
    double s = distance(t, from, d);
    return Double.isNaN(s) || meet(t, s, from, d, hits);
  }

  /** The same, but only if it is not farther than {@code most}. */
  boolean meet(int t, Vec3 from, Vec3 d, double most, List<Rays.Hit> hits) {
    double s = distance(t, from, d);
    return !(s > Tolerances.onPlane() && s <= most) || meet(t, s, from, d, hits);
  }

  /**
   * How far along the ray the plane of a triangle is met; not a number for a ray along the plane: a
   * ray within the face meets its borders too, and is moved aside for those.
   */
  private double distance(int t, Vec3 from, Vec3 d) {
    int k = WIDTH * t;
    double rate = data[k + 3] * d.x() + data[k + 4] * d.y() + data[k + 5] * d.z();
    double room =
        data[k + 3] * (data[k] - from.x())
            + data[k + 4] * (data[k + 1] - from.y())
            + data[k + 5] * (data[k + 2] - from.z());
    return rate == 0 ? Double.NaN : room / rate;
  }

  private boolean meet(int t, double s, Vec3 from, Vec3 d, List<Rays.Hit> hits) {
    double x = from.x() + s * d.x();
    double y = from.y() + s * d.y();
    double z = from.z() + s * d.z();
    boolean clear = true;
    for (int e = 0; e < 3; e++) {
      int m = WIDTH * t + 6 + 4 * e;
      double in = data[m] * x + data[m + 1] * y + data[m + 2] * z - data[m + 3];
      if (!(in >= -Tolerances.onPlane())) {
        return true;
      }
      clear &= in > Tolerances.onPlane() || !borders[3 * t + e];
    }
    if (s > Tolerances.onPlane()) {
      hits.add(new Rays.Hit(s, face[t], looksBack(t, d)));
    }
    return clear;
  }

  private boolean looksBack(int t, Vec3 d) {
    int k = WIDTH * t + 3;
    return data[k] * d.x() + data[k + 1] * d.y() + data[k + 2] * d.z() < 0;
  }
}
