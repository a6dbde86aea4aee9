package dryfit.shop.setting;

import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * In how many passes a bit whose bearing sits at the shank gets through wood of a thickness. The
 * first pass runs on the template, each that follows runs on what the one before has cut and
 * overlaps it.
 *
 * @param all heights from the face with the template, mm
 */
record Passes(List<Pass> all) {
  /** How much of its cutter a pass has in wood that is cut already (no source), mm. */
  static final double OVERLAP = 2;

  Passes {
    all = List.copyOf(all);
  }

  /** One pass and the heights its cutter covers, mm. */
  record Pass(double from, double to) {}

  /**
   * @param cutter longer than {@link #OVERLAP}
   */
  static Passes of(double thickness, double cutter) {
    List<Pass> all = new ArrayList<>();
    double done = Math.min(thickness, cutter);
    all.add(new Pass(0, done));
    while (!reaches(done, thickness)) {
      double next = Math.min(thickness, done + cutter - OVERLAP);
      all.add(new Pass(next - cutter, next));
      done = next;
    }
    return new Passes(all);
  }

  /** Whether a cut so deep goes through; both come out of reckoning and differ in last digits. */
  static boolean reaches(double deep, double thickness) {
    return deep >= thickness - Tolerances.contact();
  }
}
