package dryfit.export;

import dryfit.build.Chair;
import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Words;
import dryfit.export.paper.Page;
import dryfit.export.paper.Page.Paper;
import dryfit.geometry.Vec2;
import dryfit.shop.CutList;
import dryfit.shop.CutList.Group;
import dryfit.shop.CutList.Row;
import java.util.ArrayList;
import java.util.List;

/** A cut list on paper, to be ticked off at the saw. */
public final class CutListPages {
  private static final double MARGIN = 15; // mm
  private static final double LINE = 6.5; // mm from line to line
  private static final double TYPE = 3.4; // mm

  private final TextStyle style;
  private final Paper paper;
  private final List<Page> pages = new ArrayList<>();
  private List<Ink> ink = new ArrayList<>();
  private double y;

  private CutListPages(TextStyle style, Paper paper) {
    this.style = style;
    this.paper = paper;
    this.y = paper.height() - MARGIN;
  }

  /** As many pages as it takes. */
  public static List<Page> of(Chair chair, CutList list, TextStyle style, Paper paper) {
    CutListPages out = new CutListPages(style, paper);
    out.text(chair.design().name() + ": cut list", 5.5);
    if (!chair.design().variant().equals(dryfit.document.Design.AS_DRAWN)) {
      out.text("variant: " + chair.design().variant(), TYPE);
    }
    for (Group group : list.groups()) {
      out.table(CutListText.title(group, style), group.rows());
      out.text(CutListText.sum(group, list.plan()), TYPE);
    }
    if (!list.pieces().isEmpty()) {
      out.table("Small pieces, from offcuts or rod", list.pieces());
    }
    out.y -= LINE / 2;
    CutListText.total(list, style).forEach(line -> out.text(line, TYPE));
    out.text("A rough board is not flat: measure what it leaves before you cut to this.", TYPE);
    out.turnOver();
    return out.pages;
  }

  private void table(String title, List<Row> rows) {
    room(4 * LINE);
    y -= LINE / 2;
    text(title, 4.2);
    cells("", "", "part", "finished", "blank to cut");
    rule();
    for (Row row : rows) {
      room(LINE);
      box();
      cells(
          "",
          Integer.toString(row.count()),
          row.name() + (row.pair() ? " (pair)" : ""),
          CutListText.size(row.finished(), style),
          CutListText.roomFor(row.rough(), style));
    }
    rule();
  }

  private void cells(String... cells) {
    double wide = paper.width() - 2 * MARGIN;
    double[] at = {0, 12, 16, 0.36 * wide, 0.68 * wide};
    room(LINE);
    y -= LINE;
    for (int i = 0; i < cells.length; i++) {
      Align align = i == 1 ? Align.RIGHT : Align.LEFT;
      ink.add(new Words(new Vec2(MARGIN + at[i], y + 1.8), cells[i], TYPE, align));
    }
  }

  /** A box to tick when the blank is cut. */
  private void box() {
    double x = MARGIN;
    double low = y - LINE + 1.2;
    ink.add(
        new Line(
            List.of(
                new Vec2(x, low),
                new Vec2(x + 4, low),
                new Vec2(x + 4, low + 4),
                new Vec2(x, low + 4)),
            true,
            0.2,
            Colour.BLACK));
  }

  private void rule() {
    ink.add(Line.of(new Vec2(MARGIN, y), new Vec2(paper.width() - MARGIN, y), 0.2, Colour.GREY));
  }

  private void text(String text, double size) {
    // About 1.9 letters of a sans serif go into the height of the type.
    int letters = (int) ((paper.width() - 2 * MARGIN) / size * 1.9);
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      if (line.length() + 1 + word.length() > letters) {
        put(line.toString(), size);
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    put(line.toString(), size);
  }

  private void put(String line, double size) {
    double step = Math.max(LINE - 1, size * 1.4);
    room(step);
    y -= step;
    ink.add(new Words(new Vec2(MARGIN, y + 1.5), line, size, Align.LEFT));
  }

  private void room(double height) {
    if (y - height < MARGIN) {
      turnOver();
    }
  }

  private void turnOver() {
    if (!ink.isEmpty()) {
      pages.add(new Page(paper.width(), paper.height(), ink));
    }
    ink = new ArrayList<>();
    y = paper.height() - MARGIN;
  }
}
