package dryfit.export.book;

import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Words;
import dryfit.export.paper.Page;
import dryfit.export.paper.Page.Paper;
import dryfit.export.paper.Typeface;
import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/** The book on paper. */
public final class BookPages {
  /** Free on every side of a page, mm: more than any printer leaves white, and room to punch. */
  static final double MARGIN = 15;

  private static final double TYPE = 3.2;
  private static final double SMALL = 2.6;
  private static final double LEADING = 1.35;
  private static final double PAD = 1.2;

  private final Book book;
  private final Paper paper;
  private final double wide;
  private final List<Page> pages = new ArrayList<>();
  private List<Ink> ink = new ArrayList<>();
  private String chapter = "";
  private String sheet = "";
  private double y;

  private BookPages(Book book, Paper paper) {
    this.book = book;
    this.paper = paper;
    this.wide = width(paper);
  }

  /** The width that a sheet's blocks have, mm. */
  static double width(Paper paper) {
    return paper.width() - 2 * MARGIN;
  }

  /** As many pages as it takes; every sheet begins on a new one. */
  public static List<Page> of(Book book, Paper paper) {
    BookPages out = new BookPages(book, paper);
    for (Book.Chapter chapter : book.chapters()) {
      out.chapter = chapter.title();
      chapter.sheets().forEach(out::sheet);
    }
    return out.numbered();
  }

  private void sheet(Book.Sheet of) {
    sheet = of.title();
    begin(of.title());
    for (Block block : of.blocks()) {
      block(block);
    }
    turnOver();
  }

  private void begin(String title) {
    ink = new ArrayList<>();
    y = paper.height() - MARGIN;
    y -= SMALL;
    ink.add(new Words(new Vec2(MARGIN, y), chapter, SMALL, Align.LEFT, 0, Colour.GREY));
    if (!book.mark().isEmpty()) {
      ink.add(
          new Words(
              new Vec2(paper.width() - MARGIN, y), book.mark(), SMALL, Align.RIGHT, 0, Colour.RED));
    }
    y -= 2;
    for (String line : Typeface.lines(title, 6, wide)) {
      y -= 6;
      ink.add(new Words(new Vec2(MARGIN, y), line, 6, Align.LEFT));
      y -= 1.5;
    }
    y -= 1;
  }

  private void block(Block block) {
    if (block instanceof Block.Heading heading) {
      room(TYPE * 8);
      y -= 3.5;
      lines(heading.text(), 4.2, 0, Colour.BLACK);
      y -= 0.8;
    } else if (block instanceof Block.Text text) {
      lines(text.text(), TYPE, 0, Colour.BLACK);
      y -= PAD;
    } else if (block instanceof Block.Caution caution) {
      caution(caution.text());
    } else if (block instanceof Block.Steps steps) {
      steps.sentences().forEach(this::step);
      y -= PAD;
    } else if (block instanceof Block.Table table) {
      table(table);
    } else if (block instanceof Block.Drawing drawing) {
      drawing(drawing);
    } else if (block instanceof Block.Pictures pictures) {
      pictures(pictures);
    } else if (block instanceof Block.Facts facts) {
      facts(facts);
    }
  }

  private void lines(String text, double size, double indent, Colour colour) {
    for (String line : Typeface.lines(text, size, wide - indent)) {
      room(size * LEADING);
      y -= size * LEADING;
      ink.add(new Words(new Vec2(MARGIN + indent, y), line, size, Align.LEFT, 0, colour));
    }
  }

  private void caution(String text) {
    double high = Typeface.lines(text, TYPE, wide - 4).size() * TYPE * LEADING;
    room(high + 2);
    y -= 1;
    double top = y;
    lines(text, TYPE, 4, Colour.BLACK);
    y -= 1;
    ink.add(Line.of(new Vec2(MARGIN + 1, top), new Vec2(MARGIN + 1, y), 0.9, Colour.RED));
    y -= PAD;
  }

  private void step(String sentence) {
    List<String> lines = Typeface.lines(sentence, TYPE, wide - 7);
    room(Math.min(lines.size(), 3) * TYPE * LEADING);
    box(new Vec2(MARGIN, y - TYPE * LEADING - 0.5), 3.2, 3.2);
    lines(sentence, TYPE, 7, Colour.BLACK);
    y -= 0.9;
  }

  private void box(Vec2 low, double width, double height) {
    Vec2 high = low.plus(new Vec2(width, height));
    ink.add(
        new Line(
            List.of(low, new Vec2(high.x(), low.y()), high, new Vec2(low.x(), high.y())),
            true,
            0.2,
            Colour.BLACK));
  }

  private void table(Block.Table table) {
    double boxes = table.box() ? 24 : 0;
    double[] widths = table.shares().stream().mapToDouble(s -> s * (wide - boxes)).toArray();
    head(table, widths);
    for (List<String> cells : table.rows()) {
      double high = height(cells, widths, table.box());
      if (y - high < MARGIN + 6) {
        continued();
        head(table, widths);
      }
      row(table, cells, widths, false, high);
    }
    y -= PAD * 1.5;
  }

  /** A table whose columns need no names has no head. */
  private void head(Block.Table table, double[] widths) {
    if (table.head().stream().anyMatch(h -> !h.isEmpty())) {
      row(table, table.head(), widths, true, 0);
    }
  }

  private static double height(List<String> cells, double[] widths, boolean box) {
    int most = 1;
    for (int i = 0; i < cells.size(); i++) {
      most = Math.max(most, cell(cells.get(i), widths[i]).size());
    }
    return Math.max(most * SMALL * LEADING + 1.4, box ? 6.5 : 0);
  }

