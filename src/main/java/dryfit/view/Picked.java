package dryfit.view;

import dryfit.build.Part;
import dryfit.export.picture.Inked;
import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;

/**
 * A place on a part that was pointed at: on an edge if one is close by, otherwise on a face.
 *
 * @param part label of the part
 * @param frame where the part stands
 * @param at the place, chair space
 * @param edge whether it is on an edge
 * @param way along the edge, or out of the face; a unit direction in chair space
 */
record Picked(String part, Frame frame, Vec3 at, boolean edge, Vec3 way) {

  /**
   * @param touched the place on the surface, chair space
   * @param face the face of the part's mesh that was touched
   * @param reach how near an edge counts as meant, mm
   */
  static Picked of(Part part, Vec3 touched, int face, double reach) {
    Frame frame = part.frame();
    Vec3 local = frame.local(touched);
    Mesh mesh = part.solid().mesh();
    Inked inked = Inked.of(mesh);
    double least = reach;
    Vec3 nearest = null;
    Vec3 along = null;
    for (int e = 0; e < inked.creases().length; e += 2) {
      Vec3 a = point(inked, inked.creases()[e]);
      Vec3 ab = point(inked, inked.creases()[e + 1]).minus(a);
      double share = Math.max(0, Math.min(1, local.minus(a).dot(ab) / ab.dot(ab)));
      Vec3 on = a.plus(ab.times(share));
      if (on.distance(local) < least) {
        least = on.distance(local);
        nearest = on;
        along = ab.unit();
      }
    }
    if (nearest != null) {
      return new Picked(part.label(), frame, frame.place(nearest), true, frame.turn(along));
    }
    int[] corners = mesh.triangles();
    Vec3 a = mesh.point(corners[3 * face]);
    Vec3 out =
        mesh.point(corners[3 * face + 1])
            .minus(a)
            .cross(mesh.point(corners[3 * face + 2]).minus(a))
            .unit();
    return new Picked(part.label(), frame, touched, false, frame.turn(out));
  }

  private static Vec3 point(Inked inked, int number) {
    double[] xyz = inked.xyz();
    return new Vec3(xyz[3 * number], xyz[3 * number + 1], xyz[3 * number + 2]);
  }

  /** The angle to another edge or face, from 0 to a right angle, radians. */
  double angle(Picked other) {
    double between = Math.acos(Math.min(1, Math.abs(way.dot(other.way))));
    return edge == other.edge ? between : Math.PI / 2 - between;
  }
}
