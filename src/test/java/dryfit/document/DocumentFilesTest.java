package dryfit.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocumentFilesTest {
  @TempDir Path folder;

  private static Problem problem(Path path) {
    Reading<Document> reading = DocumentReader.read(path);
    List<Problem> problems = ((Reading.Refused<Document>) reading).problems();
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }

  private List<String> names() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void readsBackWhatItSaves() throws IOException {
    Path path = folder.resolve("chair.json");
    DocumentWriter.save(path, Samples.everyForm());
    Document document = ((Reading.Accepted<Document>) DocumentReader.read(path)).value();
    assertThat(document.text()).isEqualTo(Samples.everyForm());
    assertThat(document.file()).isEqualTo(path.toString());
  }

  @Test
  void savingReplacesTheOldFileAndLeavesNothingBeside() throws IOException {
    Path path = folder.resolve("chair.json");
    Files.writeString(path, "old");
    DocumentWriter.save(path, "ünew");
    assertThat(Files.readString(path)).isEqualTo("ünew");
    assertThat(names()).containsExactly("chair.json");
  }

  @Test
  void aSaveThatFailsLeavesNothingBehind() throws IOException {
    Path taken = Files.createDirectories(folder.resolve("chair.json").resolve("inside"));
    assertThatThrownBy(() -> DocumentWriter.save(taken.getParent(), "text"))
        .isInstanceOf(IOException.class);
    assertThat(names()).containsExactly("chair.json");
    assertThat(taken).exists();
  }

  @Test
  void aSaveThatFailsNamesTheFileThatWasAskedFor() {
    // Long enough that only the file beside it has too long a name.
    Path target = folder.resolve("c".repeat(249) + ".json");
    assertThatThrownBy(() -> DocumentWriter.save(target, "text"))
        .isInstanceOf(IOException.class)
        .hasMessageContaining(target.toString())
        .message()
        .doesNotContain(".part");
  }

  @Test
  void aNewFileMayBeReadByWhomANewFileUsuallyMay() throws IOException {
    Path usual = Files.writeString(folder.resolve("usual.json"), "text");
    Path saved = folder.resolve("saved.json");
    DocumentWriter.save(saved, "text");
    assertThat(Files.getPosixFilePermissions(saved))
        .isEqualTo(Files.getPosixFilePermissions(usual));
  }

  @Test
  void aLinkThatLeadsToNothingYetIsFollowed() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("chair.json"));
    DocumentWriter.save(link, "text");
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.readString(folder.resolve("chair.json"))).isEqualTo("text");
  }

  @Test
  void linksThatLeadRoundAreRefused() throws IOException {
    Path one = folder.resolve("one.json");
    Path two = Files.createSymbolicLink(folder.resolve("two.json"), one);
    Files.createSymbolicLink(one, two);
    assertThatThrownBy(() -> DocumentWriter.save(one, "text")).isInstanceOf(IOException.class);
  }

  @Test
  void aFileThatIsAbsentIsAProblemWithoutALine() {
    Problem problem = problem(folder.resolve("none.json"));
    assertThat(problem.code()).isEqualTo("no-file");
    assertThat(problem.line()).isZero();
    assertThat(problem.message()).contains("no such file");
  }

  @Test
  void aFolderIsNoDocument() {
    assertThat(problem(folder).code()).isEqualTo("no-file");
  }

  @Test
  void bytesThatAreNoTextAreRefused() throws IOException {
    Path path = Files.write(folder.resolve("chair.json"), new byte[] {'{', (byte) 0xff, '}'});
    assertThat(problem(path).code()).isEqualTo("not-json");
  }

  @Test
  void aFileOverTheLimitIsRefusedWithoutReadingItAll() throws IOException {
    byte[] bytes = " ".repeat((1 << 20) + 1).getBytes(StandardCharsets.UTF_8);
    Path path = Files.write(folder.resolve("chair.json"), bytes);
    assertThat(problem(path).code()).isEqualTo("too-large");
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    assertThat(Samples.document("\uFEFF" + Samples.everyForm()).text())
        .isEqualTo(Samples.everyForm());
  }
}
