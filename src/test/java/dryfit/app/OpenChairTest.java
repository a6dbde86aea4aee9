package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.app.OpenChair.Refused;
import dryfit.document.Design;
import dryfit.solid.exact.ExactKernel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenChairTest {
  @TempDir Path folder;

  @Test
  void whatTheBuilderRefusesHasItsLineToo() throws IOException {
    Path file = folder.resolve("no-length.json");
    Files.writeString(
        file,
        """
        { "format": "dryfit-chair/1", "name": "No length", "unit": "mm", "timber": "ash-white",
          "parts": {
            "leg": {
              "form": "straight", "section": [40, 40],
              "from": [0, 0, 10],
              "to": [0, 0, 10]
            } } }
        """);
    var opened = OpenChair.open(file, Design.AS_DRAWN, new ExactKernel());
    assertThat(((Refused) opened).problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.pointer()).isEqualTo("/parts/leg/to");
              assertThat(p.line()).isEqualTo(6);
            });
  }
}
