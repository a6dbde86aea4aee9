package dryfit.document;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes values over dimensions of a document that was read, whatever stood there. */
final class SetDimensions {
  private SetDimensions() {}

  /** The tree with the values in it; a name that is no dimension is noted. */
  static Json.Obj in(Json.Obj root, Map<String, Quantity> set, Problems problems) {
    if (set.isEmpty()) {
      return root;
    }
    Map<String, Json> dimensions = new LinkedHashMap<>();
    Json.At at = root.at();
    if (root.members().get("dimensions") instanceof Json.Obj all) {
      dimensions.putAll(all.members());
      at = all.at();
    }
    for (Map.Entry<String, Quantity> entry : set.entrySet()) {
      Json before = dimensions.get(entry.getKey());
      if (before == null) {
        problems.unknown("unknown-name", at, entry.getKey(), dimensions.keySet(), "a dimension");
      } else {
        dimensions.put(entry.getKey(), replaced(before, entry.getValue()));
      }
    }
    Map<String, Json> members = new LinkedHashMap<>(root.members());
    members.put("dimensions", new Json.Obj(at, dimensions));
    return new Json.Obj(root.at(), members);
  }

  /** The value with its unit, and what the document says it measures. */
  private static Json replaced(Json before, Quantity value) {
    Map<String, Json> members = new LinkedHashMap<>();
    if (before instanceof Json.Obj object) {
      members.putAll(object.members());
      members.remove("from");
      members.remove("to");
    }
    members.put("value", new Json.Text(at(before), written(value)));
    // A bare number would be read as a length.
    if (value.kind() == Quantity.Kind.NUMBER) {
      members.put("kind", new Json.Text(at(before), "number"));
    }
    return new Json.Obj(before.at(), members);
  }

  private static Json.At at(Json before) {
    return before instanceof Json.Obj object && object.members().containsKey("value")
        ? object.members().get("value").at()
        : before.at();
  }

  private static String written(Quantity value) {
    String number = new BigDecimal(Double.toString(value.value())).toPlainString();
    return switch (value.kind()) {
      case LENGTH -> number + " mm";
      case ANGLE -> number + " rad";
      case NUMBER -> number;
    };
  }
}
