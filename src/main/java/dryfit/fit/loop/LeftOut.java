package dryfit.fit.loop;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.JointPlan.Kind;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is not reckoned with when a chair is closed again: what holds no end of a part. It is told
 * where the parts around it come to stand otherwise than planned.
 *
 * @param what in a maker's words
 * @param by how far they come to stand otherwise to each other, mm
 */
public record LeftOut(String what, double by) {

  /** All that comes out otherwise by more than shows, in the order of the chair. */
  static List<LeftOut> of(Chair chair, Slack slack, double shows) {
    Map<String, Double> most = new LinkedHashMap<>();
    for (int i : joints(chair)) {
      most.merge(words(chair, chair.joints().get(i)), moves(chair, slack, i), Math::max);
    }
    double any = 0;
    for (int i : Causes.ties(chair)) {
      Joint j = chair.joints().get(i);
      any = Math.max(any, length(slack, j.tenoned(), j.at()));
      any = Math.max(any, length(slack, j.mortised(), j.at()));
    }
    for (int p = 0; p < chair.parts().size(); p++) {
      if (isLoose(chair, p)) {
        most.put(chair.parts().get(p).label() + ", which no joint holds", any);
      }
    }
    List<LeftOut> out = new ArrayList<>();
    most.forEach(
        (what, by) -> {
          if (by >= shows) {
            out.add(new LeftOut(what, by));
          }
        });
    return out;
  }

  /** What is left out at any of these parts, in words. */
  static List<String> at(Chair chair, Set<Integer> parts) {
    return joints(chair).stream()
        .map(i -> chair.joints().get(i))
        .filter(j -> parts.contains(j.tenoned()) || parts.contains(j.mortised()))
        .map(j -> words(chair, j))
        .distinct()
        .toList();
  }

  private static List<Integer> joints(Chair chair) {
    List<Integer> ties = Causes.ties(chair);
    List<Integer> others = new ArrayList<>();
    for (int i = 0; i < chair.joints().size(); i++) {
      if (!ties.contains(i) && !chair.isHeldByPieces(chair.joints().get(i))) {
        others.add(i);
      }
    }
    return others;
  }

  private static String words(Chair chair, Joint joint) {
    String part = chair.parts().get(joint.tenoned()).label();
    return joint.plan().kind() == Kind.GROOVE ? part + " in its grooves" : joint.label();
  }

  /** Both parts where they meet, one against the other. */
  private static double moves(Chair chair, Slack slack, int joint) {
    Vec3[] ways = Slack.ways(chair.joints().get(joint).mouth().normal());
    return norm(Arrays.stream(ways).mapToDouble(w -> sum(slack.shifts(joint, w))).toArray());
  }

  private static double length(Slack slack, int part, Vec3 at) {
    Vec3[] ways = Slack.ways(Vec3.UP);
    return norm(Arrays.stream(ways).mapToDouble(w -> sum(slack.moves(part, at, w))).toArray());
  }

  private static double sum(double[] shares) {
    return Arrays.stream(shares).sum();
  }

  private static double norm(double[] v) {
    return Math.sqrt(Arrays.stream(v).map(a -> a * a).sum());
  }

  private static boolean isLoose(Chair chair, int p) {
    Part part = chair.parts().get(p);
    return !part.isPiece()
        && chair.joints().stream().noneMatch(j -> j.tenoned() == p || j.mortised() == p);
  }
}
