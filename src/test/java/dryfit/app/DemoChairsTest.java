package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Demo chairs are found from whatever folder the packed program is started. */
class DemoChairsTest {
  @TempDir Path folder;

  @Test
  void aPackedProgramHasThemBesideItsLibraries() throws IOException {
    Path lib = Files.createDirectories(folder.resolve("packed/lib"));
    Path models = Files.createDirectories(folder.resolve("packed/models"));
    Path jar = Files.createFile(lib.resolve("dryfit.jar"));
    Files.createFile(models.resolve("stool.json"));
    Files.createFile(models.resolve("notes.txt"));
    Path found = DemoChairs.folder(jar, folder);
    assertThat(found).isEqualTo(models);
    assertThat(DemoChairs.in(found)).containsExactly(models.resolve("stool.json"));
  }

  @Test
  void classesInASourceTreeHaveThemWhereTheProgramWasStarted() throws IOException {
    Path classes = Files.createDirectories(folder.resolve("target/classes"));
    Files.createDirectories(folder.resolve("models"));
    assertThat(DemoChairs.folder(classes, folder)).isEqualTo(folder.resolve("models"));
  }

  @Test
  void whereNoneCameAlongThereAreNone() {
    assertThat(DemoChairs.in(folder.resolve("nowhere"))).isEmpty();
  }

  @Test
  void theseTestsSeeThoseOfTheSource() {
    assertThat(DemoChairs.all()).contains(Path.of("models/harbour-armchair.json"));
  }
}
