package dryfit.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A chair document's text as it lies in a file, whether or not it is sound. What is read and
 * written again is the same, byte for byte.
 *
 * @param text without a byte order mark; line endings as they are
 * @param marked whether the file begins with a byte order mark, as some editors write it
 */
public record ChairFile(String text, boolean marked) {
  private static final char MARK = '\uFEFF';

  /** A text as a file may begin with it. */
  public static ChairFile of(String text) {
    return !text.isEmpty() && text.charAt(0) == MARK
        ? new ChairFile(text.substring(1), true)
        : new ChairFile(text, false);
  }

  /** Reads a file; one that is absent, too large or no text is refused with one problem. */
  public static Reading<ChairFile> read(Path path) {
    String file = path.toString();
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(Limits.bytes() + 1);
    } catch (IOException e) {
      String why =
          Files.isDirectory(path)
              ? "this is a folder"
              : Files.exists(path) ? "the file cannot be read" : "there is no such file";
      return refused(file, 0, "no-file", why);
    }
    if (bytes.length > Limits.bytes()) {
      return DocumentReader.tooLarge(file);
    }
    try {
      return new Reading.Accepted<>(
          of(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString()));
    } catch (CharacterCodingException e) {
      return refused(file, 1, "not-json", "the file is not text in UTF-8");
    }
  }

  /** The same file with another text in it. */
  public ChairFile with(String changed) {
    return new ChairFile(changed, marked);
  }

  /** What stands in the file. */
  public byte[] bytes() {
    return (marked ? MARK + text : text).getBytes(StandardCharsets.UTF_8);
  }

  /** SHA-256 of {@link #bytes}, in hexadecimal: two files with the same one are the same. */
  public String fingerprint() {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes()));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  static <T> Reading<T> refused(String file, int line, String code, String what) {
    Problems problems = new Problems(file);
    problems.add(code, new Json.At("", line, 0, 0), file, "a chair document", what);
    return new Reading.Refused<>(problems.all());
  }
}
