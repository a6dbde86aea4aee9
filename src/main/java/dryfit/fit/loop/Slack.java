package dryfit.fit.loop;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.fit.Diagonal;
import dryfit.fit.loop.Cause.Effect;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Puts a chair together again around its made parts. Unknown are the small motions of all parts
 * from their planned places. What is still to be made may differ from the plan, lengths more
 * readily than places, and places than angles; what is made may not, so that whatever does not
 * close there stays as a gap. The pair of an unmade part differs alike; the twin of a made part is
 * made like it.
 */
final class Slack {
  // Weights against each other; ten times the weight costs a hundred times as much. An angle counts
  // as what it moves at the far end of its part; at made joints, at the corner of its shoulder.
  // That lever is short, so what is made has to weigh so much that a gap there never spares a new
  // part an angle. A length weighs so little that next to nothing of it is taken up by places
  // instead, and not so little that parts keep their places in the room at its cost.
  private static final double MADE = 10_000;
  private static final double ALIKE = 30;
  private static final double ANGLE = 10;
  private static final double PLACE = 10;
  private static final double LENGTH = 0.3;
  private static final double STAYS = 0.03;

  /** A part turned about its middle moves its ends about so far from it, mm. */
  private static final double REACH = 200;

  private final Chair chair;
  private final List<Integer> ties;
  private final Causes causes;
  private final Set<Integer> made;
  private final List<Cause> measured;

  /** Parts whose length is looked for, all by as much; usually none. */
  private final Set<Integer> freed;

  /** A joint that is not there; usually none. */
  private final int loose;

  private static final int NO_JOINT = -1;

  /**
   * For each part by how much less readily than others it gets another length; all one at first.
   */
  private final double[] reluctance;

  private final int n;
  private final int sides;
  private final double[][] x;

  Slack(Chair chair, Causes causes, Set<Integer> made, List<Cause> measured, Set<Integer> freed) {
    this(chair, causes, made, measured, freed, NO_JOINT, alike(chair));
  }

  private static double[] alike(Chair chair) {
    double[] all = new double[chair.parts().size()];
    Arrays.fill(all, 1);
    return all;
  }

  /** How often it is looked again which lengths are little changed. */
  private static final int LOOKS = 4;

  /**
   * A length that changes by less than this share of the most counts as so much, or it may never.
   */
  private static final double LITTLE = 0.02;

  /**
   * The same, with as few lengths changed as will do: squares alone spread a change over every part
   * that can take a bit of it, where a maker makes one rail longer. What changed little is held
   * more firmly each time, so that the sum of the changes becomes least and no longer that of their
   * squares.
   */
  static Slack withFewChanges(Chair chair, Causes causes, Set<Integer> made, List<Cause> measured) {
    Slack slack = new Slack(chair, causes, made, measured, Set.of());
    for (int look = 0; look < LOOKS && !measured.isEmpty(); look++) {
      double[] changes = new double[chair.parts().size()];
      double most = 0;
      for (int p = 0; p < changes.length; p++) {
        changes[p] = made.contains(p) ? 0 : Math.abs(Arrays.stream(slack.length(p)).sum());
        most = Math.max(most, changes[p]);
      }
      if (most < Tolerances.contact()) {
        return slack;
      }
      double[] reluctance = new double[changes.length];
      for (int p = 0; p < changes.length; p++) {
        reluctance[p] = Math.sqrt(1 / Math.max(changes[p] / most, LITTLE));
      }
      slack = new Slack(chair, causes, made, measured, Set.of(), NO_JOINT, reluctance);
    }
    return slack;
  }

  private Slack(
      Chair chair,
      Causes causes,
      Set<Integer> made,
      List<Cause> measured,
      Set<Integer> freed,
      int loose,
      double[] reluctance) {
    this.loose = loose;
    this.reluctance = reluctance;
    this.chair = chair;
    this.ties = Causes.ties(chair);
    this.causes = causes;
    this.made = made;
    this.measured = measured;
    this.freed = freed;
    this.n = 6 * chair.parts().size() + 1;
    this.sides = measured.size() + 1;
    this.x = solved();
  }

  /** The same with one joint left open, so that all that does not close shows there. */
  Slack without(int joint) {
    return new Slack(chair, causes, made, measured, freed, joint, reluctance);
  }

  /** What is seen at a joint in one direction: as factors of the unknowns, and what is wanted. */
  private record Seen(double[] factors, double[] wanted) {}

