package dryfit.export.book;

import dryfit.build.Chair;
import dryfit.export.book.Block.Fact;
import dryfit.export.paper.Page;
import dryfit.export.paper.SvgFile;
import dryfit.export.picture.View;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The book as one page that needs nothing else: it says itself that nothing may be fetched. Reads
 * on a telephone, by day and by night; the chair turns under the finger, and without script there
 * is a picture of it.
 */
public final class BookHtml {
  private static final String HINT = "Turn it with a finger, two make it larger; touch a part.";

  private final Book book;
  private final StringBuilder out = new StringBuilder();
  private int drawings;
  private int sheets;

  private BookHtml(Book book) {
    this.book = book;
  }

  /** The page as HTML, UTF-8. */
  public static byte[] bytes(Book book, Chair chair) {
    BookHtml page = new BookHtml(book);
    page.head();
    page.chair(chair);
    page.contents();
    page.sheets = 0;
    for (Book.Chapter chapter : book.chapters()) {
      page.line("<h2>" + escaped(chapter.title()) + "</h2>");
      chapter.sheets().forEach(page::sheet);
    }
    page.line("<script type=\"application/json\" id=\"solids\">");
    page.line(Turnable.json(chair, HINT));
    page.line("</script><script>");
    page.line(resource("turn.js"));
    page.line("</script></body></html>");
    return page.out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private static String resource(String name) {
    try (InputStream in = BookHtml.class.getResourceAsStream("/dryfit/book/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      // It is part of the program.
      throw new UncheckedIOException(e);
    }
  }

  private void head() {
    line("<!DOCTYPE html>");
    line("<html lang=\"en\"><head><meta charset=\"utf-8\">");
    line(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none';"
            + " img-src data:; style-src 'unsafe-inline'; script-src 'unsafe-inline'\">");
    line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
    line("<title>" + escaped(book.title()) + "</title>");
    line("<link rel=\"icon\" href=\"data:,\">");
    line("<style>");
    line(resource("page.css"));
    line("</style></head><body>");
    line("<h1>" + escaped(book.title()) + "</h1>");
    if (!book.mark().isEmpty()) {
      line("<p class=\"mark\">" + escaped(book.mark()) + "</p>");
    }
  }

  /** The chair that turns, hidden until its script runs; and a still picture until then. */
  private void chair(Chair chair) {
    Block.Picture still = CoverSheets.picture(chair, View.THREE_QUARTER, 720);
    line("<div class=\"still\" id=\"still\">");
    picture(still);
    line("</div><div id=\"turn\" hidden>");
    line(
        "<canvas tabindex=\"0\" role=\"img\" aria-label=\"the chair; arrow keys turn it\">"
            + "</canvas><output></output><div class=\"views\">");
    for (View view : View.values()) {
      line("<button type=\"button\" value=\"" + view.word() + "\">" + view.word() + "</button>");
    }
    line("</div></div>");
  }

  private void contents() {
    line("<nav><details><summary>What is in this book</summary>");
    for (Book.Chapter chapter : book.chapters()) {
      line("<p>" + escaped(chapter.title()) + "</p><ul>");
      for (Book.Sheet sheet : chapter.sheets()) {
        line("<li><a href=\"#s" + ++sheets + "\">" + escaped(sheet.title()) + "</a></li>");
      }
      line("</ul>");
    }
    line("</details></nav>");
  }

  private void sheet(Book.Sheet sheet) {
    line("<section id=\"s" + ++sheets + "\"><h3>" + escaped(sheet.title()) + "</h3>");
    sheet.blocks().forEach(this::block);
    line("</section>");
  }

  private void block(Block block) {
    if (block instanceof Block.Heading heading) {
      line("<h4>" + escaped(heading.text()) + "</h4>");
    } else if (block instanceof Block.Text text) {
      line("<p>" + escaped(text.text()) + "</p>");
    } else if (block instanceof Block.Caution caution) {
      line("<p class=\"caution\">" + escaped(caution.text()) + "</p>");
    } else if (block instanceof Block.Steps steps) {
      line("<ol class=\"steps\">");
      for (String s : steps.sentences()) {
        line("<li><label><input type=\"checkbox\"><span>" + escaped(s) + "</span></label></li>");
      }
      line("</ol>");
    } else if (block instanceof Block.Table table) {
      table(table);
    } else if (block instanceof Block.Drawing drawing) {
      drawing(drawing);
    } else if (block instanceof Block.Pictures pictures) {
      line("<div class=\"pictures\">");
      pictures.pictures().forEach(this::picture);
      line("</div>");
    } else if (block instanceof Block.Facts facts) {
      line("<div class=\"where\">");
      picture(facts.picture());
      line("</div><dl>");
      for (Fact f : facts.facts()) {
        line("<dt>" + escaped(f.name()) + "</dt><dd>" + escaped(f.text()) + "</dd>");
      }
      line("</dl>");
    }
  }

  private void picture(Block.Picture picture) {
    line(
        "<figure><img alt=\""
            + escaped(picture.caption())
            + "\" src=\""
            + picture.png().address()
            + "\"><figcaption>"
            + escaped(picture.caption())
            + "</figcaption></figure>");
  }

  private void drawing(Block.Drawing drawing) {
    Page page = new Page(drawing.width(), drawing.height(), drawing.ink());
    line("<figure><div class=\"drawing\">");
    line(SvgFile.element(page, drawing.caption(), "w" + ++drawings + "-"));
    line("</div><figcaption>" + escaped(drawing.caption()) + "</figcaption></figure>");
  }

  private void table(Block.Table table) {
    line("<div class=\"table\"><table>");
    boolean named = table.head().stream().anyMatch(h -> !h.isEmpty());
    if (named) {
      StringBuilder head = new StringBuilder("<thead><tr>");
      table
          .head()
          .forEach(h -> head.append("<th scope=\"col\">").append(escaped(h)).append("</th>"));
      head.append(table.box() ? "<th scope=\"col\">found</th>" : "");
      line(head + "</tr></thead>");
    }
    line("<tbody>");
    for (List<String> cells : table.rows()) {
      StringBuilder row = new StringBuilder("<tr>");
      for (String cell : cells) {
        row.append("<td>").append(escaped(cell).replace("\n", "<br>")).append("</td>");
      }
      row.append(table.box() ? "<td><input inputmode=\"decimal\" aria-label=\"found\"></td>" : "");
      line(row + "</tr>");
    }
    line("</tbody></table></div>");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
