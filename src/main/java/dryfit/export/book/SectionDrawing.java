package dryfit.export.book;

import dryfit.export.TextStyle;
import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Area;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Words;
import dryfit.fit.JointSection;
import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/** A joint sawn through, with its gaps told beside it. */
final class SectionDrawing {
  private static final double CAPTION = 2.8;
  private static final double GAP = 5;

  private SectionDrawing() {}

  /** Both sections, as large as they can be: side by side, or one above the other. */
  static Block.Drawing of(List<JointSection> sections, TextStyle style, double wide, double high) {
    Block.Drawing out = null;
    for (Scale scale : Scale.all(style.inches())) {
      for (boolean stacked : List.of(false, true)) {
        out = laid(sections, style, scale, stacked);
        if (out.width() <= wide && out.height() <= high) {
          return out;
        }
      }
    }
    return out;
  }

  private static Block.Drawing laid(
      List<JointSection> sections, TextStyle style, Scale scale, boolean stacked) {
    List<Part> parts = sections.stream().map(s -> one(s, style, scale.factor())).toList();
    List<Ink> ink = new ArrayList<>();
    double width = 0;
    double height = 0;
    if (stacked) {
      height = parts.stream().mapToDouble(p -> p.height + GAP).sum() - GAP;
      double y = height;
      for (Part p : parts) {
        y -= p.height;
        p.put(ink, 0, y);
        y -= GAP;
        width = Math.max(width, p.width);
      }
    } else {
      height = parts.stream().mapToDouble(Part::height).max().orElse(0);
      for (Part p : parts) {
        p.put(ink, width, height - p.height);
        width += p.width + GAP;
      }
      width -= GAP;
    }
    return new Block.Drawing(
        "Sawn through along the middle of the tenon, drawn "
            + scale.word()
            + ". Lighter: the part with the mortise. Darker: the part that goes in. Gaps in "
            + (style.inches() ? "inches." : "millimetres."),
        width,
        height,
        ink,
        scale.factor());
  }

  /** One section, its lower left corner at the origin. */
  private record Part(double width, double height, List<Ink> ink) {
    void put(List<Ink> all, double x, double y) {
      all.add(new Ink.Window(new Vec2(x, y), new Vec2(x + width, y + height), new Vec2(x, y), ink));
    }
  }

  private static Part one(JointSection section, TextStyle style, double scale) {
    Vec2 size = section.high().minus(section.low()).times(scale);
    List<Ink> cut = new ArrayList<>();
    for (JointSection.Cut c : section.cuts()) {
      List<List<Vec2>> loops =
          c.outlines().stream()
              .map(o -> o.stream().map(p -> paper(section, p, scale)).toList())
              .toList();
      Colour colour =
          switch (c.role()) {
            case MORTISED -> Colour.BOARD;
            case TENONED -> Colour.PART;
            case OTHER -> Colour.PALE;
          };
      cut.add(new Area(loops, colour));
      loops.forEach(loop -> cut.add(new Line(loop, true, 0.18, Colour.BLACK)));
    }
    Ladder ladder = new Ladder();
    for (JointSection.Gap gap : section.gaps()) {
      Vec2 p = paper(section, gap.at(), scale);
      if (p.x() >= 0 && p.y() >= 0 && p.x() <= size.x() && p.y() <= size.y()) {
        String value = style.gap(gap.value());
        ladder.add(p.y(), p.x(), value.substring(0, value.lastIndexOf(' ')) + " " + gap.side());
        dot(cut, p);
      }
    }
    double[] reach = ladder.reach();
    double bottom = Math.max(0.2, -reach[0]);
    double top = bottom + Math.max(size.y(), reach[1]) + 0.2;
    double width = Math.max(size.x() + ladder.depth(), 40) + 1;
    Vec2 at = new Vec2(0.2, bottom);
    List<Vec2> frame =
        List.of(at, at.plus(new Vec2(size.x(), 0)), at.plus(size), at.plus(new Vec2(0, size.y())));
    List<Ink> numbers = new ArrayList<>();
    ladder.column(numbers, size.x());
    List<Ink> ink = new ArrayList<>();
    ink.add(new Ink.Window(at, at.plus(size), at, cut));
    ink.add(new Line(frame, true, 0.1, Colour.PALE));
    ink.add(new Ink.Window(new Vec2(0, 0), new Vec2(width, top), at, numbers));
    ink.add(new Words(new Vec2(0, top + 1), section.title(), CAPTION, Align.LEFT));
    return new Part(width, top + CAPTION + 1.5, ink);
  }

  private static void dot(List<Ink> ink, Vec2 at) {
    double r = 0.45;
    List<Vec2> ring = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double a = i * Math.PI / 6;
      ring.add(at.plus(new Vec2(r * Math.cos(a), r * Math.sin(a))));
    }
    ink.add(new Area(List.of(ring), Colour.RED));
  }

  private static Vec2 paper(JointSection section, Vec2 p, double scale) {
    return p.minus(section.low()).times(scale);
  }
}
