package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.app.Exporting.Outcome;
import dryfit.app.Exporting.What;
import dryfit.document.Design;
import dryfit.export.TextStyle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportingTest {
  @TempDir Path folder;

  private static Exporting exporting() {
    OpenChair.Ready ready =
        (OpenChair.Ready)
            OpenChair.open(
                Path.of("models/harbour-armchair.json"),
                Design.AS_DRAWN,
                KernelChoice.USUAL.kernel());
    return new Exporting(
        ready.document(),
        ready.chair(),
        TextStyle.of(ready.chair().design().unit()),
        KernelChoice.USUAL.kernel(),
        Exporting.usualPaper(ready.chair().design()));
  }

  private static List<String> names(Path of) throws IOException {
    try (Stream<Path> files = Files.list(of)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void progressRisesFileByFileToTheNumberThatWasSaid() throws IOException {
    List<Integer> done = new ArrayList<>();
    List<OptionalInt> all = new ArrayList<>();
    Outcome outcome =
        exporting()
            .write(
                What.NAMED_SOLIDS,
                folder,
                (count, of) -> {
                  done.add(count);
                  all.add(of);
                  return true;
                });
    Outcome.Done written = (Outcome.Done) outcome;
    assertThat(written.files()).hasSize(names(folder).size()).allMatch(Files::exists);
    assertThat(done).isSorted().endsWith(written.files().size());
    assertThat(all).contains(OptionalInt.of(written.files().size()));
  }

  @Test
  void oldFilesStayAsTheyWereWhereWritingIsBrokenOff() throws IOException {
    Path old = Files.writeString(folder.resolve("assembled.stl"), "of an older design");
    Outcome outcome = exporting().write(What.SOLIDS, folder, (done, all) -> done < 5);
    assertThat(outcome).isEqualTo(new Outcome.BrokenOff());
    assertThat(names(folder)).containsExactly("assembled.stl");
    assertThat(old).hasContent("of an older design");
  }

  @Test
  void theBenchBookComesOnPaperAndForATelephone() throws IOException {
    Outcome outcome = exporting().write(What.SHEETS, folder, (done, all) -> true);
    assertThat(outcome).isInstanceOf(Outcome.Done.class);
    assertThat(names(folder)).containsExactly("bench-book.html", "bench-book.pdf");
    // The first bytes of a PDF: ISO 32000-1, 7.5.2.
    assertThat(Files.readAllBytes(folder.resolve("bench-book.pdf")))
        .startsWith("%PDF-1.".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
  }

  @Test
  void theBookBrokenOffBetweenItsFormsLeavesNothing() throws IOException {
    Outcome outcome = exporting().write(What.SHEETS, folder, (done, all) -> done < 1);
    assertThat(outcome).isEqualTo(new Outcome.BrokenOff());
    assertThat(names(folder)).isEmpty();
  }

  @Test
  void templatesAreOfShapedPartsAndMouths() throws IOException {
    Outcome outcome = exporting().write(What.TEMPLATES, folder, (done, all) -> true);
    assertThat(outcome).isInstanceOf(Outcome.Done.class);
    assertThat(names(folder)).contains("arm.pdf", "mouths.pdf").doesNotContain("seat.pdf");
  }

  @Test
  void aFolderThatCannotBeMadeIsTold() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "not a folder");
    Outcome outcome = exporting().write(What.SOLIDS, file.resolve("in"), (done, all) -> true);
    assertThat(outcome).isInstanceOf(Outcome.Failed.class);
    assertThat(((Outcome.Failed) outcome).reason()).contains(file.resolve("in").toString());
    assertThat(names(folder)).containsExactly("file");
  }

  @Test
  void theComparisonIsOnePageOfAllVariants() throws IOException {
    Outcome outcome = exporting().write(What.COMPARISON, folder, (done, all) -> true);
    assertThat(outcome).isInstanceOf(Outcome.Done.class);
    assertThat(names(folder)).containsExactly("compared.html");
    assertThat(folder.resolve("compared.html"))
        .content()
        .contains("as drawn")
        .contains("low")
        .contains("deep tenons");
  }

  @Test
  void boardsAndTheirListAreWrittenTogether() throws IOException {
    Outcome outcome = exporting().write(What.BOARDS, folder, (done, all) -> true);
    assertThat(outcome).isInstanceOf(Outcome.Done.class);
    assertThat(names(folder)).contains("boards.pdf", "cut-list.csv");
  }
}
