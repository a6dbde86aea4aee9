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

  private SectionDrawing() {}

  /** Both sections side by side, as large as they can be. */
  static Block.Drawing of(List<JointSection> sections, TextStyle style, double wide, double high) {
    Block.Drawing out = null;
    for (Scale scale : Scale.all(style.inches())) {
      out = laid(sections, style, scale);
      if (out.width() <= wide && out.height() <= high) {
        return out;
      }
    }
    return out;
  }

  private static Block.Drawing laid(List<JointSection> sections, TextStyle style, Scale scale) {
    List<Ink> ink = new ArrayList<>();
    double x = 0;
    double height = 0;
    for (JointSection s : sections) {
      height = Math.max(height, s.high().minus(s.low()).y() * scale.factor());
    }
    height = Math.max(height, 24) + CAPTION * 2;
    for (JointSection s : sections) {
      x += one(s, style, scale.factor(), x, height, ink) + 5;
    }
    return new Block.Drawing(
        "Sawn through along the middle of the tenon, drawn "
            + scale.word()
            + ". Lighter: the part with the mortise. Darker: the part that goes in. Gaps in "
            + (style.inches() ? "inches." : "millimetres."),
        x - 5,
        height,
        ink,
        scale.factor());
  }

  private static double one(
      JointSection section,
      TextStyle style,
      double scale,
      double left,
      double height,
      List<Ink> ink) {
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
    double bottom = height - CAPTION * 2 - size.y();
    Vec2 at = new Vec2(left, bottom);
    ink.add(new Ink.Window(at, at.plus(size), at, cut));
    ink.add(
        new Line(
            List.of(
                at,
                new Vec2(left + size.x(), bottom),
                at.plus(size),
                new Vec2(left, bottom + size.y())),
            true,
            0.1,
            Colour.PALE));
    Ladder ladder = new Ladder();
    for (JointSection.Gap gap : section.gaps()) {
      Vec2 p = paper(section, gap.at(), scale);
      if (p.x() >= 0 && p.y() >= 0 && p.x() <= size.x() && p.y() <= size.y()) {
        String value = style.gap(gap.value());
        String number = value.substring(0, value.lastIndexOf(' '));
        ladder.add(bottom + p.y(), left + p.x(), number + " " + gap.side());
        dot(ink, at.plus(p));
      }
    }
    ladder.column(ink, left + size.x());
    ink.add(new Words(new Vec2(left, height - CAPTION), section.title(), CAPTION, Align.LEFT));
    return Math.max(size.x() + ladder.depth(), 40);
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
