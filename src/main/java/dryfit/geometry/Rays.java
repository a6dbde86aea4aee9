package dryfit.geometry;

import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Straight looks into a closed mesh: where a ray enters and leaves it, and whether a point is
 * inside. Immutable and safe to share; built once for a mesh, it answers in the logarithm of its
 * size.
 *
 * <p>A ray that runs through an edge or a corner between faces, or within a face, could count it
 * twice or never. Such a ray is moved aside by a few {@link Tolerances#sliver}, always in the same
 * order, until it meets faces only. So entering and leaving alternate, and the same question has
 * the same answer.
 */
public final class Rays {
  private static final int MOST_TRIES = 16;

  /** The golden angle, radians: successive moves aside never repeat a direction. */
  private static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

  /** No edge of a chair runs along this. */
  private static final Vec3 ODD_WAY = new Vec3(0.537, 0.291, 0.811).unit();

  private final Facets facets;
  private final BoxTree tree;

  /** Where the mesh stands: looks are taken in its own frame. */
  private final Frame frame;

  private Rays(Facets facets, BoxTree tree, Frame frame) {
    this.facets = facets;
    this.tree = tree;
    this.frame = frame;
  }

  /**
   * A place where a ray meets the surface.
   *
   * @param distance millimetres from the ray's origin
   * @param face the face of the mesh
   * @param entering whether the ray goes in there, or out
   */
  public record Hit(double distance, int face, boolean entering) {}

  public static Rays of(Mesh mesh) {
    Facets facets = new Facets(mesh);
    return new Rays(facets, new BoxTree(facets.boxes()), Frame.CHAIR);
  }

  /** Looks from chair space into the mesh where it stands in the chair; nothing is built again. */
  public Rays placed(Frame in) {
    return new Rays(facets, tree, in);
  }

  /**
   * Where a ray meets the surface, nearest first. A surface at the origin itself does not count.
   *
   * @param direction a unit direction
   */
  public List<Hit> hits(Vec3 origin, Vec3 direction) {
    return localHits(frame.local(origin), frame.localDirection(direction));
  }

  /**
   * The nearest place where a ray meets the surface, as the first of {@link #hits}, but without
   * looking farther.
   *
   * @param direction a unit direction
   */
  public Optional<Hit> first(Vec3 origin, Vec3 direction) {
    Vec3 from = frame.local(origin);
    Vec3 way = frame.localDirection(direction);
    Nearest nearest = new Nearest(way);
    for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
      nearest.look(aside(from, way, attempt));
      if (nearest.isClear()) {
        break;
      }
    }
    return Optional.ofNullable(nearest.hit);
  }

  /** The origin of an attempt: the first is where it was asked for. */
  private static Vec3 aside(Vec3 origin, Vec3 direction, int attempt) {
    if (attempt == 0) {
      return origin;
    }
    Vec3 side = Math.abs(direction.x()) < 0.6 ? Vec3.RIGHT : Vec3.BACK;
    Vec3 u = side.across(direction).unit();
    Vec3 v = direction.cross(u);
    double aside = attempt * Tolerances.sliver();
    double angle = attempt * GOLDEN_ANGLE;
    return origin.plus(u.times(aside * Math.cos(angle))).plus(v.times(aside * Math.sin(angle)));
  }

  /** Looks for the nearest surface; what is farther than the nearest yet found is passed over. */
  private final class Nearest {
    private final Vec3 direction;
    private final List<Hit> hits = new ArrayList<>(4);
    private Hit hit;
    private double unclear;
    private double bound;

    Nearest(Vec3 direction) {
      this.direction = direction;
    }

    void look(Vec3 from) {
      hits.clear();
      hit = null;
      unclear = Double.POSITIVE_INFINITY;
      bound = Double.POSITIVE_INFINITY;
      tree.along(from, direction, () -> bound, triangle -> meet(triangle, from));
    }

    private void meet(int triangle, Vec3 from) {
      int before = hits.size();
      boolean clear = facets.meet(triangle, from, direction, hits);
      if (hits.size() > before) {
        Hit found = hits.get(before);
        bound = Math.min(bound, found.distance() + Tolerances.sliver());
        boolean nearer =
            hit == null
                || found.distance() < hit.distance()
                || (found.distance() == hit.distance() && found.face() < hit.face());
        hit = nearer ? found : hit;
        unclear = clear ? unclear : Math.min(unclear, found.distance());
      }
    }

    /** Whether the ray does not meet an edge there, and only goes in there or only out. */
    boolean isClear() {
      return hit == null
          || (unclear > bound
              && hits.stream()
                  .allMatch(h -> h.distance() > bound || h.entering() == hit.entering()));
    }
  }

  private List<Hit> localHits(Vec3 origin, Vec3 direction) {
    List<Hit> hits = new ArrayList<>();
    for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
      Vec3 from = aside(origin, direction, attempt);
      hits.clear();
      boolean clear = cast(from, direction, hits);
      if (clear && alternate(hits)) {
        break;
      }
    }
    return List.copyOf(hits);
  }

  /** Whether the point is inside. On the surface, either answer may come. */
  public boolean inside(Vec3 point) {
    return first(point, ODD_WAY).filter(hit -> !hit.entering()).isPresent();
  }

  private boolean cast(Vec3 from, Vec3 direction, List<Hit> hits) {
    boolean[] clear = {true};
    tree.along(
        from,
        direction,
        () -> Double.POSITIVE_INFINITY,
        triangle -> clear[0] &= facets.meet(triangle, from, direction, hits));
    hits.sort(Comparator.comparingDouble(Hit::distance).thenComparingInt(Hit::face));
    dropRepeats(hits);
    return clear[0];
  }

  /** A ray through a line between triangles of one face meets both; that is one hit. */
  private static void dropRepeats(List<Hit> hits) {
    for (int i = hits.size() - 1; i > 0; i--) {
      for (int j = i - 1; j >= 0; j--) {
        if (hits.get(i).distance() - hits.get(j).distance() > Tolerances.sliver()) {
          break;
        }
        if (hits.get(i).face() == hits.get(j).face()) {
          hits.remove(i);
          break;
        }
      }
    }
  }

  private static boolean alternate(List<Hit> hits) {
    for (int i = 1; i < hits.size(); i++) {
      if (hits.get(i).entering() == hits.get(i - 1).entering()) {
        return false;
      }
    }
    return hits.isEmpty() || !hits.get(hits.size() - 1).entering();
  }

  /** The triangles of a mesh, laid out for rays. */
  private static final class Facets {
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
          mesh.point(mesh.corner(t, 0)),
          mesh.point(mesh.corner(t, 1)),
          mesh.point(mesh.corner(t, 2))
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
          box.low().x(),
          box.low().y(),
          box.low().z(),
          box.high().x(),
          box.high().y(),
          box.high().z()
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
      int n = mesh.triangleCount();
      long[] edges = new long[3 * n];
      for (int t = 0; t < n; t++) {
        for (int e = 0; e < 3; e++) {
          edges[3 * t + e] = key(mesh, t, e);
        }
      }
      long[] sorted = edges.clone();
      Arrays.sort(sorted);
      boolean[] out = new boolean[3 * n];
      for (int i = 0; i < out.length; i++) {
        int at = Arrays.binarySearch(sorted, edges[i]);
        boolean shared =
            (at > 0 && sorted[at - 1] == edges[i])
                || (at + 1 < sorted.length && sorted[at + 1] == edges[i]);
        out[i] = !shared;
      }
      return out;
    }

    /** Both ends, the lower first, and the face: the same for two triangles of one face only. */
    private static long key(Mesh mesh, int t, int e) {
      long p = mesh.corner(t, e);
      long q = mesh.corner(t, (e + 1) % 3);
      return (Math.min(p, q) << 21 | Math.max(p, q)) << 21 | mesh.faceOf(t);
    }

    /** Adds the hit with a triangle, if there is one; whether it is clear if there is. */
    boolean meet(int t, Vec3 from, Vec3 d, List<Hit> hits) {
      int k = WIDTH * t;
      double rate = data[k + 3] * d.x() + data[k + 4] * d.y() + data[k + 5] * d.z();
      if (rate == 0) {
        // A ray within the face meets its borders too, and is moved aside for those.
        return true;
      }
      double room =
          data[k + 3] * (data[k] - from.x())
              + data[k + 4] * (data[k + 1] - from.y())
              + data[k + 5] * (data[k + 2] - from.z());
      double s = room / rate;
      double x = from.x() + s * d.x();
      double y = from.y() + s * d.y();
      double z = from.z() + s * d.z();
      boolean clear = true;
      for (int e = 0; e < 3; e++) {
        int m = k + 6 + 4 * e;
        double in = data[m] * x + data[m + 1] * y + data[m + 2] * z - data[m + 3];
        if (!(in >= -Tolerances.onPlane())) {
          return true;
        }
        clear &= in > Tolerances.onPlane() || !borders[3 * t + e];
      }
      if (s > Tolerances.onPlane()) {
        hits.add(new Hit(s, face[t], rate < 0));
      }
      return clear;
    }
  }
}
