package dryfit.view;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Step;
import dryfit.fit.order.Stuck;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A chair taken apart step by step, the last step of its assembly first: every part is drawn back
 * along the way it goes in. Parts that lock stay as one, and the rest comes away from them.
 */
final class Apart {
  /** How far parts are drawn clear of each other beyond the length of their joints, mm. */
  private static final double CLEAR = 55;

  private final int parts;
  private final List<Step> steps;
  private final SortedSet<Integer> locked;
  private final boolean shared;

  private Apart(int parts, List<Step> steps, SortedSet<Integer> locked, boolean shared) {
    this.parts = parts;
    this.steps = steps;
    this.locked = locked;
    this.shared = shared;
  }

  static Apart of(Chair chair) {
    Assembling order = Assembling.of(chair);
    boolean shared = order.stuck().stream().anyMatch(s -> !s.collide().isEmpty());
    List<SortedSet<Integer>> held = new ArrayList<>();
    // Each round at least two pieces become one, so it ends, if only with all of them as one.
    while (!order.possible()) {
      order.stuck().forEach(s -> join(held, s));
      order = Assembling.of(chair, held.stream().map(List::copyOf).toList());
    }
    SortedSet<Integer> locked = new TreeSet<>();
    held.forEach(locked::addAll);
    return new Apart(chair.parts().size(), order.steps(), locked, shared);
  }

  /** Parts that lock are one piece with every piece that has any of them. */
  private static void join(List<SortedSet<Integer>> held, Stuck stuck) {
    SortedSet<Integer> one = new TreeSet<>(stuck.parts());
    held.removeIf(
        other -> {
          boolean touches = other.stream().anyMatch(one::contains);
          if (touches) {
            one.addAll(other);
          }
          return touches;
        });
    held.add(one);
  }

  /** Numbers of the parts that lock, in the chair's order; none if all come apart. */
  SortedSet<Integer> locked() {
    return locked;
  }

  /** Whether they lock because they claim the same wood. */
  boolean shared() {
    return shared;
  }

  /** Whether anything comes apart at all. */
  boolean moves() {
    return !steps.isEmpty();
  }

  /**
   * How far each part is from its place.
   *
   * @param share 0 together, 1 all apart
   */
  List<Vec3> moved(double share) {
    List<Vec3> moved = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
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
