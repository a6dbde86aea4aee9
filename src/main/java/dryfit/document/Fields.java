package dryfit.document;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The members of one object, read by key. What is not known is refused when it is opened; what is
 * missing or of the wrong type is noted when it is asked for, and a stand-in is returned.
 */
final class Fields {
  private final Problems problems;
  private final Json node;
  private final Map<String, Json> members;

  /**
   * @param known the keys it may have; a “note” is always welcome
   */
  Fields(Problems problems, Json node, Collection<String> known) {
    this(problems, node, known, "this object");
  }

  /**
   * @param owner what has these keys, for the message
   */
  Fields(Problems problems, Json node, Collection<String> known, String owner) {
    this.problems = problems;
    this.node = node;
    if (node instanceof Json.Obj object) {
      this.members = object.members();
      members.forEach(
          (key, value) -> {
            if (!known.contains(key) && !key.equals("note")) {
              problems.unknown("unknown-key", value.at(), key, known, "a key of " + owner);
            }
            if (key.equals("note") && !(value instanceof Json.Text)) {
              wrongType(value, "a text");
            }
          });
    } else {
      this.members = new LinkedHashMap<>();
      wrongType(node, "an object { }");
    }
  }

  Problems problems() {
    return problems;
  }

  Json self() {
    return node;
  }

  Json.At at() {
    return node.at();
  }

  boolean has(String key) {
    return members.containsKey(key);
  }

  Optional<Json> node(String key) {
    return Optional.ofNullable(members.get(key));
  }

  /** The member, or a problem and empty. */
  Optional<Json> need(String key) {
    if (!has(key) && node instanceof Json.Obj) {
      problems.add(
          "missing-value", node.at(), "nothing", key, Problems.quoted(key) + " is missing here");
    }
    return node(key);
  }

  /** A note, empty if there is none. */
  String note() {
    return node("note").filter(Json.Text.class::isInstance).map(this::text).orElse("");
  }

  String text(String key, String otherwise) {
    return node(key).map(this::text).orElse(otherwise);
  }

  String needText(String key) {
    return need(key).map(this::text).orElse("");
  }

  private String text(Json value) {
    if (!(value instanceof Json.Text text)) {
      wrongType(value, "a text");
      return "";
    }
    if (text.value().length() > Limits.text()) {
      problems.add(
          "too-large",
          value.at(),
          text.value().length() + " characters",
          "at most " + Limits.text(),
          "a text has at most " + Limits.text() + " characters");
    }
    return text.value();
  }

  /** A text that must say something. */
  String needWords(String key) {
    return need(key)
        .map(
            value -> {
              String words = text(value);
              if (value instanceof Json.Text && words.isBlank()) {
                problems.add(
                    "missing-value", value.at(), "nothing", "some words", "this is left blank");
              }
              return words;
            })
        .orElse("");
  }

  boolean flag(String key, boolean otherwise) {
    Optional<Json> value = node(key);
    if (value.isEmpty()) {
      return otherwise;
    }
    if (value.get() instanceof Json.Bool bool) {
      return bool.value();
    }
    wrongType(value.get(), "true or false");
    return otherwise;
  }

  /** One of some words; the words map to what they mean. */
  <E> Optional<E> wordIfAny(String key, Map<String, E> words) {
    return node(key).flatMap(value -> word(value, words));
  }

  <E> Optional<E> word(Json value, Map<String, E> words) {
    if (!(value instanceof Json.Text text)) {
      wrongType(value, "a text");
      return Optional.empty();
    }
    E meaning = words.get(text.value());
    if (meaning == null) {
      problems.unknown(
          "unknown-word", value.at(), text.value(), words.keySet(), "a word known here");
    }
    return Optional.ofNullable(meaning);
  }

  Optional<Json.Obj> object(String key) {
    return node(key)
        .flatMap(
            value -> {
              if (value instanceof Json.Obj object) {
                return Optional.of(object);
              }
              wrongType(value, "an object { }");
              return Optional.empty();
            });
  }

  /** The items of a list; empty if there is none. */
  List<Json> list(String key) {
    return node(key).map(this::list).orElse(List.of());
  }

  List<Json> list(Json value) {
    if (!(value instanceof Json.Arr array)) {
      wrongType(value, "a list [ ]");
      return List.of();
    }
    if (array.items().size() > Limits.items()) {
      problems.add(
          "too-large",
          value.at(),
          array.items().size() + " items",
          "at most " + Limits.items(),
          "a list has at most " + Limits.items() + " items");
      return List.of();
    }
    return array.items();
  }

  void wrongType(Json value, String wanted) {
    problems.add(
        "wrong-type",
        value.at(),
        value.shown(),
        wanted,
        wanted + " is needed here, and this is " + value.shown());
  }

  /** Two keys that say different things about the same. */
  void conflict(String code, String key, String what) {
    problems.add(code, node(key).map(Json::at).orElse(at()), key, "one of them", what);
  }
}
