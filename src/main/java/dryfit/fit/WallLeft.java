package dryfit.fit;

import dryfit.build.Joint;
import dryfit.fit.Assembly.Placed;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.solid.Distance;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The least wood left between a mortise and the outside of its part, or the next mortise of the
 * same joint. Faces that look the same way as the mouth, to within 60 degrees, are the mouth's own
 * side and do not count, nor do others that it is meant to come out of: the far one of a through
 * tenon, the end at a bridle. Zero means that the mortise has come out.
 *
 * @param face the face the wall is thinnest to, in words
 * @param at where
 */
record WallLeft(OptionalDouble least, String face, Vec3 at) {

  static WallLeft of(Assembly assembly, Joint joint) {
    Placed mortised = assembly.mortised(joint);
    List<Convex> hole =
        joint.mortise().stream().flatMap(c -> c.clipped(joint.mouth()).stream()).toList();
    double least = Double.POSITIVE_INFINITY;
    Vec3 at = joint.at();
    String face = "";
    Mesh mesh = mortised.mesh();
    for (Convex cell : hole) {
      Box box = cell.bounds();
      for (int t = 0; t < mesh.triangleCount(); t++) {
        if (!mesh.origin(mesh.faceOf(t)).equals(mortised.part().pointer())) {
          continue;
        }
        List<Vec3> corners =
            List.of(
                mesh.point(mesh.corner(t, 0)),
                mesh.point(mesh.corner(t, 1)),
                mesh.point(mesh.corner(t, 2)));
        if (!near(box, corners, least + Tolerances.contact())) {
          continue;
        }
        Vec3 n = corners.get(1).minus(corners.get(0)).cross(corners.get(2).minus(corners.get(0)));
        if (joint.isOpenTo(n.unit())) {
          continue;
        }
        Distance d = Distance.toPolygon(cell, corners);
        String word = Assembly.facing(n, joint.at());
        // Two walls alike: the same one is told for both of a pair, whatever the order of faces.
        boolean alike = Math.abs(d.length() - least) <= Tolerances.contact();
        if (alike ? word.compareTo(face) > 0 : d.length() < least) {
          least = d.length();
          at = d.onFirst();
          face = word;
        }
      }
    }
    for (Distance d : betweenTenons(joint)) {
      if (d.length() < least) {
        least = d.length();
        at = d.onFirst();
        face = "its neighbour";
      }
    }
    return new WallLeft(
        Double.isFinite(least) ? OptionalDouble.of(least) : OptionalDouble.empty(), face, at);
  }

  /** The wood between one mortise of the joint and the next. */
  private static List<Distance> betweenTenons(Joint joint) {
    List<Distance> out = new ArrayList<>();
    for (int i = 0; i + 1 < joint.tenons().size(); i++) {
      Distance.between(
              joint.tenons().get(i).hole(), joint.tenons().get(i + 1).hole(), Double.MAX_VALUE)
          .ifPresent(out::add);
    }
    return out;
  }

  private static boolean near(Box box, List<Vec3> corners, double least) {
    return !Double.isFinite(least) || Box.around(corners).grown(least).meets(box);
  }
}
