package dryfit.export;

import dryfit.export.picture.Figure;
import dryfit.export.picture.Overlay;
import dryfit.export.picture.View;
import dryfit.fit.compare.Comparison;
import dryfit.fit.compare.Comparison.Row;
import dryfit.fit.compare.Comparison.Side;
import dryfit.fit.compare.Datum;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
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
    out.append(PlainPage.head(title()));
    line("<ul>");
    for (int i = 0; i < sides.size(); i++) {
      String word = sides.get(i).report().verdict();
      String answer = word.equals("fits") ? word : "<strong class=\"no\">" + word + "</strong>";
      line("<li>" + CompareText.letter(i) + ": " + name(i) + ", " + answer + "</li>");
    }
    line("</ul>");
    pictures();
    for (Datum.Group group : Datum.Group.values()) {
      table(group);
    }
    findings();
    out.append(PlainPage.foot());
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
      line("<h2>" + view.word() + "</h2><div class=\"grid\">");
      List<byte[]> alone = new ArrayList<>();
      for (int i = 0; i < sides.size(); i++) {
        alone.add(overlay.alone(i, view, PIXELS));
        figure(alone.get(i), CompareText.letter(i) + ": " + name(i));
      }
      StringBuilder same = new StringBuilder();
      for (int i = 1; i < sides.size(); i++) {
        String letter = CompareText.letter(i);
        if (Arrays.equals(alone.get(0), alone.get(i))) {
          same.append(letter + " looks like A from here. ");
        } else {
          figure(
              overlay.over(i, view, PIXELS),
              "A and " + letter + " laid over each other, A in blue, " + letter + " in orange");
        }
      }
      line("</div>" + (same.length() == 0 ? "" : "<p>" + same.toString().strip() + "</p>"));
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
    List<Row> rows =
        comparison.rows().stream()
            .filter(r -> r.key().group() == group && DatumText.differs(r, style))
            .toList();
    if (rows.isEmpty()) {
      return;
    }
    line(
        "<h2>"
            + group.word()
            + "</h2><div class=\"wide\"><table><thead><tr><th scope=\"col\"></th>");
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
    line("</tbody></table></div>");
  }

  private void findings() {
    if (comparison.findings().isEmpty()) {
      return;
    }
    line("<h2>findings that not all have</h2><ul>");
    for (FindingSaid said : FindingSaid.of(comparison.findings())) {
      StringBuilder where = new StringBuilder();
      for (int i = 0; i < said.present().size(); i++) {
        where.append(said.present().get(i) ? " " + CompareText.letter(i) : "");
      }
      String check = said.finding().check() + ". " + said.message();
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
