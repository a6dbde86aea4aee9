package dryfit.document;

import dryfit.timber.Species;
import java.util.LinkedHashMap;
import java.util.Map;

/** The timbers a document may name: those with published figures. */
final class Timbers {
  private Timbers() {}

  /** Each name under itself, as {@link Fields#word} wants it. */
  static Map<String, String> byName() {
    Map<String, String> byName = new LinkedHashMap<>();
    Species.names().forEach(name -> byName.put(name, name));
    return byName;
  }
}
