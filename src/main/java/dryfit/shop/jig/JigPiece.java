package dryfit.shop.jig;

import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.solid.Convex;
import java.util.List;

/**
 * One piece of a jig as it is printed.
 *
 * @param name for people
 * @param mesh its closed surface as it lies on the bed: z up from the bed, which is z = 0, mm
 * @param cells convex cells that hold all of it: without its lettering, bores and relieved edges
 * @param on takes the bed's coordinates to chair space, where the piece sits on its part
 */
public record JigPiece(String name, Mesh mesh, List<Convex> cells, Frame on) {
  public JigPiece {
    cells = List.copyOf(cells);
  }
}
