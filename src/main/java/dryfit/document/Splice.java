package dryfit.document;

import java.util.List;

/**
 * Puts something into a JSON text or takes it out, spaced as its neighbours are, so that a document
 * keeps the look its maker gave it.
 */
final class Splice {
  private Splice() {}

  /** The text with a value behind the last one in {@code holder}. */
  static String added(String text, Json holder, String key, String json) {
    if (!(holder instanceof Json.Obj) && !(holder instanceof Json.Arr)) {
      throw new IllegalArgumentException("neither an object nor a list: " + holder.pointer());
    }
    String entry = holder instanceof Json.Obj ? DocumentWriter.quoted(key) + ": " + json : json;
    List<Json> values = values(holder);
    int start = holder.at().start() + 1;
    int end = holder.at().end() - 1;
    if (values.isEmpty()) {
      return text.substring(0, start) + " " + entry + " " + text.substring(end);
    }
    int last = values.get(values.size() - 1).at().end();
    return text.substring(0, last) + between(text, holder, values) + entry + text.substring(last);
  }

  /** What stands between two entries: as between the last two, or as before the only one. */
  private static String between(String text, Json holder, List<Json> values) {
    int size = values.size();
    int from = size > 1 ? values.get(size - 2).at().end() : holder.at().start() + 1;
    String space = text.substring(from, entryStart(text, from)).replace(",", "");
    int line = space.lastIndexOf('\n');
    if (line < 0) {
      return ", ";
    }
    // An empty line groups what is above it, so only the last line break is taken over.
    boolean carriage = line > 0 && space.charAt(line - 1) == '\r';
    return "," + space.substring(carriage ? line - 1 : line);
  }

  /** The text without the entry that the last of {@code keys} names in {@code holder}. */
  static String without(String text, Json holder, List<String> keys) {
    List<Json> values = values(holder);
    int index = indexOf(holder, keys.get(keys.size() - 1));
    int end = values.get(index).at().end();
    if (index > 0) {
      return text.substring(0, values.get(index - 1).at().end()) + text.substring(end);
    }
    int start = holder.at().start() + 1;
    if (values.size() == 1) {
      return text.substring(0, start) + text.substring(holder.at().end() - 1);
    }
    return text.substring(0, entryStart(text, start)) + text.substring(entryStart(text, end));
  }

  /** Where the next key or item begins: behind white space and a comma. */
  private static int entryStart(String text, int from) {
    int at = from;
    while (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == ',') {
      at++;
    }
    return at;
  }

  private static List<Json> values(Json holder) {
    return holder instanceof Json.Obj object
        ? List.copyOf(object.members().values())
        : ((Json.Arr) holder).items();
  }

  private static int indexOf(Json holder, String key) {
    return holder instanceof Json.Obj object
        ? List.copyOf(object.members().keySet()).indexOf(key)
        : Integer.parseInt(key);
  }
}
