package dryfit.export;

import dryfit.build.Chair;
import dryfit.export.paper.Drawing;
import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Area;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Words;
import dryfit.geometry.Vec2;
import dryfit.shop.template.Mark;
import dryfit.shop.template.Template;
import java.util.ArrayList;
import java.util.List;

/** A template at full size as ink, words and all. */
final class TemplateInk {
  private static final double TYPE = 2.6; // mm
  private static final double ROOM = 4; // mm round all of it
  static final double WIDE = 150; // mm across
  private static final List<Double> DASHED = List.of(2.0, 1.2);
  private static final List<Double> MIDDLE = List.of(6.0, 1.2, 1.0, 1.2);

  private final boolean bushed;
  private final List<Vec2[]> seams;
  private final Chair chair;
  private final Template template;
  private final TextStyle style;
  private final Labels labels;
  private final List<Ink> ink = new ArrayList<>();
  private final Inside inside;

  private TemplateInk(
      Chair chair, Template template, boolean bushed, TextStyle style, List<Vec2[]> seams) {
    this.seams = seams;
    this.bushed = bushed;
    this.chair = chair;
    this.template = template;
    this.style = style;
    this.inside = new Inside(template.outline());
    List<Vec2> all = template.edge().stream().flatMap(List::stream).toList();
    this.labels =
        new Labels(
            TYPE,
            Math.min(low(all).y(), low(template.outline().get(0)).y()),
            Math.max(high(all).y(), high(template.outline().get(0)).y()));
  }

  /**
   * @param bushed whether the template stands back from the part for a guide bush
   * @param seams where sheets overlap: words keep clear of them if there is room elsewhere
   */
  static Drawing of(
      Chair chair, Template template, boolean bushed, TextStyle style, List<Vec2[]> seams) {
    return new TemplateInk(chair, template, bushed, style, seams).drawing();
  }

  private Drawing drawing() {
    template.marks().forEach(m -> flat(m));
    template.marks().forEach(m -> mark(m));
    if (bushed) {
      template.outline().forEach(l -> ink.add(dashed(l, true, 0.2)));
    }
    template.line().forEach(l -> ink.add(new Line(l, true, template.width(), Colour.BLACK)));
    grain();
    name();
    ink.addAll(labels.ink());
    Vec2 low = new Vec2(Double.MAX_VALUE, Double.MAX_VALUE);
    Vec2 high = low.times(-1);
    List<Vec2> corners = new ArrayList<>(labels.corners());
    template.line().forEach(corners::addAll);
    template.outline().forEach(corners::addAll);
    for (Mark m : template.marks()) {
      if (m instanceof Mark.Middle middle) {
        corners.add(middle.from());
        corners.add(middle.to());
      }
    }
    for (Vec2 p : corners) {
      low = new Vec2(Math.min(low.x(), p.x()), Math.min(low.y(), p.y()));
      high = new Vec2(Math.max(high.x(), p.x()), Math.max(high.y(), p.y()));
    }
    Vec2 room = new Vec2(ROOM, ROOM);
    return new Drawing(ink, low.minus(room), high.plus(room));
  }

  /** Below all else. */
  private void flat(Mark mark) {
    if (mark instanceof Mark.FlatArea area) {
      ink.add(new Area(area.loops(), Colour.PALE));
    } else if (mark instanceof Mark.FlatEdge edge) {
      ink.add(Line.of(edge.from(), edge.to(), 4, Colour.PALE));
    }
  }

  private void mark(Mark mark) {
    if (mark instanceof Mark.Mouth mouth) {
      mouth
          .loops()
          .forEach(
              l ->
                  ink.add(
                      mouth.seen() ? new Line(l, true, 0.25, Colour.BLACK) : dashed(l, true, 0.2)));
      if (isWide()) {
        besideMouth(mouth);
      } else {
        label(mouth.about(), mouth.loops());
      }
    } else if (mark instanceof Mark.Inside hole) {
      hole.loops().forEach(l -> ink.add(dashed(l, true, 0.2)));
      label(hole.about(), hole.loops());
    } else if (mark instanceof Mark.Middle middle) {
      ink.add(new Line(List.of(middle.from(), middle.to()), false, 0.12, Colour.BLACK, MIDDLE));
    } else if (mark instanceof Mark.FlatArea area) {
      List<Vec2> loop = area.loops().get(0);
      labels.add(middleOf(loop), "keep flat: " + area.about());
    } else if (mark instanceof Mark.FlatEdge edge) {
      labels.add(edge.from().plus(edge.to()).times(0.5), "keep flat: " + edge.about());
    } else if (mark instanceof Mark.Crease crease) {
      ink.add(Line.of(crease.from(), crease.to(), 0.12, Colour.GREY));
    } else if (mark instanceof Mark.End end) {
      ink.add(dashed(end.line(), false, 0.3));
      labels.add(middleOf(end.line()), "the part ends here");
    } else if (mark instanceof Mark.Screw screw) {
      screw(screw.at());
    } else if (mark instanceof Mark.Depth depth) {
      depth(depth);
    } else if (mark instanceof Mark.Deepest deepest) {
      cross(deepest.at(), 4, Colour.BLACK);
      beside(deepest.at(), 5, List.of("deepest: " + style.bare(deepest.deep())));
    } else if (mark instanceof Mark.Diameter diameter) {
      diameter(diameter);
    } else if (mark instanceof Mark.TightCorner corner) {
      cross(corner.at(), 3, Colour.RED);
      labels.add(corner.at(), "the cutter leaves " + style.bare(corner.left()) + " here");
    }
  }

