package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design.Measurement;
import dryfit.document.FitLimit;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.JointDetail.Setback;
import dryfit.geometry.Lean;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a maker can measure on real parts, and what the plan says it should be. Millimetres,
 * radians; empty where the chair has no such size.
 */
public final class PlannedSizes {
  /** What can be measured on a part, as it is written in a document. */
  public static final List<String> OF_A_PART =
      List.of("length", "width", "thickness", "shoulder to shoulder");

  /** What can be measured at a joint. */
  public static final List<String> OF_A_JOINT =
      List.of(
          "tenon thickness",
          "mortise thickness",
          "tenon width",
          "mortise length",
          "tenon length",
          "mortise depth",
          "lean along",
          "lean across",
          "proud",
          "shoulder gap");

  /** What can be measured on a frame of four legs. */
  public static final List<String> OF_A_FRAME =
      List.of("diagonal from the left", "diagonal from the right");

  private final Chair chair;
  private final Assembly assembly;
  private final List<Diagonal> diagonals;

  public PlannedSizes(Chair chair) {
    this.chair = chair;
    this.assembly = Assembly.of(chair);
    this.diagonals =
        SeatFrame.of(assembly, Legs.of(assembly)).map(SeatFrame::diagonals).orElse(List.of());
  }

  /** Whether a measurement is about this part: by name, of either hand or of its own. */
  public static boolean isAbout(Measurement m, Part part) {
    String[] words = m.part().split(" ");
    boolean hand =
        words.length == 1
            || part.hand() == Hand.NONE
            || words[1].equals(part.hand().name().toLowerCase(Locale.ROOT));
    return words[0].equals(part.name()) && hand;
  }

  /** Whether a measurement is about this joint. */
  public static boolean isAbout(Measurement m, Joint joint) {
    boolean hand = m.hand() == Hand.NONE || m.hand() == joint.hand();
    return m.joint().equals(joint.name()) && hand;
  }

  /** The diagonals of the seat, the front and the back, as far as there are four legs. */
  public List<Diagonal> diagonals() {
    return diagonals;
  }

  public OptionalDouble ofFrame(String frame, String what) {
    return diagonals.stream()
        .filter(d -> d.frame().equals(frame) && d.what().equals(what))
        .mapToDouble(Diagonal::length)
        .findFirst();
  }

  /** One of {@link #OF_A_PART}. */
  public OptionalDouble ofPart(Part part, String what) {
    Vec3 size = part.solid().mesh().bounds().size();
    return switch (what) {
      case "length" -> OptionalDouble.of(size.x());
      case "width" -> OptionalDouble.of(size.y());
      case "thickness" -> OptionalDouble.of(size.z());
      default -> betweenShoulders(part);
    };
  }

  /** Along the middle line, from the first mouth to the last. */
  private OptionalDouble betweenShoulders(Part part) {
    Vec3 along = part.frame().x();
    Vec3 from = part.frame().origin();
    double[] at =
        chair.joints().stream()
            .filter(j -> chair.parts().get(j.tenoned()).label().equals(part.label()))
            .filter(j -> j.plan().tenon().end() != JointPlan.End.MIDDLE)
            .map(Joint::mouth)
            .filter(mouth -> Math.abs(mouth.normal().dot(along)) > 0.1)
            .mapToDouble(mouth -> along(mouth, from, along))
            .sorted()
            .toArray();
    return at.length < 2 ? OptionalDouble.empty() : OptionalDouble.of(at[at.length - 1] - at[0]);
  }

  private static double along(Plane mouth, Vec3 from, Vec3 along) {
    return (mouth.offset() - mouth.normal().dot(from)) / mouth.normal().dot(along);
  }

