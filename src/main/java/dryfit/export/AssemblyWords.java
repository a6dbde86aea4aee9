package dryfit.export;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Groups;
import dryfit.fit.order.Remedy;
import dryfit.fit.order.Step;
import dryfit.fit.order.Stuck;
import dryfit.geometry.Vec3;
import dryfit.measure.Angle;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** What a maker calls groups of parts and the ways they are pushed. */
final class AssemblyWords {
  /** Less than shows in the two decimals of a degree. */
  private static final double SHOWS = Math.toRadians(0.005);

  private final Assembling order;
  private final Chair chair;
  private final Groups groups;
  private final TextStyle style;

  AssemblyWords(Assembling order, TextStyle style) {
    this.style = style;
    this.order = order;
    this.chair = order.chair();
    this.groups = new Groups(chair);
  }

  String labels(List<Integer> parts) {
    return and(parts.stream().map(chair.parts()::get).map(Part::label).toList());
  }

  private static String and(List<String> all) {
    int last = all.size() - 1;
    return last < 1
        ? String.join("", all)
        : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
  }

  /**
   * One part by its label, a frame by its name, another group by the step that made it.
   *
   * @param before number of the step that is told, from 0
   */
  String group(List<Integer> parts, int before) {
    if (parts.size() == 1) {
      return chair.parts().get(parts.get(0)).label();
    }
    BitSet set = new BitSet();
    parts.forEach(set::set);
    String made = "";
    for (int k = 0; k < before; k++) {
      if (made(order.steps().get(k)).equals(set)) {
        made = "step " + (k + 1);
      }
    }
    String from = made.isEmpty() ? "" : " (" + made + ")";
    return groups
        .frame(set)
        .map(name -> "the " + name + from)
        .orElseGet(
            () ->
                parts.size() <= 2 || from.isEmpty()
                    ? labels(parts)
                    : "what " + "step " + stepOf(from) + " made");
  }

  private static String stepOf(String from) {
    return from.replaceAll("\\D", "");
  }

  private static BitSet made(Step step) {
    BitSet set = new BitSet();
    step.onto().forEach(set::set);
    step.moves().forEach(m -> m.parts().forEach(set::set));
    return set;
  }

  /** Into, if what moves has a tenon that goes in; else onto. */
  String joining(Step step) {
    List<Integer> moved = step.moves().get(0).parts();
    return step.closes().stream().anyMatch(j -> moved.contains(j.tenoned())) ? "into" : "onto";
  }

  /** {@code to the back, 5.71° to the right of it and 4.00° down}. */
  String direction(Vec3 d) {
    boolean seated = chair.design().labels() == Design.Labels.AS_SEATED;
    double[] size = {seated ? -d.x() : d.x(), d.y(), d.z()};
    String[] plus = {"to the right", "to the back", "up"};
    String[] minus = {"to the left", "to the front", "down"};
    int main = 0;
    for (int axis = 1; axis < 3; axis++) {
      if (Math.abs(size[axis]) > Math.abs(size[main])) {
        main = axis;
      }
    }
    List<String> aside = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      double off = Math.atan2(Math.abs(size[axis]), Math.abs(size[main]));
      if (axis != main && off > SHOWS) {
        aside.add(degrees(off) + " " + (size[axis] > 0 ? plus[axis] : minus[axis]));
      }
    }
    String straight = size[main] > 0 ? plus[main] : minus[main];
    return aside.isEmpty() ? "straight " + straight : straight + " and " + and(aside);
  }

  static String degrees(double radians) {
    return Angle.degrees(radians);
  }

  /** Why parts are stuck: a sentence, then what would free them. */
  List<String> why(Stuck stuck) {
    List<String> lines = new ArrayList<>();
    if (!stuck.collide().isEmpty()) {
      lines.add(
          "These parts claim the same wood where they stand, so no move can bring them there;"
              + " \"fit\" says where:");
      stuck.collide().forEach(pair -> lines.add(labels(pair)));
      return lines;
    }
    List<String> joints = stuck.joints().stream().map(Joint::label).toList();
    lines.add(
        labels(stuck.parts())
            + " lock one another: along every direction looked at, one of them is held by another."
            + (joints.isEmpty() ? "" : " They are held by:"));
    lines.addAll(joints);
    stuck.remedies().forEach(r -> lines.add(remedy(r)));
    return lines;
  }

  private String remedy(Remedy r) {
    String name = "\"" + r.joints().get(0).name() + "\"";
    String length =
        r.longest() > 0
            ? "; or make the tenon no longer than " + style.length(r.longest())
            : "";
    return "free if "
        + name
        + " goes in "
        + direction(r.entry())
        + (r.off() > SHOWS ? ", " + degrees(r.off()) + " off its way now" : "")
        + ": lean the mortise or angle the tenon so"
        + length
        + "; or put the tenon in last, from outside (through, or a dowel)";
  }
}