  private static Line dashed(List<Vec2> points, boolean closed, double width) {
    return new Line(points, closed, width, Colour.BLACK, DASHED);
  }

  /** A mortise, from where to where along the part. */
  private void label(String about, List<List<Vec2>> loops) {
    List<Vec2> all = loops.stream().flatMap(List::stream).toList();
    double a = Math.abs(low(all).x() - template.datum());
    double b = Math.abs(high(all).x() - template.datum());
    labels.add(
        middleOf(all),
        about + ": " + style.bare(Math.min(a, b)) + " to " + style.bare(Math.max(a, b)));
  }

  /** On a wide board words far from what they are about would not be found. */
  private boolean isWide() {
    return template.high().y() - template.low().y() > WIDE;
  }

  private void besideMouth(Mark.Mouth mouth) {
    List<Vec2> all = mouth.loops().stream().flatMap(List::stream).toList();
    Vec2 at = middleOf(all);
    double half = (high(all).y() - low(all).y()) / 2;
    String place =
        style.bare(Math.abs(at.x() - template.datum()))
            + ", "
            + style.bare(at.y() - template.low().y());
    List<String> lines = new ArrayList<>(List.of(mouth.about(), place));
    if (!mouth.seen()) {
      lines.add("from behind");
    }
    // Below the cross over its middle.
    beside(at, half + 3.5, lines);
  }

  private void beside(Vec2 at, double away, List<String> lines) {
    double wide = lines.stream().mapToInt(String::length).max().orElse(0) * TYPE * 0.52;
    // Into the board rather than over its edge.
    double x =
        Math.max(template.low().x() + wide / 2, Math.min(template.high().x() - wide / 2, at.x()));
    for (int i = 0; i < lines.size(); i++) {
      double y = at.y() - away - (i + 1) * TYPE * 1.15;
      ink.add(new Words(new Vec2(x, y), lines.get(i), TYPE, Align.MIDDLE));
    }
    double low = at.y() - away - lines.size() * TYPE * 1.2;
    used.add(new Vec2[] {new Vec2(x - wide / 2, low), new Vec2(x + wide / 2, at.y() - away)});
  }

