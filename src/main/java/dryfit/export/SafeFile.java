package dryfit.export;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

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
    Path folder = target.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    // Not a temporary file of the system's: those would keep others from reading the result.
    long process = ProcessHandle.current().pid();
    Path beside = folder.resolve("." + target.getFileName() + "." + process + ".part");
    try (Unbroken unbroken = Unbroken.begin()) {
      unbroken.whole(
          () -> {
            try {
              Files.write(beside, bytes);
              check.look(Files.readAllBytes(beside));
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
