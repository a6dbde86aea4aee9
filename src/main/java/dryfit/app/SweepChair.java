package dryfit.app;

import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.Nearest;
import dryfit.document.Quantity;
import dryfit.document.Reading;
import dryfit.fit.compare.Sweep;
import dryfit.fit.compare.Sweep.Plan;
import dryfit.fit.compare.Sweeping;
import dryfit.measure.Angle;
import dryfit.measure.Fraction;
import dryfit.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Runs a dimension of a chair through a range, as it is asked for in words. */
public final class SweepChair {
  private static final Pattern WORDS =
      Pattern.compile("\\s*(\\w+)\\s+from\\s+(.+?)\\s+to\\s+(.+?)\\s+step\\s+(.+?)\\s*");

  private SweepChair() {}

  /** What was asked cannot be done as it was asked. */
  public static final class NotUnderstood extends Exception {
    private static final long serialVersionUID = 1L;

    NotUnderstood(String message) {
      super(message);
    }
  }

  /**
   * Reads {@code seatTop from 400 to 460 step 10}; bare numbers are in the unit of the document,
   * angles in degrees.
   *
   * @throws NotUnderstood if it is not that, or names no dimension
   */
  public static Plan plan(Design design, String words) throws NotUnderstood {
    Matcher m = WORDS.matcher(words);
    if (!m.matches()) {
      String missing =
          Stream.of("from", "to", "step")
              .filter(w -> !List.of(words.strip().split("\\s+")).contains(w))
              .map(w -> "\"" + w + "\"")
              .collect(Collectors.joining(" and "));
      throw new NotUnderstood(
          (missing.isEmpty()
                  ? ""
                  : missing + (missing.contains(" and ") ? " are missing: " : " is missing: "))
              + "a sweep is written: seatTop from 400 to 460 step 10");
    }
    Optional<Design.Dimension> dimension =
        design.dimensions().stream().filter(d -> d.name().equals(m.group(1))).findFirst();
    if (dimension.isEmpty()) {
      String known =
          String.join(", ", design.dimensions().stream().map(Design.Dimension::name).toList());
      String nearest =
          Nearest.to(m.group(1), design.dimensions().stream().map(Design.Dimension::name).toList())
              .map(n -> "; the nearest is " + n)
              .orElse("");
      throw new NotUnderstood(
          "no dimension is called '" + m.group(1) + "'" + nearest + "; there are " + known);
    }
    Quantity.Kind kind = dimension.get().value().kind();
    Plan plan =
        new Plan(
            design.variant(),
            m.group(1),
            kind,
            value(design, kind, m.group(2)),
            value(design, kind, m.group(3)),
            value(design, kind, m.group(4)),
            dimension.get().from(),
            dimension.get().to());
    if (!(plan.step() > 0)) {
      throw new NotUnderstood("a step is above zero");
    }
    if (plan.to() < plan.from()) {
      throw new NotUnderstood("the range goes backwards");
    }
    if (Sweeping.values(plan) > Sweeping.MOST) {
      throw new NotUnderstood("that is more than " + Sweeping.MOST + " steps");
    }
    return plan;
  }

  private static double value(Design design, Quantity.Kind kind, String text) throws NotUnderstood {
    boolean below = text.startsWith("-");
    String size = below ? text.substring(1).strip() : text;
    OptionalDouble value =
        switch (kind) {
          case LENGTH -> Length.parse(size, design.unit().printed());
          case ANGLE -> Angle.parse(size);
          case NUMBER -> Fraction.parse(size);
        };
    if (value.isEmpty()) {
      String kinds =
          switch (kind) {
            case LENGTH -> "a length, such as 440 mm or 17 3/8 in";
            case ANGLE -> "an angle, such as 4 deg";
            case NUMBER -> "a plain number";
          };
      throw new NotUnderstood(
          "'" + text + "' is not a value that this dimension can have: it is " + kinds);
    }
    return below ? -value.getAsDouble() : value.getAsDouble();
  }

  /** Reads the dimensions of a document with a variant. */
  public static Reading<Design> design(Document document, String variant) {
    return document.design(variant);
  }

  /**
   * Sweeps.
   *
   * @param done is told how many chairs are finished, from any thread
   */
  public static Sweep of(Document document, Plan plan, KernelChoice kernel, IntConsumer done) {
    return Sweeping.of(document, plan, kernel::kernel, done);
  }
}
