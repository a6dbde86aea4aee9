package dryfit.fit.loop;

import dryfit.build.Chair;
import dryfit.fit.Diagonal;
import dryfit.fit.PlannedSizes;
import dryfit.geometry.Vec3;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What one more millimetre or radian of any size does to the chair, every other size being as
 * planned. Lists and arrays are in the order of {@link #causes}.
 */
public final class Chain {
  /** What is seen when the chair is together, not cut. */
  private static final Set<String> SEEN = Set.of(Causes.OPEN, Causes.BOTTOMED, "proud");

  private final Chair chair;
  private final List<Integer> ties;
  private final List<Cause> causes;
  private final Slack slack;

  public Chain(Chair chair, PlannedSizes plan) {
    this.chair = chair;
    this.ties = Causes.ties(chair);
    Causes all = new Causes(chair, plan);
    this.causes = all.all().stream().filter(c -> !SEEN.contains(c.what())).map(Chain::one).toList();
    Set<Integer> made =
        new LinkedHashSet<>(IntStream.range(0, chair.parts().size()).boxed().toList());
    this.slack = new Slack(chair, all, made, causes, Set.of());
  }

  private static Cause one(Cause c) {
    return new Cause(c.subject(), c.what(), c.angle(), c.effects(), OptionalDouble.of(1));
  }

  /** Every size that is cut and decides where the parts stand, each off by one. */
  public List<Cause> causes() {
    return causes;
  }

  /**
   * How far places of a shoulder open if every other joint closes as well as the errors let it, mm;
   * zeros if no closed frame goes through the joint. In a single frame all others are tight, and
   * what does not close shows here.
   *
   * @param joint index in the chair
   */
  public List<double[]> opens(int joint, List<Vec3> places) {
    if (!ties.contains(joint) || Round.of(chair, ties, joint).isEmpty()) {
      return places.stream().map(p -> new double[causes.size()]).toList();
    }
    Slack others = slack.without(joint);
    Vec3 out = chair.joints().get(joint).mouth().normal();
    return places.stream().map(p -> others.apart(joint, out, p)).toList();
  }

  /**
   * How far what goes in at a joint moves along a direction against what it goes into, what does
   * not close being shared among all joints, mm.
   */
  public double[] shifts(int joint, Vec3 way) {
    return slack.shifts(joint, way);
  }

  /** How much longer a diagonal of a frame becomes, mm. */
  public double[] grows(Diagonal d) {
    return slack.grows(d);
  }
}
