package dryfit.export.book;

import dryfit.build.Part;
import dryfit.export.TextStyle;
import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Words;
import dryfit.export.paper.Typeface;
import dryfit.fit.PartSides;
import dryfit.geometry.Frame;
import dryfit.geometry.LineDrawing;
import dryfit.geometry.Vec2;
import dryfit.geometry.Vec3;
import dryfit.shop.Setout;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One view of a part, square to one of its faces, with running dimensions from its reference end
 * and its reference face.
 */
final class PartView {
  private static final double CAPTION = 2.8;
  private static final double GAP = 4;

  private final Setout setout;
  private final TextStyle style;
  private final Map<String, String> letters;
  private final Frame sheet;
  private final String caption;
  private final List<LineDrawing.Line> lines;
  private final Vec2 low;
  private final Vec2 high;

  /**
   * @param sheet own frame of the part; z to the eye, and its x or y along the part
   * @param letters of joints, by label
   */
  PartView(
      Setout setout, PartSides sides, Frame sheet, Map<String, String> letters, TextStyle style) {
    this.setout = setout;
    this.style = style;
    this.letters = letters;
    this.sheet = sheet;
    Part part = setout.part();
    Frame chair = part.frame();
    boolean standing = Math.abs(sheet.y().x()) > 0.5;
    String eye = sides.nearest(chair.turn(sheet.z()));
    String left = sides.nearest(chair.turn(sheet.x().negated()));
    String below = sides.nearest(chair.turn(sheet.y().negated()));
    String where = left.equals("left") ? "" : "; " + left + " on the left";
    this.caption = eye + " face" + where + (standing ? "" : "; " + below + " below");
    this.lines = LineDrawing.of(part.solid().mesh(), part.solid().rays(), sheet);
    double x0 = Double.POSITIVE_INFINITY;
    double y0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    double y1 = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < part.solid().mesh().pointCount(); i++) {
      Vec3 p = sheet.local(part.solid().mesh().point(i));
      x0 = Math.min(x0, p.x());
      x1 = Math.max(x1, p.x());
      y0 = Math.min(y0, p.y());
      y1 = Math.max(y1, p.y());
    }
    this.low = new Vec2(x0, y0);
    this.high = new Vec2(x1, y1);
  }

  /** What it takes on paper at a scale, and the ink, its lower left corner at the origin. */
  record Laid(double width, double height, List<Ink> ink) {}

  private boolean standing() {
    return Math.abs(sheet.y().x()) > 0.5;
  }

  Laid at(double scale) {
    Ladder along = new Ladder();
    Ladder across = new Ladder();
    fill(along, across, scale);
    Ladder column = standing() ? along : across;
    Ladder row = standing() ? across : along;
    Vec2 size = high.minus(low).times(scale);
    double[] rowReach = row.reach();
    double[] columnReach = column.reach();
    double left = Math.max(0, -rowReach[0]);
    double down = Math.max(row.depth(), -columnReach[0]);
    // Where the column comes down as far as the numbers of the row, it stands clear of them.
    boolean deep = columnReach[0] < 1 - Ladder.RUN;
    double base = deep ? Math.max(size.x(), rowReach[1] - Ladder.RUN) : size.x();
    double right = Math.max(base + column.depth(), rowReach[1]);
    double up = Math.max(size.y(), columnReach[1]);
    double wide = left + right + GAP;
    List<String> words = Typeface.lines(caption, CAPTION, Math.max(wide - GAP, 24));
    double captionHigh = words.size() * CAPTION * 1.2 + 1.5;
    wide =
        Math.max(
            wide,
            words.stream().mapToDouble(w -> Typeface.width(w, CAPTION)).max().orElse(0) + GAP);
    List<Ink> ink = new ArrayList<>();
    lines(ink, scale);
    column.column(ink, base);
    row.row(ink, 0);
    double tall = down + up + captionHigh + GAP;
    List<Ink> out = new ArrayList<>();
    out.add(
        new Ink.Window(new Vec2(0, 0), new Vec2(wide, tall), new Vec2(left, down + GAP / 2), ink));
    double y = tall - CAPTION;
    for (String w : words) {
      out.add(new Words(new Vec2(0, y), w, CAPTION, Align.LEFT));
      y -= CAPTION * 1.2;
    }
    return new Laid(wide, tall, out);
  }

  private void lines(List<Ink> ink, double scale) {
    for (LineDrawing.Line l : lines) {
      if (!l.seen() && l.origin().startsWith("/joints/")) {
        ink.add(
            new Ink.Line(
                List.of(paper(l.from(), scale), paper(l.to(), scale)),
                false,
                0.12,
                Colour.GREY,
                List.of(0.9, 0.6)));
      }
    }
    for (LineDrawing.Line l : lines) {
      if (l.seen()) {
        double wide = l.outline() ? 0.3 : 0.18;
        ink.add(Ink.Line.of(paper(l.from(), scale), paper(l.to(), scale), wide, Colour.BLACK));
      }
    }
  }

  private Vec2 paper(Vec2 p, double scale) {
    return p.minus(low).times(scale);
  }

  private Vec2 paper(Vec3 own, double scale) {
    Vec3 p = sheet.local(own);
    return paper(new Vec2(p.x(), p.y()), scale);
  }

  /** Numbers for both directions: the whole, and what is marked out on the face that is seen. */
  private void fill(Ladder along, Ladder across, double scale) {
    Vec3 lowOwn = setout.bounds().low();
    Vec3 highOwn = setout.bounds().high();
    number(along, lowOwn, true, "", scale);
    number(along, highOwn, true, "", scale);
    number(across, lowOwn, false, "", scale);
    number(across, highOwn, false, "", scale);
    for (Setout.Mark mark : setout.marks()) {
      boolean isRound = mark.joint().plan().diameter().isPresent();
      String letter = letters.getOrDefault(mark.joint().label(), "");
      boolean seen = mark.face().dot(sheet.z()) > 0.5;
      boolean atEnd = Math.abs(mark.face().x()) > 0.5;
      if (mark.kind() == Setout.Kind.SHOULDER) {
        seenCorners(mark.corners()).forEach(c -> number(along, c, true, letter, scale));
      } else if (seen || atEnd && mark.kind() == Setout.Kind.TENON) {
        List<Vec3> ends = isRound ? List.of(mark.box().middle()) : extremes(mark.corners());
        for (Vec3 c : ends) {
          if (mark.kind() == Setout.Kind.MORTISE) {
            number(along, c, true, letter, scale);
          }
          number(across, c, false, letter, scale);
        }
      }
    }
  }

  /** Of a shoulder, the corners with least and greatest place along on the two sides seen here. */
  private List<Vec3> seenCorners(List<Vec3> corners) {
    double nearest = corners.stream().mapToDouble(c -> c.dot(sheet.z())).max().orElse(0);
    List<Vec3> front = corners.stream().filter(c -> c.dot(sheet.z()) > nearest - 3).toList();
    return extremes(front);
  }

  /** The corners farthest along and across, both ways. */
  private List<Vec3> extremes(List<Vec3> corners) {
    List<Vec3> out = new ArrayList<>();
    for (Vec3 d : List.of(sheet.x(), sheet.y())) {
      corners.stream().max(java.util.Comparator.comparingDouble(c -> c.dot(d))).ifPresent(out::add);
      corners.stream().min(java.util.Comparator.comparingDouble(c -> c.dot(d))).ifPresent(out::add);
    }
    return out;
  }

  private void number(Ladder ladder, Vec3 own, boolean lengthwise, String letter, double scale) {
    Vec2 p = paper(own, scale);
    boolean width = Math.abs((standing() ? sheet.x() : sheet.y()).y()) > 0.5;
    double value = lengthwise ? setout.along(own) : setout.across(own, width);
    String text = (letter.isEmpty() ? "" : letter + " ") + style.bare(value);
    boolean column = standing() == lengthwise;
    if (column) {
      ladder.add(p.y(), p.x(), text);
    } else {
      ladder.add(p.x(), p.y(), text);
    }
  }
}
