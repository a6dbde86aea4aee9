package dryfit.fit.loop;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design.Measurement;
import dryfit.document.Hand;
import dryfit.fit.PlannedSizes;
import dryfit.fit.loop.Cause.Effect;
import dryfit.fit.loop.Round.Step;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Who holds a shoulder open. All other joints of the shortest closed frame through it are taken to
 * be tight (or as far open as they were measured), and every size of the frame is followed once
 * round: the errors of a closed chain of rigid parts add up, each as it is carried to the open
 * joint by the parts after it.
 *
 * @param joint label of the joint
 * @param at edge of the shoulder, or empty for its middle
 * @param touching the edge across from it, if the shoulder is taken to touch there because nothing
 *     was measured; otherwise empty
 * @param gap as it was measured, mm
 * @param round labels of the parts of the frame, from what the tenon goes into; none if no closed
 *     frame goes through the joint
 * @param measured the sum of what the measured sizes make of the gap, mm
 * @param suspects what could cause most of it first
 * @param leftOut what also holds parts of the frame and was not looked at
 */
public record HeldOpen(
    String joint,
    String at,
    String touching,
    double gap,
    List<String> round,
    double measured,
    List<Suspect> suspects,
    List<String> leftOut) {
  public HeldOpen {
    round = List.copyOf(round);
    suspects = List.copyOf(suspects);
    leftOut = List.copyOf(leftOut);
  }

  /** Less than this of a gap, or of a millimetre, is what a feeler gauge and a rule disagree by. */
  private static final double AGREES = 0.1;

  /** Whether the measured sizes make the gap, or all but what no one could measure. */
  public boolean isExplained() {
    return Math.abs(unexplained()) <= Math.max(AGREES * gap, AGREES / 2);
  }

  /** Gaps that are not explained by measured sizes. */
  public double unexplained() {
    return gap - measured;
  }

  /**
   * A size that opens or closes the gap.
   *
   * @param each how much the gap opens for a millimetre or a radian more of it, mm
   * @param could how much of the gap it makes, if it was measured; otherwise how much it could make
   *     if it were as far off as the maker ever is, mm
   * @param alone how far off it would have to be to make by itself what measured sizes leave
   *     unexplained; with a sign
   */
  public record Suspect(Cause cause, double each, double could, OptionalDouble alone) {
    public boolean measured() {
      return cause.off().isPresent();
    }

    /** What was found comes before what might be, and what closes the gap comes last. */
    private int rank(double gap) {
      boolean makesSome = could > TELLS * gap;
      return measured() ? makesSome ? 0 : 2 : 1;
    }

    /** Share of a gap below which a measured size is no culprit. */
    private static final double TELLS = 0.1;
  }

  /**
   * A size that opens the gap by less than this share of itself, or by this over a metre, is none.
   */
  private static final double NONE = 0.02;

  /** Every gap that was measured at a shoulder, in the order of the document. */
  public static List<HeldOpen> of(Chair chair, PlannedSizes plan) {
    Causes causes = new Causes(chair, plan);
    List<Cause> all = causes.all();
    Set<String> told = new HashSet<>();
    List<HeldOpen> out = new ArrayList<>();
    for (Measurement m : chair.design().measured()) {
      if (!m.what().equals(Causes.OPEN)) {
        continue;
      }
      for (int i : Causes.ties(chair)) {
        Joint j = chair.joints().get(i);
        OptionalDouble gap = causes.off(j, Causes.OPEN, m.at());
        boolean about = PlannedSizes.isAbout(m, j) && gap.isPresent();
        if (about && told.add(j.label() + " " + m.at())) {
          String across = ACROSS.getOrDefault(m.at(), "");
          boolean bothEdges = causes.off(j, Causes.OPEN, across).isPresent() && !m.at().isEmpty();
          String touching = bothEdges || m.at().isEmpty() ? "" : across;
          out.add(of(chair, all, i, m.at(), touching, gap.getAsDouble()));
        }
      }
    }
    return out;
  }

  private static final Map<String, String> ACROSS =
      Map.of(
          "top", "bottom", "bottom", "top", "front", "back", "back", "front", "outside", "inside",
          "inside", "outside");

  private static HeldOpen of(
      Chair chair, List<Cause> all, int open, String at, String touching, double gap) {
    Joint joint = chair.joints().get(open);
    List<Step> way = Round.of(chair, Causes.ties(chair), open);
    if (way.isEmpty()) {
      return new HeldOpen(joint.label(), at, touching, gap, List.of(), 0, List.of(), List.of());
    }
    Vec3 place = joint.at().plus(edge(chair, joint, at));
    Vec3 other = joint.at().plus(edge(chair, joint, touching));
    List<Suspect> suspects = new ArrayList<>();
    double measured = 0;
    for (Cause cause : all) {
      // Where the other edge touches, only what opens this one more than that one opens anything.
      double each =
          opens(chair, way, open, place, cause)
              - (touching.isEmpty() ? 0 : opens(chair, way, open, other, cause));
      boolean own = cause.subject().equals(joint.label()) && cause.what().equals(Causes.OPEN);
      if (!own && Math.abs(each) > (cause.angle() ? 1000 * NONE : NONE)) {
        double could =
            cause.off().isPresent()
                ? each * cause.off().getAsDouble()
                : Math.abs(each) * cause.accuracy(chair);
        measured += cause.off().isPresent() ? could : 0;
        suspects.add(new Suspect(cause, each, could, OptionalDouble.empty()));
      }
    }
    double left = gap - measured;
    List<Suspect> ranked =
        suspects.stream()
            .map(
                s ->
                    s.measured()
                        ? s
                        : new Suspect(
                            s.cause(), s.each(), s.could(), OptionalDouble.of(left / s.each())))
            .sorted(
                Comparator.comparingInt((Suspect s) -> s.rank(gap))
                    .thenComparing(Comparator.comparingDouble(Suspect::could).reversed()))
            .toList();
    Set<String> round = new LinkedHashSet<>();
    round.add(chair.parts().get(joint.mortised()).label());
    way.forEach(s -> round.add(chair.parts().get(s.to()).label()));
    Set<Integer> parts = new LinkedHashSet<>(List.of(joint.mortised()));
    way.forEach(s -> parts.add(s.to()));
    List<String> leftOut = LeftOut.at(chair, parts);
    return new HeldOpen(
        joint.label(), at, touching, gap, List.copyOf(round), measured, ranked, leftOut);
  }

  /** How much a millimetre or a radian opens the joint at a place of its shoulder. */
  private static double opens(Chair chair, List<Step> way, int open, Vec3 place, Cause cause) {
    Vec3 moved = Vec3.ZERO;
    for (Effect e : cause.effects()) {
      for (Step s : way) {
        if (s.joint() == e.joint()) {
          boolean inward = chair.joints().get(s.joint()).tenoned() == s.to();
          moved = moved.plus(e.each().of(place).times(inward ? 1 : -1));
        }
      }
      if (e.joint() == open) {
        // A shoulder or a face that stands elsewhere closes the gap by what would seat it; a tip
        // that meets the bottom keeps it open.
        boolean tip = cause.what().equals(Causes.BOTTOMED);
        moved = moved.plus(e.each().of(place).times(tip ? 1 : -1));
      }
    }
    return moved.dot(chair.joints().get(open).mouth().normal());
  }

  /** From the middle of a shoulder to one of its edges. */
  private static Vec3 edge(Chair chair, Joint joint, String at) {
    Part part = chair.parts().get(joint.tenoned());
    double side = joint.at().x() < 0 || joint.at().x() == 0 && joint.hand() == Hand.LEFT ? -1 : 1;
    Vec3 way =
        switch (at) {
          case "top" -> Vec3.UP;
          case "bottom" -> Vec3.UP.negated();
          case "front" -> Vec3.BACK.negated();
          case "back" -> Vec3.BACK;
          case "outside" -> Vec3.RIGHT.times(side);
          case "inside" -> Vec3.RIGHT.times(-side);
          default -> Vec3.ZERO;
        };
    Vec3 inMouth = way.across(joint.mouth().normal());
    if (inMouth.length() < NONE) {
      return Vec3.ZERO;
    }
    Vec3 d = inMouth.unit();
    double half =
        Math.abs(d.dot(part.frame().y())) * part.blank().width() / 2
            + Math.abs(d.dot(part.frame().z())) * part.blank().thickness() / 2;
    return d.times(half);
  }
}
