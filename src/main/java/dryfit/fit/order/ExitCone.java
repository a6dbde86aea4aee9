package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Way;
import java.util.List;
import java.util.Optional;

/**
 * The directions in which a tenon can leave its mortise: along its entry turned round, and as far
 * from it as the clearance lets it.
 *
 * @param exit unit direction in which the tenoned part leaves
 * @param thick unit direction across the cheeks
 * @param wide unit direction across the edges
 * @param slopes greatest tangents of the angle off {@code exit}: against and along {@code thick},
 *     against and along {@code wide}
 */
record ExitCone(Joint joint, Vec3 exit, Vec3 thick, Vec3 wide, double[] slopes) {
  /** No tenon is looked at further off its way than 45 degrees. */
  private static final double MOST = 1;

  /** Halvings of the range above: to a hundredth of a millimetre over a metre. */
  private static final int HALVINGS = 17;

  /** How far about a tenon wood is looked at, mm; the rest of the parts is for the planner. */
  private static final double NEAR = 1;

  /** Empty if the part cannot leave along its entry at all. */
  static Optional<ExitCone> of(Pieces pieces, Joint joint) {
    Box box =
        joint.tenon().stream()
            .map(Convex::bounds)
            .reduce(Box::with)
            .map(b -> b.grown(NEAR))
            .orElse(pieces.bounds(joint.mortised()));
    List<Convex> tenon = near(pieces.cells(joint.tenoned()), box);
    List<Convex> wood = near(pieces.cells(joint.mortised()), box);
    Vec3 exit = joint.entry().negated();
    if (!Way.clear(tenon, wood, exit)) {
      return Optional.empty();
    }
    double[] slopes = {
      slope(tenon, wood, exit, joint.thick().negated()),
      slope(tenon, wood, exit, joint.thick()),
      slope(tenon, wood, exit, joint.wide().negated()),
      slope(tenon, wood, exit, joint.wide())
    };
    return Optional.of(new ExitCone(joint, exit, joint.thick(), joint.wide(), slopes));
  }

  private static List<Convex> near(List<Convex> cells, Box box) {
    return cells.stream().filter(c -> c.bounds().meets(box)).toList();
  }

  private static double slope(List<Convex> tenon, List<Convex> wood, Vec3 exit, Vec3 aside) {
    if (Way.clear(tenon, wood, exit.plus(aside.times(MOST)).unit())) {
      return MOST;
    }
    double good = 0;
    double bad = MOST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (good + bad) / 2;
      if (Way.clear(tenon, wood, exit.plus(aside.times(middle)).unit())) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }
}
