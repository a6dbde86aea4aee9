package dryfit.solid.fuzz;

import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import java.util.ArrayList;
import java.util.List;

/** Makes a pair that breaks a law as simple as it can, while it still breaks the same law. */
public final class Shrinking {
  private final Kernel kernel;
  private final String law;

  private Shrinking(Kernel kernel, String law) {
    this.kernel = kernel;
    this.law = law;
  }

  public static RandomPair of(Kernel kernel, RandomPair pair, String law) {
    Shrinking shrinking = new Shrinking(kernel, law);
    RandomPair least = pair;
    for (RandomPair next = shrinking.simpler(least);
        !next.equals(least);
        next = shrinking.simpler(least)) {
      least = next;
    }
    return least;
  }

  private RandomPair simpler(RandomPair pair) {
    for (RandomPair next : candidates(pair)) {
      if (Laws.tried(kernel, next).broken().containsKey(law)) {
        return next;
      }
    }
    return pair;
  }

  private static List<RandomPair> candidates(RandomPair pair) {
    List<RandomPair> out = new ArrayList<>();
    List<Csg> tools = pair.tools();
    for (int i = 0; i < tools.size() && tools.size() > 1; i++) {
      List<Csg> fewer = new ArrayList<>(tools);
      fewer.remove(i);
      out.add(new RandomPair(pair.seed(), pair.part(), fewer));
    }
    for (Csg part : pieces(pair.part())) {
      out.add(new RandomPair(pair.seed(), part, tools));
    }
    for (int i = 0; i < tools.size(); i++) {
      for (Csg piece : pieces(tools.get(i))) {
        List<Csg> changed = new ArrayList<>(tools);
        changed.set(i, piece);
        out.add(new RandomPair(pair.seed(), pair.part(), changed));
      }
    }
    return out;
  }

  /** What a shape is made of: its operands, or its cells, or nothing smaller. */
  private static List<Csg> pieces(Csg what) {
    List<Csg.Leaf> leaves = Moving.leaves(what);
    if (leaves.size() > 1) {
      return List.copyOf(leaves);
    }
    List<Convex> cells = leaves.get(0).cells();
    List<Csg> out = new ArrayList<>();
    if (cells.size() > 1) {
      cells.forEach(cell -> out.add(cell.asLeaf("/fuzz")));
    }
    return out;
  }
}
