package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
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

  private record Said(int code, String out, String err) {}

  private static Said run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Main.run(
            args,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false);
    return new Said(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aBookOnPaperIsInTheUnitThatWasAskedFor() throws Exception {
    Path file = folder.resolve("stool.pdf");
    Said said = run("sheets", STOOL, "--units", "in", "--paper", "letter", "--to", file.toString());
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
    assertThat(run("sheets", STOOL, "--to", file.toString()).code()).isZero();
    assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>");
  }

  @Test
  void whatIsNoFormIsToldInOneLine() {
    Said said = run("sheets", STOOL, "--format", "docx");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("'docx'").contains("pdf, html");
    assertThat(said.err().lines()).hasSize(1);
  }

  @Test
  void aPlaceThatCannotBeWrittenToLeavesNothing() throws Exception {
    Path blocked = Files.writeString(folder.resolve("file"), "");
    Said said = run("sheets", STOOL, "--to", blocked.resolve("book.pdf").toString());
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err().lines()).hasSize(1);
    assertThat(folder).isDirectoryNotContaining("glob:**.pdf");
    assertThat(blocked).isEmptyFile();
  }
}
