package dryfit.document;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A chair document that was read and found sound in every variant. Immutable. */
public final class Document {
  private final String file;
  private final String text;
  private final Json.Obj root;
  private final Map<String, Design> designs;

  /**
   * @param designs what was read of it: as drawn, and every variant
   */
  Document(String file, String text, Json.Obj root, Map<String, Design> designs) {
    this.file = file;
    this.text = text;
    this.root = root;
    this.designs = Map.copyOf(designs);
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
    if (set.isEmpty() && designs.containsKey(variant)) {
      return new Reading.Accepted<>(designs.get(variant));
    }
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
    Json.At place = node(pointer).at();
    return DocumentReader.read(
        file, text.substring(0, place.start()) + json + text.substring(place.end()));
  }

  /**
   * The document with a member put behind the last one of an object, or an item behind the last one
   * of a list, spaced as its neighbours are; every other letter stays.
   *
   * @param pointer JSON pointer of the object or the list
   * @param key the member's key, of no meaning for a list
   * @param json its value as JSON
   * @throws IllegalArgumentException if neither an object nor a list stands at the pointer
   */
  public Reading<Document> added(String pointer, String key, String json) {
    return DocumentReader.read(file, Splice.added(text, node(pointer), key, json));
  }

  /**
   * The document without one member or item, and without the comma that went with it.
   *
   * @param pointer JSON pointer of what goes
   * @throws IllegalArgumentException if nothing stands there
   */
  public Reading<Document> without(String pointer) {
    node(pointer);
    int last = pointer.lastIndexOf('/');
    if (last < 0) {
      throw new IllegalArgumentException("the whole document cannot go");
    }
    return DocumentReader.read(
        file, Splice.without(text, node(pointer.substring(0, last)), keys(pointer)));
  }

  /** Whether something stands at a pointer. */
  public boolean has(String pointer) {
    return find(pointer) != null;
  }

  /**
   * What is written at a pointer, as its author reads it: a text without its quotation marks, any
   * other value with every letter.
   *
   * @return empty if nothing stands there
   */
  public Optional<String> written(String pointer) {
    return Optional.ofNullable(find(pointer))
        .map(
            node ->
                node instanceof Json.Text words
                    ? words.value()
                    : text.substring(node.at().start(), node.at().end()));
  }

  Json.Obj root() {
    return root;
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

  private Json node(String pointer) {
    Json node = find(pointer);
    if (node == null) {
      throw new IllegalArgumentException("nothing stands at " + pointer);
    }
    return node;
  }

  /** What stands at a pointer, null if nothing does. */
  private Json find(String pointer) {
    Json node = root;
    for (String key : keys(pointer)) {
      node = member(node, key);
      if (node == null) {
        return null;
      }
    }
    return node;
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
