package dryfit.fit.loop;

import dryfit.build.Chair;
import dryfit.fit.AsMeasured;
import dryfit.fit.PlannedSizes;
import java.util.List;

/**
 * All that follows from what was measured on the real parts of a chair.
 *
 * @param told each measurement by itself
 * @param open who holds each open shoulder open
 * @param remade the chair closed again around its made parts
 */
public record Afterwards(List<AsMeasured.Told> told, List<HeldOpen> open, Remade remade) {
  public Afterwards {
    told = List.copyOf(told);
    open = List.copyOf(open);
  }

  public static Afterwards of(Chair chair) {
    PlannedSizes plan = new PlannedSizes(chair);
    return new Afterwards(
        AsMeasured.of(chair, plan), HeldOpen.of(chair, plan), Remade.of(chair, plan));
  }
}
