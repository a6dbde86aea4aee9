package dryfit.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The timbers a document may name. */
final class Timbers {
  private Timbers() {}

  private static final List<String> NAMES =
      List.of(
          "ash-white",
          "basswood-american",
          "beech-american",
          "birch-yellow",
          "butternut",
          "cherry-black",
          "elm-american",
          "hickory-shagbark",
          "hickory-mockernut",
          "locust-black",
          "maple-sugar",
          "oak-northern-red",
          "oak-white",
          "walnut-black",
          "yellow-poplar",
          "douglas-fir-coast",
          "mahogany-true",
          "teak");

  /** Each name under itself, as {@link Fields#word} wants it. */
  static Map<String, String> byName() {
    Map<String, String> byName = new LinkedHashMap<>();
    NAMES.forEach(name -> byName.put(name, name));
    return byName;
  }
}
