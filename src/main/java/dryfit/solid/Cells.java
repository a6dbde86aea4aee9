package dryfit.solid;

import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Fills an expression with interior-disjoint convex cells, without any kernel: commons are clipped
 * cell by cell, cuts are peeled off plane by plane. The sum of the volumes is the volume of the
 * solid, so this is also a second opinion on what a kernel made.
 */
public final class Cells {
  private Cells() {}

  /** The cells of an expression, in its own frame; none if nothing is left of it. */
  public static List<Convex> of(Csg what) {
    if (what instanceof Csg.Leaf leaf) {
      return leaf.cells();
    } else if (what instanceof Csg.Union union) {
      return union(union.of());
    } else if (what instanceof Csg.Common common) {
      return common.cells();
    }
    Csg.Cut cut = (Csg.Cut) what;
    List<Convex> rest = of(cut.from());
    for (Csg tool : cut.tools()) {
      rest = minus(rest, of(tool));
    }
    return List.copyOf(rest);
  }

  /** The sum of the volumes, cubic millimetres. */
  public static double volume(List<Convex> cells) {
    double sum = 0;
    for (Convex cell : cells) {
      sum += cell.volume();
    }
    return sum;
  }

  /** What is in {@code cells} and in none of {@code tools}. */
  public static List<Convex> minus(List<Convex> cells, List<Convex> tools) {
    List<Convex> rest = cells;
    for (Convex tool : tools) {
      List<Convex> left = new ArrayList<>(rest.size() + tool.faces.length);
      for (Convex cell : rest) {
        peel(cell, tool, left);
      }
      rest = left;
    }
    return rest;
  }

  /** What is in both. */
  public static List<Convex> common(List<Convex> a, List<Convex> b) {
    List<Convex> shared = new ArrayList<>();
    for (Convex one : a) {
      for (Convex other : b) {
        Convex both = Clip.common(one, other);
        if (both != null) {
          shared.add(both);
        }
      }
    }
    return shared;
  }

  private static List<Convex> union(List<Csg> all) {
    List<Convex> sum = new ArrayList<>();
    for (Csg each : all) {
      sum.addAll(minus(of(each), List.copyOf(sum)));
    }
    return List.copyOf(sum);
  }

  /** What is in all of several sets of cells. */
  static List<Convex> common(List<List<Convex>> all) {
    if (all.isEmpty()) {
      return List.of();
    }
    List<Convex> shared = all.get(0);
    for (List<Convex> each : all.subList(1, all.size())) {
      shared = common(shared, each);
    }
    return List.copyOf(shared);
  }

  /**
   * Adds what the tool leaves of the cell. One plane of the tool after the other parts off what is
   * outside it; a plane that no longer cuts the rest parts nothing, so no splinters arise. The
   * plane that takes most goes first: the large pieces are then as whole as they can be.
   */
  private static void peel(Convex cell, Convex tool, List<Convex> left) {
    if (!Clip.near(cell, tool) || Clip.apart(cell, tool, Tolerances.sliver())) {
      left.add(cell);
      return;
    }
    List<Convex> pieces = new ArrayList<>();
    boolean[] done = new boolean[tool.faces.length];
    Convex rest = cell;
    for (int f = mostOutside(rest, tool, done); f >= 0; f = mostOutside(rest, tool, done)) {
      done[f] = true;
      double nx = tool.planes[4 * f];
      double ny = tool.planes[4 * f + 1];
      double nz = tool.planes[4 * f + 2];
      double offset = tool.planes[4 * f + 3];
      Convex outside = Clip.inside(rest, -nx, -ny, -nz, -offset);
      rest = Clip.inside(rest, nx, ny, nz, offset);
      if (rest == null) {
        // Only an edge kept them apart: the tool takes nothing, and the cell stays whole.
        left.add(cell);
        return;
      }
      if (outside != null) {
        pieces.add(outside);
      }
    }
    left.addAll(pieces);
  }

  /** The face of the tool that the cell stands farthest over; -1 if none by more than a sliver. */
  private static int mostOutside(Convex cell, Convex tool, boolean[] done) {
    int best = -1;
    double most = Tolerances.sliver();
    for (int f = 0; f < done.length; f++) {
      if (!done[f]) {
        double out = tool.highest(f, cell.xyz);
        if (out > most) {
          most = out;
          best = f;
        }
      }
    }
    return best;
  }
}
