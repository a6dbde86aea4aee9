package dryfit.solid;

import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where two solids lie flat against each other.
 *
 * @param plane of the contact, its normal out of the second solid
 * @param pieces convex polygons that make it up, interior-disjoint
 */
public record FaceContact(Plane plane, List<List<Vec3>> pieces) {
  public FaceContact {
    pieces = List.copyOf(pieces);
  }

  /** The contact with the most area; nothing if the solids nowhere lie flat against each other. */
  public static Optional<FaceContact> largest(List<Convex> first, List<Convex> second) {
    List<FaceContact> all = new ArrayList<>();
    for (Convex b : second) {
      for (int f = 0; f < b.faceCount(); f++) {
        Plane plane = b.plane(f);
        List<Vec3> polygon = polygon(b, f);
        for (Convex a : first) {
          if (a.bounds().grown(Tolerances.contact()).meets(b.bounds())) {
            touching(a, plane, polygon).ifPresent(piece -> add(all, plane, piece));
          }
        }
      }
    }
    FaceContact best = null;
    for (FaceContact c : all) {
      best = best == null || c.area() > best.area() ? c : best;
    }
    return Optional.ofNullable(best);
  }

  private static void add(List<FaceContact> all, Plane plane, List<Vec3> piece) {
    for (int i = 0; i < all.size(); i++) {
      FaceContact c = all.get(i);
      if (same(c.plane, plane)) {
        List<List<Vec3>> more = new ArrayList<>(c.pieces);
        more.add(piece);
        all.set(i, new FaceContact(c.plane, more));
        return;
      }
    }
    all.add(new FaceContact(plane, List.of(piece)));
  }

  private static boolean same(Plane a, Plane b) {
    return a.normal().minus(b.normal()).length() <= Tolerances.sameDirection()
        && Math.abs(a.offset() - b.offset()) <= Tolerances.contact();
  }

  private static List<Vec3> polygon(Convex cell, int face) {
    List<Vec3> out = new ArrayList<>();
    for (int p : cell.faces()[face]) {
      out.add(cell.point(p));
    }
    return out;
  }

  private static Optional<List<Vec3>> touching(Convex cell, Plane plane, List<Vec3> polygon) {
    for (int f = 0; f < cell.faceCount(); f++) {
      if (same(cell.plane(f).flipped(), plane)) {
        List<Vec3> rest = polygon;
        List<Vec3> other = polygon(cell, f);
        Vec3 out = cell.plane(f).normal();
        for (int i = 0; i < other.size() && !rest.isEmpty(); i++) {
          Vec3 a = other.get(i);
          Vec3 side = other.get((i + 1) % other.size()).minus(a).cross(out);
          rest = clipped(rest, Plane.through(a, side));
        }
        if (rest.size() >= 3 && area(rest) > Tolerances.contact()) {
          return Optional.of(rest);
        }
      }
    }
    return Optional.empty();
  }

  /** What of a convex polygon lies inside a plane. */
  private static List<Vec3> clipped(List<Vec3> polygon, Plane plane) {
    List<Vec3> out = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      Vec3 a = polygon.get(i);
      Vec3 b = polygon.get((i + 1) % polygon.size());
      double ha = plane.height(a);
      double hb = plane.height(b);
      if (ha <= 0) {
        out.add(a);
      }
      if (ha < 0 && hb > 0 || ha > 0 && hb < 0) {
        out.add(a.plus(b.minus(a).times(ha / (ha - hb))));
      }
    }
    return out;
  }

  private static double area(List<Vec3> polygon) {
    return doubled(polygon).length() / 2;
  }

  private static Vec3 doubled(List<Vec3> polygon) {
    Vec3 sum = Vec3.ZERO;
    Vec3 o = polygon.get(0);
    for (int i = 1; i + 1 < polygon.size(); i++) {
      sum = sum.plus(polygon.get(i).minus(o).cross(polygon.get(i + 1).minus(o)));
    }
    return sum;
  }

  /** Square millimetres. */
  public double area() {
    return pieces.stream().mapToDouble(FaceContact::area).sum();
  }

  /** The centroid. */
  public Vec3 middle() {
    Vec3 sum = Vec3.ZERO;
    double all = 0;
    for (List<Vec3> p : pieces) {
      for (int i = 1; i + 1 < p.size(); i++) {
        List<Vec3> t = List.of(p.get(0), p.get(i), p.get(i + 1));
        double size = area(t);
        sum = sum.plus(t.get(0).plus(t.get(1)).plus(t.get(2)).times(size / 3));
        all += size;
      }
    }
    return sum.times(1 / all);
  }

  /**
   * The unit direction in the plane from one corner of it to the corner farthest along its edges.
   */
  public Vec3 longWay() {
    Vec3 best = Vec3.ZERO;
    for (List<Vec3> p : pieces) {
      for (int i = 0; i < p.size(); i++) {
        Vec3 edge = p.get((i + 1) % p.size()).minus(p.get(i));
        if (edge.length() > best.length() + Tolerances.contact()) {
          best = edge;
        }
      }
    }
    return best.unit();
  }

  /** Whether a place in the plane is within the contact. */
  public boolean contains(Vec3 place) {
    return pieces.stream().anyMatch(p -> inside(p, place));
  }

  private boolean inside(List<Vec3> polygon, Vec3 place) {
    double turn = doubled(polygon).dot(plane.normal()) > 0 ? 1 : -1;
    for (int i = 0; i < polygon.size(); i++) {
      Vec3 a = polygon.get(i);
      Vec3 edge = polygon.get((i + 1) % polygon.size()).minus(a);
      if (turn * edge.cross(place.minus(a)).dot(plane.normal()) < -Tolerances.contact()) {
        return false;
      }
    }
    return true;
  }
}
