package dryfit.export;

import dryfit.document.BoardsPlan.Bad;
import dryfit.document.BoardsPlan.Board;
import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Area;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Words;
import dryfit.export.paper.Page;
import dryfit.export.paper.Page.Paper;
import dryfit.geometry.Vec2;
import dryfit.shop.BoardLayout;
import dryfit.shop.BoardLayout.Laid;
import dryfit.shop.BoardLayout.Placed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A board layout drawn to a scale that is told; paper lies on its long side. */
public final class BoardPages {
  private static final double MARGIN = 12; // mm
  private static final double TYPE = 3.2; // mm
  private static final double CAPTION = 11; // mm above and below a board
  private static final double LEGEND = 2.6; // mm
  private static final double LEADING = 3.8; // mm from line to line of a legend

  private final BoardLayout layout;
  private final TextStyle style;
  private final double width;
  private final double scale;
  private final Map<Laid, BoardNames> names = new LinkedHashMap<>();

  private BoardPages(BoardLayout layout, TextStyle style, double width) {
    this.layout = layout;
    this.style = style;
    this.width = width;
    double longest = used(layout).stream().mapToDouble(l -> l.board().length()).max().orElse(1);
    this.scale = Math.min(1, (width - 2 * MARGIN) / longest);
    int numbers = 0;
    for (Laid laid : used(layout)) {
      BoardNames on = BoardNames.of(laid.parts(), scale, numbers);
      names.put(laid, on);
      numbers += on.numbers();
    }
  }

  private static List<Laid> used(BoardLayout layout) {
    return layout.boards().stream().filter(l -> !l.parts().isEmpty()).toList();
  }

  /** Pages for a printer. */
  public static List<Page> of(BoardLayout layout, TextStyle style, Paper paper) {
    return new BoardPages(layout, style, paper.height()).pages(paper.width());
  }

  /** One page as high as it takes. */
  public static Page one(BoardLayout layout, TextStyle style) {
    BoardPages all = new BoardPages(layout, style, Paper.A4.height());
    double high = 2 * MARGIN + all.notesHeight();
    for (Laid laid : used(layout)) {
      high += all.height(laid);
    }
    return all.pages(high).get(0);
  }

  private double height(Laid laid) {
    return laid.board().width() * scale + CAPTION + legend(laid).size() * LEADING;
  }

  private List<String> legend(Laid laid) {
    return names.get(laid).legend(LEGEND, width - 2 * MARGIN);
  }

  private List<String> notes() {
    List<String> out = new ArrayList<>();
    out.add(
        BoardWords.yielded(layout)
            + String.format(Locale.ROOT, " Drawn 1 : %.1f, not for measuring.", 1 / scale));
    out.addAll(BoardWords.notes(layout));
    // A letter is about half as wide as the type is high; a tenth more for text of wide letters.
    int columns = (int) ((width - 2 * MARGIN) / (TYPE * 0.55));
    return out.stream().flatMap(n -> Wrapped.lines(columns, "", "   ", n).stream()).toList();
  }

  private double notesHeight() {
    return (notes().size() + 1) * TYPE * 1.5;
  }

  private List<Page> pages(double high) {
    List<Page> pages = new ArrayList<>();
    List<Ink> ink = new ArrayList<>();
    double y = high - MARGIN;
    for (Laid laid : used(layout)) {
      if (y - height(laid) < MARGIN - 1e-6 && !ink.isEmpty()) {
        pages.add(new Page(width, high, ink));
        ink = new ArrayList<>();
        y = high - MARGIN;
      }
      y -= height(laid);
      board(ink, laid, new Vec2(MARGIN, y + CAPTION / 2 + legend(laid).size() * LEADING));
    }
    if (y - notesHeight() < MARGIN - 1e-6 && !ink.isEmpty()) {
      pages.add(new Page(width, high, ink));
      ink = new ArrayList<>();
      y = high - MARGIN;
    }
    for (String note : notes()) {
      y -= TYPE * 1.5;
      ink.add(new Words(new Vec2(MARGIN, y), note, TYPE, Align.LEFT));
    }
    pages.add(new Page(width, high, ink));
    return pages;
  }

  private void board(List<Ink> ink, Laid laid, Vec2 at) {
    Board b = laid.board();
    List<Vec2> edge = box(new Vec2(0, 0), new Vec2(b.length(), b.width()), at);
    ink.add(new Area(List.of(edge), Colour.BOARD));
    grain(ink, b, at);
    for (Bad bad : b.bad()) {
      ink.add(
          new Area(
              List.of(
                  box(
                      new Vec2(bad.from().u(), bad.from().v()),
                      new Vec2(bad.to().u(), bad.to().v()),
                      at)),
              Colour.BAD));
    }
    ink.add(new Line(edge, true, 0.3, Colour.BLACK));
    for (Placed part : laid.parts()) {
      List<Vec2> rough = drawn(part.rough(), at);
      List<Vec2> net = drawn(part.net(), at);
      ink.add(new Area(List.of(net), Colour.PART));
      ink.add(new Line(rough, true, 0.15, Colour.GREY, List.of(1.5, 1.0)));
      ink.add(new Line(net, true, 0.25, Colour.BLACK));
    }
    for (BoardNames.Name name : names.get(laid).names()) {
      Vec2 on = at.plus(name.at()).minus(new Vec2(0, name.size() / 3));
      ink.add(new Words(on, name.written(), name.size(), Align.MIDDLE));
    }
    double line = at.y() - 1;
    for (String text : legend(laid)) {
      line -= LEADING;
      ink.add(new Words(new Vec2(at.x(), line), text, LEGEND, Align.LEFT));
    }
    double end = at.x() + laid.used() * scale;
    double top = at.y() + b.width() * scale;
    ink.add(
        new Line(
            List.of(new Vec2(end, at.y() - 1.5), new Vec2(end, top + 1.5)),
            false,
            0.3,
            Colour.RED,
            List.of(2.0, 1.0)));
    ink.add(new Words(new Vec2(at.x(), top + 1.2), BoardText.title(laid, style), TYPE, Align.LEFT));
  }

  /** Fine lines along the grain. */
  private void grain(List<Ink> ink, Board b, Vec2 at) {
    double rise = b.length() * Math.tan(b.slope());
    List<Ink> lines = new ArrayList<>();
    double from = Math.min(0, -rise);
    double to = b.width() + Math.max(0, -rise);
    for (double v = from; v <= to; v += 5 / scale) {
      lines.add(
          Line.of(
              new Vec2(at.x(), at.y() + v * scale),
              new Vec2(at.x() + b.length() * scale, at.y() + (v + rise) * scale),
              0.1,
              Colour.PALE));
    }
    Vec2 far = new Vec2(at.x() + b.length() * scale, at.y() + b.width() * scale);
    ink.add(new Ink.Window(at, far, new Vec2(0, 0), lines));
  }

  private List<Vec2> box(Vec2 low, Vec2 high, Vec2 at) {
    return drawn(List.of(low, new Vec2(high.x(), low.y()), high, new Vec2(low.x(), high.y())), at);
  }

  private List<Vec2> drawn(List<Vec2> loop, Vec2 at) {
    return loop.stream().map(p -> at.plus(p.times(scale))).toList();
  }
}
