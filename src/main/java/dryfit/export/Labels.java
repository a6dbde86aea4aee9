package dryfit.export;

import dryfit.export.paper.Ink;
import dryfit.export.paper.Ink.Align;
import dryfit.export.paper.Ink.Colour;
import dryfit.export.paper.Ink.Line;
import dryfit.export.paper.Ink.Words;
import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Words above and below a drawing, each with a fine line to what it is about, in as many rows as it
 * takes for none to stand on another.
 */
final class Labels {
  /** A letter is about so much of the type's height wide. */
  private static final double LETTER = 0.52;

  /** From the drawing to the first row, mm. */
  private static final double AWAY = 9;

  private final double type;
  private final double low;
  private final double high;
  private final List<Label> all = new ArrayList<>();

  private record Label(Vec2 at, String text) {}

  private record Placed(Label label, double from, double to, double y) {}

  /**
   * @param type size of the type, mm
   * @param low lower edge of the drawing
   * @param high upper edge
   */
  Labels(double type, double low, double high) {
    this.type = type;
    this.low = low;
    this.high = high;
  }

  void add(Vec2 at, String text) {
    Label label = new Label(at, text);
    if (!all.contains(label)) {
      all.add(label);
    }
  }

  List<Ink> ink() {
    List<Ink> out = new ArrayList<>();
    for (Placed p : placed()) {
      out.add(Line.of(p.label.at(), end(p), 0.1, Colour.GREY));
      out.add(new Words(new Vec2(p.from, p.y), p.label.text(), type, Align.LEFT));
    }
    return out;
  }

  /** Where the line of some words ends. */
  private Vec2 end(Placed p) {
    double x = Math.max(p.from, Math.min(p.to, p.label.at().x()));
    return new Vec2(x, p.y > high ? p.y - 0.8 : p.y + type * 0.9);
  }

  /** What the lines take: lower left and upper right corners, half a millimetre of room. */
  List<Vec2[]> lines() {
    List<Vec2[]> out = new ArrayList<>();
    for (Placed p : placed()) {
      Vec2 a = p.label.at();
      Vec2 b = end(p);
      out.add(
          new Vec2[] {
            new Vec2(Math.min(a.x(), b.x()) - 0.5, Math.min(a.y(), b.y()) - 0.5),
            new Vec2(Math.max(a.x(), b.x()) + 0.5, Math.max(a.y(), b.y()) + 0.5)
          });
    }
    return out;
  }

  /** Corners of what the words take. */
  List<Vec2> corners() {
    List<Vec2> out = new ArrayList<>();
    for (Placed p : placed()) {
      out.add(new Vec2(p.from, p.y - 1));
      out.add(new Vec2(p.to, p.y + type));
    }
    return out;
  }

  private List<Placed> placed() {
    double middle = (low + high) / 2;
    List<Placed> out = new ArrayList<>();
    place(all.stream().filter(l -> l.at().y() > middle).toList(), true, out);
    place(all.stream().filter(l -> l.at().y() <= middle).toList(), false, out);
    return out;
  }

  private void place(List<Label> some, boolean above, List<Placed> out) {
    List<Double> ends = new ArrayList<>();
    for (Label label : some.stream().sorted(Comparator.comparingDouble(l -> l.at().x())).toList()) {
      double wide = label.text().length() * type * LETTER;
      double from = label.at().x() - wide / 2;
      int row = 0;
      while (row < ends.size() && ends.get(row) > from) {
        row++;
      }
      if (row == ends.size()) {
        ends.add(0.0);
      }
      ends.set(row, from + wide + 3);
      double away = AWAY + row * type * 1.6;
      out.add(new Placed(label, from, from + wide, above ? high + away : low - away - type));
    }
  }
}
