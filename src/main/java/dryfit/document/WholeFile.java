package dryfit.document;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Puts a file into its place whole or not at all. */
public final class WholeFile {
  private WholeFile() {}

  /** What is done with the file while it stands beside its place. */
  @FunctionalInterface
  public interface Readied {
    /**
     * @param beside the file as it was written
     * @param readBack what it holds
     * @throws IOException if it shall not get its place
     */
    void look(Path beside, byte[] readBack) throws IOException;
  }

  /**
   * Writes beside {@code target}, reads back, has it looked at, and moves it into place. On any
   * failure the file beside it is removed and an older {@code target} stays as it was. A program
   * that is told to end first ends the file it is at.
   *
   * @throws IOException if the disk does not take it; it names the target
   */
  public static void put(Path target, byte[] bytes, Readied readied) throws IOException {
    // Not a temporary file of the system's: those would keep others from reading the result.
    long process = ProcessHandle.current().pid();
    Path beside = target.resolveSibling("." + target.getFileName() + "." + process + ".part");
    try (Unbroken unbroken = Unbroken.begin()) {
      unbroken.whole(
          () -> {
            try {
              Files.write(beside, bytes);
              readied.look(beside, Files.readAllBytes(beside));
              move(beside, target);
            } finally {
              Files.deleteIfExists(beside);
            }
          });
    } catch (FileSystemException e) {
      throw named(e, beside, target);
    }
  }

  /** Nobody asked for the file beside, and its name would tell them nothing. */
  private static FileSystemException named(FileSystemException e, Path beside, Path target) {
    if (!beside.toString().equals(e.getFile())) {
      return e;
    }
    FileSystemException told =
        e instanceof AccessDeniedException
            ? new AccessDeniedException(target.toString(), null, e.getReason())
            : new FileSystemException(target.toString(), null, e.getReason());
    told.initCause(e);
    return told;
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      // Some network disks cannot; the whole file is still only one rename away.
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
