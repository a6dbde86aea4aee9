package dryfit.document;

import dryfit.measure.Length;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a maker most likely meant where a line is not JSON: a size that has no quotation marks. */
final class NotJson {
  /** What stands between a colon, comma or bracket and the next one, outside of quotation marks. */
  private static final Pattern BARE =
      Pattern.compile("(?<=[:\\[,])\\s*([^\\s\"{}\\[\\],:][^\"{}\\[\\],:]*\"?)\\s*(?=[,}\\]]|$)");

  /** A text that an inch mark ends before its own quotation mark does. */
  private static final Pattern INCH_MARK = Pattern.compile("\"([^\":{}\\[\\],]*)\"\\s*\"");

  private static final Pattern DECIMAL_COMMA = Pattern.compile(":\\s*(-?\\d+),(\\d+)(?![\\d.\"])");

  /** A key that is a word without quotation marks, or with single ones. */
  private static final Pattern KEY = Pattern.compile("(?<=[{,]|^)\\s*([A-Za-z_'][\\w'-]*)\\s*:");

  private static final String CURLY = "“”„‟«»";

  /** Lines of makers are shorter; the patterns take too long on what is not one. */
  private static final int LONGEST = 1000;

  private NotJson() {}

  /**
   * What is wrong and what would be right; empty if nothing of the kind stands there.
   *
   * @param line the line at which the reader stopped
   * @param column where it stopped, from 1
   */
  static Optional<String> why(String line, int column) {
    if (line.length() > LONGEST) {
      return Optional.empty();
    }
    return comma(line, column)
        .or(() -> inchMark(line, column))
        .or(() -> bare(line, column))
        .or(() -> sign(line, column));
  }

  /** What the sign says at which the reader stopped. */
  private static Optional<String> sign(String line, int column) {
    int at = Math.min(column, line.length()) - 1;
    // Where the reader stops differs by one with what it met.
    for (int i = Math.max(0, at - 1); i <= at; i++) {
      String rest = line.substring(i);
      if (rest.startsWith("//") || rest.startsWith("/*")) {
        return Optional.of("JSON has no comments; take it out, or write it as a \"note\"");
      }
      if (CURLY.indexOf(line.charAt(i)) >= 0) {
        return Optional.of(
            "that quotation mark is curly, as word processors make them; write a straight one: \"");
      }
    }
    Matcher key = KEY.matcher(line);
    while (key.find()) {
      if (key.start(1) <= at && at <= key.end(1)) {
        return Optional.of(
            "a key stands in quotation marks: \"" + key.group(1).replaceAll("'", "") + "\"");
      }
    }
    return Optional.empty();
  }

  /**
   * Whether a comma stands before the bracket at which the reader stopped, with nothing between.
   */
  static Optional<String> strayComma(String before, String at) {
    boolean closes = at.startsWith("}") || at.startsWith("]");
    return closes && before.stripTrailing().endsWith(",")
        ? Optional.of(
            "there is a comma before “" + at.charAt(0) + "” with nothing after it; take it out")
        : Optional.empty();
  }

  private static Optional<String> bare(String line, int column) {
    return at(BARE, line, column)
        .map(found -> found.group(1).strip())
        .flatMap(
            text -> {
              boolean marked = text.endsWith("\"");
              String plain = marked ? text.substring(0, text.length() - 1).strip() : text;
              return Length.parse(plain, Length.Unit.MM).isEmpty()
                  ? Optional.empty()
                  : Optional.of(
                      plain
                          + (marked ? "\"" : "")
                          + " is a text to JSON, write it in quotation marks: \""
                          + plain
                          + (marked ? " in" : "")
                          + "\"");
            });
  }

  private static Optional<String> inchMark(String line, int column) {
    return at(INCH_MARK, line, column)
        .map(found -> found.group(1).strip())
        .filter(text -> Length.parse(text, Length.Unit.IN).isPresent())
        .map(text -> "the inch mark ends the text, write in for it: \"" + text + " in\"");
  }

  private static Optional<String> comma(String line, int column) {
    return at(DECIMAL_COMMA, line, column)
        .map(f -> "a decimal is written with a point: " + f.group(1) + "." + f.group(2));
  }

  /** What was found round a column, or ends just before it. */
  private static Optional<Matcher> at(Pattern pattern, String line, int column) {
    Matcher matcher = pattern.matcher(line);
    while (matcher.find()) {
      if (matcher.start() < column && column <= matcher.end() + 2) {
        return Optional.of(matcher);
      }
    }
    return Optional.empty();
  }
}
