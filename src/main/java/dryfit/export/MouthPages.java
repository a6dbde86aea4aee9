package dryfit.export;

import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.export.paper.CheckBars;
import dryfit.export.paper.Drawing;
import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Words;
import dryfit.export.paper.Page;
import dryfit.export.paper.Page.Paper;
import dryfit.export.paper.Typeface;
import dryfit.fit.PartSides;
import dryfit.geometry.Vec2;
import dryfit.shop.template.MouthPrint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Mouths of mortises at full size, to be cut out, stuck on the wood and knifed through. */
public final class MouthPages {
  private static final double MARGIN = 15; // mm
  private static final double TYPE = 2.8; // mm
  private static final double LINE = 4; // mm
  private static final double BARS = 20; // mm at the left and below
  private static final double BETWEEN = 6; // mm between two prints
  private static final double ONE_WIDE = 420; // mm, a sheet of its own size

  /** An edge further off than this is told, not drawn, mm. */
  private static final double NEAR = 60;

  private final Chair chair;
  private final List<MouthPrint> prints;
  private final TextStyle style;

  /** Those prints, with sizes written as {@code style} says. */
  public MouthPages(Chair chair, List<MouthPrint> prints, TextStyle style) {
    this.chair = chair;
    this.prints = List.copyOf(prints);
    this.style = style;
  }

  /** What the sheets are called. */
  public String title() {
    Design design = chair.design();
    String variant = design.variant().equals(Design.AS_DRAWN) ? "" : ", " + design.variant();
    return design.name() + variant + ": mouths of mortises";
  }

  /** As many sheets as it takes. */
  public List<Page> sheets(Paper paper) {
    return laid(paper.width(), paper.height());
  }

  /** One sheet as high as it takes. */
  public Page one() {
    double high = 2 * MARGIN + BARS + 40;
    for (MouthPrint print : prints) {
      high += drawn(print).size().y() + BETWEEN;
    }
    return laid(ONE_WIDE, Math.max(high, 2 * MARGIN + BARS + 200)).get(0);
  }

  private List<Page> laid(double width, double height) {
    List<Page> pages = new ArrayList<>();
    List<Ink> ink = sheet(width, height);
    double left = MARGIN + BARS;
    double x = left;
    double top = height - MARGIN - 8 - LINE * notes(width).size() - BETWEEN;
    double row = 0;
    for (MouthPrint print : prints) {
      Drawing one = drawn(print);
      if (x + one.size().x() > width - MARGIN && x > left) {
        x = left;
        top -= row + BETWEEN;
        row = 0;
      }
      if (top - one.size().y() < MARGIN + BARS) {
        pages.add(new Page(width, height, ink));
        ink = sheet(width, height);
        x = left;
        top = height - MARGIN - 8 - LINE * notes(width).size() - BETWEEN;
        row = 0;
      }
      Vec2 at = new Vec2(x, top - one.size().y());
      ink.add(one.at(at, at.plus(one.size()), at.minus(one.low())));
      x += one.size().x() + BETWEEN;
      row = Math.max(row, one.size().y());
    }
    pages.add(new Page(width, height, ink));
    return pages;
  }

  private List<Ink> sheet(double width, double height) {
    List<Ink> ink = new ArrayList<>();
    double y = height - MARGIN - 5;
    // Of a variant with a long name the letters are smaller.
    double size = Math.min(5, (width - 2 * MARGIN) / Typeface.width(title(), 1));
    ink.add(new Words(new Vec2(MARGIN, y), title(), size, Align.LEFT));
    y -= 3;
    for (String line : notes(width)) {
      y -= LINE;
      ink.add(new Words(new Vec2(MARGIN, y), line, TYPE, Align.LEFT));
    }
    ink.addAll(CheckBars.across(new Vec2(MARGIN + BARS, MARGIN - 4)));
    ink.addAll(CheckBars.up(new Vec2(MARGIN - 6, MARGIN + BARS)));
    return ink;
  }

  private static List<String> notes(double width) {
    return Wrapped.lines(
        (int) ((width - 2 * MARGIN) / (TYPE * 0.5)),
        "",
        "",
        "Full size: print at 100 %, measure the bars first. Cut out along the dashed line, lay the"
            + " heavy line on the edge and the crossed middle at its distances, stick it down, and"
            + " knife through the corners. The black line lies outside the mouth: leave it, cut to its"
            + " inner edge. Measure twice: paper that is stuck askew moves the joint.");
  }

