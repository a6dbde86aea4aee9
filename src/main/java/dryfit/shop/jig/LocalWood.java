package dryfit.shop.jig;

import dryfit.build.Part;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The wood of a part near a jig, before its mortises, as one convex solid: what lies within all
 * planes of its faces that have all of it on one side. Where it is convex that is the wood itself;
 * a hollow is bridged by a plane along the jig, for a jig rests on what stands highest.
 */
final class LocalWood {
  /** Planes whose normals differ by less than this are one, as those of facets of one face. */
  private static final double SAME_WAY = 1e-5;

  /** A face that looks further than this from a direction is not the side towards it: cosine. */
  private static final double OTHER_SIDE = 0.8;

  private final List<Convex> cells;
  private final Convex hull;
  private final List<Plane> planes;
  private final Box within;

  private LocalWood(List<Convex> cells, Convex hull, List<Plane> planes, Box within) {
    this.cells = List.copyOf(cells);
    this.hull = hull;
    this.planes = List.copyOf(planes);
    this.within = within;
  }

  /** The wood inside a box of the bed's coordinates. */
  static LocalWood of(Part part, Frame bed, Box within) {
    List<Convex> near = new ArrayList<>();
    for (Convex each : part.bodyCells()) {
      Optional<Convex> cell = Optional.of(each.placed(part.frame()).localTo(bed));
      if (!cell.get().bounds().meets(within)) {
        continue;
      }
      for (Plane side : sides(within)) {
        cell = cell.flatMap(c -> c.clipped(side));
      }
      cell.ifPresent(near::add);
    }
    if (near.isEmpty()) {
      throw new NoJig("there is no wood where it would sit");
    }
    List<Vec3> points = near.stream().flatMap(c -> c.points().stream()).toList();
    Box around = Box.around(points);
    List<Plane> planes = new ArrayList<>(sides(around));
    for (Convex cell : near) {
      for (Plane p : cell.planes()) {
        if (supports(p, points) && planes.stream().noneMatch(q -> same(p, q))) {
          planes.add(p);
        }
      }
    }
    for (Vec3 side : List.of(Vec3.BACK, Vec3.BACK.negated(), Vec3.UP, Vec3.UP.negated())) {
      bridge(side, points, planes).ifPresent(planes::add);
    }
    return new LocalWood(near, clipped(around, planes), planes, within);
  }

  /**
   * The plane over a hollow side: along x it lies on the two places between which the middle of the
   * jig is. None where a face of the wood, or the end of the box, looks that way already.
   */
  private static Optional<Plane> bridge(Vec3 side, List<Vec3> points, List<Plane> planes) {
    // The first six are those of the box.
    boolean faced = planes.stream().skip(6).anyMatch(p -> p.normal().dot(side) > OTHER_SIDE);
    if (faced) {
      return Optional.empty();
    }
    List<Vec3> left = points.stream().filter(p -> p.x() < 0).toList();
    List<Vec3> right = points.stream().filter(p -> p.x() > 0).toList();
    Plane best = null;
    for (Vec3 a : left) {
      for (Vec3 b : right) {
        Vec3 along = b.minus(a).across(side.cross(Vec3.RIGHT));
        if (along.length() < 10) {
          continue;
        }
        Vec3 n = side.across(along.unit()).unit();
        Plane p = Plane.through(a, n);
        if (supports(p, points) && (best == null || n.dot(side) > best.normal().dot(side))) {
          best = p;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean supports(Plane plane, List<Vec3> points) {
    return points.stream().allMatch(p -> plane.height(p) <= Tolerances.contact());
  }

  private static boolean same(Plane a, Plane b) {
    return a.normal().minus(b.normal()).length() < SAME_WAY
        && Math.abs(a.offset() - b.offset()) < Tolerances.contact();
  }

  /** A plane that grazes a corner may defeat clipping; left out, the solid is a little larger. */
  private static Convex clipped(Box box, List<Plane> planes) {
    Convex rest = Convex.box(box);
    for (Plane p : planes) {
      rest = rest.clipped(p).orElse(rest);
    }
    return rest;
  }

  private static List<Plane> sides(Box b) {
    return List.of(
        new Plane(Vec3.RIGHT, b.high().x()),
        new Plane(Vec3.RIGHT.negated(), -b.low().x()),
        new Plane(Vec3.BACK, b.high().y()),
        new Plane(Vec3.BACK.negated(), -b.low().y()),
        new Plane(Vec3.UP, b.high().z()),
        new Plane(Vec3.UP.negated(), -b.low().z()));
  }

  Convex hull() {
    return hull;
  }

  /**
   * Whether it really ends in a direction, and is not merely cut off by the box it was taken in.
   */
  boolean endsTowards(Vec3 direction) {
    double box = Math.max(within.high().dot(direction), within.low().dot(direction));
    return hull.reach(direction) < box - Tolerances.contact();
  }

  /** Its face in a plane, if it has one, as corners. */
  Optional<List<Vec3>> faceIn(Plane plane) {
    for (int f = 0; f < hull.faceCount(); f++) {
      Plane p = hull.plane(f);
      if (p.normal().minus(plane.normal()).length() < SAME_WAY
          && Math.abs(p.offset() - plane.offset()) < Tolerances.contact()) {
        List<Vec3> corners = new ArrayList<>();
        for (int i : hull.faces()[f]) {
          corners.add(hull.point(i));
        }
        return Optional.of(corners);
      }
    }
    return Optional.empty();
  }

  /** The area of wood that really lies in a plane with its face, mm2. */
  double areaIn(Plane plane) {
    double sum = 0;
    for (Convex cell : cells) {
      int[][] faces = cell.faces();
      for (int f = 0; f < faces.length; f++) {
        if (same(cell.plane(f), plane)) {
          sum += area(cell, faces[f]);
        }
      }
    }
    return sum;
  }

  private static double area(Convex cell, int[] loop) {
    Vec3 twice = Vec3.ZERO;
    Vec3 o = cell.point(loop[0]);
    for (int i = 1; i + 1 < loop.length; i++) {
      twice = twice.plus(cell.point(loop[i]).minus(o).cross(cell.point(loop[i + 1]).minus(o)));
    }
    return twice.length() / 2;
  }

  /** The area of wood that lies in those faces that look to a side, mm2. */
  double areaTowards(Vec3 side) {
    return hull.planes().stream()
        .filter(p -> p.normal().dot(side) > OTHER_SIDE)
        .mapToDouble(this::areaIn)
        .sum();
  }

  /** The face that looks most nearly in a direction. */
  Plane facing(Vec3 direction) {
    Plane best = hull.plane(0);
    for (Plane p : hull.planes()) {
      best = p.normal().dot(direction) > best.normal().dot(direction) + 1e-9 ? p : best;
    }
    return best;
  }

  /**
   * It and all that is swept over when it is lifted out upwards. A face that leans over what is
   * below it gives way to an upright plane through its farthest corner.
   */
  Convex swept(double up) {
    List<Plane> open = new ArrayList<>();
    for (Plane p : planes) {
      Vec3 n = p.normal();
      if (n.z() <= SAME_WAY) {
        open.add(p);
      } else {
        Vec3 level = new Vec3(n.x(), n.y(), 0);
        if (level.length() > 0.2) {
          open.add(new Plane(level.unit(), hull.reach(level.unit())));
        }
      }
    }
    Box b = hull.bounds();
    return clipped(new Box(b.low(), b.high().plus(Vec3.UP.times(up))), open);
  }
}
