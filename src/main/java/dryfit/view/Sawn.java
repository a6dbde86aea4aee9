package dryfit.view;

import dryfit.geometry.Plane;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * The chair sawn through.
 *
 * @param plane chair space; its normal points out of the half that is left
 * @param parts what is left of each part, in the chair's order
 */
record Sawn(Plane plane, List<Cutaway> parts) {
  /** A face number for the cut face, which no mesh has. */
  static final int CUT = -1;

  Sawn {
    parts = List.copyOf(parts);
  }

  static Sawn of(Shown shown, Plane plane) {
    return new Sawn(plane, Cutaway.of(shown, plane));
  }

  /**
   * What a ray meets first of what is left of a part; empty if it meets none of it.
   *
   * @param hits where it goes through the whole part's surface, the nearest first
   * @param from where it starts, as seen by a part that stands in its place
   * @param ray unit direction
   */
  Optional<Rays.Hit> first(List<Rays.Hit> hits, Vec3 from, Vec3 ray) {
    double height = plane.height(from);
    double sinking = -plane.normal().dot(ray);
    boolean before = height > 0 && sinking > 0;
    double at = before ? height / sinking : 0;
    if (before && hits.stream().filter(h -> h.distance() < at).count() % 2 == 1) {
      // It is in the wood where it comes to the cut.
      return Optional.of(new Rays.Hit(at, CUT, true));
    }
    return hits.stream()
        .filter(h -> plane.height(from.plus(ray.times(h.distance()))) <= 0)
        .findFirst();
  }
}
