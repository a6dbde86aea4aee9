package dryfit.fit.spread;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.loop.Cause;
import dryfit.fit.loop.Chain;
import dryfit.geometry.Frame;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.stream.Stream;

/**
 * What one more millimetre or radian of each cut adds to a figure, mm. Arrays are in the order of
 * {@link Cuts#all}.
 */
final class Shares {
  private final Chair chair;
  private final Chain chain;
  private final Cuts cuts;

  Shares(Chair chair, Chain chain, Cuts cuts) {
    this.chair = chair;
    this.chain = chain;
    this.cuts = cuts;
  }

  double[] of(Site site) {
    double[] each = new double[cuts.all().size()];
    if (site instanceof Site.Gap gap) {
      gap(gap, each);
    } else if (site instanceof Site.Wall wall) {
      wall(wall, each);
    } else if (site instanceof Site.Setback back) {
      setback(back, each);
    } else if (site instanceof Site.Length length) {
      chained(chain.grows(length.diagonal()), 1, each);
    } else if (site instanceof Site.Corner corner) {
      corner(corner, each);
    } else if (site instanceof Site.Difference d) {
      chained(of(d.one()), 1, each);
      chained(of(d.other()), -1, each);
    }
    return each;
  }

  private void add(String subject, String what, double by, double[] each) {
    cuts.of(subject, what).ifPresent(i -> each[i] += by);
  }

  private static void chained(double[] of, double sign, double[] each) {
    for (int i = 0; i < of.length; i++) {
      each[i] += sign * of[i];
    }
  }

  private void gap(Site.Gap gap, double[] each) {
    Joint joint = chair.joints().get(gap.joint());
    String label = joint.label();
    if (gap.side().equals("shoulder")) {
      chained(shoulder(gap.joint()), 1, each);
    } else if (gap.side().equals("bottom")) {
      add(label, Cuts.DEPTH, 1, each);
      add(label, Cuts.TENON_LONG, -1, each);
    } else if (gap.side().endsWith("edge")) {
      add(label, Cuts.MORTISE_LONG, 0.5, each);
      add(label, Cuts.TENON_WIDE, -0.5, each);
    } else {
      add(label, Cuts.MORTISE_THICK, 0.5, each);
      add(label, Cuts.TENON_THICK, -0.5, each);
    }
  }

  /** Where along the shoulder it opens most. */
  private double[] shoulder(int i) {
    Joint joint = chair.joints().get(i);
    Part part = chair.parts().get(joint.tenoned());
    Frame frame = part.frameNear(joint.at());
    Vec3 wide = frame.y().times(part.blank().width() / 2);
    Vec3 thick = frame.z().times(part.blank().thickness() / 2);
    List<Vec3> places =
        Stream.of(Vec3.ZERO, wide, wide.negated(), thick, thick.negated())
            .map(joint.at()::plus)
            .toList();
    List<double[]> opens = chain.opens(i, places);
    opens.forEach(here -> played(i, here));
    double[] worst = opens.get(0);
    for (double[] here : opens) {
      // The same on both sides of a part that stands straight: the first then.
      if (variance(here) > variance(worst) * (1 + 1e-6)) {
        worst = here;
      }
    }
    return worst;
  }

  /** Angles at other joints, less what these take up themselves. */
  private void played(int joint, double[] opens) {
    for (int i = 0; i < opens.length; i++) {
      Cause cause = chain.causes().get(i);
      boolean own = cause.effects().stream().anyMatch(e -> e.joint() == joint);
      opens[i] *= own ? 1 : Play.beyond(chair, cause, cuts.all().get(i).accuracy());
    }
  }

  private double variance(double[] opens) {
    double sum = 0;
    for (int i = 0; i < opens.length; i++) {
      double by = opens[i] * cuts.all().get(i).accuracy();
      sum += by * by;
    }
    return sum;
  }

  /**
   * A mortise in its place, and a face that lies half of an error farther out. Behind the bottom it
   * is a whole one: the mouth lies half of it farther out the other way, and the depth is from
   * there. Along a leg mortises are set out from its foot, so that its top has what its length is
   * off.
   */
  private void wall(Site.Wall wall, double[] each) {
    Joint joint = chair.joints().get(wall.joint());
    Part into = chair.parts().get(joint.mortised());
    double behind = Math.max(0, wall.way().dot(joint.entry()));
    section(into, into.frameNear(joint.at()), wall.way(), (1 + behind) / 2, each);
    Vec3 along = into.frame().x();
    double up = wall.way().dot(along.z() > 0 ? along : along.negated());
    add(into.label(), Cuts.LENGTH, Math.max(0, up), each);
    for (int i = 0; i < chain.causes().size(); i++) {
      boolean own = chain.causes().get(i).subject().equals(joint.label());
      if (own && chain.causes().get(i).what().startsWith("mortise off its place")) {
        each[i] -= chain.causes().get(i).effects().get(0).each().move().dot(wall.way());
      }
    }
    boolean round = joint.plan().diameter().isPresent();
    double thick = Math.abs(wall.way().dot(joint.thick()));
    double wide = Math.abs(wall.way().dot(joint.wide()));
    if (round) {
      add(joint.label(), Cuts.MORTISE_THICK, -Math.hypot(thick, wide) / 2, each);
    } else {
      add(joint.label(), Cuts.MORTISE_THICK, -thick / 2, each);
      if (joint.plan().kind() != Kind.GROOVE) {
        add(joint.label(), Cuts.MORTISE_LONG, -wide / 2, each);
      }
    }
    add(joint.label(), Cuts.DEPTH, -Math.max(0, wall.way().dot(joint.entry())), each);
  }

  private void section(Part part, Frame frame, Vec3 way, double by, double[] each) {
    add(part.label(), Cuts.WIDTH, by * Math.abs(way.dot(frame.y())), each);
    add(part.label(), Cuts.THICKNESS, by * Math.abs(way.dot(frame.z())), each);
  }

  private void setback(Site.Setback back, double[] each) {
    Joint joint = chair.joints().get(back.joint());
    Part own = chair.parts().get(joint.tenoned());
    Part other = chair.parts().get(joint.mortised());
    section(own, own.frameNear(joint.at()), back.way(), -0.5, each);
    section(other, other.frameNear(joint.at()), back.way(), 0.5, each);
    chained(chain.shifts(back.joint(), back.way()), -1, each);
  }

  /** The leg stands on the floor; the rail's upper edge is half of its width above its middle. */
  private void corner(Site.Corner corner, double[] each) {
    Joint joint = chair.joints().get(corner.joint());
    chained(chain.shifts(corner.joint(), Vec3.UP), corner.leg() ? -1 : 1, each);
    if (!corner.leg()) {
      Part rail = chair.parts().get(joint.tenoned());
      section(rail, rail.frameNear(joint.at()), Vec3.UP, 0.5, each);
    }
  }
}
