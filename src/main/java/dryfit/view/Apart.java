package dryfit.view;

import dryfit.build.Joint;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Step;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * A chair taken apart step by step, the last step of its assembly first: every part is drawn back
 * along the way it goes in.
 */
final class Apart {
  /** How far parts are drawn clear of each other beyond the length of their joints, mm. */
  private static final double CLEAR = 55;

  private final Assembling order;

  private Apart(Assembling order) {
    this.order = order;
  }

  static Apart of(Assembling order) {
    return new Apart(order);
  }

  Assembling order() {
    return order;
  }

  /**
   * How far each part is from its place.
   *
   * @param share 0 together, 1 all apart
   */
  List<Vec3> moved(double share) {
    List<Step> steps = order.steps();
    List<Vec3> moved = new ArrayList<>();
    for (int i = 0; i < order.chair().parts().size(); i++) {
      moved.add(Vec3.ZERO);
    }
    for (int k = 0; k < steps.size(); k++) {
      double done = Math.max(0, Math.min(1, share * steps.size() - (steps.size() - 1 - k)));
      Step step = steps.get(k);
      double far = CLEAR + step.closes().stream().mapToDouble(Joint::length).max().orElse(0);
      for (Step.Move move : step.moves()) {
        Vec3 back = move.push().times(-far * move.share() * done);
        move.parts().forEach(part -> moved.set(part, moved.get(part).plus(back)));
      }
    }
    return moved;
  }
}
