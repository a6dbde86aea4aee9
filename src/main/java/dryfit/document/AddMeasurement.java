package dryfit.document;

import java.util.List;

/** Puts a measurement into the text of a document, after those that are there. */
final class AddMeasurement {
  private AddMeasurement() {}

  /** The text with it; all else stays to the letter. */
  static String to(String text, Json.Obj root, String json) {
    if (root.members().get("measured") instanceof Json.Arr list) {
      if (list.items().isEmpty()) {
        return text.substring(0, list.at().start())
            + "[\n    "
            + json
            + "\n  ]"
            + text.substring(list.at().end());
      }
      int end = list.items().get(list.items().size() - 1).at().end();
      return text.substring(0, end) + ",\n    " + json + text.substring(end);
    }
    List<Json> members = List.copyOf(root.members().values());
    int end = members.get(members.size() - 1).at().end();
    String list = ",\n  \"measured\": [\n    " + json + "\n  ]";
    return text.substring(0, end) + list + text.substring(end);
  }
}
