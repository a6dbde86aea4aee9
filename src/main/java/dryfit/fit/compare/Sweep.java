package dryfit.fit.compare;

import dryfit.document.Quantity;
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
   */
  public record Plan(
      String variant, String dimension, Quantity.Kind kind, double from, double to, double step) {}

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