  private void screw(Vec2 at) {
    List<Vec2> circle = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      double turn = Math.PI * i / 12;
      circle.add(at.plus(new Vec2(2.5 * Math.cos(turn), 2.5 * Math.sin(turn))));
    }
    ink.add(new Line(circle, true, 0.2, Colour.BLACK));
    cross(at, 4, Colour.BLACK);
  }

  private void cross(Vec2 at, double reach, Colour colour) {
    ink.add(Line.of(at.minus(new Vec2(reach, 0)), at.plus(new Vec2(reach, 0)), 0.15, colour));
    ink.add(Line.of(at.minus(new Vec2(0, reach)), at.plus(new Vec2(0, reach)), 0.15, colour));
  }

  private void depth(Mark.Depth depth) {
    ink.add(
        depth.deep() == 0
            ? new Line(depth.loop(), true, 0.2, Colour.BLACK)
            : new Line(depth.loop(), true, 0.15, Colour.GREY));
    // Each next line has its words a little further round, so that they do not stand on each other.
    Vec2 at = depth.loop().get(0);
    for (Vec2 p : depth.loop()) {
      at = p.x() > at.x() ? p : at;
    }
    String text = depth.deep() == 0 ? "rim" : style.bare(depth.deep()) + " deep";
    ink.add(new Words(new Vec2(at.x() - 1, at.y()), text, 2.3, Align.RIGHT, 0, Colour.GREY));
  }

  private void diameter(Mark.Diameter d) {
    double middle = (template.low().y() + template.high().y()) / 2;
    double half = d.diameter() / 2;
    ink.add(
        Line.of(
            new Vec2(d.along(), middle - half),
            new Vec2(d.along(), middle + half),
            0.2,
            Colour.BLACK));
    labels.add(
        new Vec2(d.along(), middle - half),
        style.bare(Math.abs(d.along() - template.datum())) + ": Ø " + style.bare(d.diameter()));
  }

  private void grain() {
    for (Mark mark : template.marks()) {
      if (mark instanceof Mark.Grain grain) {
        double most = Math.min(25, (template.high().x() - template.low().x()) / 5);
        double reach = most;
        Vec2 at = inside.room(half(grain, most).times(2), taken()).orElse(grain.at());
        for (double share : new double[] {0.3, 0.6, 1}) {
          var room = inside.room(half(grain, most * share).times(2), clearOfSeams());
          reach = room.isPresent() ? most * share : reach;
          at = room.orElse(at);
        }
        Vec2 half = half(grain, reach);
        used.add(new Vec2[] {at.minus(half), at.plus(half)});
        Vec2 from = at.minus(grain.way().times(reach));
        Vec2 to = at.plus(grain.way().times(reach));
        ink.add(Line.of(from, to, 0.3, Colour.BLACK));
        head(to, grain.way());
        head(from, grain.way().times(-1));
        double turn = Math.atan(grain.way().x() == 0 ? 1e3 : grain.way().y() / grain.way().x());
        Vec2 up = new Vec2(-Math.sin(turn), Math.cos(turn));
        ink.add(new Words(at.plus(up), "grain", TYPE, Align.MIDDLE, turn, Colour.BLACK));
      }
    }
  }

  /** Half of what an arrow takes; its word stands up to 4 mm off it. */
  private static Vec2 half(Mark.Grain grain, double reach) {
    Vec2 way = grain.way();
    return new Vec2(Math.abs(way.x()) * reach + 4, Math.abs(way.y()) * reach + 4);
  }

  private final List<Vec2[]> used = new ArrayList<>();

  private void head(Vec2 tip, Vec2 way) {
    Vec2 side = new Vec2(-way.y(), way.x());
    Vec2 back = tip.minus(way.times(3));
    ink.add(
        new Area(
            List.of(List.of(tip, back.plus(side.times(1)), back.minus(side.times(1)))),
            Colour.BLACK));
  }

  private void name() {
    TemplateWords words = new TemplateWords(chair, template, style);
    String text = words.title();
    for (List<Vec2[]> full : List.of(clearOfSeams(), taken())) {
      for (double size : new double[] {6, 5, 4, 3.2, 2.6}) {
        Vec2 need = new Vec2(text.length() * size * 0.52, size * 1.5);
        var room = inside.room(need, full);
        if (room.isPresent()) {
          Vec2 at = room.get().minus(new Vec2(0, size / 3));
          ink.add(new Words(at, text, size, Align.MIDDLE));
          return;
        }
      }
    }
    labels.add(inside.middle(), text);
  }

  private List<Vec2[]> clearOfSeams() {
    List<Vec2[]> out = taken();
    out.addAll(seams);
    return out;
  }

  /** Rectangles that marks take, so that words find another place. */
  private List<Vec2[]> taken() {
    List<Vec2[]> out = new ArrayList<>(used);
    out.addAll(labels.lines());
    for (Mark mark : template.marks()) {
      if (mark instanceof Mark.Mouth m) {
        out.add(box(m.loops()));
      } else if (mark instanceof Mark.Inside m) {
        out.add(box(m.loops()));
      } else if (mark instanceof Mark.FlatArea m) {
        out.add(box(m.loops()));
      } else if (mark instanceof Mark.Middle m) {
        Vec2 half = new Vec2(0.5, 0.5);
        List<Vec2> ends = List.of(m.from(), m.to());
        out.add(new Vec2[] {low(ends).minus(half), high(ends).plus(half)});
      } else if (mark instanceof Mark.Diameter d) {
        out.add(
            new Vec2[] {
              new Vec2(d.along() - 0.5, template.low().y()),
              new Vec2(d.along() + 0.5, template.high().y())
            });
      } else if (mark instanceof Mark.Deepest d) {
        out.add(new Vec2[] {d.at().minus(new Vec2(5, 5)), d.at().plus(new Vec2(5, 5))});
      }
    }
    return out;
  }

  private static Vec2[] box(List<List<Vec2>> loops) {
    List<Vec2> all = loops.stream().flatMap(List::stream).toList();
    return new Vec2[] {low(all), high(all)};
  }

  static Vec2 low(List<Vec2> points) {
    return new Vec2(
        points.stream().mapToDouble(Vec2::x).min().orElse(0),
        points.stream().mapToDouble(Vec2::y).min().orElse(0));
  }

  static Vec2 high(List<Vec2> points) {
    return new Vec2(
        points.stream().mapToDouble(Vec2::x).max().orElse(0),
        points.stream().mapToDouble(Vec2::y).max().orElse(0));
  }

  private static Vec2 middleOf(List<Vec2> points) {
    return low(points).plus(high(points)).times(0.5);
  }
}
