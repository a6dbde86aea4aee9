package dryfit.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Reads chair documents. Faults come back as problems, all at once, never as exceptions. */
public final class DocumentReader {
  private DocumentReader() {}

  /** Reads a file; a file that is absent, too large or no text is a problem like any other. */
  public static Reading<Document> read(Path path) {
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
    try {
      return read(
          file, StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      return bytes.length > Limits.bytes()
          ? tooLarge(file)
          : refused(file, 1, "not-json", "the file is not text in UTF-8");
    }
  }

  /**
   * Reads a text.
   *
   * @param file what to call it in messages
   */
  public static Reading<Document> read(String file, String text) {
    if (text.getBytes(StandardCharsets.UTF_8).length > Limits.bytes()) {
      return tooLarge(file);
    }
    Problems problems = new Problems(file);
    // Some editors put a byte order mark first; it says nothing in UTF-8.
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    Optional<Json> tree = JsonTree.read(plain, problems);
    if (tree.isPresent() && tree.get() instanceof Json.Obj root) {
      validate(file, root, problems);
      return problems.none()
          ? new Reading.Accepted<>(new Document(file, plain, root))
          : new Reading.Refused<>(problems.all());
    }
    tree.ifPresent(
        node ->
            problems.add(
                "wrong-type",
                node.at(),
                node.shown(),
                "an object { }",
                "a chair document is an object { }, and this is " + node.kind()));
    return new Reading.Refused<>(problems.all());
  }

  private static void validate(String file, Json.Obj root, Problems problems) {
    new DesignReader(root, root, problems).read(file, Design.AS_DRAWN);
    Map<String, Json.Obj> variants = Variants.of(root);
    if (variants.size() > Limits.variants()) {
      return;
    }
    for (Map.Entry<String, Json.Obj> variant : variants.entrySet()) {
      if (problems.isFull()) {
        return;
      }
      Problems own = problems.ofVariant();
      Json.Obj merged = new Variants(root, own).apply(variant.getValue());
      new DesignReader(root, merged, own).read(file, variant.getKey());
      problems.addFromVariant(variant.getKey(), own);
    }
  }

  private static Reading<Document> tooLarge(String file) {
    return refused(
        file, 0, "too-large", "the document is larger than " + Limits.bytes() + " bytes (1 MiB)");
  }

  private static Reading<Document> refused(String file, int line, String code, String what) {
    Problems problems = new Problems(file);
    problems.add(code, new Json.At("", line, 0, 0), file, "a chair document", what);
    return new Reading.Refused<>(problems.all());
  }
}
