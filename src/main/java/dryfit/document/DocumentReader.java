package dryfit.document;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads chair documents. Faults come back as problems, all at once, never as exceptions. */
public final class DocumentReader {
  private DocumentReader() {}

  /** Reads a file; a file that is absent, too large or no text is a problem like any other. */
  public static Reading<Document> read(Path path) {
    Reading<ChairFile> reading = ChairFile.read(path);
    return reading instanceof Reading.Accepted<ChairFile> accepted
        ? read(path.toString(), accepted.value().text())
        : new Reading.Refused<>(((Reading.Refused<ChairFile>) reading).problems());
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
    String plain = ChairFile.of(text).text();
    Optional<Json> tree = JsonTree.read(plain, problems);
    if (tree.isPresent() && tree.get() instanceof Json.Obj root) {
      Map<String, Design> sound = sound(file, root);
      if (sound.isEmpty()) {
        findFaults(file, root, problems);
      }
      return problems.none()
          ? new Reading.Accepted<>(new Document(file, plain, root, sound))
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

  /**
   * The design as drawn and that of every variant, in document order, each read by itself; empty if
   * there is a fault in any of them.
   */
  private static Map<String, Design> sound(String file, Json.Obj root) {
    Map<String, Json.Obj> all = new LinkedHashMap<>();
    all.put(Design.AS_DRAWN, new Json.Obj(root.at(), Map.of()));
    all.putAll(Variants.of(root));
    if (all.size() > 1 + Limits.variants()) {
      return Map.of();
    }
    List<Optional<Design>> read =
        List.copyOf(all.entrySet()).parallelStream()
            .map(each -> sound(file, root, each.getKey(), each.getValue()))
            .toList();
    if (read.stream().anyMatch(Optional::isEmpty)) {
      return Map.of();
    }
    Map<String, Design> designs = new LinkedHashMap<>();
    Iterator<Optional<Design>> next = read.iterator();
    all.keySet().forEach(variant -> designs.put(variant, next.next().orElseThrow()));
    return designs;
  }

  private static Optional<Design> sound(
      String file, Json.Obj root, String variant, Json.Obj changes) {
    Problems problems = new Problems(file);
    Json.Obj merged =
        variant.equals(Design.AS_DRAWN) ? root : new Variants(root, problems).apply(changes);
    Design design = new DesignReader(root, merged, problems).read(file, variant);
    return problems.none() ? Optional.of(design) : Optional.empty();
  }

  /** Again one after the other: what is told of the chair as drawn is not told of a variant too. */
  private static void findFaults(String file, Json.Obj root, Problems problems) {
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
      problems.addFromVariant(variant.getKey(), own, Variants.removed(variant.getValue()));
    }
  }

  static <T> Reading<T> tooLarge(String file) {
    return ChairFile.refused(
        file, 0, "too-large", "the document is larger than " + Limits.bytes() + " bytes (1 MiB)");
  }
}
