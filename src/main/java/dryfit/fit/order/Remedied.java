package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.build.Tenon;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Makes the changes that would free what is stuck, on the solids, and looks whether the whole chair
 * then comes apart: a lock may be freed and the next one stay.
 */
final class Remedied {
  /** So many sets of changes are tried, each of which is as much work as a chair. */
  private static final int TRIED = 10;

  /** So many sets that work are told. */
  private static final int TOLD = 3;

  private final Pieces pieces;
  private final List<Stuck> stuck;
  private final List<BitSet> glued;

  private Remedied(Pieces pieces, List<Stuck> stuck, List<BitSet> glued) {
    this.pieces = pieces;
    this.stuck = stuck;
    this.glued = glued;
  }

  /**
   * Sets of joint names with which the chair goes together, if all joints of these names are
   * changed as their remedies say; as few names as it takes, beginning with the least change.
   */
  static List<List<String>> openings(Pieces pieces, List<Stuck> stuck, List<BitSet> glued) {
    List<List<String>> found = new ArrayList<>();
    if (stuck.isEmpty()) {
      return found;
    }
    Remedied all = new Remedied(pieces, stuck, glued);
    int size = 0;
    for (List<String> names : all.sets()) {
      boolean more =
          !names.isEmpty() && (found.isEmpty() || names.size() == size && found.size() < TOLD);
      if (more && all.opens(names)) {
        found.add(names);
        size = names.size();
      }
    }
    return found;
  }

  /** One name for each lock, in every way, the fewest names first; nothing if a lock has none. */
  private List<List<String>> sets() {
    Set<Set<String>> sets = new LinkedHashSet<>(List.of(new LinkedHashSet<>()));
    for (Stuck one : stuck) {
      Set<Set<String>> more = new LinkedHashSet<>();
      for (Set<String> set : sets) {
        List<String> names = one.remedies().stream().map(r -> r.joints().get(0).name()).toList();
        if (names.stream().anyMatch(set::contains)) {
          more.add(set);
        }
        for (String name : names) {
          Set<String> next = new LinkedHashSet<>(set);
          next.add(name);
          more.add(next);
        }
      }
      sets = limited(more);
    }
    return sets.stream().map(s -> List.copyOf(s)).toList();
  }

  private static Set<Set<String>> limited(Set<Set<String>> sets) {
    List<Set<String>> sorted = new ArrayList<>(sets);
    sorted.sort((a, b) -> Integer.compare(a.size(), b.size()));
    return new LinkedHashSet<>(sorted.subList(0, Math.min(TRIED, sorted.size())));
  }

  private boolean opens(List<String> names) {
    Pieces changed = pieces;
    for (Stuck one : stuck) {
      for (Remedy remedy : one.remedies()) {
        if (names.contains(remedy.joints().get(0).name())) {
          for (Joint j : remedy.joints()) {
            changed = redirected(changed, j, remedy.entry());
          }
        }
      }
    }
    Pieces made = changed;
    List<Blocking> ways =
        Directions.of(made).parallelStream().map(d -> Blocking.along(d, made)).toList();
    BitSet all = new BitSet();
    all.set(0, made.count());
    return new Locks(made, new TwoWays(made), ways, glued, List.of()).within(all).isEmpty();
  }

  /** With a tenon and its mortise leaning another way, their places at the mouth kept. */
  private static Pieces redirected(Pieces pieces, Joint joint, Vec3 way) {
    Vec3 entry = way.dot(joint.entry()) < 0 ? way.negated() : way;
    Vec3 aside = entry.times(1 / entry.dot(joint.entry())).minus(joint.entry());
    List<Tenon> tenons = new ArrayList<>();
    for (Tenon t : joint.tenons()) {
      tenons.add(
          new Tenon(
              t.part(), t.at(), leaned(t.wood(), joint, aside), leaned(t.hole(), joint, aside)));
    }
    Vec3 thick = entry.cross(joint.wide()).unit();
    thick = thick.dot(joint.thick()) < 0 ? thick.negated() : thick;
    Vec3 wide = entry.cross(thick).unit();
    wide = wide.dot(joint.wide()) < 0 ? wide.negated() : wide;
    Joint changed =
        new Joint(
            joint.plan(),
            joint.hand(),
            joint.label(),
            joint.tenoned(),
            joint.atStart(),
            joint.mortised(),
            joint.mouth(),
            joint.at(),
            entry,
            thick,
            wide,
            joint.length(),
            tenons,
            joint.open());
    List<Convex> filled = new ArrayList<>(pieces.cells(joint.mortised()));
    filled.addAll(joint.tenon());
    Pieces out =
        pieces.with(joint, changed).with(joint.mortised(), Cells.minus(filled, changed.mortise()));
    for (int k = 0; k < tenons.size(); k++) {
      int part = tenons.get(k).part();
      List<Convex> wood =
          new ArrayList<>(Cells.minus(out.cells(part), joint.tenons().get(k).wood()));
      wood.addAll(tenons.get(k).wood());
      out = out.with(part, wood);
    }
    return out;
  }

  private static List<Convex> leaned(List<Convex> cells, Joint joint, Vec3 aside) {
    return cells.stream()
        .map(
            c ->
                Convex.hull(
                    c.points().stream()
                        .map(p -> p.plus(aside.times(p.minus(joint.at()).dot(joint.entry()))))
                        .toList()))
        .toList();
  }
}