  /** One of {@link #OF_A_JOINT}. */
  public OptionalDouble ofJoint(Joint joint, String what) {
    JointPlan plan = joint.plan();
    OptionalDouble thick = plan.thickness().isPresent() ? plan.thickness() : plan.diameter();
    return switch (what) {
      case "tenon thickness" -> thick;
      case "mortise thickness" ->
          thick.isPresent()
              ? OptionalDouble.of(thick.getAsDouble() + 2 * plan.fit().cheek())
              : thick;
      case "tenon width" -> plan.width();
      case "mortise length" ->
          plan.width().isPresent()
              ? OptionalDouble.of(plan.width().getAsDouble() + 2 * plan.fit().edge())
              : OptionalDouble.empty();
      case "tenon length" ->
          joint.through() ? OptionalDouble.empty() : OptionalDouble.of(joint.length());
      case "mortise depth" ->
          joint.through()
              ? OptionalDouble.empty()
              : OptionalDouble.of(joint.length() + plan.fit().bottom());
      case "lean along" ->
          lean(joint, joint.entry())
              .map(Lean::rake)
              .map(OptionalDouble::of)
              .orElse(OptionalDouble.empty());
      case "lean across" ->
          lean(joint, joint.entry())
              .map(Lean::splay)
              .map(OptionalDouble::of)
              .orElse(OptionalDouble.empty());
      case "proud" ->
          outer(joint).map(s -> OptionalDouble.of(-s.by())).orElse(OptionalDouble.empty());
      default -> OptionalDouble.of(0);
    };
  }

  /** How far a shoulder may stay off, mm. */
  public double shoulderLimit(Joint joint) {
    return Limit.of(chair.design(), FitLimit.SHOULDER_GAP, joint).value();
  }

  private Optional<Lean> lean(Joint joint, Vec3 entry) {
    if (joint.plan().kind() == Kind.GROOVE) {
      return Optional.empty();
    }
    Vec3 reference = MortiseAngles.reference(joint, chair.parts().get(joint.mortised()));
    return Optional.of(Lean.of(entry, joint.mouth().normal().negated(), reference));
  }

  /** Far less than any bevel is set to, radians, and far more than rounding. */
  private static final double LITTLE = 1e-4;

  /**
   * The small turn of what goes in, for each radian by which the mortise leans more: along its part
   * or across it, the other lean unchanged. Its length is the angle.
   */
  public Optional<Vec3> turn(Joint joint, boolean along) {
    Vec3 n = joint.mouth().normal();
    Vec3 part = chair.parts().get(joint.mortised()).lengthNear(joint.at()).across(n);
    if (joint.plan().kind() == Kind.GROOVE || part.length() < LITTLE) {
      return Optional.empty();
    }
    Vec3 first = part.unit();
    Vec3 second = n.cross(first);
    Lean none = lean(joint, joint.entry()).orElseThrow();
    Lean a = lean(joint, turned(joint.entry(), first)).orElseThrow();
    Lean b = lean(joint, turned(joint.entry(), second)).orElseThrow();
    double aRake = (a.rake() - none.rake()) / LITTLE;
    double aSplay = (a.splay() - none.splay()) / LITTLE;
    double bRake = (b.rake() - none.rake()) / LITTLE;
    double bSplay = (b.splay() - none.splay()) / LITTLE;
    double whole = aRake * bSplay - aSplay * bRake;
    if (Math.abs(whole) < LITTLE) {
      return Optional.empty();
    }
    return Optional.of(
        along
            ? first.times(bSplay / whole).minus(second.times(aSplay / whole))
            : second.times(aRake / whole).minus(first.times(bRake / whole)));
  }

  private static Vec3 turned(Vec3 direction, Vec3 axis) {
    return direction.plus(axis.times(LITTLE).cross(direction)).unit();
  }

  /** Which way the outside face at a joint looks, in chair space. */
  public Optional<Vec3> outward(Joint joint) {
    return outer(joint)
        .map(
            s -> {
              Vec3 z = chair.parts().get(joint.tenoned()).frameNear(joint.at()).z();
              Vec3 way = z.across(joint.mouth().normal()).unit();
              return Assembly.facing(way, joint.at()).equals(s.face()) ? way : way.negated();
            });
  }

  /** What the outside face at a joint is called: outside, front or back. */
  public Optional<String> outerFace(Joint joint) {
    return outer(joint).map(Setback::face);
  }

  /** Of the faces that stand to each other at a joint the one that is seen. */
  private Optional<Setback> outer(Joint joint) {
    boolean front = joint.at().y() < depthMiddle();
    List<String> words = List.of("outside", front ? "front" : "back");
    return Reveals.of(joint, assembly.tenoned(joint), assembly.mortised(joint)).stream()
        .flatMap(r -> r.sides().stream())
        .filter(s -> words.contains(s.face()))
        .findFirst();
  }

  private double depthMiddle() {
    double low = assembly.parts().stream().mapToDouble(p -> p.bounds().low().y()).min().orElse(0);
    double high = assembly.parts().stream().mapToDouble(p -> p.bounds().high().y()).max().orElse(0);
    return (low + high) / 2;
  }
}
