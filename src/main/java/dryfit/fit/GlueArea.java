package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Tenon;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.Assembly.Placed;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.FaceContact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
    Kind kind = joint.plan().kind();
    if (kind == Kind.GROOVE || kind == Kind.NOTCH) {
      // A panel moves in its groove, and a seat round its post: neither is glued.
      return new GlueArea(0, 0);
    }
    Placed mortised = assembly.mortised(joint);
    Vec3 theirs = mortised.part().grainNear(joint.at());
    if (kind == Kind.GLUED || kind == Kind.SCREWED) {
      return contact(assembly.tenoned(joint), mortised, joint.at());
    }
    GlueArea sum = new GlueArea(0, 0);
    for (int part : joint.tenons().stream().mapToInt(Tenon::part).distinct().toArray()) {
      GlueArea one = of(assembly.part(part), theirs, joint);
      sum = new GlueArea(sum.longGrain + one.longGrain, sum.other + one.other);
    }
    return sum;
  }

  /** Faces that lie flat on each other. */
  private static GlueArea contact(Placed tenoned, Placed mortised, Vec3 at) {
    Optional<FaceContact> found = FaceContact.largest(tenoned.cells(), mortised.cells());
    if (found.isEmpty()) {
      return new GlueArea(0, 0);
    }
    Vec3 own = tenoned.part().grainNear(at);
    Vec3 theirs = mortised.part().grainNear(at);
    Vec3 n = found.get().plane().normal();
    double area = found.get().area();
    return isLongGrain(n, own, theirs) ? new GlueArea(area, 0) : new GlueArea(0, area);
  }

  private static boolean isLongGrain(Vec3 n, Vec3 own, Vec3 theirs) {
    return Math.abs(n.dot(own)) < SIN_30 && Math.abs(n.dot(theirs)) < SIN_30;
  }

  private static GlueArea of(Placed tenoned, Vec3 theirs, Joint joint) {
    Vec3 own = tenoned.part().grainNear(joint.at());
    Mesh mesh = tenoned.mesh();
    List<Convex> holes = joint.mortise();
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
      if (size == 0 || holes.stream().noneMatch(c -> c.contains(middle))) {
        continue;
      }
      Vec3 n = area.times(1 / size);
      if (n.dot(joint.entry()) > Math.sqrt(0.5) || joint.isOpenTo(n)) {
        continue;
      }
      if (isLongGrain(n, own, theirs)) {
        longGrain += size;
      } else {
        other += size;
      }
    }
    return new GlueArea(longGrain, other);
  }

  /** What of a triangle lies inside the wood, cut off at the mouth. */
  private static List<Vec3> belowMouth(Mesh mesh, int t, Joint joint) {
    List<Vec3> out = new ArrayList<>(4);
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
