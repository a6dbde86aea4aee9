package dryfit.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A title and rows under it: a name on the left, its lines beside it. */
final class Rows {
  private final List<String> lines = new ArrayList<>();

  Rows(String title) {
    lines.add(title);
  }

  void add(String name, String text) {
    addAll(name, List.of(text));
  }

  /** Lines that stand under one name; one that begins with two blanks stands further in. */
  void addAll(String name, List<String> texts) {
    for (int i = 0; i < texts.size(); i++) {
      String text = texts.get(i);
      String in = text.startsWith("  ") ? "  " : "";
      String start = String.format(Locale.ROOT, "  %-10s%s", i == 0 ? name : "", in);
      lines.addAll(Wrapped.lines(start, " ".repeat(start.length()), text));
    }
  }

  List<String> lines() {
    return lines;
  }
}
