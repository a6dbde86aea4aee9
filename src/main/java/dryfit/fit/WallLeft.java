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
   */
  record Thinnest(String face, boolean end, double left, Vec3 at) {}

  static WallLeft of(Assembly assembly, Joint joint) {
    Placed mortised = assembly.mortised(joint);
    List<Convex> hole =
        joint.mortise().stream().flatMap(c -> c.clipped(joint.mouth()).stream()).toList();
    List<Thinnest> found = new ArrayList<>();
    Mesh mesh = mortised.mesh();
    Vec3 along = mortised.part().lengthNear(joint.at());
    for (int t = 0; t < mesh.triangleCount(); t++) {
      if (!mesh.origin(mesh.faceOf(t)).equals(mortised.part().pointer())) {
        continue;
      }
      List<Vec3> corners =
          List.of(
              mesh.point(mesh.corner(t, 0)),
              mesh.point(mesh.corner(t, 1)),
              mesh.point(mesh.corner(t, 2)));
      Vec3 n = mesh.normal(mesh.faceOf(t));
      if (n.length() == 0 || joint.isOpenTo(n)) {
        continue;
      }
      String face = Assembly.facing(n, joint.at());
      boolean end = Math.abs(n.dot(along)) > 0.7;
      int known = indexOf(found, face, end);
      double least = known < 0 ? Double.POSITIVE_INFINITY : found.get(known).left();
      Optional<Thinnest> thinner = thinner(hole, corners, face, end, least);
      if (thinner.isPresent() && known < 0) {
        found.add(thinner.get());
      } else if (thinner.isPresent()) {
        found.set(known, thinner.get());
      }
    }
    betweenTenons(joint)
        .ifPresent(d -> found.add(new Thinnest("its neighbour", false, d.length(), d.onFirst())));
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

  private static int indexOf(List<Thinnest> found, String face, boolean end) {
    for (int i = 0; i < found.size(); i++) {
      if (found.get(i).face().equals(face) && found.get(i).end() == end) {
        return i;
      }
    }
    return -1;
  }

  private static Optional<Thinnest> thinner(
      List<Convex> hole, List<Vec3> corners, String face, boolean end, double least) {
    Thinnest best = null;
    double most = least;
    Box box = Box.around(corners);
    for (Convex cell : hole) {
      if (Double.isFinite(most) && !box.grown(most).meets(cell.bounds())) {
        continue;
      }
      Distance d = Distance.toPolygon(cell, corners);
      if (d.length() < most) {
        most = d.length();
        Vec3 toFace = d.onSecond().minus(d.onFirst());
        best = new Thinnest(face, end, d.length(), nearest(hole, toFace, d.onFirst()));
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
                    new Spot(t.left(), t.at(), words.where(t.at(), true, true, true))))
        .toList();
  }
}
