package dryfit.solid;

import dryfit.geometry.Mesh;
import java.util.List;

/**
 * A solid as it is made: shapes, joined and cut. A kernel turns it into one closed mesh in one go.
 * All shapes of one expression are in the same frame, the part's own, near its origin.
 */
public sealed interface Csg {

  /**
   * A shape that needs no cutting.
   *
   * @param mesh its closed surface; flat faces may have any outline
   * @param cells interior-disjoint convex cells that fill it
   */
  record Leaf(Mesh mesh, List<Convex> cells) implements Csg {
    public Leaf {
      cells = List.copyOf(cells);
    }
  }

  /** What is in any of them. */
  record Union(List<Csg> of) implements Csg {
    public Union {
      of = List.copyOf(of);
    }
  }

  /** What is in all of them. */
  record Common(List<Csg> of) implements Csg {
    public Common {
      of = List.copyOf(of);
    }
  }

  /** What is in {@code from} and in none of {@code tools}. */
  record Cut(Csg from, List<Csg> tools) implements Csg {
    public Cut {
      tools = List.copyOf(tools);
    }
  }

  default Csg minus(List<Csg> tools) {
    return tools.isEmpty() ? this : new Cut(this, tools);
  }

  default Csg plus(List<Csg> others) {
    if (others.isEmpty()) {
      return this;
    }
    List<Csg> all = new java.util.ArrayList<>(others.size() + 1);
    all.add(this);
    all.addAll(others);
    return new Union(all);
  }
}
