package dryfit.fit;

import dryfit.fit.Assembly.Placed;
import dryfit.fit.ChairMeasure.Foot;
import dryfit.fit.ChairMeasure.Stance;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import dryfit.timber.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a chair comes to rest on a flat floor: on three feet that have all others above them and the
 * weight between them. Three feet never rock; of four, the one left over is off the floor.
 */
final class Standing {
  private Standing() {}

  /** Taken for a timber of unknown density, kg/m3: only the share of each part matters. */
  private static final double USUAL = 650;

  static Optional<Stance> of(Assembly assembly, Legs legs) {
    List<Placed> parts = legs.parts().stream().map(assembly::part).toList();
    if (parts.size() < 3) {
      return Optional.empty();
    }
    List<Vec3> feet = parts.stream().map(Legs::foot).toList();
    Vec3 middle = middle(assembly);
    Vec3 rest = null;
    int[] on = null;
    for (int i = 0; i < feet.size(); i++) {
      for (int j = i + 1; j < feet.size(); j++) {
        for (int k = j + 1; k < feet.size(); k++) {
          Vec3 up = normal(feet.get(i), feet.get(j), feet.get(k));
          if (up != null
              && rest == null
              && carries(feet, feet.get(i), up)
              && inside(middle, up, feet.get(i), feet.get(j), feet.get(k))) {
            rest = up;
            on = new int[] {i, j, k};
          }
        }
      }
    }
    if (rest == null) {
      List<Foot> none = new ArrayList<>();
      for (int i = 0; i < feet.size(); i++) {
        none.add(new Foot(parts.get(i).part().label(), feet.get(i), 0, 0));
      }
      return Optional.of(new Stance(none, middle, Vec3.UP, false));
    }
    Vec3 up = rest;
    Vec3 floor = feet.get(on[0]);
    double[] gaps = feet.stream().mapToDouble(f -> Math.max(0, f.minus(floor).dot(up))).toArray();
    double[] trims = feet.size() == 4 ? trims(feet, gaps) : new double[feet.size()];
    List<Foot> found = new ArrayList<>();
    for (int i = 0; i < feet.size(); i++) {
      found.add(new Foot(parts.get(i).part().label(), feet.get(i), gaps[i], trims[i]));
    }
    return Optional.of(new Stance(found, middle, up, true));
  }

  /** The upward normal of the plane through three feet; null if they stand in one line. */
  private static Vec3 normal(Vec3 a, Vec3 b, Vec3 c) {
    Vec3 n = b.minus(a).cross(c.minus(a));
    if (n.length() < 1) {
      return null;
    }
    return n.z() < 0 ? n.unit().negated() : n.unit();
  }

  private static boolean carries(List<Vec3> feet, Vec3 on, Vec3 up) {
    return feet.stream().allMatch(f -> f.minus(on).dot(up) >= -Tolerances.coincident());
  }

  /** Whether the weight falls between three feet; on the line between two counts. */
  private static boolean inside(Vec3 middle, Vec3 up, Vec3 a, Vec3 b, Vec3 c) {
    double first = b.minus(a).cross(middle.minus(a)).dot(up);
    double second = c.minus(b).cross(middle.minus(b)).dot(up);
    double third = a.minus(c).cross(middle.minus(c)).dot(up);
    return first >= 0 && second >= 0 && third >= 0 || first <= 0 && second <= 0 && third <= 0;
  }

  /**
   * Equal amounts off the two feet on which a four-footed chair rocks, so that all four are level.
   *
   * <p>Four places in a plane satisfy {@code Σ w·p = 0, Σ w = 0}; with heights, {@code Σ w·z} says
   * how far they are from one plane. The two feet of the diagonal that carries have weights of one
   * sign, and their sum is how fast trimming both closes the gap.
   */
  private static double[] trims(List<Vec3> feet, double[] gaps) {
    double[] out = new double[4];
    int high = 0;
    for (int i = 1; i < 4; i++) {
      high = gaps[i] > gaps[high] ? i : high;
    }
    // In the order of the legs, the two neighbours of the foot that hangs are the diagonal.
    int a = (high + 1) % 4;
    int b = (high + 3) % 4;
    int opposite = (high + 2) % 4;
    double carries = flatArea(feet.get(a), feet.get(b), feet.get(opposite));
    double hangs = flatArea(feet.get(a), feet.get(b), feet.get(high));
    double share = carries / (carries + hangs);
    out[a] = gaps[high] * share;
    out[b] = gaps[high] * share;
    return out;
  }

  private static double flatArea(Vec3 a, Vec3 b, Vec3 c) {
    return Math.abs(b.minus(a).cross(c.minus(a)).z());
  }

  /** Where the weight is: every part by its own timber. */
  private static Vec3 middle(Assembly assembly) {
    Vec3 sum = Vec3.ZERO;
    double mass = 0;
    for (Placed p : assembly.parts()) {
      double density =
          Species.named(p.part().plan().common().timber()).map(Species::density12).orElse(USUAL);
      for (Convex cell : p.cells()) {
        double own = cell.volume() * density;
        sum = sum.plus(cell.middle().times(own));
        mass += own;
      }
    }
    return sum.times(1 / mass);
  }
}
