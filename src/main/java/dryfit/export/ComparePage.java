package dryfit.export;

import dryfit.export.picture.Figure;
import dryfit.export.picture.Overlay;
import dryfit.export.picture.View;
import dryfit.fit.compare.Comparison;
import dryfit.fit.compare.Comparison.FindingRow;
import dryfit.fit.compare.Comparison.Row;
import dryfit.fit.compare.Comparison.Side;
import dryfit.fit.compare.Datum;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;

/**
 * A comparison as one page that needs nothing else: pictures from one place side by side and laid
 * over each other, the figures that differ, the findings.
 */
public final class ComparePage {
  private static final List<View> VIEWS = List.of(View.THREE_QUARTER, View.FRONT, View.SIDE);
  private static final int PIXELS = 480;

  private final Comparison comparison;
  private final TextStyle style;
  private final StringBuilder out = new StringBuilder();

  private ComparePage(Comparison comparison, TextStyle style) {
    this.comparison = comparison.differences();
    this.style = style;
  }

  /** The page as HTML, UTF-8. */
  public static byte[] bytes(Comparison comparison, TextStyle style) {
    ComparePage page = new ComparePage(comparison, style);
    page.write();
    return page.out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void write() {
    List<Side> sides = comparison.sides();
    line("<!DOCTYPE html>");
    line("<html lang=\"en\"><head><meta charset=\"utf-8\">");
    line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
    line("<title>" + escaped(title()) + "</title>");
    line(
        "<style>body{font:16px/1.45 Georgia,serif;margin:2em auto;max-width:70em;padding:0 1em}"
            + "table{border-collapse:collapse;margin:1em 0}th,td{padding:.15em .8em;"
            + "border-bottom:1px solid #ccc;text-align:right}th:first-child,td:first-child"
            + "{text-align:left}figure{display:inline-block;margin:.4em;width:30%}"
            + "img{width:100%;height:auto}.no{color:#a11}</style></head><body>");
    line("<h1>" + escaped(title()) + "</h1><ul>");
    for (int i = 0; i < sides.size(); i++) {
      boolean fits = sides.get(i).report().fits();
      String answer = fits ? "fits" : "<strong class=\"no\">does not fit</strong>";
      line("<li>" + CompareText.letter(i) + ": " + name(i) + ", " + answer + "</li>");
    }
    line("</ul>");
    pictures();
    for (Datum.Group group : Datum.Group.values()) {
      table(group);
    }
    findings();
    line(
        "<p>A solid that fits says nothing about strength or about the wood in your hand. Use"
            + " guards and sharp tools, and follow your machines' manuals and local codes.</p>");
    line("</body></html>");
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private String title() {
    return comparison.sides().get(0).report().chair().design().name() + ", compared";
  }

  private String name(int side) {
    return escaped(comparison.sides().get(side).name());
  }

  private void pictures() {
    List<Side> sides = comparison.sides();
    Overlay overlay =
        new Overlay(sides.stream().map(s -> Figure.of(s.report().chair(), List.of())).toList());
    for (View view : VIEWS) {
      line("<h2>" + view.word() + "</h2><div>");
      for (int i = 0; i < sides.size(); i++) {
        figure(overlay.alone(i, view, PIXELS), CompareText.letter(i) + ": " + name(i));
      }
      for (int i = 1; i < sides.size(); i++) {
        String letter = CompareText.letter(i);
        figure(
            overlay.over(i, view, PIXELS),
            "A and " + letter + " laid over each other, A in blue, " + letter + " in orange");
      }
      line("</div>");
    }
  }

  private void figure(byte[] png, String caption) {
    line(
        "<figure><img alt=\""
            + caption
            + "\" src=\"data:image/png;base64,"
            + Base64.getEncoder().encodeToString(png)
            + "\"><figcaption>"
            + caption
            + "</figcaption></figure>");
  }

  private void table(Datum.Group group) {
    List<Row> rows = comparison.rows().stream().filter(r -> r.key().group() == group).toList();
    if (rows.isEmpty()) {
      return;
    }
    line("<h2>" + group.word() + "</h2><table><thead><tr><th scope=\"col\"></th>");
    for (int i = 0; i < comparison.sides().size(); i++) {
      line("<th scope=\"col\">" + CompareText.letter(i) + "</th>");
    }
    line("</tr></thead><tbody>");
    for (Row row : rows) {
      String subject = row.key().subject();
      String what = row.key().what();
      String between = subject.isEmpty() || what.isEmpty() ? "" : ": ";
      StringBuilder cells = new StringBuilder();
      row.values()
          .forEach(
              v ->
                  cells
                      .append("<td>")
                      .append(escaped(DatumText.of(row.key().kind(), v, style)))
                      .append("</td>"));
      line("<tr><td>" + escaped(subject + between + what) + "</td>" + cells + "</tr>");
    }
    line("</tbody></table>");
  }

  private void findings() {
    if (comparison.findings().isEmpty()) {
      return;
    }
    line("<h2>findings that not all have</h2><ul>");
    for (FindingRow row : comparison.findings()) {
      StringBuilder where = new StringBuilder();
      for (int i = 0; i < row.present().size(); i++) {
        where.append(row.present().get(i) ? " " + CompareText.letter(i) : "");
      }
      String check = row.finding().check() + ". " + row.finding().message();
      line("<li>in" + where + ": " + escaped(check) + "</li>");
    }
    line("</ul>");
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
