package dryfit.shop.setting;

import dryfit.shop.setting.Bench.Bearing;
import dryfit.shop.setting.Bench.Follower;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * In how many passes bits with a bearing get through wood of a thickness, and which height each of
 * them cuts. The first runs on the template; each that follows runs on what the one before has cut,
 * and so overlaps it.
 *
 * @param all from the face with the template
 * @param reaches whether every pass can be made with a bit whose shank is no longer than its cutter
 */
record Passes(List<Pass> all, boolean reaches) {
  /** How much of its cutter a pass has in wood that is cut already (no source), mm. */
  static final double OVERLAP = 2;

  Passes {
    all = List.copyOf(all);
  }

  /**
   * One pass; heights from the face with the template, mm.
   *
   * @param turnedOver whether the part lies with the template down
   */
  record Pass(Follower bit, double from, double to, boolean turnedOver) {}

  static Passes of(double thickness, List<Follower> bits) {
    Follower first = longest(bits, Bearing.SHANK).orElseGet(() -> bits.get(0));
    Follower only = longestOf(bits);
    if (only.cutter() >= thickness) {
      boolean below = only.bearing() == Bearing.TIP;
      return new Passes(List.of(new Pass(only, 0, thickness, below)), true);
    }
    // A bit with its bearing at the tip meets the template from the other side.
    Optional<Follower> other = longest(bits, Bearing.TIP).filter(b -> b != first);
    List<Pass> all = new ArrayList<>();
    boolean over = first.bearing() == Bearing.TIP;
    double done = first.cutter();
    all.add(new Pass(first, 0, done, over));
    if (other.isPresent() && done + other.get().cutter() - OVERLAP >= thickness) {
      all.add(new Pass(other.get(), done - OVERLAP, thickness, true));
      return new Passes(all, true);
    }
    while (done < thickness) {
      double next = Math.min(thickness, done + first.cutter() - OVERLAP);
      all.add(new Pass(first, next - Math.min(first.cutter(), next), next, over));
      done = next;
    }
    return new Passes(all, false);
  }

  private static Follower longestOf(List<Follower> bits) {
    return bits.stream().max(Comparator.comparingDouble(Follower::cutter)).orElseThrow();
  }

  private static Optional<Follower> longest(List<Follower> bits, Bearing bearing) {
    return bits.stream()
        .filter(b -> b.bearing() == bearing)
        .max(Comparator.comparingDouble(Follower::cutter));
  }
}
