package dryfit.fit;

import dryfit.document.PartPlan;
import dryfit.fit.Assembly.Placed;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The legs: parts that stand rather than lie, and come as far down as any part does. In order: of
 * four legs front left, front right, back right, back left.
 */
record Legs(List<Integer> parts) {
  /** Cosine of 45 degrees: what leans more does not stand. */
  private static final double STANDS = Math.sqrt(0.5);

  /** A leg may be this much shorter than the longest, mm, and still be one: seats slope. */
  private static final double SHORTER = 40;

  static Legs of(Assembly assembly) {
    double floor = assembly.parts().stream().mapToDouble(p -> p.bounds().low().z()).min().orElse(0);
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < assembly.parts().size(); i++) {
      Placed p = assembly.part(i);
      boolean low = p.bounds().low().z() <= floor + SHORTER;
      if (low && stands(p) && !(p.part().plan() instanceof PartPlan.Panel)) {
        found.add(i);
      } else if (low) {
        // Something else lies on the floor: no legs to speak of.
        return new Legs(List.of());
      }
    }
    if (found.size() == 4) {
      found.sort(Comparator.comparingDouble(i -> foot(assembly.part(i)).y()));
      List<Integer> front = new ArrayList<>(found.subList(0, 2));
      List<Integer> back = new ArrayList<>(found.subList(2, 4));
      Comparator<Integer> leftFirst = Comparator.comparingDouble(i -> foot(assembly.part(i)).x());
      front.sort(leftFirst);
      back.sort(leftFirst.reversed());
      front.addAll(back);
      return new Legs(List.copyOf(front));
    }
    return new Legs(List.copyOf(found));
  }

  static boolean stands(Placed placed) {
    return Math.abs(placed.part().frame().x().z()) > STANDS;
  }

  /** The lowest place of a part; the middle of its lowest face or edge, if it has one. */
  static Vec3 foot(Placed placed) {
    double low = placed.bounds().low().z();
    Vec3 sum = Vec3.ZERO;
    int count = 0;
    for (int i = 0; i < placed.mesh().pointCount(); i++) {
      Vec3 p = placed.mesh().point(i);
      if (p.z() <= low + Tolerances.contact()) {
        sum = sum.plus(p);
        count++;
      }
    }
    return sum.times(1.0 / count);
  }

  /** The middle of a part where a plane cuts it; empty if it does not reach that far. */
  static Optional<Vec3> middle(List<Convex> cells, Plane plane) {
    double half = 0.25;
    Vec3 sum = Vec3.ZERO;
    double volume = 0;
    for (Convex cell : cells) {
      if (cell.reach(plane.normal()) < plane.offset()
          || -cell.reach(plane.normal().negated()) > plane.offset()) {
        continue;
      }
      Optional<Convex> slice =
          cell.clipped(plane.moved(half)).flatMap(c -> c.clipped(plane.moved(-half).flipped()));
      if (slice.isPresent()) {
        sum = sum.plus(slice.get().middle().times(slice.get().volume()));
        volume += slice.get().volume();
      }
    }
    return volume > 0 ? Optional.of(sum.times(1 / volume)) : Optional.empty();
  }
}
