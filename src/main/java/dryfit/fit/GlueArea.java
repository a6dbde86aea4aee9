package dryfit.fit;

import dryfit.build.Joint;
import dryfit.fit.Assembly.Placed;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The faces of a tenon inside its mortise that take glue, without the tip. Long grain means that
 * neither part shows end grain there: the face leans less than 30 degrees to both grains.
 *
 * @param longGrain square millimetres, long grain to long grain
 * @param other square millimetres where end grain takes part
 */
record GlueArea(double longGrain, double other) {
  private static final double SIN_30 = 0.5;

  static GlueArea of(Assembly assembly, Joint joint) {
    Placed tenoned = assembly.tenoned(joint);
    Vec3 own = tenoned.part().grainNear(joint.at());
    Placed mortised = assembly.mortised(joint);
    Vec3 theirs = mortised.part().grainNear(joint.at());
    Mesh mesh = tenoned.mesh();
    double longGrain = 0;
    double other = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      List<Vec3> inWood = belowMouth(mesh, t, joint);
      if (inWood.size() < 3) {
        continue;
      }
      Vec3 area = area(inWood);
      Vec3 middle = middle(inWood);
      double size = area.length();
      if (size == 0 || joint.mortise().stream().noneMatch(c -> c.contains(middle))) {
        continue;
      }
      Vec3 n = area.times(1 / size);
      if (n.dot(joint.entry()) > Math.sqrt(0.5)) {
        continue;
      }
      if (Math.abs(n.dot(own)) < SIN_30 && Math.abs(n.dot(theirs)) < SIN_30) {
        longGrain += size;
      } else {
        other += size;
      }
    }
    return new GlueArea(longGrain, other);
  }

  /** What of a triangle lies inside the wood, cut off at the mouth. */
  private static List<Vec3> belowMouth(Mesh mesh, int t, Joint joint) {
    List<Vec3> out = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      Vec3 a = mesh.point(mesh.corner(t, k));
      Vec3 b = mesh.point(mesh.corner(t, (k + 1) % 3));
      double ha = joint.mouth().height(a) + dryfit.measure.Tolerances.contact();
      double hb = joint.mouth().height(b) + dryfit.measure.Tolerances.contact();
      if (ha < 0) {
        out.add(a);
      }
      if (ha < 0 != hb < 0) {
        out.add(a.plus(b.minus(a).times(ha / (ha - hb))));
      }
    }
    return out;
  }

  /** The area vector of a flat polygon. */
  private static Vec3 area(List<Vec3> polygon) {
    Vec3 sum = Vec3.ZERO;
    for (int i = 1; i + 1 < polygon.size(); i++) {
      sum =
          sum.plus(
              polygon.get(i).minus(polygon.get(0)).cross(polygon.get(i + 1).minus(polygon.get(0))));
    }
    return sum.times(0.5);
  }

  private static Vec3 middle(List<Vec3> polygon) {
    Vec3 sum = Vec3.ZERO;
    for (Vec3 p : polygon) {
      sum = sum.plus(p);
    }
    return sum.times(1.0 / polygon.size());
  }
}