  private double[][] solved() {
    Least least = new Least(n, sides);
    for (int i = 0; i < n; i++) {
      double[] one = new double[n];
      one[i] = i % 6 < 3 || i == n - 1 ? 1 : REACH;
      least.add(STAYS, one, new double[sides]);
    }
    for (int i : ties) {
      if (i != loose) {
        joint(i, least);
      }
    }
    for (int p = 0; p < chair.parts().size(); p++) {
      pair(p, least);
    }
    return least.solve();
  }

  private void joint(int i, Least least) {
    Joint j = chair.joints().get(i);
    boolean tenon = !made.contains(j.tenoned());
    boolean mortise = !made.contains(j.mortised());
    Vec3 along = tenon ? causes.out(i) : j.mouth().normal();
    double[] moves = {
      tenon ? LENGTH * reluctance[j.tenoned()] : MADE,
      tenon || mortise ? PLACE : MADE,
      tenon || mortise ? PLACE : MADE
    };
    double lever = tenon || mortise ? length(j) : section(j);
    double turns = (tenon ? ANGLE : mortise ? ALIKE : MADE) * lever;
    Vec3[] ways = ways(along);
    for (int k = 0; k < 3; k++) {
      Seen move = move(i, ways[k]);
      least.add(moves[k], move.factors(), move.wanted());
      Seen turn = turn(i, ways[k]);
      least.add(turns, turn.factors(), turn.wanted());
    }
  }

  /** Three directions square to each other, the first given. */
  static Vec3[] ways(Vec3 first) {
    Vec3 other = Math.abs(first.z()) < 0.9 ? Vec3.UP : Vec3.RIGHT;
    Vec3 second = other.across(first).unit();
    return new Vec3[] {first, second, first.cross(second)};
  }

  private double length(Joint j) {
    return chair.parts().get(j.tenoned()).solid().mesh().bounds().size().x();
  }

  /** From the middle of a shoulder to its corner. */
  double section(Joint j) {
    Part.Blank blank = chair.parts().get(j.tenoned()).blank();
    return Math.hypot(blank.width(), blank.thickness()) / 2;
  }

  private void pair(int p, Least least) {
    Part part = chair.parts().get(p);
    if (part.hand() != Hand.RIGHT) {
      return;
    }
    for (int q = 0; q < chair.parts().size(); q++) {
      Part twin = chair.parts().get(q);
      boolean pair = twin.name().equals(part.name()) && twin.hand() == Hand.LEFT;
      if (pair && !(made.contains(p) && made.contains(q))) {
        Seen a = longer(p);
        Seen b = longer(q);
        double[] factors = new double[n];
        double[] wanted = new double[sides];
        for (int i = 0; i < n; i++) {
          factors[i] = a.factors()[i] - b.factors()[i];
        }
        for (int s = 0; s < sides; s++) {
          wanted[s] = a.wanted()[s] - b.wanted()[s];
        }
        least.add(ALIKE, factors, wanted);
      }
    }
  }

  /** How much longer than planned a part is: as it was made, or as it will be. */
  private Seen longer(int p) {
    double[] factors = new double[n];
    double[] wanted = new double[sides];
    if (made.contains(p)) {
      for (int s = 0; s < measured.size(); s++) {
        Cause cause = measured.get(s);
        boolean own = cause.subject().equals(chair.parts().get(p).label());
        boolean length = cause.what().equals(Causes.BETWEEN);
        // It is known, so it goes to the other side of the equation.
        wanted[s] = own && length ? -cause.off().getAsDouble() : 0;
      }
      return new Seen(factors, wanted);
    }
    for (int i : ends(p)) {
      Seen seen = move(i, causes.out(i).negated());
      for (int k = 0; k < n; k++) {
        factors[k] += seen.factors()[k];
      }
      for (int s = 0; s < sides; s++) {
        wanted[s] += seen.wanted()[s];
      }
    }
    return new Seen(factors, wanted);
  }

  List<Integer> ends(int p) {
    return ties.stream().filter(i -> chair.joints().get(i).tenoned() == p).toList();
  }

  // ---- what is seen at a joint ----

  private Seen move(int i, Vec3 way) {
    Joint j = chair.joints().get(i);
    double[] factors = new double[n];
    moved(j.tenoned(), j.at(), way, 1, factors);
    moved(j.mortised(), j.at(), way, -1, factors);
    double[] wanted = new double[sides];
    for (int s = 0; s < measured.size(); s++) {
      for (Effect e : measured.get(s).effects()) {
        double off = measured.get(s).off().getAsDouble();
        wanted[s] += e.joint() == i ? e.each().of(j.at()).dot(way) * off : 0;
      }
    }
    for (int p : freed) {
      for (Effect e : causes.length(p).orElse(List.of())) {
        factors[n - 1] -= e.joint() == i ? e.each().of(j.at()).dot(way) : 0;
      }
    }
    return new Seen(factors, wanted);
  }

