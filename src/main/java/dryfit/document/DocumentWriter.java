package dryfit.document;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import tools.jackson.core.io.JsonStringEncoder;

/** Writes chair documents. */
public final class DocumentWriter {
  private DocumentWriter() {}

  /**
   * Saves a text as a file, whole or not at all: it goes to a temporary file in the same folder,
   * which then takes the place of the old one.
   *
   * @throws IOException if it cannot be written; the old file is then as it was
   */
  public static void save(Path path, String text) throws IOException {
    Path target = path.toAbsolutePath();
    Path temporary = Files.createTempFile(target.getParent(), ".dryfit-", ".part");
    try {
      Files.writeString(temporary, text);
      try {
        Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  /** A text as it stands in a document: in quotation marks, with what JSON wants escaped. */
  public static String quoted(String text) {
    return '"' + new String(JsonStringEncoder.getInstance().quoteAsCharArray(text)) + '"';
  }
}
