package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Tenon;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.JointFit.Gap;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/** Gaps between a tenon and its mortise, measured by {@link Facing} at a few places a side. */
final class Gaps {
  private static final double[] ALONG = {0.15, 0.5, 0.9};
  private static final double[] ACROSS = {-0.85, 0, 0.85};
  private static final int ROUND_ABOUT = 16;

  private final Joint joint;
  private final Tenon tenon;
  private final Facing facing;
  private final double halfThick;
  private final double halfWide;

  Gaps(Joint joint, Tenon tenon, Facing facing) {
    this.joint = joint;
    this.tenon = tenon;
    this.facing = facing;
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
        facing.gap(from, joint.entry()).ifPresent(found::add);
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
            facing.gap(from, outward.times(side)).ifPresent(found::add);
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
          facing.gap(from, d).ifPresent(found::add);
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
