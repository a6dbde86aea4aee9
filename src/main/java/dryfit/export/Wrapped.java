package dryfit.export;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines that fit a terminal, or a page. */
final class Wrapped {
  /** Columns that every terminal has. */
  static final int COLUMNS = 80;

  private Wrapped() {}

  /**
   * Lines of at most {@link #COLUMNS}, broken at blanks; a word longer than that stays whole.
   *
   * @param first goes before the first line
   * @param rest goes before the others
   */
  static List<String> lines(String first, String rest, String text) {
    return lines(COLUMNS, first, rest, text);
  }

  /** Lines of at most so many columns, broken at blanks; a word longer than that stays whole. */
  static List<String> lines(int columns, String first, String rest, String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : text.strip().split("\\s+")) {
      if (!empty && line.length() + 1 + word.length() > columns) {
        lines.add(line.toString());
        line = new StringBuilder(rest);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
