package dryfit.build;

import dryfit.document.PartPlan.Section;
import dryfit.document.PartPlan.SectionAt;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * The middle line of a bent part, looked at closely: how long it is, how sharply it bends, and in
 * how many straight pieces it must be drawn.
 */
final class MiddleLine {
  /** Close looks at a span between two marks. */
  private static final int LOOKS = 64;

  private final SpaceCurve curve;
  private final List<SectionAt> sections;
  private final Carried carried;
  private final List<Look> looks = new ArrayList<>();

  /** One place on the line: parameter, length so far, direction, curvature (1/mm). */
  private record Look(double t, double along, Vec3 direction, Vec3 curvature) {}

  /** A place to draw the line through. */
  record Sample(Vec3 at, Vec3 direction, double along) {}

  MiddleLine(SpaceCurve curve, List<SectionAt> sections, Carried carried) {
    this.curve = curve;
    this.sections = sections;
    this.carried = carried;
    double[] marks = curve.marks();
    double along = 0;
    look(marks[0], 0);
    for (int i = 1; i < marks.length; i++) {
      double step = (marks[i] - marks[i - 1]) / LOOKS;
      for (int k = 1; k <= LOOKS; k++) {
        double t = k == LOOKS ? marks[i] : marks[i - 1] + k * step;
        // Simpson's rule on the speed.
        along +=
            step
                / 6
                * (curve.slope(t - step).length()
                    + 4 * curve.slope(t - step / 2).length()
                    + curve.slope(t).length());
        look(t, along);
      }
    }
  }

  private void look(double t, double along) {
    Vec3 v = curve.slope(t);
    double speed = v.length();
    if (speed <= Tolerances.coincident()) {
      // The curve turns on the spot: no radius at all. Any direction shows it.
      looks.add(new Look(t, along, Vec3.RIGHT, Vec3.RIGHT.times(1 / Tolerances.coincident())));
      return;
    }
    Vec3 d = v.times(1 / speed);
    looks.add(new Look(t, along, d, curve.bend(t).across(d).times(1 / (speed * speed))));
  }

  double length() {
    return looks.get(looks.size() - 1).along();
  }

  /** The direction at the middle of the length, start to end. */
  Vec3 middleDirection() {
    return curve.slope(parameter(length() / 2)).unit();
  }

  /** What the section measures so far along: width and thickness, or the diameter twice. */
  double[] size(double along) {
    SectionAt before = sections.get(0);
    for (SectionAt next : sections) {
      if (next.along() >= along) {
        double span = next.along() - before.along();
        double share = span <= 0 ? 1 : Math.max(0, (along - before.along()) / span);
        return new double[] {
          mixed(width(before), width(next), share), mixed(thick(before), thick(next), share)
        };
      }
      before = next;
    }
    return new double[] {width(before), thick(before)};
  }

  private static double mixed(double a, double b, double share) {
    return a + (b - a) * share;
  }

  private static double width(SectionAt at) {
    return StockMaker.width(at.section());
  }

  private static double thick(SectionAt at) {
    return StockMaker.thickness(at.section());
  }

  boolean isRound() {
    return sections.get(0).section() instanceof Section.Round;
  }

  // ---- how sharply it bends ----

  /**
   * Where it is bent most for the thickness it has in the direction of the bend.
   *
   * @param drawn the middle line as it is drawn
   */
  Bend bend(List<Sample> drawn) {
    List<Vec3> line = drawn.stream().map(Sample::at).toList();
    List<Vec3> ways = drawn.stream().map(Sample::direction).toList();
    List<Vec3> widths = carried.along(looks.stream().map(Look::direction).toList(), middle());
    double worst = 0;
    Bend found = new Bend(line, ways, length(), 0, Double.POSITIVE_INFINITY, size(0)[1]);
    for (int i = 0; i < looks.size(); i++) {
      Look look = looks.get(i);
      double curvature = look.curvature().length();
      double thickness = curvature > 0 ? 2 * half(look, widths.get(i)) : 0;
      // A line bent by less than this over its whole length is straight.
      if (curvature * length() > Tolerances.parallel() && thickness * curvature > worst) {
        worst = thickness * curvature;
        found = new Bend(line, ways, length(), look.along(), 1 / curvature, thickness);
      }
    }
    return found;
  }

