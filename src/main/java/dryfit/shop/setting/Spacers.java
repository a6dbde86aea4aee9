package dryfit.shop.setting;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.document.PartPlan;
import dryfit.geometry.Rays;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Sticks that hold one part off another while it is fitted: up an upright part, from the top of one
 * that is let into it to the underside of the next above, and from the floor to the lowest. Heights
 * are plumb, measured between the faces of the finished solids beside the upright part.
 */
final class Spacers {
  /** How far off the upright part's face the stick stands, mm. */
  private static final double OFF = 10;

  /** Parts nearer to each other than this are not held apart by a stick, mm. */
  private static final double LEAST = 5;

  /** The face beside a groove stands further out than its bottom by more than this, mm. */
  private static final double GROOVE = 2;

  /** Half of the widest groove that is looked beside, and how finely, mm. */
  private static final double WIDEST = 15;

  private static final double STEP = 0.5;

  /** Cosine of 45 degrees. */
  private static final double HALF = Math.sqrt(0.5);

  private final Chair chair;
  private final int index;

  Spacers(Chair chair, int index) {
    this.chair = chair;
    this.index = index;
  }

  /** A stick and the two parts it stands between. */
  record Stick(String from, String to, double height, boolean offFloor) {
    Setting setting(int part, Hand hand) {
      return new Setting(
          Tool.SPACER,
          part,
          OptionalInt.empty(),
          hand,
          (offFloor ? "the floor" : "top of " + from) + " to underside of " + to,
          List.of(new Reading.Size("height, plumb", height, "")),
          List.of());
    }
  }

  List<Stick> between() {
    List<Stick> out = new ArrayList<>();
    if (!stands(chair.parts().get(index))) {
      return out;
    }
    List<Joint> level =
        chair.joints().stream()
            .filter(j -> j.mortised() == index)
            .filter(j -> !chair.parts().get(j.tenoned()).isPiece())
            .filter(j -> !(chair.parts().get(j.tenoned()).plan() instanceof PartPlan.Panel))
            .filter(j -> Math.abs(chair.parts().get(j.tenoned()).lengthNear(j.at()).z()) < HALF)
            .sorted(Comparator.comparingDouble(j -> j.at().z()))
            .toList();
    for (int i = 0; i < level.size(); i++) {
      Joint upper = level.get(i);
      Optional<Joint> lower = below(level, i);
      if (lower.isPresent()) {
        stick(lower.get(), upper).ifPresent(out::add);
      } else {
        offFloor(upper).ifPresent(out::add);
      }
    }
    return out;
  }

  private static boolean stands(Part part) {
    return Math.abs(part.frame().x().z()) > HALF;
  }

  /** The next part below that leaves the upright part on the same side. */
  private static Optional<Joint> below(List<Joint> level, int i) {
    for (int k = i - 1; k >= 0; k--) {
      if (level.get(k).mouth().normal().dot(level.get(i).mouth().normal()) > HALF
          && level.get(k).tenoned() != level.get(i).tenoned()) {
        return Optional.of(level.get(k));
      }
    }
    return Optional.empty();
  }

  private Optional<Stick> stick(Joint lower, Joint upper) {
    for (Joint joint : List.of(upper, lower)) {
      Vec3 at = beside(joint);
      OptionalDouble top = surface(lower, at, false);
      OptionalDouble under = surface(upper, at, true);
      if (top.isPresent() && under.isPresent()) {
        double height = under.getAsDouble() - top.getAsDouble();
        return height >= LEAST
            ? Optional.of(new Stick(name(lower), name(upper), height, false))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  private Optional<Stick> offFloor(Joint upper) {
    OptionalDouble under = surface(upper, beside(upper), true);
    return under.isPresent() && under.getAsDouble() >= LEAST
        ? Optional.of(new Stick("", name(upper), under.getAsDouble(), true))
        : Optional.empty();
  }

  private String name(Joint joint) {
    return chair.parts().get(joint.tenoned()).name();
  }

  /** On the part's own middle line, a little off the face it goes into. */
  private static Vec3 beside(Joint joint) {
    return joint.at().minus(joint.entry().times(OFF));
  }

  /**
   * The height of the underside of a part, or of its top, on a plumb line; where a panel's groove
   * runs there, of the wood beside the groove, for a stick stands on a face.
   */
  private OptionalDouble surface(Joint joint, Vec3 at, boolean underside) {
    OptionalDouble middle = plumb(joint, at, underside);
    boolean grooved =
        chair.joints().stream()
            .anyMatch(
                j -> j.mortised() == joint.tenoned() && j.plan().kind() == JointPlan.Kind.GROOVE);
    if (middle.isEmpty() || !grooved) {
      return middle;
    }
    Vec3 across = chair.parts().get(joint.tenoned()).lengthNear(joint.at()).cross(Vec3.UP).unit();
    for (double off = STEP; off <= WIDEST; off += STEP) {
      for (double way : new double[] {off, -off}) {
        OptionalDouble beside = plumb(joint, at.plus(across.times(way)), underside);
        if (beside.isPresent() && isOut(beside.getAsDouble(), middle.getAsDouble(), underside)) {
          return beside;
        }
      }
    }
    return middle;
  }

  private static boolean isOut(double beside, double middle, boolean underside) {
    return underside ? middle - beside > GROOVE : beside - middle > GROOVE;
  }

  private OptionalDouble plumb(Joint joint, Vec3 at, boolean underside) {
    Part part = chair.parts().get(joint.tenoned());
    double low =
        part.placedCells().stream().mapToDouble(c -> c.reach(Vec3.UP.negated())).max().orElse(0);
    Vec3 from = new Vec3(at.x(), at.y(), -low - 1);
    List<Rays.Hit> hits = part.solid().rays().placed(part.frame()).hits(from, Vec3.UP);
    return hits.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(from.z() + hits.get(underside ? 0 : hits.size() - 1).distance());
  }
}
