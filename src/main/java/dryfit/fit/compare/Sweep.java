package dryfit.fit.compare;

import dryfit.document.Quantity;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A chair along a range of one of its dimensions.
 *
 * @param points at every step, rising
 * @param ranges where it fits, found to {@link Sweeping#resolution}; one may lie between two steps
 */
public record Sweep(Plan plan, List<Point> points, List<Range> ranges) {
  public Sweep {
    points = List.copyOf(points);
    ranges = List.copyOf(ranges);
  }

  /**
   * What is asked.
   *
   * @param from first value, millimetres, radians or a plain number; so are the others
   * @param step above zero
   * @param least what the document lets the dimension be at least; NaN if it does not say
   * @param most and at most
   */
  public record Plan(
      String variant,
      String dimension,
      Quantity.Kind kind,
      double from,
      double to,
      double step,
      double least,
      double most) {

    /** Whether the document says what the dimension may be. */
    public boolean isBounded() {
      return !Double.isNaN(least) || !Double.isNaN(most);
    }

    /** Whether the document lets the dimension have this value. */
    public boolean allows(double value) {
      return !(value < least - Tolerances.coincident())
          && !(value > most + Tolerances.coincident());
    }
  }

  /**
   * Where the chair fits and the document lets the dimension be, rising; the ends were found as
   * those of {@link #ranges}, or are the document's.
   */
  public List<Range> allowed() {
    List<Range> allowed = new ArrayList<>();
    for (Range r : ranges) {
      // Comparisons with what the document does not say are false.
      double from = r.from() < plan.least() ? plan.least() : r.from();
      double to = r.to() > plan.most() ? plan.most() : r.to();
      if (from <= to) {
        allowed.add(
            new Range(
                from,
                to,
                from == r.from() ? r.below() : Optional.empty(),
                to == r.to() ? r.above() : Optional.empty()));
      }
    }
    return allowed;
  }

  /**
   * The chair at one value.
   *
   * @param reason what keeps it from fitting
   * @param stops how many findings stop the build
   * @param look how many are to be looked at
   * @param data all its figures; none if it is refused
   */
  public record Point(
      double value, Optional<String> reason, long stops, long look, List<Datum> data) {
    public Point {
      data = List.copyOf(data);
    }

    public boolean fits() {
      return reason.isEmpty();
    }

    /** One of its figures. */
    public OptionalDouble figure(Datum.Key key) {
      return data.stream().filter(d -> d.key().equals(key)).mapToDouble(Datum::value).findFirst();
    }
  }

  /**
   * Values between which the chair fits, both tried and found good.
   *
   * @param below what goes wrong just below; empty if that is where the sweep began
   * @param above what goes wrong just above; empty if that is where it ended
   */
  public record Range(double from, double to, Optional<String> below, Optional<String> above) {}
}
