package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every chair that ships is sound, follows the schema and says that it is demo data. */
class ShippedModelsTest {
  private static final Path MODELS = Path.of("models");

  static List<Path> models() throws IOException {
    try (Stream<Path> files = Files.list(MODELS)) {
      List<Path> models = files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
      assertThat(models).isNotEmpty();
      return models;
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void isReadInEveryVariant(Path model) throws IOException {
    Document document = Samples.document(Files.readString(model));
    for (String variant : document.variants()) {
      assertThat(document.design(variant)).isInstanceOf(Reading.Accepted.class);
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void followsTheSchema(Path model) throws IOException {
    assertThat(SchemaTest.errors(Files.readString(model))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("models")
  void saysThatItIsDemoData(Path model) throws IOException {
    Design design = Samples.design(Files.readString(model), Design.AS_DRAWN);
    assertThat(design.about()).containsIgnoringCase("demo data");
  }

  @Test
  void theStoolOfTheFormatPageIsTheOneThatShips() throws IOException {
    assertThat(Files.readString(MODELS.resolve("FORMAT.md")))
        .contains(Files.readString(MODELS.resolve("low-stool.json")));
  }
}
