package dryfit.document;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import tools.jackson.core.io.JsonStringEncoder;

/** Writes chair documents. */
public final class DocumentWriter {
  /** Symbolic links followed before it is taken for a loop. */
  private static final int LINKS = 40;

  private DocumentWriter() {}

  /**
   * Saves a text as a file, whole or not at all, even if the program is told to end meanwhile: see
   * {@link WholeFile}.
   *
   * @throws IOException if it cannot be written; the old file is then as it was
   */
  public static void save(Path path, String text) throws IOException {
    save(path, new ChairFile(text, false));
  }

  /**
   * The same, with a byte order mark if the file has one. A symbolic link stays one, and what it
   * leads to is replaced; who may read and write the file stays as it was. Other hard links to the
   * old file keep the old text.
   *
   * @throws IOException as above; also if the file is there and may not be written to
   */
  public static void save(Path path, ChairFile file) throws IOException {
    Path target = followed(path.toAbsolutePath());
    if (Files.exists(target) && !Files.isWritable(target)) {
      // Moving another file over it would work, and would not be what was asked for.
      throw new AccessDeniedException(target.toString());
    }
    if (Files.isDirectory(target)) {
      throw new FileSystemException(target.toString(), null, "this is a folder");
    }
    byte[] bytes = file.bytes();
    WholeFile.put(
        target,
        bytes,
        (beside, readBack) -> {
          if (!Arrays.equals(bytes, readBack)) {
            throw new FileSystemException(target.toString(), null, "it reads back differently");
          }
          takeOver(target, beside);
          force(beside);
        });
  }

  /** Where a chain of symbolic links ends; the last one may lead to nothing yet. */
  private static Path followed(Path path) throws IOException {
    Path at = path;
    for (int i = 0; i < LINKS; i++) {
      if (!Files.isSymbolicLink(at)) {
        return at;
      }
      at = at.resolveSibling(Files.readSymbolicLink(at));
    }
    throw new FileSystemLoopException(path.toString());
  }

  /** Waits for the disk: a document is work of hours, and the power may fail in the next second. */
  private static void force(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  private static void takeOver(Path old, Path fresh) throws IOException {
    PosixFileAttributeView of = Files.getFileAttributeView(old, PosixFileAttributeView.class);
    if (of != null && Files.exists(old)) {
      Files.setPosixFilePermissions(fresh, of.readAttributes().permissions());
    }
  }

  /** A text as it stands in a document: in quotation marks, with what JSON wants escaped. */
  public static String quoted(String text) {
    return '"' + new String(JsonStringEncoder.getInstance().quoteAsCharArray(text)) + '"';
  }
}