  private void moved(int part, Vec3 at, Vec3 way, int sign, double[] factors) {
    Vec3 turn = at.minus(middle(part)).cross(way);
    put(part, 0, way.times(sign), factors);
    put(part, 3, turn.times(sign), factors);
  }

  private static void put(int part, int from, Vec3 v, double[] factors) {
    factors[6 * part + from] += v.x();
    factors[6 * part + from + 1] += v.y();
    factors[6 * part + from + 2] += v.z();
  }

  private Vec3 middle(int part) {
    Part p = chair.parts().get(part);
    return p.frame().place(p.blank().net().low().midway(p.blank().net().high()));
  }

  private Seen turn(int i, Vec3 way) {
    Joint j = chair.joints().get(i);
    double[] factors = new double[n];
    put(j.tenoned(), 3, way, factors);
    put(j.mortised(), 3, way.negated(), factors);
    double[] wanted = new double[sides];
    for (int s = 0; s < measured.size(); s++) {
      for (Effect e : measured.get(s).effects()) {
        double off = measured.get(s).off().getAsDouble();
        wanted[s] += e.joint() == i ? e.each().turn().dot(way) * off : 0;
      }
    }
    return new Seen(factors, wanted);
  }

  // ---- what came of it, for each measured cause ----

  private double[] rest(Seen seen) {
    double[] rest = new double[measured.size()];
    for (int s = 0; s < rest.length; s++) {
      double sum = -seen.wanted()[s];
      for (int k = 0; k < n; k++) {
        sum += seen.factors()[k] * x[s][k];
      }
      rest[s] = sum;
    }
    return rest;
  }

  /** How far what goes in stands from its seat, along a direction, mm. */
  double[] apart(int joint, Vec3 way) {
    return rest(move(joint, way));
  }

  /** How far it is turned from its seat about an axis, radians. */
  double[] turned(int joint, Vec3 axis) {
    return rest(turn(joint, axis));
  }

  /** How far a place of what goes in stands off along a direction, turning with it, mm. */
  double[] apart(int joint, Vec3 way, Vec3 place) {
    double[] apart = apart(joint, way);
    // (turn × arm) · way is turn · (arm × way).
    Vec3 axis = place.minus(chair.joints().get(joint).at()).cross(way);
    double[] turned = turned(joint, axis);
    for (int s = 0; s < apart.length; s++) {
      apart[s] += turned[s];
    }
    return apart;
  }

  /** How much longer an unmade part is to be made, mm. */
  double[] length(int part) {
    double[] sum = new double[measured.size()];
    for (int i : ends(part)) {
      double[] one = apart(i, causes.out(i).negated());
      for (int s = 0; s < sum.length; s++) {
        sum[s] += one[s];
      }
    }
    return sum;
  }

  /** How far a place of a part moves along a direction, mm. */
  double[] moves(int part, Vec3 at, Vec3 way) {
    double[] factors = new double[n];
    moved(part, at, way, 1, factors);
    return rest(new Seen(factors, new double[sides]));
  }

  /** How far what goes in moves against what it goes into, along a direction, mm. */
  double[] shifts(int joint, Vec3 way) {
    Seen seen = move(joint, way);
    return rest(new Seen(seen.factors(), new double[sides]));
  }

  /** How much longer a diagonal becomes, mm. */
  double[] grows(Diagonal d) {
    Vec3 way = d.along().unit();
    double[] to = moves(d.to().part(), d.to().at(), way);
    double[] from = moves(d.from().part(), d.from().at(), way);
    for (int s = 0; s < to.length; s++) {
      to[s] -= from[s];
    }
    return to;
  }

  /** How much longer the freed parts would have to be, mm. */
  double freedBy() {
    double sum = 0;
    for (int s = 0; s < measured.size(); s++) {
      sum += x[s][n - 1];
    }
    return sum;
  }

  /** The joints of made parts, as they are left. */
  List<Integer> ofMade() {
    List<Integer> both = new ArrayList<>();
    for (int i : ties) {
      Joint j = chair.joints().get(i);
      if (made.contains(j.tenoned()) && made.contains(j.mortised())) {
        both.add(i);
      }
    }
    return both;
  }
}
