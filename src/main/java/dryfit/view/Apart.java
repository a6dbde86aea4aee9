package dryfit.view;

import dryfit.build.Joint;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Step;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A chair taken apart step by step, the last step of its assembly first: every part is drawn back
 * along the way it goes in.
 */
final class Apart {
  /** How far parts are drawn clear of each other beyond the length of their joints, mm. */
  private static final double CLEAR = 55;

  /** A joint that opens so slowly that it would take farther is left as it is, mm. */
  private static final double FARTHEST = 300;

  /** An open joint is open by so much, mm. */
  private static final double SEEN = 6;

  /** Cosine of how far two ways may differ that count as one. */
  private static final double SAME_WAY = 0.9;

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
    for (int k = steps.size() - 1; k >= 0; k--) {
      double done = Math.max(0, Math.min(1, share * steps.size() - (steps.size() - 1 - k)));
      Step step = steps.get(k);
      double far = clear(step);
      for (Step.Move move : step.moves()) {
        Vec3 back = move.push().negated();
        boolean other =
            step.moves().size() == 1
                && runsBack(move.parts(), back, far, k, moved)
                && !runsBack(step.onto(), back.negated(), far, k, moved);
        draw(
            other ? step.onto() : move.parts(),
            other ? back.negated() : back,
            far * move.share() * done,
            k,
            moved);
      }
    }
    return moved;
  }

  /** How many steps are undone or being undone. */
  int begun(double share) {
    int all = order.steps().size();
    return Math.max(1, Math.min(all, (int) Math.ceil(share * all)));
  }

  /** How far a step's parts are drawn clear, mm: so far that each of its joints is open. */
  private static double clear(Step step) {
    double far = CLEAR + step.closes().stream().mapToDouble(Joint::length).max().orElse(0);
    for (Joint joint : step.closes()) {
      Vec3 apart = way(step, joint.mortised()).minus(way(step, joint.tenoned()));
      double opens = apart.dot(joint.entry());
      if (opens * FARTHEST > joint.length()) {
        far = Math.max(far, (joint.length() + SEEN) / opens);
      }
    }
    return far;
  }

  /** Where a part goes while the fastest of a step is drawn 1 mm. */
  private static Vec3 way(Step step, int part) {
    return step.moves().stream()
        .filter(m -> m.parts().contains(part))
        .findFirst()
        .map(m -> m.push().times(-m.share()))
        .orElse(Vec3.ZERO);
  }

  /**
   * Draws parts back. What was drawn off them before, the same way, goes on ahead of them: else
   * they would run into it and seem joined again.
   *
   * @param step from which they are drawn, or were
   */
  private void draw(List<Integer> parts, Vec3 back, double far, int step, List<Vec3> moved) {
    List<Ahead> ahead = new ArrayList<>();
    for (int j = step + 1; j < order.steps().size(); j++) {
      for (Step.Move move : order.steps().get(j).moves()) {
        if (Collections.disjoint(move.parts(), parts)) {
          ahead(j, move, parts, back, far, moved).ifPresent(ahead::add);
        }
      }
    }
    parts.forEach(part -> moved.set(part, moved.get(part).plus(back.times(far))));
    for (Ahead each : ahead) {
      draw(each.parts(), back, each.by(), each.step(), moved);
    }
  }

  /** Whether parts would run back into what they were themselves drawn off before. */
  private boolean runsBack(List<Integer> parts, Vec3 back, double far, int step, List<Vec3> moved) {
    for (int j = step + 1; j < order.steps().size(); j++) {
      Step later = order.steps().get(j);
      for (Joint c : later.closes()) {
        boolean tenoned = parts.contains(c.tenoned());
        int own = tenoned ? c.tenoned() : c.mortised();
        int other = tenoned ? c.mortised() : c.tenoned();
        if (parts.contains(own)
            && !parts.contains(other)
            && later.moves().stream().anyMatch(m -> m.parts().contains(own))) {
          double lead = lead(other, own, back, moved);
          if (lead > 1 && lead - far < Math.min(lead, clear(later))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** What has to go on, and by how much. */
  private record Ahead(int step, List<Integer> parts, double by) {}

  private Optional<Ahead> ahead(
      int j, Step.Move move, List<Integer> parts, Vec3 back, double far, List<Vec3> moved) {
    Step later = order.steps().get(j);
    OptionalDouble lead =
        later.closes().isEmpty()
            ? move.push().dot(back) < -SAME_WAY
                ? OptionalDouble.of(lead(move.parts().get(0), parts.get(0), back, moved))
                : OptionalDouble.empty()
            : later.closes().stream()
                .filter(c -> joins(c, move.parts(), parts))
                .mapToDouble(
                    c ->
                        move.parts().contains(c.tenoned())
                            ? lead(c.tenoned(), c.mortised(), back, moved)
                            : lead(c.mortised(), c.tenoned(), back, moved))
                .min();
    if (lead.isEmpty() || lead.getAsDouble() < 1) {
      return Optional.empty();
    }
    double missing = Math.min(lead.getAsDouble(), clear(later)) - (lead.getAsDouble() - far);
    return missing > 0 ? Optional.of(new Ahead(j, move.parts(), missing)) : Optional.empty();
  }

  private static boolean joins(Joint joint, List<Integer> some, List<Integer> others) {
    return some.contains(joint.tenoned()) && others.contains(joint.mortised())
        || some.contains(joint.mortised()) && others.contains(joint.tenoned());
  }

  /** How much farther a part ahead has been drawn a way than one behind it, mm. */
  private static double lead(int ahead, int behind, Vec3 way, List<Vec3> moved) {
    return moved.get(ahead).minus(moved.get(behind)).dot(way);
  }
}
