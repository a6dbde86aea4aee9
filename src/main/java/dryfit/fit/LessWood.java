package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.build.Tenon;
import dryfit.document.JointPlan;
import dryfit.document.JointPlan.Kind;
import dryfit.geometry.Box;
import dryfit.geometry.Frame;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * By how much a tenon has to be shorter, or thinner, so that its mortise leaves wood enough. Tried
 * on the mortise itself: how far its tip withdraws from a face depends on how it leans, and a tenon
 * in the middle of its part loses half of what it is thinner at each cheek. Millimetres.
 */
final class LessWood {
  /**
   * What is left of a tenon has to hold something: as long as it is thick, and half as thick as it
   * was (common practice, no source).
   */
  private static final double HALF = 0.5;

  /** Fractions of an inch that a maker sets a gauge to, and tenths of a millimetre. */
  private static final double STEP_IN = 25.4 / 64;

  private static final double STEP_MM = 0.1;

  private final Joint joint;
  private final Part tenoned;
  private final double step;
  private final Predicate<List<Convex>> enough;

  /**
   * @param enough whether what such a mortise leaves is enough; once it is, a smaller one is as
   *     well
   */
  LessWood(Assembly assembly, Joint joint, Predicate<List<Convex>> enough) {
    this.joint = joint;
    this.tenoned = assembly.tenoned(joint).part();
    this.enough = enough;
    this.step = assembly.chair().design().unit().printed() == Length.Unit.MM ? STEP_MM : STEP_IN;
  }

  /**
   * The clause that tells what to do, each way with its own number, and only ways that do it.
   *
   * @param missing how much wood is missing, mm; none where the mortise comes out, for then nothing
   *     tells how far
   */
  static String clause(
      Assembly assembly, Joint joint, OptionalDouble missing, Predicate<List<Convex>> enough) {
    String more = missing.isEmpty() ? "" : assembly.lengthUp(missing.getAsDouble());
    Kind kind = joint.plan().kind();
    if (kind == Kind.LAP || kind == Kind.NOTCH || kind == Kind.GLUED) {
      return Words.takeLess(joint) + (more.isEmpty() ? "" : " by " + more);
    }
    LessWood less = new LessWood(assembly, joint, enough);
    List<String> ways = new ArrayList<>();
    less.shorter().ifPresent(by -> ways.add(Words.shorter(joint) + " by " + assembly.length(by)));
    less.thinner().ifPresent(by -> ways.add("thinner by " + assembly.length(by)));
    if (ways.isEmpty()) {
      return "none that "
          + (less.keeps() > 0 && !joint.through()
              ? "stays as long as it is thick, and half as thick as now,"
              : "still holds")
          + " would mend that: move it, or leave "
          + (more.isEmpty() ? "" : more + " ")
          + "more wood there";
    }
    boolean cut = kind == Kind.HOUSING || kind == Kind.GROOVE;
    return "make the "
        + (cut ? Words.hole(joint) : Words.goesIn(joint))
        + " "
        + String.join(" or ", ways);
  }

  /** Empty where that does not help, or leaves too little of the tenon. */
  OptionalDouble shorter() {
    if (joint.through() || joint.plan().kind() == Kind.BRIDLE) {
      return OptionalDouble.empty();
    }
    return least(joint.length() - Math.max(keeps(), step), this::shortened);
  }

  /** The least length of a tenon that is shortened; 0 where there is none. */
  private double keeps() {
    return switch (joint.plan().kind()) {
      case MORTISE_AND_TENON, LOOSE_TENON -> joint.plan().thickness().orElse(0);
      case ROUND_TENON, DOWELS -> joint.plan().diameter().orElse(0);
      default -> 0;
    };
  }

  /** Empty where that does not help, or leaves too little of the tenon. */
  OptionalDouble thinner() {
    JointPlan plan = joint.plan();
    boolean round = plan.kind() == Kind.ROUND_TENON || plan.kind() == Kind.DOWELS;
    boolean flat =
        plan.kind() == Kind.MORTISE_AND_TENON
            || plan.kind() == Kind.LOOSE_TENON
            || plan.kind() == Kind.BRIDLE;
    boolean wedged = plan.wedges().isPresent();
    if (wedged || round == flat || flat && plan.row().count() > 1) {
      return OptionalDouble.empty();
    }
    double size = round ? plan.diameter().orElse(0) : plan.thickness().orElse(0);
    return least(size * HALF, round ? this::slimmer : this::planed);
  }