  private static List<String> cell(String text, double width) {
    List<String> out = new ArrayList<>();
    for (String line : text.split("\n", -1)) {
      out.addAll(Typeface.lines(line, SMALL, width - 2));
    }
    return out;
  }

  private void row(
      Block.Table table, List<String> cells, double[] widths, boolean head, double known) {
    double high = head ? height(cells, widths, false) : known;
    room(high + (head ? 8 : 0));
    double x = MARGIN;
    for (int i = 0; i < cells.size(); i++) {
      double line = y - SMALL * 1.15;
      for (String text : cell(cells.get(i), widths[i])) {
        ink.add(
            new Words(
                new Vec2(x, line), text, SMALL, Align.LEFT, 0, head ? Colour.GREY : Colour.BLACK));
        line -= SMALL * LEADING;
      }
      x += widths[i];
    }
    if (table.box()) {
      if (head) {
        ink.add(
            new Words(new Vec2(x, y - SMALL * 1.15), "found", SMALL, Align.LEFT, 0, Colour.GREY));
      } else {
        box(new Vec2(x, y - 5.4), 23, 5);
      }
    }
    y -= high;
    double thick = head ? 0.25 : 0.1;
    ink.add(Line.of(new Vec2(MARGIN, y), new Vec2(paper.width() - MARGIN, y), thick, Colour.GREY));
    y -= 0.6;
  }

  private void drawing(Block.Drawing drawing) {
    List<String> caption = Typeface.lines(drawing.caption(), SMALL, wide);
    double high = drawing.height() + 2 + caption.size() * SMALL * LEADING;
    room(high);
    y -= drawing.height() + 1;
    Vec2 at = new Vec2(MARGIN, y);
    ink.add(
        new Ink.Window(
            at, at.plus(new Vec2(drawing.width(), drawing.height())), at, drawing.ink()));
    for (String line : caption) {
      y -= SMALL * LEADING;
      ink.add(new Words(new Vec2(MARGIN, y), line, SMALL, Align.LEFT, 0, Colour.GREY));
    }
    y -= PAD;
  }

  private void pictures(Block.Pictures pictures) {
    int n = pictures.pictures().size();
    double each = (wide * pictures.share() - (n - 1) * 3) / n;
    double high = pictures.pictures().stream().mapToDouble(p -> each / p.aspect()).max().orElse(0);
    room(high + SMALL * LEADING + 1);
    y -= high;
    double x = MARGIN;
    for (Block.Picture p : pictures.pictures()) {
      Vec2 low = new Vec2(x, y);
      ink.add(new Ink.Picture(low, low.plus(new Vec2(each, each / p.aspect())), p.png()));
      double line = y - SMALL * LEADING;
      for (String words : Typeface.lines(p.caption(), SMALL, each)) {
        ink.add(new Words(new Vec2(x, line), words, SMALL, Align.LEFT, 0, Colour.GREY));
        line -= SMALL * LEADING;
      }
      x += each + 3;
    }
    double rows =
        pictures.pictures().stream()
            .mapToInt(p -> Typeface.lines(p.caption(), SMALL, each).size())
            .max()
            .orElse(1);
    y -= rows * SMALL * LEADING + PAD;
  }

  private void facts(Block.Facts facts) {
    double pictureWide = 46;
    double pictureHigh = pictureWide / facts.picture().aspect();
    double left = pictureWide + 4;
    double names = 30;
    double high = SMALL * 2;
    for (Block.Fact f : facts.facts()) {
      high += Typeface.lines(f.text(), TYPE, wide - left - names).size() * TYPE * LEADING + 0.6;
    }
    room(Math.max(high, pictureHigh + SMALL * LEADING));
    double top = y;
    Vec2 low = new Vec2(MARGIN, top - pictureHigh);
    ink.add(
        new Ink.Picture(low, low.plus(new Vec2(pictureWide, pictureHigh)), facts.picture().png()));
    ink.add(
        new Words(
            new Vec2(MARGIN, low.y() - SMALL * LEADING),
            facts.picture().caption(),
            SMALL,
            Align.LEFT,
            0,
            Colour.GREY));
    for (Block.Fact f : facts.facts()) {
      double line = y;
      for (String name : Typeface.lines(f.name(), SMALL, names - 2)) {
        line -= TYPE * LEADING;
        ink.add(new Words(new Vec2(MARGIN + left, line), name, SMALL, Align.LEFT, 0, Colour.GREY));
      }
      for (String text : Typeface.lines(f.text(), TYPE, wide - left - names)) {
        y -= TYPE * LEADING;
        ink.add(new Words(new Vec2(MARGIN + left + names, y), text, TYPE, Align.LEFT));
      }
      y = Math.min(y, line) - 0.6;
    }
    y = Math.min(y, low.y() - SMALL * LEADING) - PAD * 2;
  }

  private void room(double height) {
    if (y - height < MARGIN + 5) {
      continued();
    }
  }

  private void continued() {
    turnOver();
    begin(sheet + ", continued");
  }

  private void turnOver() {
    if (!ink.isEmpty()) {
      pages.add(new Page(paper.width(), paper.height(), ink));
    }
    ink = new ArrayList<>();
  }

  private List<Page> numbered() {
    List<Page> out = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      List<Ink> all = new ArrayList<>(pages.get(i).ink());
      double x = paper.width() - MARGIN;
      String count = (i + 1) + " / " + pages.size();
      all.add(new Words(new Vec2(x, MARGIN - 3), count, SMALL, Align.RIGHT, 0, Colour.GREY));
      all.add(
          new Words(new Vec2(MARGIN, MARGIN - 3), book.title(), SMALL, Align.LEFT, 0, Colour.GREY));
      out.add(new Page(paper.width(), paper.height(), all));
    }
    return out;
  }
}
