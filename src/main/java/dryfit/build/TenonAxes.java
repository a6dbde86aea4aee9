package dryfit.build;

import dryfit.build.JointInstances.Instance;
import dryfit.document.JointPlan;
import dryfit.document.JointSizes;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;

/**
 * Where the middle of a tenon goes through the mouth, and its directions.
 *
 * @param thick across the cheeks
 * @param wide across the edges, towards the part's top (its own y)
 * @param top how far the part's own top edge is from the tenon's middle, along {@code wide}
 * @param bottom how far its bottom edge is, a negative number
 */
record TenonAxes(Vec3 at, Vec3 entry, Vec3 thick, Vec3 wide, double top, double bottom) {

  /**
   * @param mouth the plane of the shoulder
   */
  static TenonAxes of(Instance i, Meeting meeting, Plane mouth, Vec3 entry, Vec3 out) {
    Stock t = i.tenoned();
    Vec3 y = meeting.end().y();
    Vec3 z = meeting.end().z();
    Vec3 thick = z.across(entry).unit();
    Vec3 wide = thick.cross(entry);
    wide = wide.dot(y) < 0 ? wide.negated() : wide;

    Stock.Section s = meeting.section();
    JointPlan plan = i.plan();
    double w = span(plan, true, plan.width().orElse(plan.diameter().orElse(s.width())));
    double th = span(plan, false, plan.thickness().orElse(plan.diameter().orElse(s.thickness())));
    double midY = (s.y0() + s.y1()) / 2;
    double midZ = (s.z0() + s.z1()) / 2;
    double yc = midY;
    JointPlan.Place place = plan.place();
    if (place.fromTop().isPresent()) {
      yc = s.y1() - place.fromTop().getAsDouble() - w / 2;
    } else if (place.fromBottom().isPresent()) {
      yc = s.y0() + place.fromBottom().getAsDouble() + w / 2;
    }
    boolean outsideIsUpZ = t.outside().dot(z) > 0;
    double zc = midZ;
    if (place.fromOutside().isPresent() || place.fromInside().isPresent()) {
      boolean fromOutside = place.fromOutside().isPresent();
      double in =
          fromOutside ? place.fromOutside().getAsDouble() : place.fromInside().getAsDouble();
      zc = fromOutside == outsideIsUpZ ? s.z1() - in - th / 2 : s.z0() + in + th / 2;
    }
    Vec3 onAxis = meeting.at().plus(y.times(yc - midY)).plus(z.times(zc - midZ));
    Vec3 at = onAxis.plus(out.times(mouth.along(onAxis, out)));
    return new TenonAxes(at, entry, thick, wide, s.y1() - yc, s.y0() - yc);
  }

  /** What all the tenons take across the width, or the thickness, of the part. */
  private static double span(JointPlan plan, boolean above, double one) {
    return plan.row().above() == above ? plan.row().span(one) : one;
  }

  /**
   * The axes of one tenon in a row about these, in the plane of the mouth.
   *
   * @param size of one along the row
   */
  TenonAxes inRow(JointSizes.Row row, int index, double size, Plane mouth) {
    double aside = (index - (row.count() - 1) / 2.0) * (size + row.gap());
    Vec3 moved = at.plus((row.above() ? wide : thick).times(aside));
    return new TenonAxes(
        moved.plus(entry.times(mouth.along(moved, entry))), entry, thick, wide, top, bottom);
  }

  /** From the tenon's edge (half width {@code w}) to the part's top or bottom edge. */
  double[] haunch(boolean atTop, double w) {
    return atTop ? new double[] {w, top} : new double[] {bottom, -w};
  }
}
