package dryfit.app;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Onlooker;
import java.util.List;

/** The order in which a chair goes together, and how a command that asked for it ends. */
public record OrderParts(Assembling assembling) {

  /** A part was named that the chair does not have, or named twice. */
  public static final class UnknownPart extends Exception {
    private static final long serialVersionUID = 1L;

    UnknownPart(String message) {
      super(message);
    }
  }

  /**
   * Finds the order.
   *
   * @param glued labels of parts that are put together beforehand, a list for each group
   * @param onlooker is told how far it has come
   * @throws UnknownPart if a label is none of the chair's, or in two groups
   */
  public static OrderParts of(Chair chair, List<List<String>> glued, Onlooker onlooker)
      throws UnknownPart {
    List<String> labels = chair.parts().stream().map(Part::label).toList();
    List<String> all = glued.stream().flatMap(List::stream).toList();
    for (String label : all) {
      if (!labels.contains(label)) {
        throw new UnknownPart(
            "no part is called '" + label + "'; there are " + String.join(", ", labels));
      }
      if (all.indexOf(label) != all.lastIndexOf(label)) {
        throw new UnknownPart("'" + label + "' is named twice");
      }
    }
    List<List<Integer>> groups =
        glued.stream().map(g -> g.stream().map(labels::indexOf).sorted().toList()).toList();
    return new OrderParts(Assembling.of(chair, groups, onlooker));
  }

  public Exit exit() {
    return assembling.possible() ? Exit.FITS : Exit.DOES_NOT_FIT;
  }
}
