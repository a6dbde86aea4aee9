package dryfit.fit;

import dryfit.build.Joint;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.ChairMeasure.MortisePair;
import dryfit.geometry.Vec3;
import dryfit.solid.Convex;
import dryfit.solid.Distance;
import dryfit.solid.Overlap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Mortises in one part, two by two. Of two that run into each other the wider one is cut first,
 * while there is most to hold the chisel, of equally wide ones the thicker, and else the one that
 * the document names first: so it is the same for both hands. A block that fills it then keeps its
 * walls from breaking while the other is cut.
 */
final class Mortises {
  private Mortises() {}

  /** Mortises that differ by less are as wide to a maker, mm. */
  private static final double ALIKE = 0.1;

  /** Mortises farther apart than this have nothing to do with each other, mm. */
  private static final double FAR = 50;

  static List<MortisePair> near(Assembly assembly) {
    List<Joint> joints = assembly.chair().joints();
    List<MortisePair> out = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      for (int k = i + 1; k < joints.size(); k++) {
        if (joints.get(i).mortised() == joints.get(k).mortised()
            && areMortises(joints.get(i), joints.get(k))) {
          pair(assembly, joints.get(i), joints.get(k)).ifPresent(out::add);
        }
      }
    }
    return out;
  }

  /** A panel's groove runs out into the mortises beside it; a notch is a hole for a post. */
  private static boolean areMortises(Joint a, Joint b) {
    return Stream.of(a, b)
        .map(j -> j.plan().kind())
        .noneMatch(k -> k == Kind.GROOVE || k == Kind.NOTCH || k == Kind.GLUED);
  }

  private static Optional<MortisePair> pair(Assembly assembly, Joint a, Joint b) {
    String part = assembly.mortised(a).part().label();
    List<Convex> first = inWood(a);
    List<Convex> second = inWood(b);
    Optional<Overlap> overlap = Overlap.between(first, second);
    if (overlap.isPresent()) {
      boolean swap = isLarger(plug(b, second), plug(a, first));
      Joint before = swap ? b : a;
      Joint after = swap ? a : b;
      return Optional.of(
          new MortisePair(
              part,
              before.label(),
              after.label(),
              -overlap.get().depth(),
              overlap.get().deepest(),
              plug(before, swap ? second : first)));
    }
    return Distance.between(first, second, FAR)
        .map(
            d ->
                new MortisePair(
                    part,
                    a.label(),
                    b.label(),
                    d.length(),
                    d.onFirst().midway(d.onSecond()),
                    List.of()));
  }

  private static boolean isLarger(List<Double> one, List<Double> other) {
    double wider = one.get(1) - other.get(1);
    return Math.abs(wider) > ALIKE ? wider > 0 : one.get(0) - other.get(0) > ALIKE;
  }

  /** The block that fills a mortise: across its cheeks, across its edges, from mouth to bottom. */
  private static List<Double> plug(Joint joint, List<Convex> hole) {
    return List.of(
        extent(hole, joint.thick()), extent(hole, joint.wide()), extent(hole, joint.entry()));
  }

  private static double extent(List<Convex> cells, Vec3 d) {
    double high = cells.stream().mapToDouble(c -> c.reach(d)).max().orElse(0);
    double low = -cells.stream().mapToDouble(c -> c.reach(d.negated())).max().orElse(0);
    return high - low;
  }

  static List<Convex> inWood(Joint joint) {
    return inWood(joint, joint.mortise());
  }

  /** What of {@code cut} lies inside the joint's mouth. */
  static List<Convex> inWood(Joint joint, List<Convex> cut) {
    return cut.stream().flatMap(c -> c.clipped(joint.mouth()).stream()).toList();
  }
}
