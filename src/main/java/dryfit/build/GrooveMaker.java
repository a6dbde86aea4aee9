package dryfit.build;

import dryfit.document.Design.FitPlan;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.document.JointSizes;
import dryfit.document.PartPlan.Panel;
import dryfit.document.PartPlan.PanelShape.Fills;
import dryfit.document.PartPlan.PartRef;
import dryfit.geometry.Box;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The edge of a panel in the groove of one of the parts around it, as a joint to be measured. */
final class GrooveMaker {
  private GrooveMaker() {}

  /** A groove is shallow and its walls carry little, mm (common practice, no source). */
  private static final double LEAST_WALL = 3;

  /**
   * @param panel as placed
   * @param groove cells of all the groove, chair space
   * @param tenoned index of the panel in the chair
   * @param mortised index of the part in the chair
   * @return nothing if the groove does not reach the part
   */
  static Optional<Joint> of(
      Panel plan,
      Stock panel,
      List<Convex> groove,
      PanelFiller.Around around,
      FitPlan chairFit,
      int tenoned,
      int mortised) {
    Fills fills = (Fills) plan.shape();
    List<Convex> hole = Cells.common(groove, around.placedCells());
    if (hole.isEmpty()) {
      return Optional.empty();
    }
    List<Convex> tongue = Cells.common(panel.placedCells(), around.placedCells());
    Vec3 middle = panel.frame().origin();
    Vec3 thick = panel.frame().z();
    Vec3 there = Box.around(hole.stream().flatMap(c -> c.points().stream()).toList()).middle();
    Vec3 out = there.minus(middle).across(thick).unit();
    Optional<CellRay.Entry> hit = CellRay.first(around.placedCells(), middle, out);
    if (hit.isEmpty()) {
      return Optional.empty();
    }
    Plane face = hit.get().face();
    Vec3 entry = face.normal().negated().across(thick).unit();
    Vec3 at = middle.plus(out.times(hit.get().distance()));
    double length = fills.deep() - fills.gap();
    Vec3 wide = thick.cross(entry);
    return Optional.of(
        new Joint(
            plan(plan, fills, around.stock(), chairFit),
            around.stock().hand() == Hand.NONE ? panel.hand() : around.stock().hand(),
            plan.name() + " in " + around.stock().name(),
            tenoned,
            false,
            mortised,
            Plane.through(at, face.normal()),
            at,
            entry,
            thick,
            wide,
            length,
            List.of(new Tenon(tenoned, at, tongue, hole)),
            List.of(face.normal(), wide, wide.negated())));
  }

  private static JointPlan plan(Panel panel, Fills fills, Stock part, FitPlan chairFit) {
    String pointer = panel.common().pointer() + "/groove";
    OptionalDouble none = OptionalDouble.empty();
    return new JointPlan(
        panel.name() + " in " + part.name(),
        pointer,
        new JointPlan.EndRef(panel.name(), Hand.NONE, JointPlan.End.MIDDLE, pointer),
        new PartRef(part.name(), part.hand(), pointer),
        new JointSizes.Groove(fills.deep(), fills.gap(), fills.slack()),
        new JointPlan.Entry.SquareToTheFace(),
        new JointPlan.Place(none, none, none, none),
        JointPlan.Shoulder.NONE,
        new FitPlan(fills.slack(), 0, fills.gap(), Math.min(LEAST_WALL, chairFit.leastWall())),
        JointPlan.Role.LOCATING);
  }
}