  private interface Change {
    List<Convex> by(double mm);
  }

  private OptionalDouble least(double most, Change change) {
    int high = (int) Math.floor(most / step + 1e-6);
    if (high < 1 || !enough.test(change.by(high * step))) {
      return OptionalDouble.empty();
    }
    int low = 0;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (enough.test(change.by(middle * step))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return OptionalDouble.of(high * step);
  }

  private List<Convex> shortened(double by) {
    return each(hole -> cut(hole, joint.entry(), by));
  }

  private List<Convex> planed(double by) {
    Vec3 across = joint.thick();
    List<Convex> even = each(hole -> cut(cut(hole, across, by / 2), across.negated(), by / 2));
    if (!isPlaced()) {
      return even;
    }
    // One cheek stays where it is written: the middle moves towards it by half, in the mouth.
    double fixed = fixedCheek();
    Frame near = tenoned.frameNear(joint.at());
    Vec3 n = joint.mouth().normal();
    Vec3 aside = near.z().times(fixed * by / 2);
    Vec3 moved = aside.minus(near.x().times(aside.dot(n) / near.x().dot(n)));
    Frame there = new Frame(moved, Vec3.RIGHT, Vec3.BACK, Vec3.UP);
    return fixed == 0 ? joint.mortise() : even.stream().map(c -> c.placed(there)).toList();
  }

  private boolean isPlaced() {
    JointPlan.Place place = joint.plan().place();
    return place.fromOutside().isPresent() || place.fromInside().isPresent();
  }

  /**
   * The cheek that keeps its distance from the face that the document measures it from: 1 for the
   * one that the part's own z points to, -1 for the other, 0 where both are as far from theirs.
   */
  private double fixedCheek() {
    JointPlan.Place place = joint.plan().place();
    double in = place.fromOutside().orElseGet(() -> place.fromInside().orElse(0));
    Frame near = tenoned.frameNear(joint.at());
    Box section = EndSection.of(tenoned, joint.mouth(), joint.at(), joint.atStart());
    double middle = near.local(joint.at()).z();
    double half = joint.plan().thickness().orElse(0) / 2;
    double atHigh = Math.abs(section.high().z() - middle - half - in);
    double atLow = Math.abs(middle - half - section.low().z() - in);
    if (Math.abs(atHigh - atLow) <= Tolerances.contact()) {
      return 0;
    }
    return atHigh < atLow ? 1 : -1;
  }

  /** Flats all round, which take off a little less than a smaller bit would leave. */
  private List<Convex> slimmer(double by) {
    return each(
        hole -> {
          List<Plane> flats = new ArrayList<>();
          for (int i = 0; i < FLATS; i++) {
            double turn = 2 * Math.PI * i / FLATS;
            Vec3 way = joint.thick().times(Math.cos(turn)).plus(joint.wide().times(Math.sin(turn)));
            flats.add(behind(hole, way, by / 2));
          }
          List<Convex> out = hole;
          for (Plane flat : flats) {
            out = out.stream().flatMap(c -> c.clipped(flat).stream()).toList();
          }
          return out;
        });
  }

  private static final int FLATS = 32;

  private List<Convex> each(UnaryOperator<List<Convex>> change) {
    List<Convex> out = new ArrayList<>();
    for (Tenon tenon : joint.tenons()) {
      out.addAll(change.apply(tenon.hole()));
    }
    return out;
  }

  /** Cells without what reaches farthest that way. */
  private static List<Convex> cut(List<Convex> cells, Vec3 way, double by) {
    Plane end = behind(cells, way, by);
    return cells.stream().flatMap(c -> c.clipped(end).stream()).toList();
  }

  private static Plane behind(List<Convex> cells, Vec3 way, double by) {
    return new Plane(way, cells.stream().mapToDouble(c -> c.reach(way)).max().orElse(0) - by);
  }
}
