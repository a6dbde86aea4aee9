package dryfit.build;

import dryfit.document.PartCuts.Head;
import dryfit.document.PartPlan;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Cells;
import dryfit.solid.Csg;

/** Cuts the upper end of a part parallel to the floor, as under a seat board. */
final class HeadCut {
  private HeadCut() {}

  /**
   * The cut in chair space; outside is above.
   *
   * @param top height of the part's middle line at its upper end, for a head that says none, mm
   */
  static Plane plane(Head head, double top) {
    return new Plane(Vec3.UP, head.z().orElse(top));
  }

  /**
   * A shape without what is above its head.
   *
   * @param shape own frame
   */
  static Csg of(Csg shape, Head head, double top, Frame frame, PartPlan plan) {
    Plane cut = frame.local(plane(head, top));
    double above = Cells.of(shape).stream().mapToDouble(c -> c.reach(cut.normal())).max().orElse(0);
    if (above < cut.offset() - Tolerances.coincident()) {
      throw Refusal.of(
          "no-foot",
          head.pointer(),
          plan.name() + " ends below the height its head should be cut at",
          "let it reach up to the cut");
    }
    return Shapes.trimmed(shape, cut, plan.common().pointer());
  }
}
