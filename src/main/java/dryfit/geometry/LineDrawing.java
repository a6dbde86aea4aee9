package dryfit.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The lines of a closed mesh as they are drawn on paper, seen square from far away: creases, and
 * the outline where the surface turns away. Each line is cut where its being seen may change, which
 * is where it crosses an outline, and each piece is looked at once: a ray from beside its middle to
 * the eye meets wood or does not.
 */
public final class LineDrawing {
  /** Faces that turn less than this at an edge belong to one curved surface. */
  private static final double CREASE_COSINE = Math.cos(Math.toRadians(20));

  /** How far beside an edge the look begins, mm: off the surface, and less than a pencil line. */
  private static final double BESIDE = 0.02;

  /** Lines shorter than this on the sheet are points, mm. */
  private static final double POINT = 1e-4;

  private final Mesh mesh;
  private final Frame sheet;
  private final Rays rays;
  private final Vec3[] normals;
  private final List<Edge> edges = new ArrayList<>();

  private LineDrawing(Mesh mesh, Rays rays, Frame sheet) {
    this.mesh = mesh;
    this.sheet = sheet;
    this.rays = rays;
    this.normals = new Vec3[mesh.faceCount()];
    for (int f = 0; f < normals.length; f++) {
      normals[f] = mesh.normal(f);
    }
    collect();
  }

  /**
   * One straight line of the drawing.
   *
   * @param seen whether nothing stands before it
   * @param outline whether the surface turns away from the eye there
   * @param origin JSON pointer of what made the face beside it; of two, the later in the alphabet
   */
  public record Line(Vec2 from, Vec2 to, boolean seen, boolean outline, String origin) {}

  private record Edge(Vec3 a, Vec3 b, Vec2 from, Vec2 to, int one, int other, boolean outline) {}

  /**
   * The lines, in the order of the mesh.
   *
   * @param rays looks into the same mesh
   * @param sheet its z points to the eye, x and y are those of the drawing
   */
  public static List<Line> of(Mesh mesh, Rays rays, Frame sheet) {
    return new LineDrawing(mesh, rays, sheet).lines();
  }

  /** Pairs every directed edge with its reverse by sorting; edges inside a face are left out. */
  private void collect() {
    int[] corners = mesh.triangles();
    int[] faceOf = mesh.faceOfTriangle();
    int n = corners.length;
    long[] keys = new long[n];
    for (int i = 0; i < n; i++) {
      long a = corners[i];
      long b = corners[i - i % 3 + (i + 1) % 3];
      keys[i] = (Math.min(a, b) << 42) | (Math.max(a, b) << 21) | i;
    }
    Arrays.sort(keys);
    for (int k = 0; k + 1 < n; k++) {
      if (keys[k] >>> 21 == keys[k + 1] >>> 21) {
        int one = faceOf[(int) (keys[k] & 0x1FFFFF) / 3];
        int other = faceOf[(int) (keys[k + 1] & 0x1FFFFF) / 3];
        if (one != other) {
          edge((int) (keys[k] >>> 42), (int) (keys[k] >>> 21 & 0x1FFFFF), one, other);
        }
        k++;
      }
    }
  }

  private void edge(int from, int to, int one, int other) {
    boolean outline = towards(one) != towards(other);
    boolean crease = normals[one].dot(normals[other]) < CREASE_COSINE;
    if (outline || crease) {
      Vec3 a = mesh.point(from);
      Vec3 b = mesh.point(to);
      edges.add(new Edge(a, b, flat(a), flat(b), one, other, outline));
    }
  }

  private boolean towards(int face) {
    return normals[face].dot(sheet.z()) > dryfit.measure.Tolerances.sameDirection();
  }

  private Vec2 flat(Vec3 p) {
    Vec3 local = sheet.local(p);
    return new Vec2(local.x(), local.y());
  }

  private List<Line> lines() {
    List<Edge> outlines = edges.stream().filter(Edge::outline).toList();
    List<Line> out = new ArrayList<>();
    for (Edge e : edges) {
      if (e.from.distance(e.to) > POINT) {
        pieces(e, outlines, out);
      }
    }
    return out;
  }

  private void pieces(Edge e, List<Edge> outlines, List<Line> out) {
    List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
    for (Edge o : outlines) {
      double t = crossing(e.from, e.to, o.from, o.to);
      if (t > 0 && t < 1) {
        cuts.add(t);
      }
    }
    cuts.sort(null);
    String origin = origin(e);
    double start = 0;
    boolean seen = false;
    for (int i = 1; i < cuts.size(); i++) {
      double a = cuts.get(i - 1);
      double b = cuts.get(i);
      boolean now = i > 1 && (b - a) * e.from.distance(e.to) < POINT ? seen : seen(e, (a + b) / 2);
      if (i > 1 && now != seen) {
        out.add(new Line(at(e, start), at(e, a), seen, e.outline, origin));
        start = a;
      }
      seen = now;
    }
    out.add(new Line(at(e, start), e.to, seen, e.outline, origin));
  }

  private String origin(Edge e) {
    String a = mesh.origin(e.one);
    String b = mesh.origin(e.other);
    return a.compareTo(b) > 0 ? a : b;
  }

  private static Vec2 at(Edge e, double t) {
    return e.from.plus(e.to.minus(e.from).times(t));
  }

  private boolean seen(Edge e, double t) {
    if (!towards(e.one) && !towards(e.other)) {
      return false;
    }
    Vec3 aside = normals[e.one].plus(normals[e.other]);
    Vec3 way = aside.length() > 1e-3 ? aside.unit() : sheet.z();
    Vec3 p = e.a.plus(e.b.minus(e.a).times(t)).plus(way.times(BESIDE));
    return rays.first(p, sheet.z()).isEmpty();
  }

  /** How far along the first line the second crosses it, 0 to 1; NaN if it does not. */
  private static double crossing(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
    Vec2 r = b.minus(a);
    Vec2 s = d.minus(c);
    double area = r.cross(s);
    if (area == 0) {
      return Double.NaN;
    }
    double t = c.minus(a).cross(s) / area;
    double u = c.minus(a).cross(r) / area;
    return u >= 0 && u <= 1 ? t : Double.NaN;
  }
}
