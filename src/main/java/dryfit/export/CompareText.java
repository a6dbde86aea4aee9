package dryfit.export;

import dryfit.fit.Finding;
import dryfit.fit.compare.Comparison;
import dryfit.fit.compare.Comparison.FindingRow;
import dryfit.fit.compare.Comparison.Row;
import dryfit.fit.compare.Comparison.Side;
import dryfit.fit.compare.Datum;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Chairs side by side as text: a column for each, and with two of them a last one that says how far
 * they are apart. The last line is the answer.
 */
public final class CompareText {
  private static final int COLUMN = 14;
  private static final int NAME = 34;

  private final Comparison comparison;
  private final TextStyle style;
  private final boolean all;
  private final StringBuilder out = new StringBuilder();

  private CompareText(Comparison comparison, TextStyle style, boolean all) {
    this.comparison = comparison;
    this.style = style;
    this.all = all;
  }

  /**
   * The whole comparison, each line ended by a line feed.
   *
   * @param all also what is the same in all of them
   */
  public static String of(Comparison comparison, TextStyle style, boolean all) {
    Comparison shown = all ? comparison : comparison.differences();
    CompareText text = new CompareText(shown, style, all);
    text.heading();
    for (Datum.Group group : Datum.Group.values()) {
      text.group(group);
    }
    text.findings(shown.findings());
    text.unseen();
    text.line("");
    text.line(text.answer());
    return text.out.toString();
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }

  private boolean two() {
    return comparison.sides().size() == 2;
  }

  private void heading() {
    for (int i = 0; i < comparison.sides().size(); i++) {
      Side side = comparison.sides().get(i);
      String word = side.report().verdict();
      String fits =
          !side.report().fits()
              ? style.red(word)
              : side.report().fitsOnlyAsAccepted() ? style.amber(word) : style.green(word);
      line(style.bold(letter(i)) + "  " + side.name() + ": " + fits);
    }
  }

  /** A, B, C …; after Z there are numbers. */
  static String letter(int index) {
    return index < 26 ? String.valueOf((char) ('A' + index)) : Integer.toString(index + 1);
  }

  private void group(Datum.Group group) {
    List<Row> rows =
        comparison.rows().stream()
            .filter(r -> r.key().group() == group && (all || differs(r)))
            .toList();
    if (rows.isEmpty()) {
      return;
    }
    line("");
    line(style.bold(pad(group.word(), NAME)) + columns());
    Map<String, List<String>> subjects = new LinkedHashMap<>();
    for (Row row : rows) {
      boolean flat = row.key().what().isEmpty() || row.key().subject().isEmpty();
      String name = row.key().what().isEmpty() ? row.key().subject() : row.key().what();
      subjects
          .computeIfAbsent(flat ? "" : row.key().subject(), k -> new ArrayList<>())
          .add(pad((flat ? "  " : "    ") + name, NAME) + values(row));
    }
    alike(subjects)
        .forEach(
            (subject, lines) -> {
              if (!subject.isEmpty()) {
                line("  " + subject);
              }
              lines.forEach(this::line);
            });
    if (rows.stream().anyMatch(r -> r.key().what().startsWith("tips "))) {
      line("  (tips with no one on it, over the middles of two feet)");
    }
  }

  /** Whether what is printed of a row shows a difference, be it only in the last column. */
  private boolean differs(Row row) {
    return DatumText.differs(row, style)
        || change(row).filter(by -> by.chars().anyMatch(c -> c >= '1' && c <= '9')).isPresent();
  }

  /** From the one to the other, where there are two and both have it. */
  private Optional<String> change(Row row) {
    if (!two() || row.values().stream().anyMatch(OptionalDouble::isEmpty)) {
      return Optional.empty();
    }
    double by = row.values().get(1).getAsDouble() - row.values().get(0).getAsDouble();
    return Optional.of(row.differs() ? DatumText.change(row.key().kind(), by, style) : "=");
  }

  private void unseen() {
    long unseen = comparison.rows().stream().filter(row -> !differs(row)).count();
    if (!all && unseen > 0) {
      line("");
      line(
          (unseen == 1 ? "One more figure differs" : unseen + " more figures differ")
              + " by less than is told here; --all has "
              + (unseen == 1 ? "it." : "them."));
    }
  }

  /** Subjects of which the same is said, right and left, under one heading. */
  private static Map<String, List<String>> alike(Map<String, List<String>> subjects) {
    Map<List<String>, List<String>> names = new LinkedHashMap<>();
    Map<String, List<String>> out = new LinkedHashMap<>();
    subjects.forEach(
        (subject, lines) ->
            names
                .computeIfAbsent(
                    List.of(hand(subject), String.join("\n", lines)), k -> new ArrayList<>())
                .add(subject));
    names
        .values()
        .forEach(
            same -> {
              String first = same.get(0);
              String name = same.size() == 1 ? first : first + " and " + handOf(same.get(1));
              out.put(name, subjects.get(first));
            });
    return out;
  }

  private static String hand(String label) {
    return label.replaceAll("\\b(right|left)\\b", "hand");
  }

  private static String handOf(String label) {
    return label.matches(".*\\bleft\\b.*") ? "left" : "right";
  }

  private String columns() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < comparison.sides().size(); i++) {
      text.append(right(letter(i)));
    }
    return two() ? text + right("B − A") : text.toString();
  }

  private String values(Row row) {
    StringBuilder text = new StringBuilder();
    DatumText.of(row, style).forEach(told -> text.append(right(told)));
    change(row).ifPresent(by -> text.append(right(by)));
    return text.toString();
  }

  private void findings(List<FindingRow> rows) {
    if (rows.isEmpty()) {
      return;
    }
    line("");
    line(style.bold("findings"));
    FindingSaid.of(rows).forEach(this::finding);
  }

  private void finding(FindingSaid said) {
    Finding f = said.finding();
    List<String> where = new ArrayList<>();
    for (int i = 0; i < said.present().size(); i++) {
      if (said.present().get(i)) {
        where.add(letter(i));
      }
    }
    String severity =
        f.waived().isPresent() ? "accepted" : f.severity().name().toLowerCase(Locale.ROOT);
    String start = "  " + pad(gained(said, where), 10);
    Wrapped.lines(start, " ".repeat(14), severity + ": " + f.check() + ". " + said.message())
        .forEach(this::line);
  }

  private String gained(FindingSaid said, List<String> where) {
    if (!two() || !said.lacking()) {
      return "in " + String.join(" ", where);
    }
    return said.present().get(1) ? "B gains" : "B loses";
  }

  private String answer() {
    long figures = comparison.rows().stream().filter(Row::differs).count();
    long findings =
        FindingSaid.of(comparison.findings().stream().filter(FindingRow::differs).toList()).size();
    if (figures + findings == 0) {
      return "THE SAME in every figure and finding";
    }
    return "DIFFERENT in "
        + figures
        + (figures == 1 ? " figure and " : " figures and ")
        + findings
        + (findings == 1 ? " finding" : " findings");
  }

  private static String pad(String text, int width) {
    return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
  }

  private static String right(String text) {
    return " ".repeat(Math.max(1, COLUMN - text.length())) + text;
  }
}
