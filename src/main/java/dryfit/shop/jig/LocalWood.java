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
 * a hollow is bridged, for a jig rests on what stands highest.
 */
final class LocalWood {
  /** Planes whose normals differ by less than this are one, as those of facets of one face. */
  private static final double SAME_WAY = 1e-5;

  private final Convex hull;
  private final List<Plane> planes;
  private final Box within;

  private LocalWood(Convex hull, List<Plane> planes, Box within) {
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
    return new LocalWood(clipped(around, planes), planes, within);
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
