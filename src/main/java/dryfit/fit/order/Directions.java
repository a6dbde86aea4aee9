package dryfit.fit.order;

import dryfit.build.Joint;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The directions along which a chair may come apart, each once, of the two senses only one: those
 * of its own space, the entries of its joints, the edges of parts without joints, and directions
 * that several joints allow together within their clearances though none of them is made for it.
 */
final class Directions {
  private final List<Vec3> found = new ArrayList<>();

  private Directions() {}

  static List<Vec3> of(Pieces pieces) {
    Directions all = new Directions();
    all.add(Vec3.BACK);
    all.add(Vec3.UP);
    all.add(Vec3.RIGHT);
    BitSet jointed = new BitSet();
    for (Joint j : pieces.holding()) {
      all.add(j.entry().negated());
      jointed.set(j.tenoned());
      jointed.set(j.mortised());
    }
    for (int i = 0; i < pieces.count(); i++) {
      if (!jointed.get(i)) {
        all.add(pieces.chair().parts().get(i).frame().x());
        all.add(pieces.chair().parts().get(i).frame().y());
        all.add(pieces.chair().parts().get(i).frame().z());
      }
    }
    List<ExitCone> cones =
        pieces.holding().parallelStream()
            .map(j -> ExitCone.of(pieces, j))
            .flatMap(Optional::stream)
            .toList();
    all.addShared(cones);
    return List.copyOf(all.found);
  }

  private void add(Vec3 d) {
    if (found.stream().noneMatch(f -> f.cross(d).length() <= Tolerances.parallel())) {
      found.add(d);
    }
  }

  /** Directions that as many joints as possible allow, beginning with each pair of them. */
  private void addShared(List<ExitCone> cones) {
    for (int i = 0; i < cones.size(); i++) {
      for (int k = i + 1; k < cones.size(); k++) {
        ExitCone seed = cones.get(i);
        SharedCone shared = SharedCone.around(seed.exit()).within(seed);
        SharedCone both = shared.within(cones.get(k));
        if (both.isEmpty() || both.holdsMiddle()) {
          continue;
        }
        List<ExitCone> family = new ArrayList<>(List.of(seed, cones.get(k)));
        List<ExitCone> others = new ArrayList<>(cones);
        others.removeAll(family);
        others.sort(Comparator.comparingDouble(c -> -Math.abs(c.exit().dot(seed.exit()))));
        for (ExitCone other : others) {
          SharedCone more = both.within(other);
          if (!more.isEmpty()) {
            both = more;
            family.add(other);
          }
        }
        add(both.middle());
        for (ExitCone member : family) {
          add(both.nearest(member.exit()));
        }
      }
    }
  }
}
