package dryfit.fit.loop;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design.Measurement;
import dryfit.document.JointPlan;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.PlannedSizes;
import dryfit.fit.loop.Cause.Effect;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Every size that decides where the parts of a chair stand to each other, with what was measured of
 * it.
 *
 * <p>A part that ends in two others is longer by half at each end; one that ends in one is longer
 * there. A part that is thicker is so by half on each face.
 */
public final class Causes {
  /** A face this square to a size of its part moves with it, cosine. */
  private static final double FACES = 0.7;

  private final Chair chair;
  private final PlannedSizes plan;
  private final List<Integer> ties;

  /** Whether a twin that is still to be made counts as made like the one that was measured. */
  private final boolean alike;

  /** With what was measured, and nothing else. */
  Causes(Chair chair, PlannedSizes plan) {
    this(chair, plan, false);
  }

  private Causes(Chair chair, PlannedSizes plan, boolean alike) {
    this.chair = chair;
    this.plan = plan;
    this.ties = ties(chair);
    this.alike = alike;
  }

  /**
   * As the chair is to be made: where one of a pair came out thinner, the other is made as thin, as
   * {@link dryfit.fit.AsMeasured} advises.
   */
  static Causes withTwinsAlike(Chair chair, PlannedSizes plan) {
    return new Causes(chair, plan, true);
  }

  /** Indexes of the joints that hold an end of a part in its place. */
  static List<Integer> ties(Chair chair) {
    List<Integer> ties = new ArrayList<>();
    for (int i = 0; i < chair.joints().size(); i++) {
      Joint j = chair.joints().get(i);
      boolean end = j.plan().tenon().end() != JointPlan.End.MIDDLE;
      if (end && j.plan().kind() != Kind.GROOVE && !chair.isHeldByPieces(j)) {
        ties.add(i);
      }
    }
    return ties;
  }

  /** Of every part, then of every joint, in the order of the chair. */
  List<Cause> all() {
    List<Cause> all = new ArrayList<>();
    for (int p = 0; p < chair.parts().size(); p++) {
      ofPart(p, all);
    }
    for (int i : ties) {
      ofJoint(i, all);
    }
    return all;
  }

  // ---- parts ----

  private void ofPart(int p, List<Cause> all) {
    Part part = chair.parts().get(p);
    length(p).ifPresent(c -> all.add(new Cause(part.label(), BETWEEN, false, c, longer(p))));
    section(p, "width", part.frame().y(), all);
    section(p, "thickness", part.frame().z(), all);
  }

  /** What a part does that is one millimetre longer between its shoulders. */
  Optional<List<Effect>> length(int p) {
    List<Integer> ends = ties.stream().filter(i -> joint(i).tenoned() == p).toList();
    boolean start = ends.stream().anyMatch(i -> joint(i).atStart());
    boolean finish = ends.stream().anyMatch(i -> !joint(i).atStart());
    double share = start && finish ? 0.5 : 1;
    List<Effect> effects =
        ends.stream()
            .map(i -> new Effect(i, Twist.moving(joint(i).at(), out(i).times(-share))))
            .toList();
    return effects.isEmpty() ? Optional.empty() : Optional.of(effects);
  }

  /** The way a part runs out at a joint of its end. */
  Vec3 out(int i) {
    Vec3 along = chair.parts().get(joint(i).tenoned()).lengthNear(joint(i).at());
    return joint(i).atStart() ? along.negated() : along;
  }

  private OptionalDouble longer(int p) {
    Part part = chair.parts().get(p);
    OptionalDouble between = off(part, BETWEEN);
    if (between.isPresent()) {
      return between;
    }
    OptionalDouble over = off(part, "length");
    if (over.isEmpty()) {
      return over;
    }
    // A length over all is longer by what its tenons are.
    double tenons =
        ties.stream()
            .map(this::joint)
            .filter(j -> j.tenoned() == p)
            .mapToDouble(j -> off(j, "tenon length", "").orElse(0))
            .sum();
    return OptionalDouble.of(over.getAsDouble() - tenons);
  }

  private void section(int p, String what, Vec3 axis, List<Cause> all) {
    Part part = chair.parts().get(p);
    List<Effect> effects = new ArrayList<>();
    for (int i : ties) {
      double faces = joint(i).mouth().normal().dot(axis);
      if (joint(i).mortised() == p && Math.abs(faces) > FACES) {
        Vec3 face = axis.times(Math.signum(faces) / 2);
        effects.add(new Effect(i, Twist.moving(joint(i).at(), face)));
      }
    }
    if (!effects.isEmpty()) {
      OptionalDouble own = off(part, what);
      OptionalDouble off = own.isEmpty() && alike ? offOfTwin(part, what) : own;
      all.add(new Cause(part.label(), what, false, effects, off));
    }
  }

  /** Whether a size of a part counts as that of its twin, for it was not measured itself. */
  boolean isOfTwin(Part part, String what) {
    return alike && off(part, what).isEmpty() && offOfTwin(part, what).isPresent();
  }

