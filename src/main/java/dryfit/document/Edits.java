package dryfit.document;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What a maker changes in a document without writing JSON. Each gives the changed document, in
 * which every letter that is not about the change is as it was; or, if the change would make it
 * unsound, why.
 */
public final class Edits {
  private static final Pattern JSON_NUMBER =
      Pattern.compile("-?(?:0|[1-9]\\d*)(?:\\.\\d+)?(?:[eE][+-]?\\d+)?");

  private Edits() {}

  /**
   * Gives a dimension another value, where the value now in force is written: in the variant if the
   * variant has one of its own, otherwise in the chair as drawn.
   *
   * @param variant one of the document's, or {@link Design#AS_DRAWN}
   * @param entry as a maker writes it: {@code 440}, {@code 17 3/8 in}, {@code seatTop + 220}
   */
  public static Reading<Document> dimension(
      Document document, String variant, String name, String entry) {
    String own = Json.pointer(Json.pointer("/variants", variant), name);
    if (!variant.equals(Design.AS_DRAWN) && document.has(own)) {
      return document.edited(own, value(entry));
    }
    String drawn = Json.pointer("/dimensions", name);
    if (!document.has(drawn)) {
      return absent(document, "/dimensions", name, "a dimension");
    }
    String inner = drawn + "/value";
    return document.edited(document.has(inner) ? inner : drawn, value(entry));
  }

  /** Gives a dimension a value that holds in one variant only. */
  public static Reading<Document> dimensionIn(
      Document document, String variant, String name, String entry) {
    String holder = Json.pointer("/variants", variant);
    if (!document.has(holder)) {
      return absent(document, "/variants", variant, "a variant of this chair");
    }
    String own = Json.pointer(holder, name);
    return document.has(own)
        ? document.edited(own, value(entry))
        : document.added(holder, name, value(entry));
  }

  /**
   * Adds a variant that does not differ yet.
   *
   * @param note may be empty
   */
  public static Reading<Document> variant(Document document, String name, String note) {
    return variantLike(document, Design.AS_DRAWN, name, note);
  }

  /**
   * Adds a variant that begins as another one is; refused, {@code name-taken}, if there is one of
   * that name.
   *
   * @param like a variant of the document, or {@link Design#AS_DRAWN}
   * @param note may be empty
   */
  public static Reading<Document> variantLike(
      Document document, String like, String name, String note) {
    if (name.equals(Design.AS_DRAWN) || document.variants().contains(name)) {
      Problems problems = new Problems(document.file());
      Json.At at = new Json.At("/variants", document.lineOf("/variants"), 0, 0);
      String found = Problems.quoted(name);
      problems.add(
          "name-taken",
          at,
          found,
          "another name",
          found + " is there already; call it something else");
      return new Reading.Refused<>(problems.all());
    }
    List<String> members = new ArrayList<>();
    if (!note.isBlank()) {
      members.add("\"note\": " + DocumentWriter.quoted(note));
    }
    if (document.root().members().get("variants") instanceof Json.Obj variants
        && variants.members().get(like) instanceof Json.Obj own) {
      own.members()
          .forEach(
              (key, value) -> {
                if (!key.equals("note")) {
                  Json.At at = value.at();
                  String written = document.text().substring(at.start(), at.end());
                  members.add(DocumentWriter.quoted(key) + ": " + written);
                }
              });
    }
    String variant = members.isEmpty() ? "{}" : "{ " + String.join(", ", members) + " }";
    return document.has("/variants")
        ? document.added("/variants", name, variant)
        : document.added(
            "", "variants", "{ " + DocumentWriter.quoted(name) + ": " + variant + " }");
  }

  /**
   * Accepts a finding.
   *
   * @param joint name of the joint it is about, as in the document; may be empty
   * @param part name of the part, likewise
   * @param because why; it must say something
   */
  public static Reading<Document> waiver(
      Document document, String check, String joint, String part, String because) {
    StringBuilder waiver = new StringBuilder("{ \"check\": ").append(DocumentWriter.quoted(check));
    if (!joint.isEmpty()) {
      waiver.append(", \"joint\": ").append(DocumentWriter.quoted(joint));
    }
    if (!part.isEmpty()) {
      waiver.append(", \"part\": ").append(DocumentWriter.quoted(part));
    }
    waiver.append(", \"because\": ").append(DocumentWriter.quoted(because)).append(" }");
    return document.has("/waived")
        ? document.added("/waived", "", waiver.toString())
        : document.added("", "waived", "[ " + waiver + " ]");
  }

  /**
   * Accepts findings no longer.
   *
   * @param waivers entries to take out; one that does not stand in its place as it did, because the
   *     document has changed since, stays. With the last one the list goes too
   */
  public static Reading<Document> withoutWaivers(
      Document document, Collection<Design.Waiver> waivers) {
    List<Design.Waiver> there =
        document.design(Design.AS_DRAWN) instanceof Reading.Accepted<Design> drawn
            ? drawn.value().waived()
            : List.of();
    List<Design.Waiver> gone = there.stream().filter(waivers::contains).toList();
    if (!gone.isEmpty() && gone.size() == there.size()) {
      return document.without("/waived");
    }
    Reading<Document> left = new Reading.Accepted<>(document);
    // From the end, so that those before keep their places.
    for (int i = gone.size() - 1; i >= 0; i--) {
      if (left instanceof Reading.Accepted<Document> accepted) {
        left = accepted.value().without(gone.get(i).pointer());
      }
    }
    return left;
  }

  /** An entry as the JSON of a dimension. */
  private static String value(String entry) {
    String plain = entry.strip();
    return JSON_NUMBER.matcher(plain).matches() ? plain : DocumentWriter.quoted(plain);
  }

  private static Reading<Document> absent(
      Document document, String holder, String name, String what) {
    Map<String, Json> known =
        document.root().members().get(holder.substring(1)) instanceof Json.Obj object
            ? object.members()
            : Map.of();
    Problems problems = new Problems(document.file());
    Json.At at = new Json.At(holder, document.lineOf(holder), 0, 0);
    problems.unknown("unknown-name", at, name, List.copyOf(known.keySet()), what);
    return new Reading.Refused<>(problems.all());
  }
}