  private Drawing drawn(MouthPrint print) {
    List<Ink> ink = new ArrayList<>();
    Vec2 low = print.low();
    Vec2 high = print.high();
    double width = 0.3;
    for (List<Vec2> loop : print.loops()) {
      ink.add(new Line(Strokes.outside(loop, width / 2), true, width, Colour.BLACK));
    }
    double x0 = low.x() - 8;
    double x1 = high.x() + 8;
    double y0 = low.y() - 8;
    double y1 = high.y() + 8;
    List<Double> dashes = List.of(6.0, 1.2, 1.0, 1.2);
    if (Math.abs(print.edge()) <= NEAR) {
      y0 = Math.min(y0, print.edge() - 6);
      y1 = Math.max(y1, print.edge() + 6);
    }
    if (Math.abs(print.end()) <= NEAR) {
      x0 = Math.min(x0, print.end() - 6);
      x1 = Math.max(x1, print.end() + 6);
    }
    ink.add(new Line(List.of(new Vec2(x0, 0), new Vec2(x1, 0)), false, 0.12, Colour.BLACK, dashes));
    ink.add(new Line(List.of(new Vec2(0, y0), new Vec2(0, y1)), false, 0.12, Colour.BLACK, dashes));
    if (Math.abs(print.edge()) <= NEAR) {
      ink.add(Line.of(new Vec2(x0, print.edge()), new Vec2(x1, print.edge()), 0.5, Colour.BLACK));
    }
    if (Math.abs(print.end()) <= NEAR) {
      ink.add(Line.of(new Vec2(print.end(), y0), new Vec2(print.end(), y1), 0.5, Colour.BLACK));
    }
    if (print.lean() > Math.toRadians(0.1)) {
      lean(ink, print, Math.max(high.x(), high.y()));
    }
    List<String> words = words(print);
    double wide = words.stream().mapToInt(String::length).max().orElse(0) * TYPE * 0.52;
    double foot = y0;
    for (String line : words) {
      foot -= LINE;
      ink.add(new Words(new Vec2(x0 + 1, foot), line, TYPE, Align.LEFT));
    }
    Vec2 corner = new Vec2(x0, foot - 2);
    Vec2 far = new Vec2(Math.max(x1, x0 + 2 + wide), y1);
    ink.add(
        new Line(
            List.of(corner, new Vec2(far.x(), corner.y()), far, new Vec2(corner.x(), far.y())),
            true,
            0.15,
            Colour.GREY,
            List.of(2.0, 1.5)));
    Vec2 room = new Vec2(0.5, 0.5);
    return new Drawing(ink, corner.minus(room), far.plus(room));
  }

  /** An arrow to where the bottom of the mortise leans. */
  private static void lean(List<Ink> ink, MouthPrint print, double reach) {
    Vec2 way = print.leansTo().times(1 / print.leansTo().length());
    Vec2 tip = way.times(Math.min(7, reach));
    Vec2 side = new Vec2(-way.y(), way.x());
    ink.add(Line.of(new Vec2(0, 0), tip, 0.3, Colour.RED));
    Vec2 back = tip.minus(way.times(2.5));
    ink.add(new Ink.Area(List.of(List.of(tip, back.plus(side), back.minus(side))), Colour.RED));
  }

  private List<String> words(MouthPrint print) {
    PartSides sides = PartSides.of(chair, print.part());
    List<String> out = new ArrayList<>();
    out.add(print.joint());
    out.add(
        print.part().label()
            + ", "
            + sides.nearest(print.looks())
            + " face"
            + (print.fromBlank() ? " of the squared block" : ", finished"));
    out.add(
        "middle "
            + style.length(Math.abs(print.end()))
            + " from the "
            + sides.nearest(print.endLooks())
            + " end");
    out.add(
        "and "
            + style.length(Math.abs(print.edge()))
            + " from the "
            + sides.nearest(print.edgeLooks())
            + " edge");
    out.add(
        style.bare(print.high().x() - print.low().x())
            + " × "
            + style.bare(print.high().y() - print.low().y())
            + (print.through() ? ", right through" : ", deep " + style.length(print.deep()))
            + (print.lean() > Math.toRadians(0.1)
                ? String.format(
                    Locale.ROOT,
                    " along the hole, leaning %.1f° to the arrow",
                    Math.toDegrees(print.lean()))
                : ""));
    return out;
  }
}
