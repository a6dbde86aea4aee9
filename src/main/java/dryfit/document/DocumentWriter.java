package dryfit.document;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import java.util.UUID;
import tools.jackson.core.io.JsonStringEncoder;

/** Writes chair documents. */
public final class DocumentWriter {
  /** Symbolic links followed before it is taken for a loop. */
  private static final int LINKS = 40;

  private DocumentWriter() {}

  /**
   * Saves a text as a file, whole or not at all: it goes to a temporary file in the same folder,
   * which then takes the place of the old one.
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
      throw new IOException("this is a folder");
    }
    Path temporary = target.resolveSibling(".dryfit-" + UUID.randomUUID() + ".part");
    try {
      write(temporary, file.bytes());
      takeOver(target, temporary);
      move(temporary, target);
    } finally {
      Files.deleteIfExists(temporary);
    }
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

  /** Writes, waits for the disk, reads back. */
  private static void write(Path temporary, byte[] bytes) throws IOException {
    try (FileChannel out =
        FileChannel.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        out.write(rest);
      }
      out.force(true);
    }
    if (!Arrays.equals(bytes, Files.readAllBytes(temporary))) {
      throw new IOException("it reads back differently");
    }
  }

  private static void takeOver(Path old, Path fresh) throws IOException {
    PosixFileAttributeView of = Files.getFileAttributeView(old, PosixFileAttributeView.class);
    if (of != null && Files.exists(old)) {
      Files.setPosixFilePermissions(fresh, of.readAttributes().permissions());
    }
  }

  private static void move(Path temporary, Path target) throws IOException {
    try {
      Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** A text as it stands in a document: in quotation marks, with what JSON wants escaped. */
  public static String quoted(String text) {
    return '"' + new String(JsonStringEncoder.getInstance().quoteAsCharArray(text)) + '"';
  }
}
