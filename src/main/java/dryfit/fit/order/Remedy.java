package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Way;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A change that would free parts that are stuck, tried on the solids.
 *
 * @param joints of one name in the document, whose tenons are in the way
 * @param entry unit direction in which the first of these tenons would have to go in
 * @param off the greatest angle between that and the way one of them goes in now, radians
 * @param longest the longest tenon that its clearance would let in that way, mm
 */
public record Remedy(List<Joint> joints, Vec3 entry, double off, double longest) {
  /** Halvings of a tenon: a thousandth of its length. */
  private static final int HALVINGS = 10;

  public Remedy {
    joints = List.copyOf(joints);
  }

  /** For each name of a joint that alone keeps the group locked, the change that is least. */
  static List<Remedy> of(Pieces pieces, BitSet group, List<Joint> joints, List<BitSet> glued) {
    Set<String> names = new LinkedHashSet<>();
    joints.forEach(j -> names.add(j.name()));
    List<Remedy> found = new ArrayList<>();
    for (String name : names) {
      List<Joint> changed = joints.stream().filter(j -> j.name().equals(name)).toList();
      remedy(pieces, group, joints, changed, glued).ifPresent(found::add);
    }
    return found;
  }

  private static Optional<Remedy> remedy(
      Pieces pieces, BitSet group, List<Joint> joints, List<Joint> changed, List<BitSet> glued) {
    Pieces without = shortened(pieces, changed, 0);
    List<Vec3> ways = new ArrayList<>(List.of(Vec3.BACK, Vec3.UP, Vec3.RIGHT));
    joints.stream().filter(j -> !changed.contains(j)).forEach(j -> ways.add(j.entry()));
    return ways.stream()
        .filter(
            d ->
                Parting.best(without, group, List.of(Blocking.along(d, without, group)), glued)
                    .isPresent())
        .min(Comparator.comparingDouble(d -> off(changed, d)))
        .map(
            d -> {
              Joint first = changed.get(0);
              Vec3 entry = d.dot(first.entry()) < 0 ? d.negated() : d;
              return new Remedy(changed, entry, off(changed, d), longest(pieces, changed, d));
            })
        .filter(r -> r.off() < Math.PI / 3);
  }

  private static double off(List<Joint> joints, Vec3 d) {
    return joints.stream()
        .mapToDouble(j -> Math.min(j.entry().angleTo(d), j.entry().angleTo(d.negated())))
        .max()
        .orElseThrow();
  }

  private static double longest(Pieces pieces, List<Joint> joints, Vec3 d) {
    double least = Double.POSITIVE_INFINITY;
    for (Joint j : joints) {
      Vec3 away = d.dot(j.entry()) < 0 ? d : d.negated();
      double good = 0;
      double bad = 1;
      for (int i = 0; i < HALVINGS; i++) {
        double share = (good + bad) / 2;
        Pieces shorter = shortened(pieces, List.of(j), share);
        if (Way.clear(shorter.cells(j.tenoned()), shorter.cells(j.mortised()), away)) {
          good = share;
        } else {
          bad = share;
        }
      }
      least = Math.min(least, good * j.length());
    }
    return least;
  }

  /** With the tenons of these joints cut down to a share of their length. */
  private static Pieces shortened(Pieces pieces, List<Joint> joints, double share) {
    Pieces changed = pieces;
    for (Joint j : joints) {
      Plane cut =
          Plane.through(j.at().plus(j.entry().times(share * j.length())), j.entry().negated());
      List<Convex> off =
          share == 0
              ? j.tenon()
              : j.tenon().stream().map(c -> c.clipped(cut)).flatMap(Optional::stream).toList();
      changed = changed.with(j.tenoned(), Cells.minus(changed.cells(j.tenoned()), off));
    }
    return changed;
  }
}
