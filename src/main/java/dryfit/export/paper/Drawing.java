package dryfit.export.paper;

import dryfit.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * Ink that is not on a page yet; millimetres.
 *
 * @param low lower left corner of all of it
 * @param high upper right corner
 */
public record Drawing(List<Ink> ink, Vec2 low, Vec2 high) {
  public Drawing {
    ink = List.copyOf(ink);
  }

  /** Type smaller than this cannot be read on paper, mm. */
  private static final double READABLE = 1.2;

  /** The finest line that a printer draws whole, mm. */
  private static final double FINEST = 0.1;

  /** How large it is. */
  public Vec2 size() {
    return high.minus(low);
  }

  /** Smaller or larger about the origin; words that nobody could read are left out. */
  public Drawing scaled(double by) {
    return new Drawing(scaled(ink, by), low.times(by), high.times(by));
  }

  private static List<Ink> scaled(List<Ink> all, double by) {
    List<Ink> out = new ArrayList<>();
    for (Ink one : all) {
      if (one instanceof Ink.Line l) {
        out.add(
            new Ink.Line(
                scaledPlaces(l.points(), by),
                l.closed(),
                Math.max(FINEST, l.width() * by),
                l.colour(),
                l.dashes().stream().map(d -> d * by).toList()));
      } else if (one instanceof Ink.Area a) {
        out.add(
            new Ink.Area(a.loops().stream().map(p -> scaledPlaces(p, by)).toList(), a.colour()));
      } else if (one instanceof Ink.Words w && w.size() * by >= READABLE) {
        out.add(
            new Ink.Words(
                w.at().times(by), w.text(), w.size() * by, w.align(), w.turn(), w.colour()));
      } else if (one instanceof Ink.Window w) {
        out.add(
            new Ink.Window(
                w.low().times(by), w.high().times(by), w.shift().times(by), scaled(w.ink(), by)));
      }
    }
    return out;
  }

  private static List<Vec2> scaledPlaces(List<Vec2> points, double by) {
    return points.stream().map(p -> p.times(by)).toList();
  }

  /** Seen on a page: moved, and cut off at a window of it. */
  public Ink at(Vec2 windowLow, Vec2 windowHigh, Vec2 shift) {
    return new Ink.Window(windowLow, windowHigh, shift, ink);
  }
}
