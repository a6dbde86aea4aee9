package dryfit.export;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Groups;
import dryfit.fit.order.Mark;
import dryfit.fit.order.Mark.Wrong;
import dryfit.fit.order.Remedy;
import dryfit.fit.order.Step;
import dryfit.fit.order.Stuck;
import dryfit.geometry.Vec3;
import dryfit.measure.Angle;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** What a maker calls groups of parts and the ways they are pushed. */
final class AssemblyWords {
  /** Less than shows in the two decimals of a degree. */
  private static final double SHOWS = Math.toRadians(0.005);

  /** Nobody pushes a part straight to less than this. */
  private static final double STRAIGHT = Math.toRadians(1);

  /** A tenon shorter than this, mm, holds nothing and is no advice. */
  private static final double SHORTEST = 6;

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

  /**
   * What a step joins onto. Of two parts that have no name together, the one that is met first, and
   * what it carries.
   */
  String onto(Step step, int before) {
    List<Integer> parts = step.onto();
    String all = group(parts, before);
    if (parts.size() != 2 || !all.equals(labels(parts))) {
      return all;
    }
    List<Integer> met =
        parts.stream()
            .filter(
                p -> step.closes().stream().anyMatch(j -> j.tenoned() == p || j.mortised() == p))
            .toList();
    if (met.size() != 1) {
      return all;
    }
    int other = parts.get(0).equals(met.get(0)) ? parts.get(1) : parts.get(0);
    return labels(met) + ", with " + labels(List.of(other)) + " on it";
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
    int made = 0;
    for (int k = 0; k < before; k++) {
      made = made(order.steps().get(k)).equals(set) ? k + 1 : made;
    }
    boolean locked =
        order.asOne().stream().anyMatch(g -> parts.size() == g.size() && parts.containsAll(g));
    if (locked && made == 0) {
      return order.asOne().size() == 1 ? "what is locked" : "the locked piece of " + labels(parts);
    }
    String from = made == 0 ? "" : " (step " + made + ")";
    String other = made == 0 || parts.size() == 2 ? labels(parts) : "what step " + made + " made";
    return groups.frame(set).map(name -> "the " + name + from).orElse(other);
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
      if (axis != main && off > STRAIGHT) {
        aside.add(degrees(off) + " " + (size[axis] > 0 ? plus[axis] : minus[axis]));
      }
    }
    String straight = size[main] > 0 ? plus[main] : minus[main];
    return aside.isEmpty() ? "straight " + straight : straight + " and " + and(aside);
  }

  static String degrees(double radians) {
    return Angle.degrees(radians);
  }

  /** Which parts go in wrong, in which ways, and what mark prevents it. */
  List<String> marks() {
    List<String> lines = new ArrayList<>();
    Set<Integer> told = new HashSet<>();
    for (Mark mark : order.marks()) {
      if (!mark.wrong().isEmpty() && !told.contains(mark.part())) {
        List<Mark> alike = order.marks().stream().filter(m -> alike(mark, m)).toList();
        alike.forEach(m -> told.add(m.part()));
        lines.add(mark(alike));
      }
    }
    lines.addAll(elsewhere());
    return lines;
  }

  /** Whether two marks are those of both hands and can be told in one line. */
  private boolean alike(Mark one, Mark other) {
    return chair.parts().get(one.part()).name().equals(chair.parts().get(other.part()).name())
        && one.wrong().equals(other.wrong())
        && turns(one).equals(turns(other));
  }

  private String mark(List<Mark> alike) {
    Mark first = alike.get(0);
    List<String> ways = first.wrong().stream().map(AssemblyWords::wrong).toList();
    List<String> marks = new ArrayList<>();
    if (first.wrong().stream().anyMatch(Wrong::swapped)) {
      Part part = chair.parts().get(first.part());
      boolean seated = chair.design().labels() == Design.Labels.AS_SEATED;
      boolean right = (part.hand() == Hand.RIGHT) != seated;
      marks.add(alike.size() > 1 ? "mark right and left" : "mark it " + (right ? "right" : "left"));
    }
    marks.addAll(turns(first));
    return labels(alike.stream().map(Mark::part).toList())
        + (alike.size() > 1 ? " also go in " : " also goes in ")
        + String.join(", or ", ways)
        + ": "
        + and(marks);
  }

  /** The marks against the wrong end and the wrong side. */
  private List<String> turns(Mark mark) {
    Part part = chair.parts().get(mark.part());
    List<String> marks = new ArrayList<>();
    if (mark.wrong().stream().anyMatch(Wrong::endForEnd)) {
      marks.add("mark the end that goes " + main(part.frame().x()));
    }
    if (mark.wrong().stream().anyMatch(w -> w.quarters() > 0)) {
      marks.add("mark the side that looks " + main(part.frame().y()));
    }
    return marks;
  }

  /** Parts of several names that go into one another's places, a line for each set of them. */
  private List<String> elsewhere() {
    List<BitSet> sets = new ArrayList<>();
    for (Mark mark : order.marks()) {
      if (!mark.elsewhere().isEmpty()) {
        BitSet one = new BitSet();
        one.set(mark.part());
        mark.elsewhere().forEach(one::set);
        sets.stream().filter(s -> s.intersects(one)).forEach(one::or);
        sets.removeIf(s -> s.intersects(one));
        sets.add(one);
      }
    }
    return sets.stream().map(this::elsewhere).toList();
  }

  private String elsewhere(BitSet set) {
    Set<Integer> going = new TreeSet<>();
    Set<Integer> into = new TreeSet<>();
    for (Mark mark : order.marks()) {
      if (set.get(mark.part()) && !mark.elsewhere().isEmpty()) {
        going.add(mark.part());
        into.addAll(mark.elsewhere());
      }
    }
    String places =
        going.equals(into) ? "one another's places" : "the place of " + labels(List.copyOf(into));
    return labels(List.copyOf(going))
        + (going.size() == 1 ? " also goes into " : " also go into ")
        + places
        + ", though they are not alike: write its name on each";
  }

  private static String wrong(Wrong wrong) {
    String turn =
        switch (wrong.quarters()) {
          case 0 -> "";
          case 2 -> "turned half round";
          default -> "turned a quarter";
        };
    String end = wrong.endForEnd() ? "end for end" : "";
    String both = end.isEmpty() || turn.isEmpty() ? end + turn : end + " and " + turn;
    String place = wrong.swapped() ? "on the other side" : "";
    return both.isEmpty() || place.isEmpty() ? both + place : both + " " + place;
  }

  /** The word for where a direction mostly goes. */
  private String main(Vec3 d) {
    double x = Math.abs(d.x());
    double y = Math.abs(d.y());
    double z = Math.abs(d.z());
    Vec3 most =
        z >= x && z >= y
            ? new Vec3(0, 0, d.z())
            : y >= x ? new Vec3(0, d.y(), 0) : new Vec3(d.x(), 0, 0);
    return direction(most).replace("straight ", "");
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
    Optional<Integer> first = mirrored(stuck);
    if (first.isPresent()) {
      lines.add(
          stuckGroups(stuck)
              + " lock one another in the same way as group "
              + (first.get() + 1)
              + ", the other hand; what frees that one frees this one, mirrored.");
      return lines;
    }
    List<String> joints = stuck.joints().stream().map(Joint::label).toList();
    lines.add(
        stuckGroups(stuck)
            + " lock one another: along every direction looked at, one of them is held by another."
            + (joints.isEmpty() ? "" : " They are held by:"));
    lines.addAll(joints);
    lines.addAll(frees(stuck));
    return lines;
  }

  /** What would free parts that lock one another and claim no wood twice. */
  private List<String> frees(Stuck stuck) {
    return stuck.remedies().isEmpty()
        ? List.of(noRemedy(stuck))
        : stuck.remedies().stream().map(this::remedy).toList();
  }

  /** What would free a whole chair, each thing once, whichever hand. */
  static List<String> frees(Chair chair, List<Stuck> stuck, TextStyle style) {
    List<String> frees = new ArrayList<>();
    List<List<Integer>> none = List.of();
    AssemblyWords words =
        new AssemblyWords(
            new Assembling(chair, List.of(), stuck, none, List.of(), none, List.of()), style);
    for (Stuck each : stuck) {
      if (each.collide().isEmpty() && words.mirrored(each).isEmpty()) {
        frees.addAll(words.frees(each));
      }
    }
    return frees.stream().distinct().toList();
  }

  private String noRemedy(Stuck stuck) {
    String tried = "no lean of one of these joints, and no shorter tenon, frees them: ";
    List<Integer> loose = new ArrayList<>(stuck.parts());
    order.glued().forEach(loose::removeAll);
    boolean glued = loose.size() < stuck.parts().size();
    return tried
        + (glued && !loose.isEmpty()
            ? "put " + labels(loose) + " in before the rest is glued together, or "
            : "")
        + "join it with a piece that goes in last, from outside (through, or a dowel)";
  }

  /** The stuck parts, those put together beforehand under one name. */
  private String stuckGroups(Stuck stuck) {
    List<String> names = new ArrayList<>();
    List<Integer> rest = new ArrayList<>(stuck.parts());
    for (List<Integer> glued : order.glued()) {
      if (rest.removeAll(glued)) {
        BitSet set = new BitSet();
        glued.forEach(set::set);
        names.add(groups.frame(set).map(n -> "the " + n).orElseGet(() -> labels(glued)));
      }
    }
    rest.forEach(i -> names.add(chair.parts().get(i).label()));
    return and(names);
  }

  /** The group told before of which this one is the other hand. */
  private Optional<Integer> mirrored(Stuck stuck) {
    int own = order.stuck().indexOf(stuck);
    List<String> twins = stuck.joints().stream().map(AssemblyWords::otherHand).sorted().toList();
    return IntStream.range(0, own)
        .filter(n -> !twins.isEmpty() && twins.equals(jointHands(order.stuck().get(n))))
        .boxed()
        .findFirst();
  }

  private static List<String> jointHands(Stuck stuck) {
    return stuck.joints().stream().map(j -> j.name() + " " + j.hand()).sorted().toList();
  }

  private static String otherHand(Joint joint) {
    return joint.name() + " " + joint.hand().other();
  }

  /** Which of the changes, made alone or together, open the whole chair. */
  List<String> openings() {
    if (order.possible() || order.stuck().stream().anyMatch(s -> s.remedies().isEmpty())) {
      return List.of();
    }
    if (order.openings().isEmpty()) {
      return List.of(
          "Tried on the solids: none of these changes opens the whole chair, neither alone nor one"
              + " for each group together.");
    }
    return order.openings().stream()
        .map(names -> names.stream().map(n -> "\"" + n + "\"").toList())
        .map(
            names ->
                "Tried on the solids: with "
                    + and(names)
                    + " leaning so, "
                    + (names.size() > 1 ? "together, " : "")
                    + "both hands alike, the whole chair goes together.")
        .toList();
  }

  private String remedy(Remedy r) {
    String name = "\"" + r.joints().get(0).name() + "\"";
    String length =
        r.longest() >= SHORTEST
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
