package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.app.Kept.Broken;
import dryfit.app.Kept.Found;
import dryfit.app.Kept.Work;
import dryfit.document.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(120)
class KeptTest {
  @TempDir Path folder;
  private Path file;
  private StateFolder state;
  private Kept kept;
  private final List<Process> processes = new ArrayList<>();
  private final List<String> troubles = new ArrayList<>();

  @BeforeEach
  void aFile() throws IOException {
    file = Files.writeString(folder.resolve("posts.json"), Benches.TEXT);
    state = new StateFolder(folder.resolve("state"));
    kept = new Kept(state, Duration.ofMillis(10));
  }

  @AfterEach
  void end() {
    processes.forEach(Process::destroyForcibly);
    kept.close();
  }

  private static Draft open(Path path) {
    return ((Reading.Accepted<Draft>) Draft.open(path)).value();
  }

  private List<Path> lying() throws IOException {
    if (!Files.exists(state.path().resolve("kept"))) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(state.path().resolve("kept"))) {
      return files.filter(f -> f.toString().endsWith(".kept")).sorted().toList();
    }
  }

  private void untilLying(int files) throws IOException, InterruptedException {
    while (lying().size() != files) {
      Thread.sleep(5);
    }
  }

  private Process maker(String width) throws IOException, InterruptedException {
    int before = lying().size();
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                CrashingMaker.class.getName(),
                state.path().toString(),
                file.toString(),
                width)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("maker-" + width + ".txt").toFile())
            .start();
    processes.add(process);
    while (lying().size() == before && process.isAlive()) {
      Thread.sleep(5);
    }
    assertThat(process.isAlive())
        .as(Files.readString(folder.resolve("maker-" + width + ".txt")))
        .isTrue();
    return process;
  }

  @Test
  void workIsOfferedAfterACrashAndNotBefore() throws IOException, InterruptedException {
    Process maker = maker("330");
    assertThat(kept.found(file)).isEmpty();
    maker.destroyForcibly().waitFor();

    Work work = (Work) kept.found(file).get(0);
    assertThat(work.text()).isEqualTo(Benches.TEXT.replace("\"width\": 320", "\"width\": 330"));
    assertThat(work.variant()).isEqualTo("low");
    assertThat(work.diskMoved()).isFalse();
    assertThat(work.differences())
        .singleElement()
        .satisfies(
            d -> {
              assertThat(d.mine()).contains("330");
              assertThat(d.theirs()).contains("320");
            });
    assertThat(Files.readString(file)).isEqualTo(Benches.TEXT);

    Draft draft = open(file);
    try (Keeping keeping = kept.keep(draft, troubles::add)) {
      keeping.bringBack(work);
      assertThat(draft.now().text()).isEqualTo(work.text());
      assertThat(draft.now().variant()).isEqualTo("low");
      assertThat(draft.unsaved()).isTrue();
      // It is kept for this process now, and offered to nobody.
      assertThat(lying()).hasSize(1).doesNotContain(work.at());
      assertThat(kept.found(file)).isEmpty();
    }
    assertThat(lying()).isEmpty();
    assertThat(troubles).isEmpty();
  }

  @Test
  void twoProcessesWithOneFileDoNotTakeEachOthersWork() throws IOException, InterruptedException {
    Process first = maker("330");
    maker("340");
    assertThat(lying()).hasSize(2);
    first.destroyForcibly().waitFor();
    List<Found> found = kept.found(file);
    assertThat(found).hasSize(1);
    assertThat(((Work) found.get(0)).text()).contains("\"width\": 330");
    kept.discard(found.get(0));
    assertThat(lying()).hasSize(1);
  }

  @Test
  void aFileThatMovedOnSinceIsTold() throws IOException, InterruptedException {
    maker("330").destroyForcibly().waitFor();
    Files.writeString(file, Benches.TEXT.replace("440", "444"));
    assertThat(((Work) kept.found(file).get(0)).diskMoved()).isTrue();
  }

  @Test
  void aMomentAfterAChangeItIsKeptAndAfterSavingItIsNot() throws IOException, InterruptedException {
    Draft draft = open(file);
    try (Keeping keeping = kept.keep(draft, troubles::add)) {
      draft.dimension("width", "330");
      untilLying(1);
      draft.save();
      untilLying(0);
      draft.dimension("width", "340");
      untilLying(1);
      draft.undo();
      untilLying(0);
      assertThat(keeping.now()).isTrue();
    }
    assertThat(troubles).isEmpty();
  }

  @Test
  void aDraftWithoutAFileIsKeptTooAndMovesWithItsName() throws IOException, InterruptedException {
    Draft draft = Draft.begun("new chair", Benches.TEXT);
    try (Keeping keeping = kept.keep(draft, troubles::add)) {
      draft.dimension("width", "330");
      keeping.now();
      assertThat(lying().get(0).getFileName().toString()).startsWith("unnamed-");
      assertThat(kept.found()).isEmpty();
      draft.saveAs(folder.resolve("first.json"));
      draft.dimension("width", "340");
      keeping.now();
      assertThat(lying()).hasSize(1);
      assertThat(lying().get(0).getFileName().toString()).doesNotStartWith("unnamed-");
    }
    assertThat(lying()).isEmpty();
  }

  @Test
  void workThatIsLetGoIsOfferedInTheSameProcess() throws IOException {
    Draft untouched = Draft.begun("new chair", Benches.TEXT);
    kept.keep(untouched, troubles::add).leave();
    assertThat(kept.found()).as("of a chair nobody has changed").isEmpty();

    Draft draft = Draft.begun("new chair", Benches.TEXT);
    Keeping keeping = kept.keep(draft, troubles::add);
    draft.dimension("width", "330");
    keeping.leave();
    Work work = (Work) kept.found().get(0);
    assertThat(work.file()).isEmpty();
    assertThat(work.text()).contains("\"width\": 330");
    assertThat(troubles).isEmpty();
  }

  @Test
  void damagedWorkCostsAMessageAndNotTheDocument() throws IOException, InterruptedException {
    maker("330").destroyForcibly().waitFor();
    Path at = lying().get(0);
    String whole = Files.readString(at);
    List<String> damaged =
        List.of(
            "",
            whole.substring(0, whole.length() / 2),
            whole.replace("330", "331"),
            "dryfit-kept/2" + whole.substring(13));
    for (String text : damaged) {
      Files.writeString(at, text);
      List<Found> found = kept.found(file);
      assertThat(found).hasSize(1);
      assertThat(((Broken) found.get(0)).message()).contains("damaged");
    }
    assertThat(open(file).now().text()).isEqualTo(Benches.TEXT);
    kept.discard(kept.found(file).get(0));
    assertThat(kept.found(file)).isEmpty();
  }

  @Test
  void aStateFolderThatCannotBeIsToldOnceAndEditingGoesOn() throws IOException {
    Files.writeString(state.path(), "a file stands here");
    Draft draft = open(file);
    try (Keeping keeping = kept.keep(draft, troubles::add)) {
      draft.dimension("width", "330");
      assertThat(keeping.now()).isFalse();
      draft.dimension("width", "340");
      assertThat(keeping.now()).isFalse();
    }
    assertThat(troubles).hasSize(1);
    assertThat(draft.now().text()).contains("\"width\": 340");
  }

  @Test
  void workIsFoundThroughALinkToTheFileToo() throws IOException, InterruptedException {
    maker("330").destroyForcibly().waitFor();
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);
    assertThat(kept.found(link)).hasSize(1);
  }
}
