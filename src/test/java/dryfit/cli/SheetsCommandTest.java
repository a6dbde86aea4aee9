package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetsCommandTest {
  private static final String STOOL = "models/low-stool.json";

  @TempDir Path folder;

  @Test
  void aBookOnPaperIsInTheUnitThatWasAskedFor() throws Exception {
    Path file = folder.resolve("stool.pdf");
    Said said =
        Said.by("sheets", STOOL, "--units", "in", "--paper", "letter", "--to", file.toString());
    assertThat(said.code()).isZero();
    assertThat(said.out()).isEqualTo(file + "\n");
    assertThat(said.err()).isEmpty();
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text).contains("across it, in inches");
      assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
    }
  }

  @Test
  void theEndingOfTheFileDecidesWhatItIs() throws Exception {
    Path file = folder.resolve("stool.html");
    assertThat(Said.by("sheets", STOOL, "--to", file.toString()).code()).isZero();
    assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>");
  }

  @Test
  void whatIsNoFormIsToldInOneLine() {
    Said said = Said.by("sheets", STOOL, "--format", "docx");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("'docx'").contains("pdf, html");
    assertThat(said.err().lines()).hasSize(1);
  }

  @Test
  void aPlaceThatCannotBeWrittenToLeavesNothing() throws Exception {
    Path blocked = Files.writeString(folder.resolve("file"), "");
    Said said = Said.by("sheets", STOOL, "--to", blocked.resolve("book.pdf").toString());
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err().lines()).hasSize(1);
    assertThat(folder).isDirectoryNotContaining("glob:**.pdf");
    assertThat(blocked).isEmptyFile();
  }

  @Test
  void aFolderIsNoFileToWriteTo(@TempDir Path folder) {
    Said said = Said.by("sheets", "models/low-stool.json", "--to", folder.toString());
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("it is a folder; name a file");
  }
}
