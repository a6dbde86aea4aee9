package dryfit.shop;

import dryfit.document.EdgePlan;

/** Which edges of a part are meant, in a maker's words. */
final class EdgeWords {
  private EdgeWords() {}

  /** As the object of a sentence, e.g. {@code the edge between top and front}. */
  static String of(EdgePlan edge) {
    return switch (edge.which()) {
      case ALL -> "all edges";
      case ALL_LONG -> "the long edges";
      case BETWEEN -> between(edge.faces().get(0), edge.faces().get(1));
    };
  }

  private static String between(String first, String second) {
    if (second.equals(EdgePlan.ANY)) {
      return first.equals(EdgePlan.ROUND)
          ? "the edges of the round face"
          : "the edges round the " + first;
    }
    return "the edge between " + first + " and " + second;
  }
}
