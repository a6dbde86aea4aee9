package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.timber.Species;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example on the page that explains the format is read, and held against the schema. */
class FormatPageTest {
  private static final Path PAGE = Path.of("models", "FORMAT.md");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```json (\\w+)\\n(.*?)^```");

  /** An example and where it belongs: a whole document, or pieces for one of its objects. */
  record Example(String where, String text) {}

  private static List<Example> examples() throws IOException {
    return BLOCK
        .matcher(Files.readString(PAGE))
        .results()
        .map((MatchResult found) -> new Example(found.group(1), found.group(2)))
        .toList();
  }

  private static String stool() throws IOException {
    return examples().get(0).text();
  }

  static Stream<String> documents() throws IOException {
    String stool = stool();
    return examples().stream().map(example -> whole(example, stool));
  }

  private static String whole(Example example, String stool) {
    if (example.where().equals("document")) {
      return example.text();
    }
    String opening = example.where().equals("top") ? "{\n" : "  \"" + example.where() + "\": {\n";
    assertThat(stool).contains(opening);
    int at = stool.indexOf(opening) + opening.length();
    return stool.substring(0, at) + example.text().stripTrailing() + ",\n" + stool.substring(at);
  }

  @Test
  void thePageHasExamplesForEachPlace() throws IOException {
    assertThat(examples())
        .extracting(Example::where)
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
