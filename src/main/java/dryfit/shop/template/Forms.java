package dryfit.shop.template;

import dryfit.build.Part;
import dryfit.document.PartPlan.Detail;
import dryfit.document.PartPlan.Hollow;
import dryfit.document.PartPlan.Seat;
import dryfit.document.PartPlan.Turned;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/** Marks that only some forms have: hollows of seats, diameters of turnings. */
final class Forms {
  private Forms() {}

  static List<Mark> marks(Part part, Face face, Wanted wanted, Region outline) {
    if (part.plan() instanceof Seat seat && seat.hollow().isPresent()) {
      return hollow(seat, seat.hollow().get(), face, wanted.depths());
    }
    if (part.plan() instanceof Turned turned) {
      return diameters(turned, face, outline);
    }
    return List.of();
  }

  /**
   * Lines of equal depth. On a line from the deepest place to the rim the hollow is a parabola, so
   * that at a depth it is as far out as the square root of what is left of the depth.
   */
  private static List<Mark> hollow(Seat seat, Hollow hollow, Face face, double apart) {
    List<Mark> out = new ArrayList<>();
    Region dish = dish(face, hollow.pointer());
    if (dish.isEmpty() || face.out().dot(Face.THICKNESS) < 0) {
      return out;
    }
    List<Vec2> rim = dish.loops().get(0);
    Vec2 deepest = hollow.deepest().map(p -> drawn(seat, face, p.u(), p.v())).orElse(dish.middle());
    for (int i = 0; i * apart < hollow.deep(); i++) {
      double share = Math.sqrt(1 - i * apart / hollow.deep());
      out.add(
          new Mark.Depth(
              rim.stream().map(p -> deepest.plus(p.minus(deepest).times(share))).toList(),
              i * apart));
    }
    out.add(new Mark.Deepest(deepest, hollow.deep()));
    return out;
  }

  /** All faces that the hollow has made, holes for joints in it filled. */
  private static Region dish(Face face, String pointer) {
    Mesh mesh = face.part().solid().mesh();
    List<List<Vec2>> triangles = new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      if (mesh.origin(mesh.faceOf(t)).equals(pointer)) {
        triangles.add(
            face.flat(
                List.of(
                    mesh.point(mesh.corner(t, 0)),
                    mesh.point(mesh.corner(t, 1)),
                    mesh.point(mesh.corner(t, 2)))));
      }
    }
    Region all = Region.ofHulls(triangles);
    return all.isEmpty() ? all : all.largest().filled().cleaned();
  }

  /** A place that is drawn on the seat's own top, to the right and to the back. */
  private static Vec2 drawn(Seat seat, Face face, double right, double back) {
    Vec3 at = new Vec3(seat.at().x(), seat.at().y(), seat.at().z());
    Vec3 backward = new Vec3(0, Math.cos(seat.slope()), -Math.sin(seat.slope()));
    Vec3 place = at.plus(Vec3.RIGHT.times(right)).plus(backward.times(back));
    return face.flat(face.part().frame().local(place));
  }

  private static List<Mark> diameters(Turned turned, Face face, Region outline) {
    List<Mark> out = new ArrayList<>();
    List<Double> along = new ArrayList<>();
    turned.stations().forEach(s -> along.add(s.along()));
    for (Detail d : turned.details()) {
      along.addAll(List.of(d.at() - d.wide() / 2, d.at(), d.at() + d.wide() / 2));
    }
    for (double own : along.stream().sorted().distinct().toList()) {
      double x = face.flat(Face.LENGTH.times(own)).x();
      Region slice =
          outline.common(
              Region.rectangle(
                  x - SLICE, outline.low().y() - 1, x + SLICE, outline.high().y() + 1));
      if (!slice.isEmpty()) {
        out.add(new Mark.Diameter(x, slice.high().y() - slice.low().y()));
      }
    }
    return out;
  }

  /** A diameter is read over so much to either side of its place, mm. */
  private static final double SLICE = 0.05;
}
