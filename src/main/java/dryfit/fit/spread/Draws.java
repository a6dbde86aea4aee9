package dryfit.fit.spread;

import dryfit.measure.Tolerances;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Makes a figure many times over, each time with every cut off by chance. Every cut has numbers of
 * its own from a fixed seed, so that all figures are of the same chairs and the same document gives
 * the same result everywhere.
 */
final class Draws {
  /** How many chairs are made. */
  static final int COUNT = 20_000;

  private static final long SEED = 20_260_301;

  private final long[] seeds;

  /**
   * @param cuts how many there are
   */
  Draws(int cuts) {
    SplittableRandom root = new SplittableRandom(SEED);
    this.seeds = root.longs(cuts).toArray();
  }

  /** The figure of every chair, in the order in which they are made. */
  double[] of(double planned, List<Term> terms) {
    double[] all = new double[COUNT];
    Arrays.fill(all, planned);
    for (Term t : terms) {
      SplittableRandom random = new SplittableRandom(seeds[t.cut()]);
      for (int i = 0; i < COUNT; i++) {
        all[i] += t.at((2 * random.nextDouble() - 1) * t.accuracy());
      }
    }
    return all;
  }

  /**
   * What is as often below as above by {@code outside / 2}: of M values in order the r-th and the
   * (M − r)-th, r = M · outside / 2 (JCGM 101:2008, 7.7).
   */
  static double[] interval(double[] sorted, double outside) {
    int r = (int) Math.round(sorted.length * outside / 2);
    return new double[] {sorted[r - 1], sorted[sorted.length - r - 1]};
  }

  /** The share of values beyond either limit; exactly at it is not. */
  static double beyond(double[] values, double least, double most) {
    double spare = Tolerances.coincident();
    long out = Arrays.stream(values).filter(v -> v < least - spare || v > most + spare).count();
    return (double) out / values.length;
  }
}
