package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design.Measurement;
import dryfit.document.FitLimit;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.document.Quantity;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the maker found on real parts, held against the plan, and what to do about it: wood can be
 * taken off, never put on; parts of a pair match each other before they match the plan.
 */
public final class AsMeasured {
  /** What can be measured on a part, as it is written in a document. */
  public static final List<String> OF_A_PART =
      List.of("length", "width", "thickness", "shoulder to shoulder");

  /** What can be measured at a joint. */
  public static final List<String> OF_A_JOINT =
      List.of("tenon thickness", "mortise thickness", "tenon length", "mortise depth");

  private final Chair chair;

  private AsMeasured(Chair chair) {
    this.chair = chair;
  }

  /**
   * One measurement and what follows from it.
   *
   * @param planned what it should have been, mm; empty where that is not known
   * @param advice sentences, at least one
   * @param conflict whether it differs from the plan so that something has to be done
   */
  public record Told(
      Measurement measurement, OptionalDouble planned, List<String> advice, boolean conflict) {
    public Told {
      advice = List.copyOf(advice);
    }

    /** The part or the joint. */
    public String subject() {
      return measurement.part().isEmpty() ? measurement.joint() : measurement.part();
    }
  }

  /** Every measurement of the document, in its order. */
  public static List<Told> of(Chair chair) {
    AsMeasured all = new AsMeasured(chair);
    return chair.design().measured().stream().map(all::told).toList();
  }

  private Told told(Measurement m) {
    boolean ofPart = !m.part().isEmpty();
    List<String> known = ofPart ? OF_A_PART : OF_A_JOINT;
    if (!known.contains(m.what())) {
      return nothing(m, "nothing follows from this; known are " + String.join(", ", known));
    }
    if (m.value().kind() != Quantity.Kind.LENGTH) {
      return nothing(m, "this is a length, and what is written is none");
    }
    return ofPart ? ofPart(m) : ofJoint(m);
  }

  private static Told nothing(Measurement m, String why) {
    return new Told(m, OptionalDouble.empty(), List.of(why), false);
  }

  // ---- parts ----

  private Told ofPart(Measurement m) {
    Optional<Part> part = chair.parts().stream().filter(p -> isAbout(m, p)).findFirst();
    OptionalDouble planned = part.map(p -> size(p, m.what())).orElse(OptionalDouble.empty());
    if (planned.isEmpty()) {
      return nothing(m, "this chair has no such size to hold it against");
    }
    double real = m.value().value();
    double by = real - planned.getAsDouble();
    Optional<Part> twin = twin(part.get());
    OptionalDouble other = twin.map(t -> measured(t, m.what())).orElse(OptionalDouble.empty());
    List<String> advice = new ArrayList<>();
    if (!shows(by)) {
      advice.add("as planned");
    } else if (by > 0) {
      advice.add("too large by " + gap(by) + ": it can still be trimmed by that much");
    } else {
      advice.add("too small by " + gap(-by) + ": it can be trimmed, never made larger");
    }
    if (other.isPresent()) {
      double apart = real - other.getAsDouble();
      if (shows(apart)) {
        String larger = apart > 0 ? m.part() : twin.get().label();
        advice.add("the pair must match: trim " + larger + " by " + gap(Math.abs(apart)));
      }
    } else if (by < 0 && shows(by) && twin.isPresent()) {
      String to = length(real);
      advice.add("the pair must match: make " + twin.get().label() + " " + to + " as well");
    }
    boolean conflict = advice.size() > 1 || shows(by);
    return new Told(m, planned, advice, conflict);
  }

  private static boolean isAbout(Measurement m, Part part) {
    String[] words = m.part().split(" ");
    boolean hand =
        words.length == 1
            || part.hand() == Hand.NONE
            || words[1].equals(part.hand().name().toLowerCase(Locale.ROOT));
    return words[0].equals(part.name()) && hand;
  }

  private Optional<Part> twin(Part part) {
    return chair.parts().stream()
        .filter(p -> p.name().equals(part.name()) && p.hand() != part.hand())
        .findFirst();
  }

  /** The last measurement counts: parts are trimmed and measured again. */
  private OptionalDouble measured(Part part, String what) {
    return chair.design().measured().stream()
        .filter(m -> m.what().equals(what) && m.value().kind() == Quantity.Kind.LENGTH)
        .filter(m -> isAbout(m, part))
        .mapToDouble(m -> m.value().value())
        .reduce((first, last) -> last);
  }