  /** By how much the other of a pair is smaller; it can never be made larger. */
  private OptionalDouble offOfTwin(Part part, String what) {
    OptionalDouble off =
        chair.parts().stream()
            .filter(p -> p.name().equals(part.name()) && p.hand() != part.hand())
            .map(p -> off(p, what))
            .findFirst()
            .orElse(OptionalDouble.empty());
    return off.isPresent() && off.getAsDouble() < 0 ? off : OptionalDouble.empty();
  }

  // ---- joints ----

  private void ofJoint(int i, List<Cause> all) {
    Joint j = joint(i);
    Part into = chair.parts().get(j.mortised());
    Vec3 n = j.mouth().normal();
    Vec3 along = into.lengthNear(j.at()).across(n);
    if (along.length() > FACES) {
      Vec3 m = along.unit();
      one(i, "mortise off its place along " + into.label(), false, m, OptionalDouble.empty(), all);
      one(
          i,
          "mortise off its place across " + into.label(),
          false,
          n.cross(m),
          OptionalDouble.empty(),
          all);
    }
    plan.outward(j)
        .ifPresent(
            d -> {
              OptionalDouble off = off(j, "proud", "");
              if (off.isPresent()) {
                one(i, "proud", false, d, off, all);
              }
            });
    for (String way : List.of("along", "across")) {
      plan.turn(j, way.equals("along"))
          .ifPresent(
              turn ->
                  all.add(
                      new Cause(
                          j.label(),
                          "angle of mortise or shoulder " + way + " " + into.label(),
                          true,
                          List.of(new Effect(i, Twist.turning(j.at(), turn))),
                          off(j, "lean " + way, ""))));
    }
    bottomed(j).ifPresent(by -> one(i, BOTTOMED, false, j.entry().negated(), by, all));
    OptionalDouble open = off(j, OPEN, "");
    if (open.isPresent()) {
      one(i, OPEN, false, n, open, all);
    }
  }

  public static final String BETWEEN = "shoulder to shoulder";
  static final String BOTTOMED = "tenon meets the bottom of its mortise";
  static final String OPEN = "shoulder gap";

  private void one(
      int i, String what, boolean angle, Vec3 way, OptionalDouble off, List<Cause> all) {
    List<Effect> effect = List.of(new Effect(i, Twist.moving(joint(i).at(), way)));
    all.add(new Cause(joint(i).label(), what, angle, effect, off));
  }

  /** How far the tip holds the shoulder off, if a length or a depth was measured. */
  private Optional<OptionalDouble> bottomed(Joint j) {
    OptionalDouble tenon = off(j, "tenon length", "");
    OptionalDouble mortise = off(j, "mortise depth", "");
    OptionalDouble planned = plan.ofJoint(j, "mortise depth");
    if (planned.isEmpty() || tenon.isEmpty() && mortise.isEmpty()) {
      return Optional.empty();
    }
    double room = j.plan().fit().bottom() + mortise.orElse(0) - tenon.orElse(0);
    return room < 0 ? Optional.of(OptionalDouble.of(-room)) : Optional.empty();
  }

  // ---- what was measured ----

  private Joint joint(int i) {
    return chair.joints().get(i);
  }

  OptionalDouble off(Part part, String what) {
    return off(
        what,
        "",
        m -> !m.part().isEmpty() && PlannedSizes.isAbout(m, part),
        plan.ofPart(part, what));
  }

  OptionalDouble off(Joint joint, String what, String at) {
    return off(what, at, m -> PlannedSizes.isAbout(m, joint), plan.ofJoint(joint, what));
  }

  /** The last measurement counts: parts are trimmed and measured again. */
  private OptionalDouble off(
      String what, String at, Predicate<Measurement> about, OptionalDouble planned) {
    OptionalDouble real =
        chair.design().measured().stream()
            .filter(m -> m.what().equals(what) && m.at().equals(at))
            .filter(about)
            .mapToDouble(m -> m.value().value())
            .reduce((first, last) -> last);
    return real.isPresent() && planned.isPresent()
        ? OptionalDouble.of(real.getAsDouble() - planned.getAsDouble())
        : OptionalDouble.empty();
  }

  /** Indexes of the parts of which anything was measured, rising. */
  Set<Integer> made() {
    Set<Integer> made = new LinkedHashSet<>();
    for (Measurement m : chair.design().measured()) {
      for (int p = 0; p < chair.parts().size(); p++) {
        if (!m.part().isEmpty() && PlannedSizes.isAbout(m, chair.parts().get(p))) {
          made.add(p);
        }
      }
      for (Joint j : chair.joints()) {
        if (!m.joint().isEmpty() && PlannedSizes.isAbout(m, j)) {
          // What is measured at dry fit has both parts there.
          boolean tenon = m.what().startsWith("tenon");
          boolean mortise = m.what().startsWith("mortise") || m.what().startsWith("lean");
          if (!mortise) {
            made.add(j.tenoned());
          }
          if (!tenon) {
            made.add(j.mortised());
          }
        }
      }
    }
    return new LinkedHashSet<>(made.stream().sorted(Comparator.naturalOrder()).toList());
  }
}
