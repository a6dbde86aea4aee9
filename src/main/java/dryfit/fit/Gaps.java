package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Tenon;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.Assembly.Placed;
import dryfit.fit.JointFit.Gap;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Gaps between a tenon and its mortise, measured: from places inside the tenon a line is drawn
 * outward; where it leaves the tenon and where it comes into the other part are two measured
 * places, and the gap is what lies between. Where the other part's wood is met first the gap is
 * negative. Where the line runs into another mortise, there is no wall to measure to.
 */
final class Gaps {
  /** Beyond this a wall no longer belongs to the joint, mm. */
  private static final double FAR = 25;

  private static final double[] ALONG = {0.15, 0.5, 0.9};
  private static final double[] ACROSS = {-0.85, 0, 0.85};
  private static final int ROUND_ABOUT = 16;

  /** Cosine of the most that a face of a tenon may lean from the direction it is measured in. */
  private static final double LOOKS_THAT_WAY = 0.9;

  private final Joint joint;
  private final Tenon tenon;
  private final Placed tenoned;
  private final Placed mortised;
  private final double halfThick;
  private final double halfWide;

  /**
   * @param tenoned the part whose wood the tenon is
   */
  Gaps(Joint joint, Tenon tenon, Placed tenoned, Placed mortised) {
    this.joint = joint;
    this.tenon = tenon;
    this.tenoned = tenoned;
    this.mortised = mortised;
    this.halfThick = half(joint.thick());
    this.halfWide = half(joint.wide());
  }

  /** Half the size of the tenon across a direction, about its middle line, the lesser side. */
  private double half(Vec3 direction) {
    if (tenon.wood().isEmpty()) {
      return 0;
    }
    Convex main =
        tenon.wood().stream()
            .max(java.util.Comparator.comparingDouble(Convex::volume))
            .orElseThrow();
    double middle = tenon.at().dot(direction);
    double plus = main.reach(direction) - middle;
    double minus = main.reach(direction.negated()) + middle;
    return Math.max(0, Math.min(plus, minus));
  }

  Gap cheek() {
    if (isRound()) {
      return round();
    }
    return beside(joint.thick(), joint.wide(), halfThick, halfWide);
  }

  private boolean isRound() {
    return joint.plan().diameter().isPresent();
  }

  Gap edge() {
    // Along a groove there is nothing to meet.
    return isRound() || joint.plan().kind() == Kind.GROOVE
        ? Gap.NONE
        : beside(joint.wide(), joint.thick(), halfWide, halfThick);
  }

  Gap bottom() {
    if (joint.through()) {
      return Gap.NONE;
    }
    List<Double> found = new ArrayList<>();
    Vec3 behindTip = tenon.at().plus(joint.entry().times(joint.length() * 0.5));
    for (double t : ACROSS) {
      for (double w : ACROSS) {
        Vec3 from =
            behindTip
                .plus(joint.thick().times(t * halfThick * 0.7))
                .plus(joint.wide().times(w * halfWide * 0.7));
        measure(from, joint.entry()).ifPresent(found::add);
      }
    }
    return gap(found);
  }

  private Gap beside(Vec3 outward, Vec3 across, double half, double halfAcross) {
    List<Double> found = new ArrayList<>();
    for (double a : ALONG) {
      if (belowTheHaunch(a * joint.length())) {
        continue;
      }
      for (double c : ACROSS) {
        for (int side = -1; side <= 1; side += 2) {
          Vec3 from = spot(a, half * side * 0.5, outward).plus(across.times(c * halfAcross));
          if (joint.mouth().height(from.plus(outward.times(side * half * 0.5))) < -0.5) {
            measure(from, outward.times(side)).ifPresent(found::add);
          }
        }
      }
    }
    return gap(found);
  }

  /** Whether a depth is in the room below a haunch, where the tenon has no edge facing it. */
  private boolean belowTheHaunch(double depth) {
    return joint
        .plan()
        .haunch()
        .filter(h -> depth > h.deep() - 0.5 && depth < h.deep() + joint.plan().fit().bottom() + 0.5)
        .isPresent();
  }

  private Gap round() {
    List<Double> found = new ArrayList<>();
    for (double a : ALONG) {
      for (int i = 0; i < ROUND_ABOUT; i++) {
        double angle = 2 * Math.PI * i / ROUND_ABOUT;
        Vec3 d = joint.wide().times(Math.cos(angle)).plus(joint.thick().times(Math.sin(angle)));
        Vec3 from = spot(a, 0, d);
        if (joint.mouth().height(from.plus(d.times(halfThick))) < -0.5) {
          measure(from, d).ifPresent(found::add);
        }
      }
    }
    return gap(found);
  }

  private Vec3 spot(double along, double aside, Vec3 direction) {
    return tenon
        .at()
        .plus(joint.entry().times(along * joint.length()))
        .plus(direction.times(aside));
  }

  /** The gap met on the way from a place inside the tenon; empty if nothing faces it there. */
  private OptionalDouble measure(Vec3 from, Vec3 direction) {
    // What is met first says which side of the surface the place is on: a way out, or a way in.
    Rays.Hit own = tenoned.rays().first(from, direction).orElse(null);
    if (own == null || own.entering() || !ownFace(own, direction)) {
      return OptionalDouble.empty();
    }
    Rays.Hit wood = mortised.rays().first(from, direction).orElse(null);
    if (wood == null) {
      return OptionalDouble.empty();
    }
    if (!wood.entering()) {
      return OptionalDouble.of(-own.distance());
    }
    double gap = wood.distance() - own.distance();
    return gap <= FAR && ownWall(wood) ? OptionalDouble.of(gap) : OptionalDouble.empty();
  }

  /**
   * Whether the line leaves the tenon by a face that looks its way: not by a mitred tip, nor into a
   * groove that something else has cut.
   */
  private boolean ownFace(Rays.Hit hit, Vec3 direction) {
    String origin = tenoned.mesh().origin(hit.face());
    boolean own = origin.equals(joint.plan().pointer()) || origin.equals(tenoned.part().pointer());
    return own && tenoned.mesh().normal(hit.face()).dot(direction) > LOOKS_THAT_WAY;
  }

  private boolean ownWall(Rays.Hit hit) {
    return mortised.mesh().origin(hit.face()).equals(joint.plan().pointer());
  }

  /** The least and the greatest of several. */
  static Gap all(List<Gap> gaps) {
    List<Double> found = new ArrayList<>();
    for (Gap gap : gaps) {
      gap.least().ifPresent(found::add);
      gap.greatest().ifPresent(found::add);
    }
    return gap(found);
  }

  static Gap gap(List<Double> found) {
    return found.isEmpty()
        ? Gap.NONE
        : Gap.of(
            found.stream().mapToDouble(d -> d).min().orElseThrow(),
            found.stream().mapToDouble(d -> d).max().orElseThrow());
  }
}
