package dryfit.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/** Turns text into nodes that know their place, noting what is not sound JSON. */
final class JsonTree {
  private final JsonParser parser;
  private final String text;
  private final Problems problems;
  private String pointer = "";

  private JsonTree(JsonParser parser, String text, Problems problems) {
    this.parser = parser;
    this.text = text;
    this.problems = problems;
  }

  /** Reads the whole text; empty if it cannot be read as one JSON value. */
  static Optional<Json> read(String text, Problems problems) {
    // NaN is let through as a token, so that it can be refused as a number with its pointer.
    JsonFactory factory =
        JsonFactory.builder().enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS).build();
    try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), text)) {
      return new JsonTree(parser, text, problems).document();
    }
  }

  private Optional<Json> document() {
    try {
      if (parser.nextToken() == null) {
        problems.add("not-json", here(), "nothing", "a chair document", "the file is empty");
        return Optional.empty();
      }
      Json root = node(1);
      pointer = "";
      return trailing() ? Optional.empty() : Optional.of(root);
    } catch (TooDeep e) {
      problems.add(
          "too-deep",
          here(),
          "more than " + Limits.nesting(),
          "at most " + Limits.nesting(),
          "objects and lists stand more than " + Limits.nesting() + " deep inside one another");
    } catch (StreamConstraintsException e) {
      problems.add(
          "too-large",
          here(),
          "a number or name of great length",
          "",
          "a number or name is too long to read");
    } catch (JacksonException e) {
      Json.At at = new Json.At(pointer, Math.max(1, e.getLocation().getLineNr()), 0, 0);
      problems.add(
          "not-json",
          at,
          "column " + e.getLocation().getColumnNr(),
          "JSON",
          "this is not JSON at column "
              + e.getLocation().getColumnNr()
              + why(e)
                  .map(why -> ": " + why)
                  .orElse(", often a missing comma, quotation mark or bracket just before"));
    }
    return Optional.empty();
  }

  private Optional<String> why(JacksonException e) {
    int line = Math.max(1, e.getLocation().getLineNr());
    int column = e.getLocation().getColumnNr();
    int stopped = (int) Math.min(text.length(), Math.max(0, e.getLocation().getCharOffset()));
    for (int at : new int[] {stopped, stopped - 1}) {
      if (at >= 0) {
        Optional<String> comma =
            NotJson.strayComma(
                text.substring(0, at), text.substring(at, Math.min(text.length(), at + 1)));
        if (comma.isPresent()) {
          return comma;
        }
      }
    }
    return NotJson.why(line(line), column);
  }

  private String line(int number) {
    return text.lines().skip(number - 1L).findFirst().orElse("");
  }

  private boolean trailing() {
    boolean more;
    try {
      more = parser.nextToken() != null;
    } catch (JacksonException e) {
      more = true;
    }
    if (more) {
      problems.add(
          "trailing-text",
          here(),
          "text after the document",
          "nothing",
          "there is text after the end of the document");
    }
    return more;
  }

  private Json node(int depth) {
    Json.At at = here();
    JsonToken token = parser.currentToken();
    if (token.isStructStart()) {
      if (depth > Limits.nesting()) {
        throw new TooDeep();
      }
      return token == JsonToken.START_OBJECT ? object(at, depth) : array(at, depth);
    }
    // Asking for the text makes the parser read to its end, which closed() relies on.
    String text = parser.getString();
    return switch (token) {
      case VALUE_STRING -> new Json.Text(closed(at), text);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Num(closed(at), text);
      case VALUE_TRUE -> new Json.Bool(closed(at), true);
      case VALUE_FALSE -> new Json.Bool(closed(at), false);
      default -> new Json.Null(closed(at));
    };
  }

  private Json object(Json.At at, int depth) {
    String parent = pointer;
    Map<String, Json> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      pointer = Json.pointer(parent, key);
      Json.At keyAt = here();
      parser.nextToken();
      Json value = node(depth + 1);
      if (members.putIfAbsent(key, value) != null) {
        duplicate(parent, key, keyAt);
      }
      pointer = parent;
    }
    return new Json.Obj(closed(at), members);
  }

  private void duplicate(String parent, String key, Json.At at) {
    boolean named = List.of("/dimensions", "/parts", "/joints", "/variants").contains(parent);
    problems.add(
        named ? "duplicate-name" : "duplicate-key",
        at,
        key,
        "each " + (named ? "name" : "key") + " once",
        Problems.quoted(key) + " is written twice here");
  }

  private Json array(Json.At at, int depth) {
    String parent = pointer;
    List<Json> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      pointer = parent + "/" + items.size();
      items.add(node(depth + 1));
      pointer = parent;
    }
    return new Json.Arr(closed(at), items);
  }

  private Json.At here() {
    var location = parser.currentTokenLocation();
    int start = (int) location.getCharOffset();
    return new Json.At(pointer, Math.max(1, location.getLineNr()), start, start);
  }

  private Json.At closed(Json.At at) {
    return new Json.At(
        at.pointer(), at.line(), at.start(), (int) parser.currentLocation().getCharOffset());
  }

  /** Carries the fault out of the recursion. */
  private static final class TooDeep extends RuntimeException {}
}
