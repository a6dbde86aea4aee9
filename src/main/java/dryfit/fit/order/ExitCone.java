package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.geometry.Vec3;
import dryfit.solid.Way;
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

  /** Empty if the part cannot leave along its entry at all. */
  static Optional<ExitCone> of(Pieces pieces, Joint joint) {
    Vec3 exit = joint.entry().negated();
    if (!free(pieces, joint, exit)) {
      return Optional.empty();
    }
    double[] slopes = {
      slope(pieces, joint, joint.thick().negated()),
      slope(pieces, joint, joint.thick()),
      slope(pieces, joint, joint.wide().negated()),
      slope(pieces, joint, joint.wide())
    };
    return Optional.of(new ExitCone(joint, exit, joint.thick(), joint.wide(), slopes));
  }

  private static boolean free(Pieces pieces, Joint joint, Vec3 d) {
    return Way.clear(pieces.cells(joint.tenoned()), pieces.cells(joint.mortised()), d);
  }

  private static double slope(Pieces pieces, Joint joint, Vec3 aside) {
    Vec3 exit = joint.entry().negated();
    if (free(pieces, joint, exit.plus(aside.times(MOST)).unit())) {
      return MOST;
    }
    double good = 0;
    double bad = MOST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (good + bad) / 2;
      if (free(pieces, joint, exit.plus(aside.times(middle)).unit())) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }
}
