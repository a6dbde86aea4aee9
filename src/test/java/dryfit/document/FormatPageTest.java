package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.timber.Species;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every example on the page that explains the format is read, and held against the schema. */
class FormatPageTest {
  private static final Path PAGE = FormatPage.PAGE;

  static List<String> documents() throws IOException {
    return FormatPage.documents();
  }

  @Test
  void thePageHasExamplesForEachPlace() throws IOException {
    assertThat(FormatPage.examples())
        .extracting(FormatPage.Example::where)
        .contains("document", "dimensions", "parts", "joints", "variants", "top");
    assertThat(Files.readString(PAGE)).doesNotContain("```json\n");
  }

  @ParameterizedTest
  @MethodSource("documents")
  void everyExampleIsRead(String document) {
    assertThat(Samples.document(document).text()).isEqualTo(document);
  }

  @ParameterizedTest
  @MethodSource("documents")
  void everyExampleFollowsTheSchema(String document) {
    assertThat(SchemaTest.errors(document)).isEmpty();
  }

  @Test
  void everyKeyOfTheSchemaStandsInAnExample() throws IOException {
    JsonMapper mapper = new JsonMapper();
    Set<String> written = new TreeSet<>();
    documents().forEach(text -> addKeys(mapper.readTree(text), written));
    Set<String> allowed = new TreeSet<>();
    try (InputStream in = getClass().getResourceAsStream("/dryfit/chair-1.schema.json")) {
      addProperties(mapper.readTree(in), allowed);
    }
    assertThat(allowed).hasSizeGreaterThan(100);
    assertThat(written).containsAll(allowed);
  }

  private static void addKeys(JsonNode node, Set<String> to) {
    to.addAll(node.propertyNames());
    node.forEach(inner -> addKeys(inner, to));
  }

  private static void addProperties(JsonNode schema, Set<String> to) {
    to.addAll(schema.path("properties").propertyNames());
    schema.forEach(inner -> addProperties(inner, to));
  }

  @Test
  void thePageNamesEveryTimberAndFunction() throws IOException {
    String page = Files.readString(PAGE);
    Species.names().forEach(name -> assertThat(page).contains("`" + name + "`"));
    Function.words().forEach(word -> assertThat(page).containsPattern("\\b" + word + "\\b"));
  }

  @Test
  void thePageNamesEveryLimit() throws IOException {
    String page = Files.readString(PAGE);
    for (FitLimit limit : FitLimit.values()) {
      assertThat(page).contains("`" + limit.word() + "`");
    }
  }

  /** Checks are looked up in the sources too. */
  @Test
  void thePageNamesEveryCheck() throws IOException {
    String page = Files.readString(PAGE);
    Pattern check =
        Pattern.compile("(?s)(?:Found\\.of|found|[fF]inding)\\(\\s*\"([a-z]+-[a-z-]+)\"");
    try (Stream<Path> sources = Files.list(Path.of("src/main/java/dryfit/fit"))) {
      List<String> checks =
          sources
              .filter(Files::isRegularFile)
              .flatMap(FormatPageTest::text)
              .flatMap(text -> check.matcher(text).results())
              .map(found -> found.group(1))
              .distinct()
              .toList();
      assertThat(checks).hasSizeGreaterThan(20);
      assertThat(checks).allSatisfy(found -> assertThat(page).contains("`" + found + "`"));
      // Every id that can be found can be waived, and no other is taken for one.
      assertThat(Checks.ids()).doesNotHaveDuplicates().containsAll(checks);
      String fit = allOf("src/main/java/dryfit/fit");
      assertThat(Checks.ids()).allSatisfy(id -> assertThat(fit).contains("\"" + id + "\""));
    }
  }

  private static String allOf(String folder) throws IOException {
    try (Stream<Path> sources = Files.list(Path.of(folder))) {
      return sources
          .filter(Files::isRegularFile)
          .flatMap(FormatPageTest::text)
          .collect(java.util.stream.Collectors.joining());
    }
  }

  /** Codes are looked up in the sources, so that none is left out of the table. */
  @Test
  void thePageNamesEveryCode() throws IOException {
    String page = Files.readString(PAGE);
    Pattern code =
        Pattern.compile(
            "(?s)(?:problems(?:\\(\\))?\\s*\\.(?:add|unknown)|ExpressionFault\\.of|conflict|refused)"
                + "\\(\\s*\"([a-z-]+)\"");
    try (Stream<Path> sources = Files.list(Path.of("src/main/java/dryfit/document"))) {
      List<String> codes =
          sources
              .flatMap(FormatPageTest::text)
              .flatMap(text -> code.matcher(text).results())
              .map(found -> found.group(1))
              .distinct()
              .toList();
      assertThat(codes).hasSizeGreaterThan(20);
      codes.forEach(found -> assertThat(page).contains("`" + found + "`"));
    }
  }

  private static Stream<String> text(Path source) {
    try {
      return Stream.of(Files.readString(source));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
