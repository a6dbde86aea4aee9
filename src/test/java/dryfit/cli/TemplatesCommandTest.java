package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplatesCommandTest {
  private static final String CHAIR = "models/harbour-armchair.json";

  @TempDir Path folder;

  private Said run(String... more) {
    List<String> args = new ArrayList<>(List.of("templates", CHAIR, "--to", folder.toString()));
    args.addAll(List.of(more));
    return Said.by(args.toArray(String[]::new));
  }

  @Test
  void aPdfTellsHowTheTemplateIsUsed() throws IOException {
    Said said = run("--part", "arm");
    assertThat(said.code()).isZero();
    try (PDDocument document = Loader.loadPDF(folder.resolve("arm.pdf").toFile())) {
      assertThat(new PDFTextStripper().getText(document))
          .contains("arm, right and left: outside face")
          .contains("edge of the black line, not its middle")
          .contains("100 mm, tick to tick")
          .contains("keep flat: front-leg");
    }
  }

  /** Width and height in mm with the same view box: CSS Values 3 and SVG 1.1, W3C. */
  @Test
  void anSvgHasMillimetresAndAViewBoxThatMatches() throws IOException {
    assertThat(run("--part", "arm", "--format", "svg").code()).isZero();
    String svg = Files.readString(folder.resolve("arm-top.svg"));
    String head = svg.substring(0, svg.indexOf("<title>"));
    String wide = head.replaceAll("(?s).* width=\"([0-9.]+)mm\".*", "$1");
    String high = head.replaceAll("(?s).* height=\"([0-9.]+)mm\".*", "$1");
    assertThat(head).contains("viewBox=\"0 0 " + wide + " " + high + "\"");
  }

  @Test
  void theMouthsAreOneFile() {
    Said said = run("--mouths", "--part", "back-leg");
    assertThat(said.code()).isZero();
    assertThat(folder.resolve("mouths.pdf")).exists();
  }

  @Test
  void theSameChairGivesTheSameBytes() throws IOException {
    run("--part", "arm");
    byte[] first = Files.readAllBytes(folder.resolve("arm.pdf"));
    run("--part", "arm");
    assertThat(Files.readAllBytes(folder.resolve("arm.pdf"))).isEqualTo(first);
  }

  @Test
  void aPartThatIsNotThereIsToldWithThoseThatAre() {
    Said said = run("--part", "arms");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("no part is called 'arms'").contains("back-leg");
  }

  @Test
  void aCutterHasToGoThroughItsBush() {
    Said said = run("--part", "arm", "--guide-bush", "12", "--cutter", "12");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("does not go through");
    assertThat(run("--part", "arm", "--guide-bush", "12").code()).isEqualTo(2);
  }
}
