package dryfit.export;

import dryfit.build.Chair;
import dryfit.fit.order.Stuck;
import java.util.List;

/** What would let a chair be put together that locks as it is drawn, in a maker's words. */
public final class Freeing {
  private Freeing() {}

  /**
   * One sentence for each change that frees a group of parts, the same that the order of assembly
   * tells; where none does, what else can be done.
   *
   * @param stuck what holds each other
   */
  public static List<String> of(Chair chair, List<Stuck> stuck, TextStyle style) {
    return AssemblyWords.frees(chair, stuck, style);
  }
}
