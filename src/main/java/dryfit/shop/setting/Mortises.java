package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.fit.JointFit;
import dryfit.fit.MortiseAngles;
import dryfit.fit.PartSides;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a mortise is knifed, bored or chopped by. */
final class Mortises {
  /** From so far below the bottom the wood beyond it is looked for, mm. */
  private static final double BELOW = 0.01;

  /** Nobody sets a bevel to less than a quarter of a degree (no source). */
  private static final double SET = Math.toRadians(0.25);

  private final Chair chair;
  private final Joint joint;
  private final JointFit fit;
  private final Bench bench;

  Mortises(Chair chair, JointFit fit, Bench bench) {
    this.chair = chair;
    this.joint = fit.joint();
    this.fit = fit;
    this.bench = bench;
  }

  private Part part() {
    return chair.parts().get(joint.mortised());
  }

  Optional<Mouth> mouth() {
    return Mouth.of(chair, joint);
  }

  /** The one bevel and the line it stands on; what two views show, where there are two. */
  static List<Reading> lean(MortiseAngles mortise) {
    List<Reading> out = new ArrayList<>();
    MortiseAngles.Share along = mortise.along();
    MortiseAngles.Share across = mortise.across();
    if (!isCompound(mortise)) {
      boolean crosswise = along.angle().offSquare() < across.angle().offSquare();
      MortiseAngles.Share only = crosswise ? across : along;
      out.add(
          new Reading.Bevel(
              "bevel", mortise.lean(), "the face", "", "going in, towards the " + only.towards()));
      return out;
    }
    MortiseAngles.SightLine sight = mortise.sight();
    out.add(
        new Reading.Bevel("bevel, standing on the sight line", mortise.lean(), "the face", "", ""));
    out.add(
        new Reading.Line(
            "sight line", sight.angle(), sight.from(), "going in, towards the " + sight.towards()));
    out.add(new Reading.Line("the same line", sight.otherAngle(), sight.otherFrom(), ""));
    for (MortiseAngles.Share share : List.of(along, across)) {
      out.add(
          new Reading.Bevel(
              share.equals(along) ? "or two bevels: one along the part" : "and one across it",
              share.angle(),
              "the face",
              "",
              "going in, towards the " + share.towards()));
    }
    return out;
  }

  private static boolean isCompound(MortiseAngles mortise) {
    return mortise.along().angle().offSquare() >= SET
        && mortise.across().angle().offSquare() >= SET;
  }

  static List<String> leanNotes(MortiseAngles mortise) {
    return isCompound(mortise)
        ? List.of(
            "Draw the sight line through the middle of the hole. Looking along it, the tool"
                + " looks upright.")
        : List.of();
  }

  /** Where to put the tape or the stop, and what it makes of the hole. */
  List<Reading> depth(MortiseAngles mortise) {
    List<Reading> out = new ArrayList<>();
    boolean leans = !mortise.lean().isSquare();
    if (joint.through()) {
      out.add(
          new Reading.Size(
              "through the wood, along the tool", fit.depthAlong(), "from both faces, to meet"));
      return out;
    }
    double tape = fit.depthAlong() + bench.drillPoint();
    String point = bench.drillPoint() > 0 ? "from the tip of the bit's point" : "";
    out.add(new Reading.Size("tape or stop, along the tool", tape, point));
    if (leans) {
      double early = lowSide(radius(), joint.lean());
      out.add(
          new Reading.Size(
              "if you stop as the tape first touches",
              tape + early,
              "it does so on the " + lowSide() + " side, before the middle is there"));
      mortise
          .deepEdge()
          .ifPresent(d -> out.add(new Reading.Size("deepest edge, square to the face", d, "")));
    }
    out.add(new Reading.Size("middle, square to the face", fit.depthSquare(), ""));
    beyond()
        .ifPresent(d -> out.add(new Reading.Size("wood beyond the bottom, along the tool", d, "")));
    return out;
  }

  List<String> depthNotes() {
    OptionalDouble beyond = beyond();
    return !joint.through() && beyond.isPresent() && beyond.getAsDouble() <= bench.drillPoint()
        ? List.of("The point of this bit comes out at the far side: take one with a shorter point.")
        : List.of();
  }

  /**
   * How much sooner than the middle of a leaning tool its rim meets the face: radius times the
   * tangent of the lean.
   */
  static double lowSide(double radius, double lean) {
    return radius * Math.tan(lean);
  }

  /** The side on which the rim of the tool meets the face first. */
  private String lowSide() {
    Vec3 way = joint.entry().across(joint.mouth().normal()).negated();
    return PartSides.of(chair, part(), joint.hand()).compass(way);
  }

  /** Of the bit: as wide as the mortise is from cheek to cheek. */
  private double radius() {
    Convex hole = joint.mortise().get(0);
    return joint
            .plan()
            .diameter()
            .orElseGet(() -> hole.reach(joint.thick()) + hole.reach(joint.thick().negated()))
        / 2;
  }

  /** The wood between the bottom and where the tool would come out; none if something is there. */
  private OptionalDouble beyond() {
    Rays rays = part().solid().rays().placed(part().frame());
    Vec3 from = joint.tenons().get(0).at().plus(joint.entry().times(fit.depthAlong() + BELOW));
    return rays.inside(from)
        ? rays.first(from, joint.entry()).stream()
            .mapToDouble(h -> h.distance() + BELOW)
            .findFirst()
        : OptionalDouble.empty();
  }
}
