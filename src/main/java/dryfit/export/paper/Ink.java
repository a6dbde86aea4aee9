package dryfit.export.paper;

import dryfit.geometry.Vec2;
import java.util.List;

/** What is drawn on a page; millimetres. Later ink covers earlier ink. */
public sealed interface Ink {

  /** The colours of our drawings, chosen so that they stay apart when printed in grey. */
  enum Colour {
    BLACK(0, 0, 0),
    GREY(120, 120, 120),
    PALE(214, 214, 214),
    WHITE(255, 255, 255),
    RED(190, 30, 30),
    BLUE(25, 80, 160),
    BOARD(244, 232, 208),
    PART(224, 190, 140),
    BAD(200, 140, 120);

    private final int red;
    private final int green;
    private final int blue;

    Colour(int red, int green, int blue) {
      this.red = red;
      this.green = green;
      this.blue = blue;
    }

    int red() {
      return red;
    }

    int green() {
      return green;
    }

    int blue() {
      return blue;
    }
  }

  /** Where a text stands to its place. */
  enum Align {
    LEFT,
    MIDDLE,
    RIGHT
  }

  /**
   * A line, its middle on the points.
   *
   * @param width of the line
   * @param dashes lengths of strokes and gaps in turn; none for a line that does not stop
   */
  record Line(List<Vec2> points, boolean closed, double width, Colour colour, List<Double> dashes)
      implements Ink {
    public Line {
      points = List.copyOf(points);
      dashes = List.copyOf(dashes);
    }

    /** A line that does not stop. */
    public Line(List<Vec2> points, boolean closed, double width, Colour colour) {
      this(points, closed, width, colour, List.of());
    }

    /** From a place to a place. */
    public static Line of(Vec2 from, Vec2 to, double width, Colour colour) {
      return new Line(List.of(from, to), false, width, colour);
    }
  }

  /** A filled area; where loops overlap an even number of times it is a hole. */
  record Area(List<List<Vec2>> loops, Colour colour) implements Ink {
    public Area {
      loops = loops.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A line of text.
   *
   * @param at on its base line
   * @param size of the type: from the foot of one line to that of the next, if set solid
   * @param turn radians anticlockwise
   */
  record Words(Vec2 at, String text, double size, Align align, double turn, Colour colour)
      implements Ink {
    /** Upright, black. */
    public Words(Vec2 at, String text, double size, Align align) {
      this(at, text, size, align, 0, Colour.BLACK);
    }
  }

  /**
   * Other ink seen through a window: what is outside is cut off.
   *
   * @param low lower left corner of the window on the page
   * @param high upper right corner
   * @param shift added to every place of the ink
   */
  record Window(Vec2 low, Vec2 high, Vec2 shift, List<Ink> ink) implements Ink {
    public Window {
      ink = List.copyOf(ink);
    }
  }

  /**
   * A picture.
   *
   * @param low lower left corner on the page
   * @param high upper right corner
   */
  record Picture(Vec2 low, Vec2 high, Png png) implements Ink {}
}
