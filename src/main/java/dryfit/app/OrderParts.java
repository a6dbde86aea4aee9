package dryfit.app;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Nearest;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Onlooker;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The order in which a chair goes together, and how a command that asked for it ends. */
public record OrderParts(Assembling assembling) {

  /** A part was named that the chair does not have, or named twice. */
  public static final class UnknownPart extends Exception {
    private static final long serialVersionUID = 1L;

    UnknownPart(String message) {
      super(message);
    }
  }

  /**
   * Finds the order.
   *
   * @param glued labels of parts that are put together beforehand, a list for each group; the name
   *     of a pair stands for both
   * @param onlooker is told how far it has come
   * @throws UnknownPart if a label is none of the chair's, in two groups, or joined to none of its
   *     group
   */
  public static OrderParts of(Chair chair, List<List<String>> glued, Onlooker onlooker)
      throws UnknownPart {
    List<String> labels = chair.parts().stream().map(Part::label).toList();
    List<List<String>> named =
        glued.stream().map(g -> g.stream().flatMap(n -> hands(n, labels)).toList()).toList();
    List<String> all = named.stream().flatMap(List::stream).toList();
    for (String label : all) {
      if (!labels.contains(label)) {
        String nearest =
            Nearest.to(label, labels).map(n -> "; the nearest is '" + n + "'").orElse("");
        throw new UnknownPart(
            "no part is called '"
                + label
                + "'"
                + nearest
                + "; there are "
                + String.join(", ", labels));
      }
      if (all.indexOf(label) != all.lastIndexOf(label)) {
        throw new UnknownPart("'" + label + "' is named twice");
      }
    }
    List<List<Integer>> groups =
        named.stream().map(g -> g.stream().map(labels::indexOf).sorted().toList()).toList();
    for (List<Integer> group : groups) {
      Optional<Integer> apart = apart(chair, group);
      if (apart.isPresent()) {
        throw new UnknownPart(
            "'" + labels.get(apart.get()) + "' is jointed to no other part that is named with it");
      }
    }
    return new OrderParts(Assembling.of(chair, groups, onlooker));
  }

  /** Both of a pair that is named without a hand; any other name as it is. */
  private static Stream<String> hands(String name, List<String> labels) {
    List<String> both = List.of(name + " right", name + " left");
    return labels.containsAll(both) ? both.stream() : Stream.of(name);
  }

  /**
   * A part that no joint holds to the others of its group, even by way of others of it. Parts that
   * have no joint at all, as pegs and loose boards, are taken at their word.
   */
  private static Optional<Integer> apart(Chair chair, List<Integer> group) {
    List<Joint> within =
        chair.joints().stream()
            .filter(j -> group.contains(j.tenoned()) && group.contains(j.mortised()))
            .toList();
    List<Integer> jointed =
        group.stream()
            .filter(
                p -> chair.joints().stream().anyMatch(j -> j.tenoned() == p || j.mortised() == p))
            .toList();
    Set<Integer> held = new HashSet<>(jointed.stream().limit(1).toList());
    boolean more = true;
    while (more) {
      more = false;
      for (Joint j : within) {
        if (held.contains(j.tenoned()) || held.contains(j.mortised())) {
          more |= held.addAll(List.of(j.tenoned(), j.mortised()));
        }
      }
    }
    return jointed.stream().filter(p -> !held.contains(p)).findFirst();
  }

  public Exit exit() {
    return assembling.possible() ? Exit.FITS : Exit.DOES_NOT_FIT;
  }
}
