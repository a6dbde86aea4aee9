package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.document.Problem;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import dryfit.fit.Source;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FitJsonTest {
  private static final String SCHEMA = "fit-report-1.schema.json";

  private static String text(FitReport report) {
    return new String(FitJson.bytes(report), StandardCharsets.UTF_8);
  }

  private static JsonNode tree(FitReport report) {
    return JsonMapper.shared().readTree(FitJson.bytes(report));
  }

  private static Finding with(double measured, Source.Kind kind) {
    Finding f = TestChair.look();
    return new Finding(
        f.check(),
        f.severity(),
        f.parts(),
        f.joints(),
        measured,
        f.limit(),
        f.margin(),
        f.unit(),
        new Source(kind, "why"),
        f.message(),
        f.pointer(),
        f.at(),
        f.waived());
  }

  @Test
  void aReportFollowsItsSchema() {
    FitReport report = TestChair.report(TestChair.stops(), TestChair.look(), TestChair.waived());
    assertThat(Schemas.problems(SCHEMA, text(report))).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void everyKindOfSourceFollowsTheSchema(Source.Kind kind) {
    assertThat(Schemas.problems(SCHEMA, text(TestChair.report(with(1, kind))))).isEmpty();
  }

  @Test
  void theSchemaRefusesWhatIsNoReport() {
    String report = text(TestChair.report(TestChair.stops()));
    assertThat(Schemas.problems(SCHEMA, report.replace("\"stops\"", "\"bad\""))).isNotEmpty();
    assertThat(Schemas.problems(SCHEMA, report.replace("\"wall\"", "\"wal\""))).isNotEmpty();
    assertThat(Schemas.problems(SCHEMA, "{}")).isNotEmpty();
  }

  @Test
  void theSameReportGivesTheSameBytes() {
    assertThat(FitJson.bytes(TestChair.report(TestChair.stops())))
        .isEqualTo(FitJson.bytes(TestChair.report(TestChair.stops())));
  }

  @Test
  void anglesAreInDegreesAndLengthsInMillimetres() {
    JsonNode joint = tree(TestChair.report()).get("joints").get(0);
    assertThat(joint.get("lean").doubleValue()).isCloseTo(Math.toDegrees(0.094), within(1e-6));
    assertThat(joint.get("depthAlong").doubleValue()).isEqualTo(28);
    assertThat(joint.get("bottom").get("greatest").doubleValue()).isEqualTo(2.4);
  }

  @Test
  void aBoxWeighsItsVolumeTimesTheDensityOfItsTimber() {
    JsonNode leg = tree(TestChair.report()).get("parts").get(0);
    assertThat(leg.get("volume").doubleValue()).isCloseTo(42 * 42 * 630, within(1e-3));
    // White ash, specific gravity 0.60 at 12 percent: Wood Handbook FPL-GTR-190 (2010), table 5-3b;
    // 672 kg/m^3 with the water in it.
    assertThat(leg.get("mass").doubleValue()).isCloseTo(1.11132e-3 * 672, within(1e-6));
  }

  @Test
  void numbersAreRoundedToAMillionthInPlainDigits() {
    FitReport report =
        TestChair.report(with(0.1 + 0.2, Source.Kind.GEOMETRY), with(-1e-9, Source.Kind.GEOMETRY));
    assertThat(text(report)).contains("\"measured\" : 0.3,").contains("\"measured\" : 0,");
    assertThat(text(TestChair.report(with(3.1e-6, Source.Kind.GEOMETRY))))
        .contains("\"measured\" : 0.000003,");
    assertThat(text(TestChair.report(with(12e8, Source.Kind.GEOMETRY))))
        .contains("\"measured\" : 1200000000,");
  }

  @Test
  void whatIsNotKnownIsNull() {
    FitReport report = TestChair.report(with(Double.NaN, Source.Kind.GEOMETRY));
    assertThat(tree(report).get("findings").get(0).get("measured").isNull()).isTrue();
    assertThat(Schemas.problems(SCHEMA, text(report))).isEmpty();
  }

  @Test
  void aWaivedFindingDoesNotKeepTheChairFromFitting() {
    assertThat(tree(TestChair.report(TestChair.waived())).get("fits").booleanValue()).isTrue();
    assertThat(tree(TestChair.report(TestChair.stops())).get("fits").booleanValue()).isFalse();
  }

  @Test
  void aRefusalFollowsItsSchema() {
    Problem problem =
        new Problem(
            "unknown-key",
            "chair.json",
            12,
            "/parts/leg/lenght",
            "lenght",
            "length",
            Optional.of("length"),
            "there is no key \"lenght\" here; do you mean \"length\"?");
    String json = new String(ProblemsJson.bytes(List.of(problem)), StandardCharsets.UTF_8);
    assertThat(Schemas.problems("problems-1.schema.json", json)).isEmpty();
    assertThat(JsonMapper.shared().readTree(json).get("problems").get(0).get("line").intValue())
        .isEqualTo(12);
  }
}
