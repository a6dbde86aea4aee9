package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dryfit.timber.Species;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** The published schema says the same as the reader, as far as a schema can. */
class SchemaTest {
  private static final Schema SCHEMA = schema();

  private static Schema schema() {
    try (InputStream in = SchemaTest.class.getResourceAsStream("/dryfit/chair-1.schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(in);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  static List<Error> errors(String document) {
    return SCHEMA.validate(document, InputFormat.JSON);
  }

  @Test
  void acceptsAChairThatUsesEveryForm() {
    assertThat(errors(Samples.everyForm())).isEmpty();
  }

  /** Each turns the sound sample into one that is wrong in its structure. */
  static Map<String, String> spoilers() {
    return Map.ofEntries(
        Map.entry("\"labels\"", "\"lables\""),
        Map.entry("\"dryfit-chair/1\"", "\"dryfit-chair/2\""),
        Map.entry("\"name\": \"Quay armchair\",", ""),
        Map.entry("\"unit\": \"mm\"", "\"unit\": \"cubit\""),
        Map.entry("\"timber\": \"ash-white\"", "\"timber\": \"ash\""),
        Map.entry("\"setback\":    4", "\"set-back\": 4"),
        Map.entry("\"leg\":        42", "\"leg\": true"),
        Map.entry("\"kind\": \"number\"", "\"kind\": \"weight\""),
        Map.entry("\"inside\": [8, 9]", "\"insid\": [8, 9]"),
        Map.entry("\"form\": \"turned\", \"from\"", "\"form\": \"carved\", \"from\""),
        Map.entry("\"pair\": true, \"thickness\": \"leg\"", "\"pair\": \"yes\", \"thickness\": 4"),
        Map.entry("\"middle\": \"seatTop - 40\"", "\"middle\": 1, \"top\": 2"),
        Map.entry("\"bottom\": 180, ", ""),
        Map.entry("\"from\": [0, 0, 100], ", ""),
        Map.entry("\"at\": [0, 0, 30]", "\"at\": [0, 30]"),
        Map.entry("\"faces\": [\"inside\"", "\"faces\": [\"sinister\""),
        Map.entry("\"arc-to\": [0, 0], \"rise\": -2", "\"arc-to\": [0, 0]"),
        Map.entry(
            "\"outline\": { \"circle\": 18 }", "\"outline\": { \"circle\": 18, \"top\": [] }"),
        Map.entry("\"groove\": { \"deep\": 8 }", "\"groove\": { \"gap\": 8 }"),
        Map.entry("\"plane\": \"side\", ", ""),
        Map.entry("\"length\": 26, \"haunch\"", "\"haunch\""),
        Map.entry("\"through\": true, \"proud\": 3", "\"through\": true, \"length\": 3"),
        Map.entry("\"diameter\": 20, \"length\"", "\"diameter\": 20, \"width\": 3, \"length\""),
        Map.entry("\"kind\": \"housing\", \"depth\": 14", "\"kind\": \"housing\""),
        Map.entry("\"kind\": \"housing\"", "\"kind\": \"dovetail-key\""),
        Map.entry("\"stretcher left\"", "\"stretcher lft\""),
        Map.entry("\"front-leg left\", \"kind\"", "\"front-leg lft\", \"kind\""),
        Map.entry("\"on\": \"2026-03-02\"", "\"on\": \"2 March\""),
        Map.entry("\"because\": \"the panel carries the arm\"", "\"because\": \" \""),
        Map.entry("\"hand\": \"both\"", "\"hand\": \"upper\""),
        Map.entry("\"low\": {", "\"as drawn\": {"),
        Map.entry("\"entry\": [0, 0, 1]", "\"entry\": \"sideways\""));
  }

  static List<Map.Entry<String, String>> spoiled() {
    return spoilers().entrySet().stream().sorted(Map.Entry.comparingByKey()).toList();
  }

  @ParameterizedTest
  @MethodSource("spoiled")
  void refusesTheStructureTheReaderRefuses(Map.Entry<String, String> spoiler) {
    assertThat(Samples.everyForm()).contains(spoiler.getKey());
    String text = Samples.everyForm().replace(spoiler.getKey(), spoiler.getValue());
    assertThat(Samples.problems(text)).isNotEmpty();
    assertThat(errors(text)).isNotEmpty();
  }

  @Test
  void namesTheSameTimbersAsTheTable() {
    List<String> names = new java.util.ArrayList<>();
    for (JsonNode name : SCHEMA.getSchemaNode().at("/$defs/timber/enum")) {
      names.add(name.asString());
    }
    assertThat(names).isEqualTo(Species.names());
  }

  @Test
  void statesTheSameLimitsAsTheReader() {
    JsonNode root = SCHEMA.getSchemaNode();
    assertThat(root.at("/properties/parts/maxProperties").asInt()).isEqualTo(Limits.parts());
    assertThat(root.at("/properties/joints/maxProperties").asInt()).isEqualTo(Limits.joints());
    assertThat(root.at("/properties/dimensions/maxProperties").asInt())
        .isEqualTo(Limits.dimensions());
    assertThat(root.at("/properties/variants/maxProperties").asInt()).isEqualTo(Limits.variants());
    assertThat(root.at("/$defs/value/maxLength").asInt()).isEqualTo(Limits.expression());
    assertThat(root.at("/$defs/text/maxLength").asInt()).isEqualTo(Limits.text());
    assertThat(root.at("/$defs/name/maxLength").asInt()).isEqualTo(Limits.name());
    assertThat(root.at("/properties/jigs/maxItems").asInt()).isEqualTo(Limits.items());
  }

  @Test
  void knowsEveryLimitAndWhichAJointMayHave() throws IOException {
    try (InputStream in = SchemaTest.class.getResourceAsStream("/dryfit/chair-1.schema.json")) {
      JsonNode defs = tools.jackson.databind.json.JsonMapper.shared().readTree(in).get("$defs");
      for (FitLimit limit : FitLimit.values()) {
        assertThat(defs.get("limits").get("properties").has(limit.word())).isTrue();
        assertThat(defs.get("jointLimits").get("properties").has(limit.word()))
            .isEqualTo(limit.ofJoint());
      }
    }
  }
}
