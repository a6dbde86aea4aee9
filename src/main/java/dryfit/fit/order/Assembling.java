package dryfit.fit.order;

import dryfit.build.Chair;
import java.util.BitSet;
import java.util.List;

/**
 * How a chair goes together.
 *
 * @param steps in the order in which they can be done
 * @param stuck groups of parts that no move we know brings together, each as few as hold each other
 *     and locked by itself: were all the others free, it would still be
 * @param asOne what the steps take as one piece because it is locked: the parts of stuck groups and
 *     what can only go in while they are open
 * @param openings sets of joint names with which the chair goes together once their joints are
 *     changed as the remedies say, tried on the solids; of as few names as it takes
 * @param glued groups that were asked to be put together first, each as one piece
 * @param marks the parts that would also go in wrong, and so need a mark
 */
public record Assembling(
    Chair chair,
    List<Step> steps,
    List<Stuck> stuck,
    List<List<Integer>> asOne,
    List<List<String>> openings,
    List<List<Integer>> glued,
    List<Mark> marks) {
  public Assembling {
    steps = List.copyOf(steps);
    stuck = List.copyOf(stuck);
    asOne = List.copyOf(asOne);
    openings = List.copyOf(openings);
    glued = List.copyOf(glued);
    marks = List.copyOf(marks);
  }

  /** The order for a chair in which nothing is glued yet. */
  public static Assembling of(Chair chair) {
    return of(chair, List.of());
  }

  /**
   * The order for a chair of which some parts are put together beforehand.
   *
   * @param glued groups of part numbers that move as one; how they were put together is not asked
   */
  public static Assembling of(Chair chair, List<List<Integer>> glued) {
    return of(chair, glued, Onlooker.NONE);
  }

  /**
   * The same, for someone who waits.
   *
   * @param onlooker is told how far it has come
   */
  public static Assembling of(Chair chair, List<List<Integer>> glued, Onlooker onlooker) {
    Pieces pieces = Pieces.of(chair);
    List<BitSet> groups = glued.stream().map(Assembling::bits).toList();
    Planner planner = new Planner(pieces, groups, onlooker);
    planner.plan();
    if (!planner.stuck().isEmpty()) {
      onlooker.now("trying on the solids what would free it");
    }
    List<List<String>> openings = Remedied.openings(pieces, planner.stuck(), groups);
    onlooker.now("trying which parts also go in wrong");
    List<Mark> marks = Orientations.marks(pieces);
    return new Assembling(
        chair, planner.steps(), planner.stuck(), planner.asOne(), openings, glued, marks);
  }

  /**
   * Only whether a chair goes together, in less time: what holds, each group as few parts as hold
   * each other; nothing if all comes together.
   *
   * @param onlooker may throw to have it broken off
   */
  public static List<Stuck> stuck(Chair chair, Onlooker onlooker) {
    Planner planner = new Planner(Pieces.of(chair), List.of(), onlooker);
    planner.plan();
    return List.copyOf(planner.stuck());
  }

  /** Whether all parts come together. */
  public boolean possible() {
    return stuck.isEmpty();
  }

  static BitSet bits(List<Integer> parts) {
    BitSet set = new BitSet();
    parts.forEach(set::set);
    return set;
  }

  static List<Integer> numbers(BitSet set) {
    return set.stream().boxed().toList();
  }
}
