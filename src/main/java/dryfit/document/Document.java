package dryfit.document;

import java.util.List;
import java.util.Map;

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
    Design design = new DesignReader(root, merged, problems).read(file, variant);
    return problems.none() ? new Reading.Accepted<>(design) : new Reading.Refused<>(problems.all());
  }
}
