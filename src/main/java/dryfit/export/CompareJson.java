package dryfit.export;

import static dryfit.export.JsonOut.NODES;
import static dryfit.export.JsonOut.number;
import static dryfit.export.JsonOut.texts;

import dryfit.fit.Finding;
import dryfit.fit.compare.Comparison;
import dryfit.fit.compare.Comparison.FindingRow;
import dryfit.fit.compare.Comparison.Row;
import dryfit.fit.compare.Datum;
import java.util.Locale;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A comparison as JSON, described by {@code compare-1.schema.json}. Millimetres, degrees,
 * kilograms, cubic millimetres. Every figure is there, also what is the same.
 */
public final class CompareJson {
  private CompareJson() {}

  public static byte[] bytes(Comparison comparison) {
    ObjectNode root = NODES.objectNode();
    root.put("format", "dryfit-compare/1");
    ArrayNode chairs = root.putArray("chairs");
    comparison
        .sides()
        .forEach(
            s -> {
              ObjectNode out = chairs.addObject();
              out.put("name", s.name());
              out.put("file", s.report().chair().design().file());
              out.put("variant", s.report().chair().design().variant());
              out.put("fits", s.report().fits());
            });
    ArrayNode figures = root.putArray("figures");
    comparison.rows().forEach(r -> figures.add(row(r)));
    ArrayNode findings = root.putArray("findings");
    comparison.findings().forEach(f -> findings.add(finding(f)));
    return JsonOut.bytes(root);
  }

  private static JsonNode row(Row row) {
    ObjectNode out = NODES.objectNode();
    out.put("group", word(row.key().group()));
    out.put("subject", row.key().subject());
    out.put("what", row.key().what());
    out.put("unit", unit(row.key().kind()));
    out.put("differs", row.differs());
    ArrayNode values = out.putArray("values");
    row.values().forEach(v -> values.add(value(row.key().kind(), v)));
    return out;
  }

  static String unit(Datum.Kind kind) {
    return switch (kind) {
      case LENGTH, GAP -> "mm";
      case ANGLE -> "deg";
      case MASS -> "kg";
      case VOLUME -> "mm3";
      case NUMBER -> "";
    };
  }

  static JsonNode value(Datum.Kind kind, OptionalDouble value) {
    double v = value.orElse(Double.NaN);
    return number(kind == Datum.Kind.ANGLE ? Math.toDegrees(v) : v);
  }

  private static JsonNode finding(FindingRow row) {
    Finding f = row.finding();
    ObjectNode out = NODES.objectNode();
    out.put("check", f.check());
    out.put("severity", word(f.severity()));
    out.set("parts", texts(f.parts()));
    out.set("joints", texts(f.joints()));
    out.put("message", f.message());
    ArrayNode messages = out.putArray("messages");
    row.told().forEach(t -> messages.add(t.map(Finding::message).orElse(null)));
    out.put("waived", f.waived().isPresent());
    out.put("differs", row.differs());
    ArrayNode present = out.putArray("present");
    row.present().forEach(present::add);
    return out;
  }

  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
