package dryfit.build;

import dryfit.build.JointMaker.Made;
import dryfit.document.JointPlan;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Mitres the tips of tenons that meet inside one part. The mitre plane halves the angle between the
 * two entries and goes through the place where the middle lines of the tenons come nearest; each
 * tip stands back from it by half the gap.
 */
final class Mitres {
  private Mitres() {}

  /**
   * @param refused names of joints that could not be made and are told already: who is mitred with
   *     one of them stays as it is
   */
  static List<Made> cut(List<Made> made, Set<String> refused) {
    List<Made> out = new ArrayList<>(made);
    Set<String> done = new HashSet<>();
    for (int i = 0; i < out.size(); i++) {
      JointPlan plan = out.get(i).joint().plan();
      if (plan.mitre().isEmpty()) {
        continue;
      }
      String with = plan.mitre().get().with();
      boolean found = false;
      for (int j = 0; j < out.size(); j++) {
        boolean same =
            j != i
                && out.get(j).joint().mortised() == out.get(i).joint().mortised()
                && out.get(j).joint().name().equals(with);
        if (same) {
          found = true;
          if (done.add(Math.min(i, j) + "|" + Math.max(i, j))) {
            Plane plane = plane(out.get(i).joint(), out.get(j).joint(), plan.pointer());
            double half = plan.mitre().get().gap() / 2;
            out.set(i, cut(out.get(i), plane.moved(-half)));
            out.set(j, cut(out.get(j), plane.flipped().moved(-half)));
          }
        }
      }
      if (!found && !refused.contains(with)) {
        throw Refusal.of(
            "absent-joint",
            plan.pointer() + "/mitre-with",
            "\"" + with + "\" does not go into the same part as \"" + plan.name() + "\"",
            "name a joint whose tenon meets this one");
      }
    }
    return out;
  }

  /** Outside of the plane is where the first tenon may not go. */
  private static Plane plane(Joint a, Joint b, String pointer) {
    Vec3 n = a.entry().minus(b.entry());
    if (n.length() < 0.1) {
      throw Refusal.of(
          "wrong-kind",
          pointer + "/mitre-with",
          "the tenons of \"" + a.name() + "\" and \"" + b.name() + "\" go in side by side",
          "only tenons that meet at an angle can be mitred");
    }
    // Nearest points of the two middle lines (two unit directions u, v).
    Vec3 u = a.entry();
    Vec3 v = b.entry();
    Vec3 w = a.at().minus(b.at());
    double uv = u.dot(v);
    double det = 1 - uv * uv;
    if (det < 1e-3) {
      return Plane.through(a.at().midway(b.at()), n);
    }
    double s = (uv * v.dot(w) - u.dot(w)) / det;
    double t = (v.dot(w) - uv * u.dot(w)) / det;
    return Plane.through(a.at().plus(u.times(s)).midway(b.at().plus(v.times(t))), n);
  }

  private static Made cut(Made made, Plane plane) {
    Joint j = made.joint();
    Joint shorter =
        j.withTenons(j.tenons().stream().map(t -> t.withWood(clipped(t.wood(), plane))).toList());
    return new Made(
        made.of(), shorter, clipped(made.bodyTenon(), plane), made.trim(), made.cutAway());
  }

  private static List<Convex> clipped(List<Convex> cells, Plane plane) {
    return cells.stream().flatMap(c -> c.clipped(plane).stream()).toList();
  }
}
