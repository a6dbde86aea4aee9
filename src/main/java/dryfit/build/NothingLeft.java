package dryfit.build;

import dryfit.solid.Cells;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Solid;
import java.util.List;

/** Refuses parts that are cut away whole: nothing could be measured on them. */
final class NothingLeft {
  private NothingLeft() {}

  /**
   * A body, tenons included, before anything is cut into it.
   *
   * @param pointer of the part
   * @throws Refusal if it has no wood
   */
  static void refuseBody(String name, String pointer, List<Convex> body) {
    if (body.isEmpty()) {
      throw Refusal.of(
          "nothing-left",
          pointer,
          "nothing is left of " + name + " when its ends are cut to the parts it meets",
          "make it longer, or move those parts apart");
    }
  }

  /**
   * A finished part.
   *
   * @param pointer of the part, which is named where no one cut takes all of it
   * @throws Refusal if it has no wood
   */
  static void refuse(
      String name, String pointer, List<Convex> body, List<Csg> cuts, Solid finished) {
    if (finished.mesh().faceCount() > 0 && !finished.cells().isEmpty()) {
      return;
    }
    String cut =
        cuts.stream()
            .filter(c -> Cells.minus(body, Cells.of(c)).isEmpty())
            .findFirst()
            .map(NothingLeft::origin)
            .orElse("");
    throw Refusal.of(
        "nothing-left",
        cut.isEmpty() ? pointer : cut,
        "nothing is left of "
            + name
            + (cut.isEmpty() ? " when all is cut out of it" : " when this is cut out of it"),
        "make it larger, or cut less from it");
  }

  private static String origin(Csg cut) {
    if (cut instanceof Csg.Leaf leaf) {
      return leaf.mesh().faceCount() > 0 ? leaf.mesh().origin(0) : "";
    } else if (cut instanceof Csg.Union union) {
      return union.of().isEmpty() ? "" : origin(union.of().get(0));
    } else if (cut instanceof Csg.Common common) {
      return common.of().isEmpty() ? "" : origin(common.of().get(0));
    }
    return origin(((Csg.Cut) cut).from());
  }
}
