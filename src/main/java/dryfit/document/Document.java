package dryfit.document;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A chair document that was read and found sound in every variant. Immutable. */
public final class Document {
  private final String file;
  private final String text;
  private final Json.Obj root;

  Document(String file, String text, Json.Obj root) {
    this.file = file;
    this.text = text;
    this.root = root;
  }

  /** The file as the user named it. */
  public String file() {
    return file;
  }

  /** The text as it was read, to the letter. */
  public String text() {
    return text;
  }

  /** The names of the variants in document order; the chair as drawn is not among them. */
  public List<String> variants() {
    return List.copyOf(Variants.of(root).keySet());
  }

  /**
   * The chair with a variant applied.
   *
   * @param variant one of {@link #variants}, or {@link Design#AS_DRAWN}
   * @return the design, or {@code unknown-variant}
   */
  public Reading<Design> design(String variant) {
    return design(variant, Map.of());
  }

  /**
   * The chair with a variant applied and some dimensions set to other values. What is set loses its
   * formula and its range: whoever sets it means it.
   *
   * @param variant one of {@link #variants}, or {@link Design#AS_DRAWN}
   * @param set by name; millimetres, radians or plain numbers
   * @return the design, or {@code unknown-variant}, or {@code unknown-name}
   */
  public Reading<Design> design(String variant, Map<String, Quantity> set) {
    Problems problems = new Problems(file);
    Map<String, Json.Obj> variants = Variants.of(root);
    Json.Obj merged = root;
    if (variants.containsKey(variant)) {
      merged = new Variants(root, problems).apply(variants.get(variant));
    } else if (!variant.equals(Design.AS_DRAWN)) {
      Json place = root.members().getOrDefault("variants", root);
      problems.unknown(
          "unknown-variant", place.at(), variant, variants.keySet(), "a variant of this chair");
      return new Reading.Refused<>(problems.all());
    }
    merged = SetDimensions.in(merged, set, problems);
    Design design = new DesignReader(root, merged, problems).read(file, variant);
    return problems.none() ? new Reading.Accepted<>(design) : new Reading.Refused<>(problems.all());
  }

  /**
   * The document with one value written anew and every other letter as it was.
   *
   * @param pointer JSON pointer of a value in this document, such as {@link
   *     Design.Dimension#pointer}
   * @param json the new value as JSON: a number, a text in quotation marks
   * @throws IllegalArgumentException if nothing stands at the pointer
   */
  public Reading<Document> edited(String pointer, String json) {
    Json.At place = at(pointer);
    return DocumentReader.read(
        file, text.substring(0, place.start()) + json + text.substring(place.end()));
  }

  /**
   * The document with one more measurement at the end of its list, and every other letter as it
   * was.
   *
   * @param json the measurement as a JSON object, on one line
   */
  public Reading<Document> measured(String json) {
    return DocumentReader.read(file, AddMeasurement.to(text, root, json));
  }

  /**
   * The line of a place in this document, for problems found after it was read. Where nothing
   * stands at the pointer (a key left out), it is the line of the nearest thing around it.
   *
   * @param pointer JSON pointer, such as {@link Problem#pointer}
   * @return the first line is 1
   */
  public int lineOf(String pointer) {
    Json node = root;
    for (String key : keys(pointer)) {
      Json inner = member(node, key);
      if (inner == null) {
        break;
      }
      node = inner;
    }
    return node.at().line();
  }

  private Json.At at(String pointer) {
    Json node = root;
    for (String key : keys(pointer)) {
      node = member(node, key);
      if (node == null) {
        throw new IllegalArgumentException("nothing stands at " + pointer);
      }
    }
    return node.at();
  }

  private static List<String> keys(String pointer) {
    return pointer.isEmpty()
        ? List.of()
        : Stream.of(pointer.substring(1).split("/", -1))
            .map(key -> key.replace("~1", "/").replace("~0", "~"))
            .toList();
  }

  /** The member or item, null if there is none. */
  private static Json member(Json node, String key) {
    if (node instanceof Json.Obj object) {
      return object.members().get(key);
    }
    if (node instanceof Json.Arr array && key.matches("\\d{1,6}")) {
      int index = Integer.parseInt(key);
      return index < array.items().size() ? array.items().get(index) : null;
    }
    return null;
  }
}
