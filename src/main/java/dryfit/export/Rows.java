package dryfit.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A title and rows under it: a name on the left, its lines beside it. */
final class Rows {
  private final String title;
  private final List<Told.Row> rows = new ArrayList<>();

  Rows(String title) {
    this.title = title;
  }

  void add(String name, String text) {
    addAll(name, List.of(text));
  }

  /** Lines that stand under one name; one that begins with two blanks stands further in. */
  void addAll(String name, List<String> texts) {
    for (int i = 0; i < texts.size(); i++) {
      rows.add(new Told.Row(i == 0 ? name : "", texts.get(i)));
    }
  }

  Told told() {
    return new Told(title, rows);
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>(List.of(title));
    for (Told.Row row : rows) {
      String in = row.text().startsWith("  ") ? "  " : "";
      String start = String.format(Locale.ROOT, "  %-10s%s", row.name(), in);
      lines.addAll(Wrapped.lines(start, " ".repeat(start.length()), row.text()));
    }
    return lines;
  }
}
