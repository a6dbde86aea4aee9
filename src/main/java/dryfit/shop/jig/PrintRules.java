package dryfit.shop.jig;

import dryfit.document.Printing;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a piece must be to come off a printer as it was meant: measured on its finished surface, as
 * it lies on the bed.
 *
 * @param onBed area of the face on the bed, mm2
 * @param steepest how far the worst overhang leans out of plumb, radians; the face on the bed does
 *     not count
 * @param thinnest least thickness between two faces that are nearly parallel, mm
 * @param sharpest least angle inside any edge, radians
 * @param closed whether the surface is closed, outward and clean
 * @param fits whether it fits on the bed
 */
public record PrintRules(
    double onBed, double steepest, double thinnest, double sharpest, boolean closed, boolean fits) {

  /** Faces that enclose less than this are two sides of one wall, radians. */
  private static final double PARALLEL = Math.toRadians(20);

  /** An edge sharper than this is a feather edge (common practice, no source). */
  private static final double FEATHER = Math.toRadians(30);

  /** Rounding to a grid turns a face by so much, radians. */
  private static final double ROUNDING = Math.toRadians(0.1);

  /** Triangles smaller than this come of rounding and are no face, mm2. */
  private static final double SPECK = 1e-2;

  /** Measures a piece. */
  public static PrintRules of(Mesh mesh, Printing printing) {
    double bed = 0;
    double steepest = 0;
    double thinnest = Double.POSITIVE_INFINITY;
    Rays rays = Rays.of(mesh);
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec3 a = mesh.point(mesh.corner(t, 0));
      Vec3 b = mesh.point(mesh.corner(t, 1));
      Vec3 c = mesh.point(mesh.corner(t, 2));
      Vec3 doubled = b.minus(a).cross(c.minus(a));
      double area = doubled.length() / 2;
      if (area < SPECK) {
        continue;
      }
      Vec3 n = doubled.unit();
      boolean lies = Math.max(a.z(), Math.max(b.z(), c.z())) <= Tolerances.contact();
      if (lies) {
        bed += area;
      } else {
        steepest = Math.max(steepest, Math.asin(Math.min(1, -n.z())));
      }
      Vec3 middle = a.plus(b).plus(c).times(1.0 / 3);
      List<Rays.Hit> hits = rays.hits(middle.minus(n.times(1e-3)), n.negated());
      if (!hits.isEmpty()) {
        Vec3 other = normal(mesh, hits.get(0).face());
        if (other.angleTo(n.negated()) < PARALLEL) {
          thinnest = Math.min(thinnest, hits.get(0).distance());
        }
      }
    }
    Box box = mesh.bounds();
    return new PrintRules(
        bed,
        steepest,
        thinnest,
        sharpest(mesh),
        MeshCheck.problems(mesh).isEmpty() && Math.abs(box.low().z()) <= Tolerances.contact(),
        fits(box.size(), printing));
  }

  private static boolean fits(Vec3 size, Printing p) {
    boolean either =
        size.x() <= p.bedX() && size.y() <= p.bedY()
            || size.y() <= p.bedX() && size.x() <= p.bedY();
    return either && size.z() <= p.bedZ();
  }

  private static Vec3 normal(Mesh mesh, int face) {
    return BedEdge.normal(mesh, mesh.loops(face)[0]);
  }

  /** The least angle in the wood of an edge between two faces, by the triangles on it. */
  private static double sharpest(Mesh mesh) {
    Map<Long, Integer> edges = new HashMap<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        edges.put(key(mesh.corner(t, k), mesh.corner(t, (k + 1) % 3)), t);
      }
    }
    double least = Math.PI;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        int p = mesh.corner(t, k);
        int q = mesh.corner(t, (k + 1) % 3);
        Integer beside = edges.get(key(q, p));
        if (beside == null || mesh.point(p).distance(mesh.point(q)) < 0.5) {
          continue;
        }
        least = Math.min(least, inside(mesh, t, beside));
      }
    }
    return least;
  }

  private static double inside(Mesh mesh, int t, int other) {
    Vec3 n = triangle(mesh, t);
    Vec3 m = triangle(mesh, other);
    if (n.length() / 2 < SPECK || m.length() / 2 < SPECK) {
      return Math.PI;
    }
    Vec3 far = middle(mesh, other).minus(middle(mesh, t));
    double turn = n.angleTo(m);
    return far.dot(n) > 0 ? Math.PI + turn : Math.PI - turn;
  }

  private static Vec3 triangle(Mesh mesh, int t) {
    Vec3 a = mesh.point(mesh.corner(t, 0));
    return mesh.point(mesh.corner(t, 1)).minus(a).cross(mesh.point(mesh.corner(t, 2)).minus(a));
  }

  private static Vec3 middle(Mesh mesh, int t) {
    return mesh.point(mesh.corner(t, 0))
        .plus(mesh.point(mesh.corner(t, 1)))
        .plus(mesh.point(mesh.corner(t, 2)))
        .times(1.0 / 3);
  }

  private static long key(int p, int q) {
    return (long) p << 32 | q;
  }

  /** What is wrong, in sentences; nothing if it can be printed. */
  public List<String> faults(Printing printing) {
    List<String> out = new ArrayList<>();
    if (!closed) {
      out.add("its surface is not closed, or it does not lie on the bed");
    }
    if (onBed < 25) {
      out.add(String.format(Locale.ROOT, "only %.0f mm2 of it lie on the bed", onBed));
    }
    if (steepest > JigSite.STEEPEST + ROUNDING) {
      out.add(
          String.format(
              Locale.ROOT, "a face hangs over by %.1f degrees", Math.toDegrees(steepest)));
    }
    if (thinnest < printing.leastWall()) {
      out.add(String.format(Locale.ROOT, "a wall is only %.2f mm thick", thinnest));
    }
    if (sharpest < FEATHER) {
      out.add(
          String.format(Locale.ROOT, "an edge has only %.1f degrees", Math.toDegrees(sharpest)));
    }
    if (!fits) {
      out.add("it is larger than the bed");
    }
    return out;
  }
}
