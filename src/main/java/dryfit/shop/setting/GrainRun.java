package dryfit.shop.setting;

import java.util.ArrayList;
import java.util.List;

/**
 * A run of an edge along which the grain lies the same way.
 *
 * @param from along the part, mm
 * @param to further from its start, mm
 */
record GrainRun(double from, double to, Grain grain) {
  /** What is shorter than this is not worth turning the router round for (no source), mm. */
  static final double SHORT = 15;

  /** How an edge meets the grain as it is followed against the clock. */
  enum Grain {
    EITHER,
    WITH,
    AGAINST
  }

  double length() {
    return to - from;
  }

  /**
   * Neighbours that are cut alike as one, and no run that is short. At the top of a hump, where
   * either way will do, the ways part in the middle; a short run beside one that may be cut either
   * way keeps its own way and takes that one with it; any other goes with its longer neighbour.
   *
   * @param runs in their order along the part
   */
  static List<GrainRun> joined(List<GrainRun> runs) {
    List<GrainRun> out = alike(runs);
    for (int i = shortest(out); i >= 0; i = shortest(out)) {
      GrainRun run = out.get(i);
      GrainRun before = i > 0 ? out.get(i - 1) : null;
      GrainRun after = i + 1 < out.size() ? out.get(i + 1) : null;
      List<GrainRun> next = new ArrayList<>(out);
      if (before != null && after != null && run.grain == Grain.EITHER) {
        double middle = (run.from + run.to) / 2;
        next.set(i - 1, new GrainRun(before.from, middle, before.grain));
        next.set(i + 1, new GrainRun(middle, after.to, after.grain));
      } else if (after == null || before != null && before.length() >= after.length()) {
        next.set(i - 1, new GrainRun(before.from, run.to, run.wayBeside(before)));
      } else {
        next.set(i + 1, new GrainRun(run.from, after.to, run.wayBeside(after)));
      }
      next.remove(i);
      out = alike(next);
    }
    return out;
  }

  /** Of this short run and its neighbour together. */
  private Grain wayBeside(GrainRun neighbour) {
    return neighbour.grain == Grain.EITHER ? grain : neighbour.grain;
  }

  private static List<GrainRun> alike(List<GrainRun> runs) {
    List<GrainRun> out = new ArrayList<>();
    for (GrainRun run : runs) {
      GrainRun last = out.isEmpty() ? null : out.get(out.size() - 1);
      if (last != null && last.grain == run.grain) {
        out.set(out.size() - 1, new GrainRun(last.from, run.to, run.grain));
      } else {
        out.add(run);
      }
    }
    return out;
  }

  /** Of the runs that are short the shortest; -1 if none is, or nothing is beside it. */
  private static int shortest(List<GrainRun> runs) {
    int best = -1;
    for (int i = 0; i < runs.size() && runs.size() > 1; i++) {
      double length = runs.get(i).length();
      if (length < SHORT && (best < 0 || length < runs.get(best).length())) {
        best = i;
      }
    }
    return best;
  }
}
