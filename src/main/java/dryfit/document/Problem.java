package dryfit.document;

import java.util.Optional;

/**
 * One thing wrong with a document, for its author to mend.
 *
 * @param code stable id, e.g. {@code unknown-key}
 * @param file as the user named it
 * @param line first line is 1; 0 if the file could not be read at all
 * @param pointer JSON pointer of the place, empty for the whole document
 * @param found what stands there
 * @param allowed what would be right
 * @param nearest the nearest known name, for a slip of the pen
 * @param message one sentence that says all of it
 */
public record Problem(
    String code,
    String file,
    int line,
    String pointer,
    String found,
    String allowed,
    Optional<String> nearest,
    String message) {

  /** The same problem on a line that became known later. */
  public Problem onLine(int known) {
    return new Problem(code, file, known, pointer, found, allowed, nearest, message);
  }
}
