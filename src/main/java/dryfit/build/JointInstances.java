package dryfit.build;

import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.document.JointPlan.EndRef;
import dryfit.document.PartPlan.PartRef;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Spells out which end of which part goes into which: both hands of a pair, both ends of a rail.
 */
final class JointInstances {
  private final Design design;
  private final StockMaker parts;

  JointInstances(Design design, StockMaker parts) {
    this.design = design;
    this.parts = parts;
  }

  /**
   * One joint to be made.
   *
   * @param hand which of a pair of joints; {@code NONE} if there is only one
   */
  record Instance(JointPlan plan, Hand hand, Stock tenoned, boolean atStart, Stock mortised) {}

  List<Instance> of(JointPlan plan) {
    List<Instance> out = new ArrayList<>();
    EndRef tenon = plan.tenon();
    for (Hand hand : hands(tenon)) {
      Stock stock = parts.stock(tenon.part(), hand);
      if (tenon.end() == JointPlan.End.MIDDLE) {
        out.add(instance(plan, stock, false));
        continue;
      }
      Vec3 from = stock.endPoint(true);
      Vec3 to = stock.endPoint(false);
      boolean start = EndNames.names(tenon.end(), true, from, to);
      boolean end = EndNames.names(tenon.end(), false, from, to);
      if (!start && !end) {
        throw Refusal.of(
            "absent-end",
            tenon.pointer(),
            "the two ends of "
                + tenon.part()
                + " cannot be told apart by \""
                + tenon.end().name().toLowerCase(java.util.Locale.ROOT)
                + "\"",
            "name its " + names(from, to));
      }
      if (start) {
        out.add(instance(plan, stock, true));
      }
      if (end) {
        out.add(instance(plan, stock, false));
      }
    }
    // Right before left, as everywhere.
    out.sort(java.util.Comparator.comparing(Instance::hand));
    return out;
  }

  /** The words that would tell the ends apart. */
  private static String names(Vec3 from, Vec3 to) {
    List<String> words = new ArrayList<>();
    if (Math.abs(to.z() - from.z()) > 1) {
      words.add("top or bottom");
    }
    if (Math.abs(to.y() - from.y()) > 1) {
      words.add("front or back");
    }
    if (Math.abs(to.x() - from.x()) > 1) {
      words.add("left or right");
    }
    words.add("start or end");
    return String.join(", ", words);
  }

  private List<Hand> hands(EndRef ref) {
    if (!isPair(ref.part())) {
      return List.of(Hand.NONE);
    }
    return ref.hand() == Hand.NONE ? List.of(Hand.RIGHT, Hand.LEFT) : List.of(ref.hand());
  }

  private boolean isPair(String part) {
    return design.parts().stream().anyMatch(p -> p.name().equals(part) && p.common().pair());
  }

  private Instance instance(JointPlan plan, Stock tenoned, boolean atStart) {
    PartRef into = plan.into();
    Vec3 end = tenoned.endPoint(atStart);
    if (plan.tenon().end() == JointPlan.End.MIDDLE) {
      end = end.midway(tenoned.endPoint(true));
    }
    Hand side = side(end);
    Hand mortisedHand = Hand.NONE;
    if (isPair(into.part())) {
      mortisedHand = into.hand();
      if (mortisedHand == Hand.NONE) {
        mortisedHand = tenoned.hand() != Hand.NONE ? tenoned.hand() : side;
      }
      if (mortisedHand == Hand.NONE) {
        throw Refusal.of(
            "wrong-kind",
            into.pointer(),
            "the end of " + plan.tenon().part() + " is in the middle, between both " + into.part(),
            "say \"" + into.part() + " right\" or \"" + into.part() + " left\"");
      }
    }
    Hand hand = tenoned.hand() != Hand.NONE ? tenoned.hand() : mortisedHand;
    if (hand == Hand.NONE && plan.tenon().end() == JointPlan.End.BOTH) {
      hand = side;
    }
    return new Instance(plan, hand, tenoned, atStart, parts.stock(into.part(), mortisedHand));
  }

  private static Hand side(Vec3 p) {
    return Math.abs(p.x()) <= Tolerances.contact() ? Hand.NONE : p.x() > 0 ? Hand.RIGHT : Hand.LEFT;
  }

  /** Whether all the parts a joint needs could be placed. */
  boolean canBeMade(JointPlan plan) {
    return parts.isPlaced(plan.tenon().part()) && parts.isPlaced(plan.into().part());
  }
}
