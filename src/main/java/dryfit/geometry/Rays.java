package dryfit.geometry;

import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Collection;
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

  /** How far aside the last attempt may be, mm. */
  private static final double MOST_ASIDE = MOST_TRIES * Tolerances.sliver();

  /** The golden angle, radians: successive moves aside never repeat a direction. */
  private static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

  /** No edge of a chair runs along this. */
  private static final Vec3 ODD_WAY = new Vec3(0.537, 0.291, 0.811).unit();

  private final Facets facets;
  private final BoxTree tree;

  /** Where the mesh stands: looks are taken in its own frame. */
  private final Frame frame;

  /** Whether the mesh is the mirror image in its own z = 0 of the one that was laid out. */
  private final boolean mirrored;

  private Rays(Facets facets, BoxTree tree, Frame frame, boolean mirrored) {
    this.facets = facets;
    this.tree = tree;
    this.frame = frame;
    this.mirrored = mirrored;
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
    return new Rays(facets, new BoxTree(facets.boxes()), Frame.CHAIR, false);
  }

  /** Looks from chair space into the mesh where it stands in the chair; nothing is built again. */
  public Rays placed(Frame in) {
    return new Rays(facets, tree, in, mirrored);
  }

  /**
   * Looks into the mirror image of the mesh in its own z = 0, as {@link Meshes#mirroredZ} makes it:
   * face for face what the mesh itself would answer, and nothing is built again.
   */
  public Rays mirroredZ() {
    return new Rays(facets, tree, frame, !mirrored);
  }

  /**
   * Looks that all go one way, from places near each other. They see what {@link #first} sees, in a
   * fraction of the time, because what is not on their way is left out once and for all.
   *
   * @param from places between which most looks begin
   * @param direction a unit direction
   */
  public Beam beam(Collection<Vec3> from, Vec3 direction) {
    Vec3 way = localDirection(direction);
    Bundle bundle = new Bundle(from.stream().map(this::local).toList(), way, MOST_ASIDE);
    return new Beam(this, direction, bundle, tree.among(bundle));
  }

  /** Several looks one way; see {@link Rays#beam}. */
  public static final class Beam {
    private final Rays rays;
    private final Vec3 direction;
    private final Vec3 way;
    private final Bundle bundle;

    /** The nearest first. */
    private final int[] triangles;

    /** Where the box around each triangle begins along the way. */
    private final double[] starts;

    private Beam(Rays rays, Vec3 direction, Bundle bundle, int[] met) {
      this.rays = rays;
      this.direction = direction;
      this.way = rays.localDirection(direction);
      this.bundle = bundle;
      this.triangles = met;
      this.starts = new double[met.length];
      for (int i = 0; i < met.length; i++) {
        int triangle = met[i];
        double start = bundle.start(rays.facets.boxes(), 6 * triangle);
        int k = i;
        for (; k > 0 && starts[k - 1] > start; k--) {
          starts[k] = starts[k - 1];
          triangles[k] = triangles[k - 1];
        }
        starts[k] = start;
        triangles[k] = triangle;
      }
    }

    /** As {@link Rays#first}, also from a place outside the bundle, only not faster then. */
    public Optional<Hit> first(Vec3 origin) {
      Vec3 from = rays.local(origin);
      if (!bundle.holds(from)) {
        return rays.first(origin, direction);
      }
      NearestHit nearest = new NearestHit(rays.facets, way);
      for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
        nearest.lookAt(triangles, starts, aside(from, way, attempt));
        if (nearest.isClear()) {
          break;
        }
      }
      return Optional.ofNullable(nearest.hit());
    }
  }

  private Vec3 local(Vec3 point) {
    return mirrored ? turned(frame.local(point)) : frame.local(point);
  }

  private Vec3 localDirection(Vec3 direction) {
    Vec3 way = frame.localDirection(direction);
    return mirrored ? turned(way) : way;
  }

  private static Vec3 turned(Vec3 v) {
    return new Vec3(v.x(), v.y(), -v.z());
  }

  /**
   * Where a ray meets the surface, nearest first. A surface at the origin itself does not count.
   *
   * @param direction a unit direction
   */
  public List<Hit> hits(Vec3 origin, Vec3 direction) {
    return localHits(local(origin), localDirection(direction));
  }

  /**
   * The nearest place where a ray meets the surface, as the first of {@link #hits}, but without
   * looking farther.
   *
   * @param direction a unit direction
   */
  public Optional<Hit> first(Vec3 origin, Vec3 direction) {
    Vec3 from = local(origin);
    Vec3 way = localDirection(direction);
    NearestHit nearest = new NearestHit(facets, way);
    for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
      nearest.lookInto(tree, aside(from, way, attempt));
      if (nearest.isClear()) {
        break;
      }
    }
    return Optional.ofNullable(nearest.hit());
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
}
