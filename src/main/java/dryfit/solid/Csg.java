package dryfit.solid;

import dryfit.geometry.Mesh;
import java.util.List;
import java.util.function.UnaryOperator;

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

  /**
   * What is in all of them. Outlines crossed come to many cells, and the same ones are wanted at
   * every step of making a part: so they are kept. A mirror image has those of what it mirrors,
   * mirrored, whichever of the two is asked first.
   */
  final class Common implements Csg {
    private final List<Csg> of;
    private final double step;
    private final Common mirrors;
    private volatile List<Convex> cells;
    private Common twin;

    public Common(List<Csg> of) {
      this(of, 0, null);
    }

    /**
     * @param step that of {@link Canonical#lasting}, else 0
     */
    Common(List<Csg> of, double step) {
      this(of, step, null);
    }

    private Common(List<Csg> of, double step, Common mirrors) {
      this.of = List.copyOf(of);
      this.step = step;
      this.mirrors = mirrors;
    }

    public List<Csg> of() {
      return of;
    }

    /** Whether it is canonical for good, or the mirror image of one that is. */
    boolean lasts(double to) {
      return step == to;
    }

    /** Interior-disjoint convex cells that fill it. */
    List<Convex> cells() {
      if (cells == null) {
        cells =
            mirrors != null
                ? mirrors.cells().stream().map(Convex::mirroredZ).toList()
                : Cells.common(of.stream().map(Cells::of).toList());
      }
      return cells;
    }

    /**
     * The mirror image in z = 0, always the same one, whose own mirror image is this.
     *
     * @param mirror of each of the shapes
     */
    public synchronized Common mirrored(UnaryOperator<Csg> mirror) {
      if (mirrors != null) {
        return mirrors;
      }
      if (twin == null) {
        twin = new Common(of.stream().map(mirror).toList(), step, this);
      }
      return twin;
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
