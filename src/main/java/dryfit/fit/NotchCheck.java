package dryfit.fit;

import dryfit.build.Part;
import dryfit.document.PartCuts.Notch;
import dryfit.document.PartPlan.PartRef;
import dryfit.fit.Finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * {@code notch-idle}: a part is to be cut round another that does not stand in its way. Faces of a
 * notch carry the place where that other part is named; no such face, no notch.
 */
final class NotchCheck implements Check {
  @Override
  public List<Finding> findings(Assembly assembly, List<JointFit> measured) {
    List<Finding> out = new ArrayList<>();
    for (Assembly.Placed placed : assembly.parts()) {
      Part part = placed.part();
      Optional<Notch> notch = part.plan().common().cuts().notch();
      if (part.isPiece() || notch.isEmpty()) {
        continue;
      }
      for (PartRef ref : notch.get().round()) {
        if (!part.isCutBy(ref.pointer())) {
          out.add(idle(placed, ref));
        }
      }
    }
    return out;
  }

  private static Finding idle(Assembly.Placed placed, PartRef ref) {
    Part part = placed.part();
    return Found.of("notch-idle", Severity.KNOW)
        .part(part)
        .source(Source.geometry("what stands clear needs no notch"))
        .says(
            ref.part()
                + " does not stand in the way of "
                + part.label()
                + ", so no notch is cut round it.",
            ref.pointer(),
            placed.bounds().middle());
  }
}
