package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.export.Schemas;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {
  private static final String STOOL = "models/low-stool.json";

  @TempDir Path folder;

  @Test
  void oneVariantIsHeldAgainstTheChairAsDrawn() {
    Said said = Said.by("compare", STOOL, "--variant", "high");
    assertThat(said.code()).isZero();
    assertThat(said.out()).startsWith("A  as drawn: fits\nB  high: fits\n");
    assertThat(said.out()).containsPattern("seatTop +440\\.0 mm +470\\.0 mm +\\+30\\.00 mm");
  }

  @Test
  void aBentPartHasTheSizeOfTheStraightPieceItIsBentFrom() {
    Said said = Said.by("compare", "models/millrace-armchair.json", "--variant", "low", "--all");
    String crest = said.out().substring(said.out().indexOf("\n  crest\n"));
    assertThat(crest.lines().limit(8).toList().toString())
        .containsPattern(" length +427\\.9 mm")
        .containsPattern(" thickness +32\\.0 mm")
        .doesNotContain("80.1 mm");
  }

  @Test
  void anotherFileIsHeldAgainstTheFirst() {
    Said said = Said.by("compare", STOOL, "models/kiln-stool.json", "--json");
    assertThat(said.code()).isZero();
    assertThat(Schemas.problems("compare-1.schema.json", said.out())).isEmpty();
    assertThat(said.out()).contains("kiln-stool.json, as drawn");
  }

  @Test
  void whatIsNamedTwiceIsComparedOnceAndTold() {
    Said said = Said.by("compare", STOOL, "models/kiln-stool.json", "./models/kiln-stool.json");
    assertThat(said.code()).isZero();
    assertThat(said.err()).contains("./models/kiln-stool.json, as drawn, is named twice");
    assertThat(said.out()).doesNotContain("\nC  ");
    Said alone = Said.by("compare", STOOL, STOOL);
    assertThat(alone.code()).isEqualTo(2);
    assertThat(alone.err()).contains("nothing to compare");
  }

  @Test
  void twoFilesOfOneNameAreToldApartByTheirFolders() throws Exception {
    Path other = Files.copy(Path.of(STOOL), folder.resolve("low-stool.json"));
    Said said = Said.by("compare", STOOL, other.toString());
    assertThat(said.out()).contains("A  " + STOOL + ", as drawn").contains("B  " + other + ", as");
  }

  @Test
  void aPageIsWrittenWhole() throws Exception {
    Path page = folder.resolve("high.html");
    Said said = Said.by("compare", STOOL, "--variant", "high", "--page", page.toString());
    assertThat(said.code()).isZero();
    assertThat(Files.readString(page)).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
  }

  @Test
  void aVariantThatIsNotThereIsRefused() {
    Said said = Said.by("compare", STOOL, "--variant", "hihg");
    assertThat(said.code()).isEqualTo(3);
    assertThat(said.err()).contains("hihg");
    assertThat(Said.by("compare", "models/none.json").code()).isEqualTo(3);
  }
}
