package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {
  @TempDir Path folder;

  private static final byte[] BYTES = {1, 2, 3};

  @Test
  void missingFoldersAreMadeAndOnlyTheFileIsLeft() throws IOException {
    Path target = folder.resolve("a/b/c.bin");
    SafeFile.write(target, BYTES, readBack -> assertThat(readBack).isEqualTo(BYTES));
    assertThat(target).hasBinaryContent(BYTES);
    try (Stream<Path> all = Files.list(target.getParent())) {
      assertThat(all).containsExactly(target);
    }
  }

  @Test
  void theFileHasItsNameOnlyAfterTheCheck() throws IOException {
    Path target = folder.resolve("c.bin");
    SafeFile.write(target, BYTES, readBack -> assertThat(target).doesNotExist());
    assertThat(target).exists();
  }

  @Test
  void aFileThatFailsItsCheckLeavesNothing() throws IOException {
    Path target = folder.resolve("c.bin");
    assertThatThrownBy(
            () ->
                SafeFile.write(
                    target,
                    BYTES,
                    readBack -> {
                      throw new UnsoundFile("no");
                    }))
        .isInstanceOf(UnsoundFile.class);
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).isEmpty();
    }
  }

  @Test
  void anOlderFileIsReplaced() throws IOException {
    Path target = folder.resolve("c.bin");
    Files.write(target, new byte[] {9});
    SafeFile.write(target, BYTES, readBack -> {});
    assertThat(target).hasBinaryContent(BYTES);
  }

  @Test
  void aFailureNamesTheFileThatWasAskedFor() {
    // Long enough that only the file beside it has too long a name.
    Path target = folder.resolve("c".repeat(250) + ".bin");
    assertThatThrownBy(() -> SafeFile.write(target, BYTES, readBack -> {}))
        .isInstanceOf(FileSystemException.class)
        .hasMessageContaining(target.toString())
        .message()
        .doesNotContain(".part");
  }
}
