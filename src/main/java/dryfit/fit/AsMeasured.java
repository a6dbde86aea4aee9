package dryfit.fit;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design.Measurement;
import dryfit.document.FitLimit;
import dryfit.document.Hand;
import dryfit.document.Quantity;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import dryfit.measure.Angle;
import dryfit.measure.Length;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the maker found on real parts, held against the plan, and what to do about it: wood can be
 * taken off, never put on; parts of a pair match each other before they match the plan.
 */
public final class AsMeasured {
  private final Chair chair;
  private final PlannedSizes plan;

  private AsMeasured(Chair chair, PlannedSizes plan) {
    this.chair = chair;
    this.plan = plan;
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
      Measurement m = measurement;
      String frame = m.frame().isEmpty() ? "" : m.frame() + " frame";
      return !m.part().isEmpty()
          ? m.part()
          : !frame.isEmpty()
              ? frame
              : m.joint() + (m.hand() == Hand.NONE ? "" : "," + m.hand().suffix());
    }
  }

  /** Every measurement of the document, in its order. */
  public static List<Told> of(Chair chair, PlannedSizes plan) {
    AsMeasured all = new AsMeasured(chair, plan);
    return chair.design().measured().stream().map(all::told).toList();
  }

  private Told told(Measurement m) {
    boolean ofPart = !m.part().isEmpty();
    List<String> known =
        ofPart
            ? PlannedSizes.OF_A_PART
            : m.frame().isEmpty() ? PlannedSizes.OF_A_JOINT : PlannedSizes.OF_A_FRAME;
    if (!known.contains(m.what())) {
      return nothing(m, "nothing follows from this; known are " + String.join(", ", known));
    }
    boolean angle = m.what().startsWith("lean");
    if (m.value().kind() != (angle ? Quantity.Kind.ANGLE : Quantity.Kind.LENGTH)) {
      String kind = angle ? "an angle" : "a length";
      return nothing(m, "this is " + kind + ", and what is written is none");
    }
    return ofPart ? ofPart(m) : m.frame().isEmpty() ? ofJoint(m) : ofFrame(m);
  }

  private static Told nothing(Measurement m, String why) {
    return new Told(m, OptionalDouble.empty(), List.of(why), false);
  }

  // ---- parts ----

  private Told ofPart(Measurement m) {
    Optional<Part> part =
        chair.parts().stream().filter(p -> PlannedSizes.isAbout(m, p)).findFirst();
    OptionalDouble planned = part.map(p -> plan.ofPart(p, m.what())).orElse(OptionalDouble.empty());
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

  private Optional<Part> twin(Part part) {
    return chair.parts().stream()
        .filter(p -> p.name().equals(part.name()) && p.hand() != part.hand())
        .findFirst();
  }

  /** The last measurement counts: parts are trimmed and measured again. */
  private OptionalDouble measured(Part part, String what) {
    return chair.design().measured().stream()
        .filter(m -> m.what().equals(what) && m.value().kind() == Quantity.Kind.LENGTH)
        .filter(m -> PlannedSizes.isAbout(m, part))
        .mapToDouble(m -> m.value().value())
        .reduce((first, last) -> last);
  }

  // ---- joints ----

  private Told ofJoint(Measurement m) {
    Optional<Joint> joint =
        chair.joints().stream().filter(j -> PlannedSizes.isAbout(m, j)).findFirst();
    OptionalDouble planned =
        joint.map(j -> plan.ofJoint(j, m.what())).orElse(OptionalDouble.empty());
    if (planned.isEmpty()) {
      return nothing(m, "this joint has no such size to hold it against");
    }
    if (List.of("lean along", "lean across", "proud", "shoulder gap").contains(m.what())) {
      return atJoint(m, joint.get(), planned.getAsDouble());
    }
    boolean tenon = m.what().startsWith("tenon");
    String partner = PARTNERS.get(m.what());
    double own = m.value().value();
    double other =
        real(joint.get(), partner).orElse(plan.ofJoint(joint.get(), partner).getAsDouble());
    double in = tenon ? own : other;
    double hole = tenon ? other : own;
    List<String> advice =
        switch (m.what()) {
          case "tenon thickness", "mortise thickness" -> thickness(joint.get(), in, hole);
          case "tenon width", "mortise length" -> width(joint.get(), in, hole);
          default -> depth(joint.get(), in, hole);
        };
    boolean conflict = !advice.get(0).startsWith("fits");
    return new Told(m, planned, advice, conflict);
  }

  /** What of a mortise goes with what of its tenon. */
  private static final Map<String, String> PARTNERS =
      Map.of(
          "tenon thickness", "mortise thickness",
          "mortise thickness", "tenon thickness",
          "tenon width", "mortise length",
          "mortise length", "tenon width",
          "tenon length", "mortise depth",
          "mortise depth", "tenon length");

  private OptionalDouble real(Joint joint, String what) {
    return chair.design().measured().stream()
        .filter(m -> m.what().equals(what) && PlannedSizes.isAbout(m, joint))
        .filter(m -> m.value().kind() == Quantity.Kind.LENGTH)
        .mapToDouble(m -> m.value().value())
        .reduce((first, last) -> last);
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
              + " towards that side"
              + endsUp(joint, remedy.moves()));
    }
    return List.of(
        "loose: " + found + "; glue veneer of " + gap(remedy.veneerOnEach()) + " on each cheek",
        "on one cheek alone it is "
            + gap(remedy.veneerOnOne())
            + ", and "
            + part
            + " moves "
            + gap(remedy.moves())
            + " away from that side"
            + endsUp(joint, -remedy.moves()));
  }

  /**
   * Where the face that is seen ends up, if the outside cheek or the other is worked alone.
   *
   * @param towards how far the part moves towards the cheek that is worked, mm
   */
  private String endsUp(Joint joint, double towards) {
    OptionalDouble proud = plan.ofJoint(joint, "proud");
    Optional<Vec3> out = plan.outward(joint);
    if (proud.isEmpty() || out.isEmpty()) {
      return "";
    }
    double cheeks = joint.thick().dot(out.get());
    if (Math.abs(cheeks) < CHEEKS) {
      return "";
    }
    String outer = plan.outerFace(joint).orElseThrow();
    String inner = Assembly.facing(out.get().negated(), joint.at());
    double by = towards * Math.abs(cheeks);
    return ": the "
        + outer
        + " cheek leaves its "
        + outer
        + " face "
        + stands(proud.getAsDouble() + by)
        + ", the "
        + inner
        + " cheek "
        + stands(proud.getAsDouble() - by)
        + ", planned "
        + stands(proud.getAsDouble());
  }

  private String stands(double proud) {
    return !shows(proud) ? "flush" : gap(Math.abs(proud)) + (proud < 0 ? " set back" : " proud");
  }

  /** Cheeks that look as nearly as this the same way as the face that is seen, cosine. */
  private static final double CHEEKS = 0.7;

  private List<String> width(Joint joint, double tenon, double mortise) {
    double room = (mortise - tenon) / 2;
    double wanted = joint.plan().fit().edge();
    String found = "a gap of " + gap(room) + " at each edge";
    // A fit that is tight on purpose is planned below zero.
    return room >= Math.min(0, wanted) - Tolerances.contact()
        ? List.of("fits, with " + found)
        : List.of(
            "too wide: "
                + found
                + "; plane "
                + gap(wanted - room)
                + " off each edge, or lengthen the mortise as much at each end");
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

  /** What leans, stands proud or stays open. */
  private Told atJoint(Measurement m, Joint joint, double planned) {
    double by = m.value().value() - planned;
    String part = chair.parts().get(joint.tenoned()).label();
    String into = chair.parts().get(joint.mortised()).label();
    boolean lean = m.what().startsWith("lean");
    if (lean ? Math.abs(by) < ANGLE_SHOWS : !shows(by)) {
      return new Told(m, OptionalDouble.of(planned), List.of("as planned"), false);
    }
    List<String> advice = new ArrayList<>();
    if (lean) {
      double far = reach(joint);
      double tall = shoulder(joint, m.what().equals("lean along"));
      advice.add(
          "out by "
              + Angle.degrees(Math.abs(by))
              + ": over "
              + length(far)
              + " the far end of "
              + part
              + " comes out "
              + gap(far * Math.tan(Math.abs(by)))
              + " off its place");
      advice.add(
          "a shoulder cut as planned gapes "
              + gap(tall * Math.tan(Math.abs(by)))
              + " over "
              + length(tall)
              + "; cut it to the mortise, or pare the mortise true");
    } else if (m.what().equals("proud")) {
      String more = by > 0 ? "further out" : "further in";
      advice.add(part + " stands " + gap(Math.abs(by)) + " " + more + " than planned");
      advice.add(
          by > 0
              ? "plane that off its face, or take it off the outside cheek of the tenon and glue as much on the other"
              : "take it off the inside cheek of the tenon and glue as much on the other, or plane the face of "
                  + into);
    } else {
      advice.add("the shoulder stays off; see below who may hold it open");
    }
    return new Told(m, OptionalDouble.of(planned), advice, true);
  }

  /** From a shoulder to the far one of the same part, or to its far end, mm. */
  private double reach(Joint joint) {
    Part part = chair.parts().get(joint.tenoned());
    return plan.ofPart(part, "shoulder to shoulder")
        .orElse(part.solid().mesh().bounds().size().x() - joint.length());
  }

  /** How far a shoulder reaches along the part it lands on, or across that part, mm. */
  private double shoulder(Joint joint, boolean along) {
    Part part = chair.parts().get(joint.tenoned());
    Vec3 n = joint.mouth().normal();
    Vec3 length = chair.parts().get(joint.mortised()).lengthNear(joint.at()).across(n);
    if (length.length() < Tolerances.nearlyParallel()) {
      return part.blank().width();
    }
    Vec3 way = along ? length.unit() : length.unit().cross(n);
    Frame f = part.frameNear(joint.at());
    return Math.abs(f.y().dot(way)) * part.blank().width()
        + Math.abs(f.z().dot(way)) * part.blank().thickness();
  }

  /** Less than this no bevel gauge shows, radians. */
  private static final double ANGLE_SHOWS = Math.toRadians(0.05);

  // ---- frames ----

  private Told ofFrame(Measurement m) {
    OptionalDouble planned = plan.ofFrame(m.frame(), m.what());
    if (planned.isEmpty()) {
      return nothing(m, "this chair has no such frame of four legs");
    }
    double by = m.value().value() - planned.getAsDouble();
    String advice =
        !shows(by) ? "as planned" : by > 0 ? "longer by " + gap(by) : "shorter by " + gap(-by);
    return new Told(m, planned, List.of(advice), shows(by));
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
