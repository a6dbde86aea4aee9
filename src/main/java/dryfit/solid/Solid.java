package dryfit.solid;

import dryfit.geometry.Mesh;
import java.util.List;

/**
 * A closed solid, immutable: its surface from a kernel, and interior-disjoint convex cells that
 * fill it, computed without the kernel. The two are independent answers; tests hold them together.
 *
 * @param mesh closed surface in the part's own frame
 * @param cells convex cells in the same frame
 */
public record Solid(Mesh mesh, List<Convex> cells) {
  public Solid {
    cells = List.copyOf(cells);
  }
}