  private int middle() {
    return index(length() / 2, Look::along);
  }

  /** Half the section's size in the direction in which the line bends. */
  private double half(Look look, Vec3 width) {
    double[] size = size(look.along());
    if (isRound()) {
      return size[0] / 2;
    }
    Vec3 towards = look.curvature().unit();
    Vec3 z = look.direction().cross(width);
    return Math.abs(towards.dot(width)) * size[0] / 2 + Math.abs(towards.dot(z)) * size[1] / 2;
  }

  // ---- places to draw it through ----

  /** Every mark, every section and the middle, and so many between that no chord stands off. */
  List<Sample> samples() {
    SortedSet<Double> wanted = new TreeSet<>();
    double[] marks = curve.marks();
    for (double mark : marks) {
      wanted.add(mark);
    }
    addUnlessNear(wanted, length() / 2);
    sections.stream()
        .filter(s -> s.along() > 0 && s.along() < length())
        .forEach(s -> addUnlessNear(wanted, s.along()));
    List<Sample> out = new ArrayList<>();
    Double before = null;
    for (double t : wanted) {
      if (before != null) {
        int pieces = pieces(before, t);
        for (int k = 1; k < pieces; k++) {
          out.add(sample(before + (t - before) * k / pieces));
        }
      }
      out.add(sample(t));
      before = t;
    }
    return out;
  }

  private void addUnlessNear(SortedSet<Double> wanted, double along) {
    double t = parameter(along);
    double near = Math.min(0.01, length() / 1000);
    boolean taken = wanted.stream().anyMatch(w -> Math.abs(alongAt(w) - along) < near);
    if (!taken) {
      wanted.add(t);
    }
  }

  private Sample sample(double t) {
    return new Sample(curve.at(t), curve.slope(t).unit(), alongAt(t));
  }

  /**
   * A chord over s of a curve of curvature k stands off it by k s²/8; at the outside of the bend,
   * half the thickness further out, by more in the same measure as that is longer.
   */
  private int pieces(double from, double to) {
    double most = 0;
    int last = index(to, Look::t);
    for (int i = index(from, Look::t); i <= last; i++) {
      double k = looks.get(i).curvature().length();
      double[] size = size(looks.get(i).along());
      double reach = Math.hypot(size[0], size[1]) / 2;
      most = Math.max(most, k * (1 + k * reach));
    }
    double length = alongAt(to) - alongAt(from);
    return Math.max(1, (int) Math.ceil(length * Math.sqrt(most / (8 * Tolerances.facet()))));
  }

  private double parameter(double along) {
    return read(along, Look::along, Look::t);
  }

  private double alongAt(double t) {
    return read(t, Look::t, Look::along);
  }

  private double read(double value, ToDoubleFunction<Look> from, ToDoubleFunction<Look> to) {
    int i = Math.max(1, index(value, from));
    Look a = looks.get(i - 1);
    Look b = looks.get(i);
    double span = from.applyAsDouble(b) - from.applyAsDouble(a);
    double share = span <= 0 ? 1 : (value - from.applyAsDouble(a)) / span;
    return share >= 1
        ? to.applyAsDouble(b)
        : mixed(to.applyAsDouble(a), to.applyAsDouble(b), Math.max(0, share));
  }

  /** The first look that is at a value or beyond it. */
  private int index(double value, ToDoubleFunction<Look> of) {
    int low = 0;
    int high = looks.size() - 1;
    while (low < high) {
      int mid = (low + high) >>> 1;
      if (of.applyAsDouble(looks.get(mid)) >= value) {
        high = mid;
      } else {
        low = mid + 1;
      }
    }
    return low;
  }
}
