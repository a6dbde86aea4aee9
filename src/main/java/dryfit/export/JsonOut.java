package dryfit.export;

import dryfit.geometry.Vec3;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.cfg.JsonNodeFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** How our JSON is written: numbers to a millionth, in plain digits; the same bytes everywhere. */
final class JsonOut {
  static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final int DECIMALS = 6;

  private JsonOut() {}

  /** A number rounded to a millionth; null where there is none. */
  static JsonNode number(double value) {
    if (!Double.isFinite(value)) {
      return NODES.nullNode();
    }
    BigDecimal rounded = new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    BigDecimal bare = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    return NODES.numberNode(bare.scale() < 0 ? bare.setScale(0) : bare);
  }

  static JsonNode number(OptionalDouble value) {
    return number(value.orElse(Double.NaN));
  }

  static JsonNode degrees(double radians) {
    return number(Math.toDegrees(radians));
  }

  static JsonNode place(Vec3 p) {
    return NODES.arrayNode().add(number(p.x())).add(number(p.y())).add(number(p.z()));
  }

  static ArrayNode texts(List<String> texts) {
    ArrayNode out = NODES.arrayNode();
    texts.forEach(out::add);
    return out;
  }

  /** Indented by two, a line feed at the end of every line. */
  static byte[] bytes(JsonNode tree) {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
    String text =
        JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build()
            .writer()
            .with(printer)
            .writeValueAsString(tree);
    return (text + "\n").getBytes(StandardCharsets.UTF_8);
  }
}
