package dryfit.fit.loop;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design.Measurement;
import dryfit.document.Hand;
import dryfit.fit.Diagonal;
import dryfit.fit.PlannedSizes;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The chair closed again around the parts that are made.
 *
 * @param made labels of the parts that count as made
 * @param changes what parts that are still to be made should have other than planned
 * @param conflicts joints between made parts that do not close
 * @param cures each by itself closes all of them
 * @param frames how far the made parts put each frame out of square, and what was measured
 * @param leftOut what was not reckoned with and comes out otherwise
 */
public record Remade(
    List<String> made,
    List<Change> changes,
    List<Conflict> conflicts,
    List<Cure> cures,
    List<Square> frames,
    List<LeftOut> leftOut) {
  public Remade {
    made = List.copyOf(made);
    changes = List.copyOf(changes);
    conflicts = List.copyOf(conflicts);
    cures = List.copyOf(cures);
    frames = List.copyOf(frames);
    leftOut = List.copyOf(leftOut);
  }

  /** How much of something comes from one measured size. */
  public record Because(Cause cause, double amount) {}

  /**
   * A size to make otherwise.
   *
   * @param part the part that is still to be made
   * @param what the size; at which joint, if it is a place or an angle
   * @param angle radians if so, otherwise millimetres
   * @param planned empty for a place or an angle
   * @param by how much more
   * @param because the measured sizes behind it, the greatest share first
   */
  public record Change(
      String part,
      String what,
      boolean angle,
      OptionalDouble planned,
      double by,
      List<Because> because) {
    public Change {
      because = List.copyOf(because);
    }
  }

  /**
   * A joint of two made parts that does not close.
   *
   * @param open how far the shoulder gapes at its widest, mm
   * @param limit what is allowed, mm
   */
  public record Conflict(String joint, double open, double limit, List<Because> because) {
    public Conflict {
      because = List.copyOf(because);
    }
  }

  /**
   * A length that closes what does not.
   *
   * @param parts one part, or both of a pair, all by as much
   * @param by below zero it can be trimmed; above zero the part has to be made anew
   */
  public record Cure(List<String> parts, double by) {
    public Cure {
      parts = List.copyOf(parts);
    }

    public boolean trims() {
      return by < 0;
    }
  }

  /**
   * The diagonals of a frame: that from the left less that from the right, mm.
   *
   * @param planned as drawn
   * @param expected as the parts are that were made
   * @param measured empty if not both were measured
   * @param larger how much longer both are than the made parts make them, mm, with a sign; empty if
   *     not both were measured
   * @param across how much wider the frame would have to be to make all of that
   * @param along how much deeper (the seat) or taller (front and back) instead
   */
  public record Square(
      String frame,
      double planned,
      double expected,
      OptionalDouble measured,
      OptionalDouble larger,
      double across,
      double along) {
    /** What pulling along the longer diagonal puts right: no part is to blame for it, mm. */
    public OptionalDouble racked() {
      return measured.isPresent()
          ? OptionalDouble.of(measured.getAsDouble() - expected)
          : OptionalDouble.empty();
    }
  }

  /** What no rule shows, mm. */
  private static final double SHOWS = 0.05;

  /** What no bevel gauge shows, radians. */
  private static final double SHOWS_ANGLE = Math.toRadians(0.05);

  /** Closed again; nothing is made if nothing was measured. */
  public static Remade of(Chair chair, PlannedSizes plan) {
    return new Closing(chair, plan).all();
  }

  private static final class Closing {
    private final Chair chair;
    private final PlannedSizes plan;
    private final Causes causes;
    private final Set<Integer> made;
    private final List<Cause> measured;
    private final Slack slack;

    Closing(Chair chair, PlannedSizes plan) {
      this.chair = chair;
      this.plan = plan;
      this.causes = Causes.withTwinsAlike(chair, plan);
      this.made = causes.made();
      this.measured =
          causes.all().stream()
              .filter(c -> c.off().isPresent())
              .filter(c -> !c.what().equals(Causes.OPEN) && !c.what().equals(Causes.BOTTOMED))
              .toList();
      this.slack = Slack.withFewChanges(chair, causes, made, measured);
    }

    Remade all() {
      List<Conflict> conflicts = conflicts(slack);
      return new Remade(
          made.stream().map(p -> chair.parts().get(p).label()).toList(),
          changes(),
          conflicts,
          conflicts.isEmpty() ? List.of() : cures(),
          frames(),
          LeftOut.of(chair, slack, SHOWS));
    }

    // ---- parts to be made otherwise ----

    private List<Change> changes() {
      List<Change> changes = new ArrayList<>();
      for (int p = 0; p < chair.parts().size(); p++) {
        if (!made.contains(p)) {
          asItsTwin(p, changes);
          part(p, changes);
        }
      }
      return changes;
    }

    /** A pair must match: what one lacks, the other is made without. */
    private void asItsTwin(int p, List<Change> changes) {
      Part part = chair.parts().get(p);
      for (Cause mine : measured) {
        if (mine.subject().equals(part.label()) && causes.isOfTwin(part, mine.what())) {
          Optional<Cause> twin =
              measured.stream()
                  .filter(c -> c.what().equals(mine.what()))
                  .filter(c -> isTwin(part, c.subject()))
                  .findFirst();
          double by = mine.off().getAsDouble();
          if (twin.isPresent() && Math.abs(by) >= SHOWS) {
            List<Because> because = List.of(new Because(twin.get(), by));
            OptionalDouble planned = plan.ofPart(part, mine.what());
            changes.add(new Change(part.label(), mine.what(), false, planned, by, because));
          }
        }
      }
    }

    private boolean isTwin(Part part, String label) {
      return chair.parts().stream()
          .anyMatch(
              p ->
                  p.label().equals(label)
                      && p.name().equals(part.name())
                      && p.hand() != part.hand());
    }

    private void part(int p, List<Change> changes) {
      Part part = chair.parts().get(p);
      if (!slack.ends(p).isEmpty()) {
        OptionalDouble planned = plan.ofPart(part, Causes.BETWEEN);
        String what = planned.isPresent() ? Causes.BETWEEN : "length to its shoulder";
        add(part, what, false, planned, slack.length(p), changes);
      }
      for (int i : slack.ends(p)) {
        Joint j = chair.joints().get(i);
        Vec3[] ways = Slack.ways(causes.out(i));
        for (int k = 1; k < 3; k++) {
          // The part stands off its seat; what is cut at its end has to go the other way.
          double[] turned = negated(slack.turned(i, ways[k]));
          turn(part, "shoulder at " + j.label(), ways[k], turned, changes);
          double[] moved = negated(slack.apart(i, ways[k]));
          place(part, "tenon at " + j.label(), ways[k], moved, changes);
        }
      }
      for (int i : Causes.ties(chair)) {
        Joint j = chair.joints().get(i);
        if (j.mortised() == p && made.contains(j.tenoned())) {
          Vec3[] ways = Slack.ways(j.mouth().normal());
          for (int k = 1; k < 3; k++) {
            String what = "mortise of " + j.label();
            turn(part, what, ways[k], slack.turned(i, ways[k]), changes);
            place(part, what, ways[k], slack.apart(i, ways[k]), changes);
          }
        }
      }
    }

    private static double[] negated(double[] shares) {
      return Arrays.stream(shares).map(s -> -s).toArray();
    }

    private void turn(Part part, String what, Vec3 axis, double[] shares, List<Change> changes) {
      boolean positive = Arrays.stream(shares).sum() > 0;
      Vec3 about = positive ? axis : axis.negated();
      double[] by = positive ? shares : negated(shares);
      add(part, what + ", " + sense(about), true, OptionalDouble.empty(), by, changes);
    }

    private void place(Part part, String what, Vec3 way, double[] shares, List<Change> changes) {
      boolean positive = Arrays.stream(shares).sum() > 0;
      Vec3 to = positive ? way : way.negated();
      double[] by = positive ? shares : negated(shares);
      add(part, what + ", moved " + towards(to), false, OptionalDouble.empty(), by, changes);
    }

    private void add(
        Part part,
        String what,
        boolean angle,
        OptionalDouble planned,
        double[] shares,
        List<Change> changes) {
      double by = Arrays.stream(shares).sum();
      if (Math.abs(by) >= (angle ? SHOWS_ANGLE : SHOWS)) {
        changes.add(new Change(part.label(), what, angle, planned, by, because(shares, by)));
      }
    }

    private List<Because> because(double[] shares, double whole) {
      List<Because> all = new ArrayList<>();
      for (int s = 0; s < shares.length; s++) {
        // A share that pulls the other way is not a reason.
        if (shares[s] * whole > 0 && Math.abs(shares[s]) > Math.abs(whole) / 10) {
          all.add(new Because(measured.get(s), shares[s]));
        }
      }
      all.sort(Comparator.comparingDouble((Because b) -> Math.abs(b.amount())).reversed());
      return all;
    }

    /** Which way something turns about an axis, seen from where a maker looks at it. */
    private static String sense(Vec3 axis) {
      String view = near(axis, "from the right", "from the front", "from above");
      // From the front one looks along y, from the other two against the axis.
      double towardsViewer =
          near(axis, "x", "y", "z").equals("y")
              ? -axis.y()
              : (near(axis, "x", "y", "z").equals("x") ? axis.x() : axis.z());
      return (towardsViewer > 0 ? "turned against the clock seen " : "turned with the clock seen ")
          + view;
    }

    private static String towards(Vec3 way) {
      String x = way.x() > 0 ? "to the right" : "to the left";
      return near(way, x, way.y() > 0 ? "back" : "forward", way.z() > 0 ? "up" : "down");
    }

    private static String near(Vec3 v, String x, String y, String z) {
      double ax = Math.abs(v.x());
      double ay = Math.abs(v.y());
      double az = Math.abs(v.z());
      return az >= ax && az >= ay ? z : ay >= ax ? y : x;
    }

    // ---- made parts at odds ----

    private List<Conflict> conflicts(Slack of) {
      List<Conflict> conflicts = new ArrayList<>();
      for (int i : of.ofMade()) {
        Joint j = chair.joints().get(i);
        Vec3[] ways = Slack.ways(j.mouth().normal());
        double[] apart = of.apart(i, ways[0]);
        double[] one = of.turned(i, ways[1]);
        double[] other = of.turned(i, ways[2]);
        double turned = Math.hypot(Arrays.stream(one).sum(), Arrays.stream(other).sum());
        double open = Math.abs(Arrays.stream(apart).sum()) + turned * of.section(j);
        double limit = plan.shoulderLimit(j);
        if (open > limit) {
          conflicts.add(
              new Conflict(j.label(), open, limit, because(apart, Arrays.stream(apart).sum())));
        }
      }
      return conflicts;
    }

    private List<Cure> cures() {
      Map<String, Set<Integer>> tries = new LinkedHashMap<>();
      for (int p : made) {
        Part part = chair.parts().get(p);
        if (causes.length(p).isPresent()) {
          tries.computeIfAbsent(part.label(), k -> new LinkedHashSet<>()).add(p);
          if (part.hand() != Hand.NONE) {
            tries.computeIfAbsent(part.name(), k -> new LinkedHashSet<>()).add(p);
          }
        }
      }
      Map<Set<Integer>, Cure> cures = new LinkedHashMap<>();
      for (Set<Integer> parts : tries.values()) {
        Slack freed = new Slack(chair, causes, made, measured, parts);
        double by = freed.freedBy();
        if (conflicts(freed).isEmpty() && Math.abs(by) >= SHOWS) {
          List<String> labels = parts.stream().map(p -> chair.parts().get(p).label()).toList();
          cures.put(parts, new Cure(labels, by));
        }
      }
      return cures.values().stream()
          .sorted(
              Comparator.comparing((Cure c) -> !c.trims())
                  .thenComparingDouble(c -> Math.abs(c.by())))
          .toList();
    }

    // ---- frames ----

    private List<Square> frames() {
      List<Square> frames = new ArrayList<>();
      List<Diagonal> all = plan.diagonals();
      for (int i = 0; i + 1 < all.size(); i += 2) {
        Diagonal left = all.get(i);
        Diagonal right = all.get(i + 1);
        double planned = left.length() - right.length();
        double expected = planned + grows(left) - grows(right);
        OptionalDouble a = real(left);
        OptionalDouble b = real(right);
        OptionalDouble real =
            a.isPresent() && b.isPresent()
                ? OptionalDouble.of(a.getAsDouble() - b.getAsDouble())
                : OptionalDouble.empty();
        if (real.isPresent()) {
          double longer =
              (a.getAsDouble() - left.length() - grows(left)) / 2
                  + (b.getAsDouble() - right.length() - grows(right)) / 2;
          // A diagonal grows by the cosine of its angle to the side that does.
          double across = Math.abs(left.along().unit().x()) + Math.abs(right.along().unit().x());
          double along = rest(left.along().unit()) + rest(right.along().unit());
          frames.add(
              new Square(
                  left.frame(),
                  planned,
                  expected,
                  real,
                  OptionalDouble.of(longer),
                  2 * longer / across,
                  2 * longer / along));
        } else if (Math.abs(expected - planned) >= SHOWS) {
          frames.add(
              new Square(left.frame(), planned, expected, real, OptionalDouble.empty(), 0, 0));
        }
      }
      return frames;
    }

    private static double rest(Vec3 unit) {
      return Math.hypot(unit.y(), unit.z());
    }

    private double grows(Diagonal d) {
      return Arrays.stream(slack.grows(d)).sum();
    }

    private OptionalDouble real(Diagonal d) {
      return chair.design().measured().stream()
          .filter(m -> m.frame().equals(d.frame()) && m.what().equals(d.what()))
          .map(Measurement::value)
          .mapToDouble(v -> v.value())
          .reduce((first, last) -> last);
    }
  }
}
