package dryfit.export;

import dryfit.document.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a file whole or not at all. */
public final class SafeFile {
  private SafeFile() {}

  /** Looks at what was read back from the disk before the file gets its name. */
  @FunctionalInterface
  public interface Check {
    /**
     * @throws UnsoundFile if it is not what was meant
     */
    void look(byte[] readBack);
  }

  /**
   * Writes beside {@code target}, reads back, checks, and moves into place. Missing folders are
   * made. On any failure the file beside it is removed and an older {@code target} stays as it was.
   * A program that is told to end first ends the file it is at.
   *
   * @throws IOException if the disk does not take it
   * @throws UnsoundFile if {@code check} is not content
   */
  public static void write(Path target, byte[] bytes, Check check) throws IOException {
    Path place = target.toAbsolutePath();
    Files.createDirectories(place.getParent());
    WholeFile.put(place, bytes, (beside, readBack) -> check.look(readBack));
  }
}
