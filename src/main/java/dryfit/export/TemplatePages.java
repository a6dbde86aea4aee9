package dryfit.export;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.export.paper.CheckBars;
import dryfit.export.paper.Drawing;
import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Words;
import dryfit.export.paper.Page;
import dryfit.export.paper.Page.Paper;
import dryfit.export.paper.Tiles;
import dryfit.geometry.Vec2;
import dryfit.shop.template.Template;
import dryfit.shop.template.Wanted;
import java.util.ArrayList;
import java.util.List;

/** Templates on paper at full size: on sheets that are joined, or on one large one. */
public final class TemplatePages {
  private static final double MARGIN = 15; // mm
  private static final double TYPE = 3.2; // mm
  private static final double LINE = 4.6; // mm
  private static final double BARS = 20; // mm at the left and below
  private static final double BAR = 104; // mm along them

  private final Chair chair;
  private final Template template;
  private final Wanted wanted;
  private final TextStyle style;
  private final Drawing drawing;
  private final TemplateWords words;

  /** One template of a chair, with sizes written as {@code style} says. */
  public TemplatePages(Chair chair, Template template, Wanted wanted, TextStyle style) {
    this.chair = chair;
    this.template = template;
    this.wanted = wanted;
    this.style = style;
    this.drawing = drawing(List.of());
    this.words = new TemplateWords(chair, template, style);
  }

  private Drawing drawing(List<Vec2[]> seams) {
    boolean bushed = wanted.bush().isPresent() && template.shows() == Template.Shows.OUTLINE;
    return TemplateInk.of(chair, template, bushed, style, seams);
  }

  /** What stands on each sheet. */
  public String title() {
    Design design = chair.design();
    String variant = design.variant().equals(Design.AS_DRAWN) ? "" : ", " + design.variant();
    return design.name() + variant + ": " + words.title();
  }

  /** A word for the face that is seen, for the name of a file. */
  public String face() {
    return TemplateWords.seen(chair, template);
  }

  /** A sheet with words and a map of the others, and the others. */
  public List<Page> sheets(Paper paper) {
    // Words inside the outline do not change how large it is, so the seams stay where they are.
    Tiles tiles = Tiles.of(drawing(Tiles.of(drawing, paper).seams()), paper);
    List<Page> out = new ArrayList<>();
    out.add(cover(tiles, paper));
    out.addAll(tiles.pages(words.title()));
    return out;
  }

  private Page cover(Tiles tiles, Paper paper) {
    List<Ink> ink = new ArrayList<>();
    double y = head(ink, MARGIN, paper.height() - MARGIN, paper.width() - 2 * MARGIN);
    y = notes(ink, MARGIN, y, paper.width() - 2 * MARGIN);
    int sheets = tiles.count();
    String join =
        sheets == 1
            ? "It is on one sheet, the next."
            : "It is on "
                + sheets
                + " sheets. Cut each along its dashed lines, lay it over its neighbour so that the"
                + " blue crosses meet, and tape it. Then measure it whole.";
    y = text(ink, MARGIN, y, paper.width() - 2 * MARGIN, join);
    double bottom = MARGIN + BARS + 4;
    Vec2 room = new Vec2(paper.width() - 2 * MARGIN - BARS, y - LINE - bottom);
    Vec2 whole = tiles.covered();
    double scale = Math.min(1, Math.min(room.x() / whole.x(), room.y() / whole.y()));
    Drawing map = tiles.map(scale);
    Vec2 at = new Vec2(MARGIN + BARS, bottom);
    ink.add(map.at(at, at.plus(map.size()), at.minus(map.low())));
    ink.addAll(CheckBars.across(new Vec2(MARGIN + BARS, MARGIN)));
    ink.addAll(CheckBars.up(new Vec2(MARGIN - 4, bottom)));
    return new Page(paper.width(), paper.height(), ink);
  }

  /** All of it on one sheet as large as it takes, words below. */
  public Page one() {
    double width = Math.max(drawing.size().x(), 2 * BAR) + 2 * MARGIN + BARS;
    List<Ink> ink = new ArrayList<>();
    List<Ink> below = new ArrayList<>();
    double used = -head(below, 0, 0, width - 2 * MARGIN);
    used = -notes(below, 0, -used, width - 2 * MARGIN);
    Vec2 at = new Vec2(MARGIN + BARS, MARGIN + used + BARS + LINE);
    double high = at.y() + Math.max(drawing.size().y(), BAR) + MARGIN;
    ink.add(drawing.at(at, at.plus(drawing.size()), at.minus(drawing.low())));
    ink.add(
        new Drawing(below, new Vec2(0, 0), new Vec2(0, 0))
            .at(
                new Vec2(0, 0),
                new Vec2(width, MARGIN + used + LINE),
                new Vec2(MARGIN, MARGIN + used)));
    ink.addAll(CheckBars.across(new Vec2(at.x(), MARGIN + used + LINE)));
    ink.addAll(CheckBars.up(new Vec2(MARGIN - 4, at.y())));
    return new Page(width, high, ink);
  }

  private double head(List<Ink> ink, double x, double y, double wide) {
    double at = y - 6;
    double size = Math.min(5, wide / title().length() / 0.52);
    ink.add(new Words(new Vec2(x, at), title(), size, Align.LEFT));
    return at - 3;
  }

  private double notes(List<Ink> ink, double x, double y, double wide) {
    double at = y;
    for (String note : words.notes(wanted)) {
      at = text(ink, x, at, wide, note);
    }
    return at;
  }

  private static double text(List<Ink> ink, double x, double y, double wide, String text) {
    double at = y;
    int columns = (int) (wide / (TYPE * 0.5));
    for (String line : Wrapped.lines(columns, "– ", "  ", text)) {
      at -= LINE;
      ink.add(
          new Words(
              new Vec2(line.startsWith("–") ? x : x + 2.6, at), line.strip(), TYPE, Align.LEFT));
    }
    return at - 0.8;
  }
}
