package dryfit.document;

import dryfit.document.PartPlan.PanelShape;
import dryfit.document.PartPlan.Placement;
import java.util.LinkedHashSet;
import java.util.Set;

/** Which other parts a part's place rests on. */
final class RestsOn {
  private RestsOn() {}

  static Set<String> parts(PartPlan plan) {
    if (plan instanceof PartPlan.Straight straight) {
      return placement(straight.placement());
    } else if (plan instanceof PartPlan.Sawn sawn) {
      return placement(sawn.placement());
    } else if (plan instanceof PartPlan.Turned turned) {
      return placement(turned.placement());
    } else if (plan instanceof PartPlan.Bent bent
        && bent.course() instanceof PartPlan.Course.Bowed bowed) {
      return placement(bowed.placement());
    } else if (plan instanceof PartPlan.Splat splat) {
      return placement(splat.placement());
    }
    Set<String> names = new LinkedHashSet<>();
    if (plan instanceof PartPlan.Panel panel && panel.shape() instanceof PanelShape.Fills fills) {
      fills.parts().forEach(ref -> names.add(ref.part()));
    } else if (plan instanceof PartPlan.Panel panel
        && panel.shape() instanceof PanelShape.DropsInto drops) {
      drops.parts().forEach(ref -> names.add(ref.part()));
    } else if (plan instanceof PartPlan.CornerBlock block) {
      names.add(block.first().part());
      names.add(block.second().part());
    }
    return names;
  }

  private static Set<String> placement(Placement placement) {
    Set<String> names = new LinkedHashSet<>();
    if (placement instanceof Placement.Between between) {
      names.add(between.first().part());
      names.add(between.second().part());
    }
    return names;
  }
}
