package dryfit.fit;

import dryfit.build.Joint;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.JointDetail.Spot;
import dryfit.fit.JointDetail.Wall;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.Distance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The wood left between a mortise and each side of its part, where that is thinnest, and between it
 * and the next mortise of the same joint: curves and tapers count as they are. Faces that look the
 * same way as the mouth, to within 60 degrees, are the mouth's own side and do not count, nor do
 * others that it is meant to come out of: the far one of a through tenon, the end at a bridle. Zero
 * means that the mortise has come out.
 *
 * @param thinnest one entry a side, the least first
 */
record WallLeft(List<Thinnest> thinnest) {

  /** Places that differ in depth by less are equally near to a face, mm. */
  private static final double EVEN = 0.02;

  /**
   * Where a side is thinnest.
   *
   * @param end whether the side is an end of the part
   * @param way to the side, a unit direction; zero if there is none
   */
  record Thinnest(String face, boolean end, double left, Vec3 at, Vec3 way) {}

  static WallLeft of(Assembly assembly, Joint joint) {
    return of(assembly, joint, joint.mortise());
  }

  /**
   * What would be left beside another mortise in its stead.
   *
   * @param cut its cells, which may reach out of the mouth
   */
  static WallLeft of(Assembly assembly, Joint joint, List<Convex> cut) {
    Placed mortised = assembly.mortised(joint);
    List<Convex> hole = cut.stream().flatMap(c -> c.clipped(joint.mouth()).stream()).toList();
    if (hole.isEmpty()) {
      return new WallLeft(List.of());
    }
    Box around = Box.around(hole.stream().flatMap(c -> c.points().stream()).toList());
    List<Near> near = new ArrayList<>();
    Mesh mesh = mortised.mesh();
    Sides sides = new Sides(mortised, joint, hole);
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Side side = sides.of(mesh.faceOf(t));
      if (side.counts()) {
        thin(near, hole, around, mesh, t, side);
      }
    }
    List<Thinnest> found = new ArrayList<>();
    near.forEach(n -> found.add(n.thinnest(hole)));
    betweenTenons(joint)
        .ifPresent(
            d ->
                found.add(
                    new Thinnest("its neighbour", false, d.length(), d.onFirst(), Vec3.ZERO)));
    found.sort(Comparator.comparingDouble(Thinnest::left));
    return new WallLeft(List.copyOf(found));
  }

  /** The least wood between one mortise of the joint and the next. */
  private static Optional<Distance> betweenTenons(Joint joint) {
    Distance least = null;
    for (int i = 0; i + 1 < joint.tenons().size(); i++) {
      List<Convex> one = joint.tenons().get(i).hole();
      List<Convex> next = joint.tenons().get(i + 1).hole();
      Optional<Distance> d = Distance.between(one, next, Double.MAX_VALUE);
      if (d.isPresent() && (least == null || d.get().length() < least.length())) {
        least = d.get();
      }
    }
    return Optional.ofNullable(least);
  }

  /**
   * Which side of a part a face belongs to.
   *
   * @param counts whether wood is looked for there: it is the part's own and not one the mortise is
   *     meant to come out of
   * @param off how far the mortise keeps below the plane of the face: no place on it is nearer
   */
  private record Side(boolean counts, String face, boolean end, double off) {
    static final Side NONE = new Side(false, "", false, 0);
  }

  /** The nearest place of a side so far. */
  private record Near(Side side, Distance distance) {
    Thinnest thinnest(List<Convex> hole) {
      Vec3 toFace = distance.onSecond().minus(distance.onFirst());
      Vec3 at = nearest(hole, toFace, distance.onFirst());
      Vec3 way = toFace.length() <= Tolerances.contact() ? Vec3.ZERO : toFace.unit();
      return new Thinnest(side.face(), side.end(), distance.length(), at, way);
    }
  }

  /** The sides of a part as one of its joints sees them, each face looked at once. */
  private static final class Sides {
    private final Placed part;
    private final Joint joint;
    private final List<Convex> hole;
    private final Vec3 along;
    private final Side[] known;

    Sides(Placed part, Joint joint, List<Convex> hole) {
      this.part = part;
      this.joint = joint;
      this.hole = hole;
      along = part.part().lengthNear(joint.at());
      known = new Side[part.mesh().faceCount()];
    }

    Side of(int face) {
      if (known[face] == null) {
        known[face] = look(face);
      }
      return known[face];
    }

    private Side look(int face) {
      if (!part.mesh().origin(face).equals(part.part().pointer())) {
        return Side.NONE;
      }
      Vec3 n = part.mesh().normal(face);
      if (n.length() == 0 || joint.isOpenTo(n)) {
        return Side.NONE;
      }
      double high = hole.stream().mapToDouble(c -> c.reach(n)).max().orElseThrow();
      return new Side(
          true,
          Assembly.facing(n, joint.at()),
          Math.abs(n.dot(along)) > 0.7,
          n.dot(part.mesh().point(part.mesh().loops(face)[0][0])) - high);
    }
  }

  /** Notes the wood between the hole and a triangle if it is the thinnest on its side so far. */
  private static void thin(
      List<Near> found, List<Convex> hole, Box around, Mesh mesh, int triangle, Side side) {
    int known = indexOf(found, side);
    double least = known < 0 ? Double.POSITIVE_INFINITY : found.get(known).distance().length();
    if (side.off() >= least) {
      return;
    }
    Vec3 a = mesh.point(mesh.corner(triangle, 0));
    Vec3 b = mesh.point(mesh.corner(triangle, 1));
    Vec3 c = mesh.point(mesh.corner(triangle, 2));
    if (apart(around, a, b, c) >= least) {
      return;
    }
    Optional<Distance> thinner = thinner(hole, List.of(a, b, c), least);
    if (thinner.isPresent() && known < 0) {
      found.add(new Near(side, thinner.get()));
    } else if (thinner.isPresent()) {
      found.set(known, new Near(side, thinner.get()));
    }
  }

  /** How far a triangle is from a box at least: along the axis on which they are farthest apart. */
  private static double apart(Box box, Vec3 a, Vec3 b, Vec3 c) {
    double x = apart(box.low().x(), box.high().x(), a.x(), b.x(), c.x());
    double y = apart(box.low().y(), box.high().y(), a.y(), b.y(), c.y());
    double z = apart(box.low().z(), box.high().z(), a.z(), b.z(), c.z());
    return Math.max(x, Math.max(y, z));
  }

  private static double apart(double low, double high, double a, double b, double c) {
    double below = low - Math.max(a, Math.max(b, c));
    return Math.max(below, Math.min(a, Math.min(b, c)) - high);
  }

  private static int indexOf(List<Near> found, Side side) {
    for (int i = 0; i < found.size(); i++) {
      Side known = found.get(i).side();
      if (known.face().equals(side.face()) && known.end() == side.end()) {
        return i;
      }
    }
    return -1;
  }

  private static Optional<Distance> thinner(List<Convex> hole, List<Vec3> corners, double least) {
    Distance best = null;
    double most = least;
    Box box = Box.around(corners);
    for (Convex cell : hole) {
      if (Double.isFinite(most) && !box.grown(most).meets(cell.bounds())) {
        continue;
      }
      Distance d = Distance.toPolygon(cell, corners);
      if (d.length() < most) {
        most = d.length();
        best = d;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * The middle of that side of the hole which is nearest to a face: a corner, an edge or a side.
   */
  private static Vec3 nearest(List<Convex> hole, Vec3 toFace, Vec3 otherwise) {
    if (toFace.length() <= Tolerances.contact()) {
      return otherwise;
    }
    Vec3 way = toFace.unit();
    double high = hole.stream().mapToDouble(c -> c.reach(way)).max().orElse(0);
    if (high > otherwise.dot(way) + EVEN) {
      return otherwise;
    }
    List<Vec3> corners =
        hole.stream()
            .flatMap(c -> c.points().stream())
            .filter(p -> p.dot(way) >= high - EVEN)
            .toList();
    return Box.around(corners).middle();
  }

  OptionalDouble least() {
    return thinnest.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(thinnest.get(0).left());
  }

  /** The face the wall is thinnest to, in words; empty if there is none. */
  String face() {
    return thinnest.isEmpty() ? "" : thinnest.get(0).face();
  }

  /** The same, with each place in the joint's words. */
  List<Wall> sides(JointWords words) {
    return thinnest.stream()
        .map(
            t ->
                new Wall(
                    t.face(),
                    t.end(),
                    new Spot(t.left(), t.at(), words.where(t.at(), true, true, true)),
                    t.way()))
        .toList();
  }
}
