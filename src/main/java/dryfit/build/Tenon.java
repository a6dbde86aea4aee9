package dryfit.build;

import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import java.util.List;

/**
 * One tenon of a joint and the hole it goes into, in chair space. Most joints have one; twins,
 * dowels and screws are several.
 *
 * @param part index in {@link Chair#parts} of the part whose wood it is: the tenoned part, or a
 *     loose tenon or dowel that is a piece of its own
 * @param at where its middle line goes through the mouth
 * @param wood what of it is inside the mouth
 * @param hole its mortise as cut, including the overrun outside the mouth
 */
public record Tenon(int part, Vec3 at, List<Convex> wood, List<Convex> hole) {
  public Tenon {
    wood = List.copyOf(wood);
    hole = List.copyOf(hole);
  }

  Tenon withWood(List<Convex> other) {
    return new Tenon(part, at, other, hole);
  }
}
