package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own, told to end (SIGTERM) in the middle of its work. */
class InterruptionTest {
  @TempDir Path folder;

  @Test
  void jigsThatAreInterruptedLeaveWholeFilesOnly() throws IOException, InterruptedException {
    Path to = folder.resolve("jigs");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "dryfit.cli.Main",
                "jigs",
                "models/low-stool.json",
                "--to",
                to.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said").toFile())
            .start();
    while (process.isAlive() && files(to).size() < 3) {
      process.waitFor(5, TimeUnit.MILLISECONDS);
    }
    process.destroy();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    // 128 and the number of the signal, as shells tell it.
    assertThat(process.exitValue()).isEqualTo(143);
    List<Path> left = files(to);
    assertThat(left).isNotEmpty();
    for (Path file : left) {
      String name = file.getFileName().toString();
      assertThat(name).doesNotEndWith(".part");
      if (name.endsWith(".stl")) {
        byte[] bytes = Files.readAllBytes(file);
        int triangles = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(80);
        assertThat(bytes).as(name).hasSize(84 + 50 * triangles);
      } else {
        try (ZipFile zip = new ZipFile(file.toFile())) {
          assertThat(zip.getEntry("3D/3dmodel.model")).as(name).isNotNull();
        }
      }
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }
}
