package dryfit.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A node of the document that knows where it stands. Keys keep their order. */
sealed interface Json {

  /** Where a node stands: JSON pointer, line counted from 1, and the characters it takes up. */
  record At(String pointer, int line, int start, int end) {}

  At at();

  default String pointer() {
    return at().pointer();
  }

  /** What it is, in the words of the format description. */
  default String kind() {
    if (this instanceof Obj) {
      return "an object { }";
    } else if (this instanceof Arr) {
      return "a list [ ]";
    } else if (this instanceof Num) {
      return "a number";
    } else if (this instanceof Text) {
      return "a text";
    }
    return this instanceof Bool ? "true or false" : "null";
  }

  /** What stands there, short enough for a message. */
  default String shown() {
    if (this instanceof Num num) {
      return num.text();
    } else if (this instanceof Text text) {
      return Problems.quoted(text.value());
    } else if (this instanceof Bool bool) {
      return Boolean.toString(bool.value());
    }
    return kind();
  }

  record Obj(At at, Map<String, Json> members) implements Json {
    public Obj {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }
  }

  record Arr(At at, List<Json> items) implements Json {
    public Arr {
      items = List.copyOf(items);
    }
  }

  /** A number as written; it need not be finite. */
  record Num(At at, String text) implements Json {}

  record Text(At at, String value) implements Json {}

  record Bool(At at, boolean value) implements Json {}

  record Null(At at) implements Json {}

  /** The pointer of a member, with the escapes of RFC 6901. */
  static String pointer(String parent, String key) {
    return parent + "/" + key.replace("~", "~0").replace("/", "~1");
  }
}
