package dryfit.build;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.FormatPage;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example on the page that explains the format is built, as drawn and in each variant. */
class FormatPageBuildTest {

  static List<String> documents() throws IOException {
    return FormatPage.documents();
  }

  @ParameterizedTest
  @MethodSource("documents")
  void everyExampleIsBuiltAsClosedSolids(String text) {
    Document document = Sound.accepted(DocumentReader.read("FORMAT.md", text));
    for (String variant : document.variants()) {
      assertThat(Sound.chair(document, variant).parts()).isNotEmpty();
    }
  }
}
