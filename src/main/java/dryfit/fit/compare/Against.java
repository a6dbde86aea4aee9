package dryfit.fit.compare;

import dryfit.document.Problem;
import dryfit.fit.Finding;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What stands against a chair at one value of a sweep.
 *
 * @param by how far each thing is beyond its limit, in the unit of its finding; infinite for what
 *     keeps the chair from being built at all; none if it fits
 */
record Against(Map<String, Double> by) {
  /**
   * A line between two values may be this much steeper than what was seen beside them: figures bend
   * a little, and trying a value in vain costs less than missing one.
   */
  private static final double STEEPER = 1.5;

  Against {
    by = Map.copyOf(by);
  }

  static Against of(List<Finding> stops) {
    Map<String, Double> by = new TreeMap<>();
    for (Finding f : stops) {
      by.merge(f.check() + f.parts() + f.joints(), Math.max(0, -f.margin()), Math::max);
    }
    return new Against(by);
  }

  static Against refused(List<Problem> problems) {
    Map<String, Double> by = new TreeMap<>();
    problems.forEach(p -> by.put(p.code() + p.pointer(), Double.POSITIVE_INFINITY));
    return new Against(by);
  }

  boolean none() {
    return by.isEmpty();
  }

  /** A chair tried at a value. */
  record At(double value, Against against) {

    /** How fast something changes from here to there; what is not told counts as at its limit. */
    private double slope(At other, String what) {
      double here = against.by().getOrDefault(what, 0.0);
      double there = other.against.by().getOrDefault(what, 0.0);
      return Math.abs(here - there) / Math.abs(value - other.value);
    }
  }

  /**
   * Whether everything may be well somewhere between the second and the third of four neighbours.
   * What stands against only one of them ends somewhere between. What stands against both may do so
   * only if it is small enough for the slopes seen around it to bring it to its limit and back. At
   * the rim of a sweep the first or the last may be missing (null); with neither, the slopes are
   * unknown and anything may be.
   */
  static boolean mayEndBetween(At before, At low, At high, At after) {
    double width = high.value() - low.value();
    for (Map.Entry<String, Double> entry : low.against().by().entrySet()) {
      String what = entry.getKey();
      Double other = high.against().by().get(what);
      if (other != null) {
        double sum = entry.getValue() + other;
        double slope = low.slope(high, what);
        slope = before == null ? slope : Math.max(slope, low.slope(before, what));
        slope = after == null ? slope : Math.max(slope, high.slope(after, what));
        boolean unknown = before == null && after == null;
        if (Double.isInfinite(sum) || (!unknown && sum > STEEPER * slope * width)) {
          return false;
        }
      }
    }
    return true;
  }
}
