package dryfit.fit.compare;

import dryfit.document.Document;
import dryfit.document.Quantity;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import dryfit.fit.compare.Rebuild.Outcome;
import dryfit.fit.compare.Sweep.Plan;
import dryfit.fit.compare.Sweep.Point;
import dryfit.fit.compare.Sweep.Range;
import dryfit.solid.Kernel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Runs a dimension through a range and finds where the chair fits, between its steps too ({@link
 * Against#mayEndBetween}).
 */
public final class Sweeping {
  /** Most steps of one sweep: more than a plot can show. */
  public static final int MOST = 1000;

  private final Plan plan;
  private final Rebuild rebuild;
  private final IntConsumer done;
  private final AtomicInteger count = new AtomicInteger();

  private Sweeping(Plan plan, Rebuild rebuild, IntConsumer done) {
    this.plan = plan;
    this.rebuild = rebuild;
    this.done = done;
  }

  /**
   * Sweeps. Every step is built by itself, on all cores; the result does not depend on which core
   * was first.
   *
   * @param kernels makes a kernel for each thread
   * @param done is told how many chairs are finished, from any thread; what it throws ends the
   *     sweep
   * @throws IllegalArgumentException if the plan has no step, goes backwards, or has more than
   *     {@link #MOST}
   */
  public static Sweep of(Document document, Plan plan, Supplier<Kernel> kernels, IntConsumer done) {
    if (!(plan.step() > 0) || plan.to() < plan.from() || values(plan) > MOST) {
      throw new IllegalArgumentException("not a sweep: " + plan);
    }
    Rebuild rebuild = new Rebuild(document, plan.variant(), kernels);
    return new Sweeping(plan, rebuild, done).run();
  }

  /** How many values a plan has, its end included even if no step falls on it. */
  public static long values(Plan plan) {
    double steps = (plan.to() - plan.from()) / plan.step();
    long whole = (long) Math.floor(steps + WHOLE);
    return whole + 1 + (steps - whole > WHOLE ? 1 : 0);
  }

  /** Steps this near to a whole number of them are that number. */
  private static final double WHOLE = 1e-6;

  /** How finely the ends of ranges are found: 0.1 mm, a hundredth of a degree, a thousandth. */
  public static double resolution(Quantity.Kind kind) {
    return switch (kind) {
      case LENGTH -> 0.1;
      case ANGLE -> Math.toRadians(0.01);
      case NUMBER -> 0.001;
    };
  }

  /** A chair that was tried, and what stood against it. */
  private record Tried(Point point, Against against) {
    Against.At at() {
      return new Against.At(point.value(), against);
    }
  }

  private Sweep run() {
    int n = (int) values(plan);
    List<Tried> steps =
        IntStream.range(0, n)
            .parallel()
            .mapToObj(i -> at(Math.min(plan.from() + i * plan.step(), plan.to())))
            .toList();
    List<Tried> all = between(steps);
    List<Edge> edges =
        IntStream.range(0, all.size() - 1)
            .parallel()
            .filter(i -> all.get(i).point().fits() != all.get(i + 1).point().fits())
            .mapToObj(i -> edge(all.get(i).point(), all.get(i + 1).point()))
            .toList();
    List<Point> points = steps.stream().map(Tried::point).toList();
    return new Sweep(plan, points, ranges(all.stream().map(Tried::point).toList(), edges));
  }

  /**
   * The steps, and between two that do not fit the middles that may: halved again until one fits,
   * none may, or the resolution is reached.
   */
  private List<Tried> between(List<Tried> steps) {
    List<Tried> all = steps;
    while (divides()) {
      List<Tried> now = all;
      List<Tried> middles =
          IntStream.range(0, now.size() - 1)
              .parallel()
              .filter(i -> worthHalving(now, i))
              .mapToObj(i -> at((now.get(i).point().value() + now.get(i + 1).point().value()) / 2))
              .toList();
      if (middles.isEmpty()) {
        break;
      }
      List<Tried> more = new ArrayList<>(now);
      more.addAll(middles);
      more.sort(Comparator.comparingDouble(t -> t.point().value()));
      all = more;
    }
    return all;
  }

  private boolean worthHalving(List<Tried> all, int i) {
    Against.At low = all.get(i).at();
    Against.At high = all.get(i + 1).at();
    if (low.against().none()
        || high.against().none()
        || high.value() - low.value() <= resolution(plan.kind())) {
      return false;
    }
    Against.At before = i == 0 ? null : all.get(i - 1).at();
    Against.At after = i + 2 == all.size() ? null : all.get(i + 2).at();
    return Against.mayEndBetween(before, low, high, after);
  }

  private Tried at(double value) {
    Outcome outcome = rebuild.with(Map.of(plan.dimension(), new Quantity(value, plan.kind())));
    done.accept(count.incrementAndGet());
    if (outcome instanceof Rebuild.Refused refused) {
      Optional<String> reason = Optional.of(refused.problems().get(0).message());
      return new Tried(
          new Point(value, reason, 0, 0, List.of()), Against.refused(refused.problems()));
    }
    FitReport report = ((Rebuild.Fitted) outcome).report();
    List<Finding> stops = report.findings().stream().filter(Finding::stopsTheBuild).toList();
    long look =
        report.findings().stream()
            .filter(f -> f.severity() == Finding.Severity.LOOK && f.waived().isEmpty())
            .count();
    Optional<String> reason =
        stops.isEmpty()
            ? Optional.empty()
            : Optional.of(stops.get(0).check() + ": " + stops.get(0).message());
    Point point = new Point(value, reason, stops.size(), look, Data.of(report));
    return new Tried(point, Against.of(stops));
  }

  /** Where it begins or ceases to fit. */
  private record Edge(double good, String reason) {}

  private Edge edge(Point low, Point high) {
    boolean goodBelow = low.fits();
    double good = goodBelow ? low.value() : high.value();
    Point bad = goodBelow ? high : low;
    while (Math.abs(bad.value() - good) > resolution(plan.kind()) && divides()) {
      Point middle = at((good + bad.value()) / 2).point();
      if (middle.fits()) {
        good = middle.value();
      } else {
        bad = middle;
      }
    }
    return new Edge(good, bad.reason().orElseThrow());
  }

  /** There is nothing between four slats and five. */
  private boolean divides() {
    boolean whole = plan.step() == Math.rint(plan.step()) && plan.from() == Math.rint(plan.from());
    return plan.kind() != Quantity.Kind.NUMBER || !whole;
  }

  private static List<Range> ranges(List<Point> points, List<Edge> edges) {
    List<Range> ranges = new ArrayList<>();
    Optional<Edge> begin = Optional.empty();
    double from = points.get(0).value();
    boolean inside = points.get(0).fits();
    for (Edge edge : edges) {
      if (inside) {
        ranges.add(
            new Range(from, edge.good(), begin.map(Edge::reason), Optional.of(edge.reason())));
      } else {
        from = edge.good();
        begin = Optional.of(edge);
      }
      inside = !inside;
    }
    if (inside) {
      double to = points.get(points.size() - 1).value();
      ranges.add(new Range(from, to, begin.map(Edge::reason), Optional.empty()));
    }
    return ranges;
  }
}
