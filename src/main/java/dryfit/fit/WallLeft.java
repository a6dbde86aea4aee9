package dryfit.fit;

import dryfit.build.Joint;
import dryfit.fit.Assembly.Placed;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Distance;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The least wood left between a mortise and the outside of its part. Faces that look the same way
 * as the mouth, to within 60 degrees, are the mouth's own side and do not count; a mortise that
 * goes through has no wall at its far end either. Zero means that the mortise has come out.
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
    Vec3 mouthWay = joint.mouth().normal();
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
        if (!near(box, corners, least)) {
          continue;
        }
        Vec3 n = corners.get(1).minus(corners.get(0)).cross(corners.get(2).minus(corners.get(0)));
        double facing = n.dot(mouthWay) / n.length();
        if (facing > 0.5 || (joint.plan().through() && facing < -0.5)) {
          continue;
        }
        Distance d = Distance.toPolygon(cell, corners);
        if (d.length() < least) {
          least = d.length();
          at = d.onFirst();
          face = Assembly.facing(n, joint.at());
        }
      }
    }
    return new WallLeft(
        Double.isFinite(least) ? OptionalDouble.of(least) : OptionalDouble.empty(), face, at);
  }

  private static boolean near(Box box, List<Vec3> corners, double least) {
    return !Double.isFinite(least) || Box.around(corners).grown(least).meets(box);
  }
}