  private OptionalDouble size(Part part, String what) {
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

  // ---- joints ----

  private Told ofJoint(Measurement m) {
    Optional<Joint> joint =
        chair.joints().stream().filter(j -> j.name().equals(m.joint())).findFirst();
    OptionalDouble planned = joint.map(j -> planned(j, m.what())).orElse(OptionalDouble.empty());
    if (planned.isEmpty()) {
      return nothing(m, "this joint has no such size to hold it against");
    }
    boolean thick = m.what().endsWith("thickness");
    String partner =
        thick
            ? m.what().startsWith("tenon") ? "mortise thickness" : "tenon thickness"
            : m.what().startsWith("tenon") ? "mortise depth" : "tenon length";
    double own = m.value().value();
    double other = real(joint.get(), partner).orElse(planned(joint.get(), partner).getAsDouble());
    boolean tenon = m.what().startsWith("tenon");
    List<String> advice =
        thick
            ? thickness(joint.get(), tenon ? own : other, tenon ? other : own)
            : depth(joint.get(), tenon ? own : other, tenon ? other : own);
    boolean conflict = !advice.get(0).startsWith("fits");
    return new Told(m, planned, advice, conflict);
  }

  private OptionalDouble real(Joint joint, String what) {
    return chair.design().measured().stream()
        .filter(m -> m.what().equals(what) && m.joint().equals(joint.name()))
        .filter(m -> m.value().kind() == Quantity.Kind.LENGTH)
        .mapToDouble(m -> m.value().value())
        .reduce((first, last) -> last);
  }

  private static OptionalDouble planned(Joint joint, String what) {
    JointPlan plan = joint.plan();
    OptionalDouble thick = plan.thickness().isPresent() ? plan.thickness() : plan.diameter();
    return switch (what) {
      case "tenon thickness" -> thick;
      case "mortise thickness" -> more(thick, 2 * plan.fit().cheek());
      case "tenon length" ->
          joint.through() ? OptionalDouble.empty() : OptionalDouble.of(joint.length());
      default ->
          joint.through()
              ? OptionalDouble.empty()
              : OptionalDouble.of(joint.length() + plan.fit().bottom());
    };
  }

  private static OptionalDouble more(OptionalDouble value, double by) {
    return value.isPresent() ? OptionalDouble.of(value.getAsDouble() + by) : value;
  }

  private List<String> thickness(Joint joint, double tenon, double mortise) {
    TenonRemedy remedy = TenonRemedy.of(tenon, mortise, joint.plan().fit().cheek());
    double least = Limit.of(chair.design(), FitLimit.CHEEK_GAP_LEAST, joint).value();
    double most = Limit.of(chair.design(), FitLimit.CHEEK_GAP_MOST, joint).value();
    String found = "a gap of " + gap(remedy.gap()) + " at each cheek";
    if (remedy.gap() >= least && remedy.gap() <= Math.max(most, remedy.wanted())) {
      return List.of("fits, with " + found);
    }
    String part = chair.parts().get(joint.tenoned()).name();
    if (remedy.gap() < least) {
      return List.of(
          "too fat: " + found + "; plane " + gap(remedy.planeOffEach()) + " off each cheek",
          "off one cheek alone it is "
              + gap(remedy.planeOffOne())
              + ", and "
              + part
              + " moves "
              + gap(remedy.moves())
              + " towards that side");
    }
    return List.of(
        "loose: " + found + "; glue veneer of " + gap(remedy.veneerOnEach()) + " on each cheek",
        "on one cheek alone it is "
            + gap(remedy.veneerOnOne())
            + ", and "
            + part
            + " moves "
            + gap(remedy.moves())
            + " away from that side");
  }

  private List<String> depth(Joint joint, double tenon, double mortise) {
    double room = mortise - tenon;
    if (room < 0) {
      return List.of(
          "the tip meets the bottom and holds the shoulder open by "
              + gap(-room)
              + "; shorten the tenon by "
              + gap(joint.plan().fit().bottom() - room)
              + " or deepen the mortise as much");
    }
    return List.of("fits, with " + gap(room) + " of room at the bottom");
  }

  // ---- words ----

  /** Whether any printed digit would show it. */
  private boolean shows(double by) {
    return !gap(Math.abs(by)).equals(gap(0));
  }

  private String gap(double mm) {
    Length.Unit unit = chair.design().unit().printed();
    return Length.decimal(mm, unit, unit == Length.Unit.MM ? 2 : 3);
  }

  private String length(double mm) {
    return Length.print(mm, chair.design().unit().printed(), 64);
  }
}
