package dryfit.view;

import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * How the parts are to be seen. Parts go by their labels, which stay when the chair is built anew.
 *
 * @param chosen parts the maker pointed out
 * @param hovered the part under the pointer, if any
 * @param hidden parts that are not drawn
 * @param seeThrough whether wood is like glass
 * @param fadeOthers whether all but what is chosen or clashes is faint
 * @param moved how far each part is drawn from its place; empty when all are together
 * @param cut what a saw cut leaves, if there is one
 * @param scale what stands beside the chair
 */
record Look(
    Set<String> chosen,
    Optional<String> hovered,
    Set<String> hidden,
    boolean seeThrough,
    boolean fadeOthers,
    List<Vec3> moved,
    Optional<Sawn> cut,
    Scale scale) {
  static final Look PLAIN =
      new Look(
          Set.of(),
          Optional.empty(),
          Set.of(),
          false,
          false,
          List.of(),
          Optional.empty(),
          new Scale.None());

  Look {
    chosen = java.util.Collections.unmodifiableSet(new TreeSet<>(chosen));
    hidden = java.util.Collections.unmodifiableSet(new TreeSet<>(hidden));
  }

  Look choosing(List<String> parts) {
    return new Look(
        new TreeSet<>(parts), hovered, hidden, seeThrough, fadeOthers, moved, cut, scale);
  }

  Look hovering(Optional<String> part) {
    return new Look(chosen, part, hidden, seeThrough, fadeOthers, moved, cut, scale);
  }

  Look hiding(Set<String> parts) {
    return new Look(chosen, hovered, parts, seeThrough, fadeOthers, moved, cut, scale);
  }

  Look seeThrough(boolean on) {
    return new Look(chosen, hovered, hidden, on, fadeOthers, moved, cut, scale);
  }

  Look fadingOthers(boolean on) {
    return new Look(chosen, hovered, hidden, seeThrough, on, moved, cut, scale);
  }

  Look moving(List<Vec3> offsets) {
    return new Look(chosen, hovered, hidden, seeThrough, fadeOthers, offsets, cut, scale);
  }

  Look cut(Optional<Sawn> left) {
    return new Look(chosen, hovered, hidden, seeThrough, fadeOthers, moved, left, scale);
  }

  Look beside(Scale next) {
    return new Look(chosen, hovered, hidden, seeThrough, fadeOthers, moved, cut, next);
  }

  Vec3 moved(int part) {
    return part < moved.size() ? moved.get(part) : Vec3.ZERO;
  }
}
